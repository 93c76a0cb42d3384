/** A timer looks so many times before it ends. */
const LOOKS = 5;

/**
 * Does something after so long, counted in looks: a device that slept meanwhile comes late with one look,
 * not with all of them, so that sleep is not taken for silence.
 * @param ms in which the machine is awake
 * @returns ends the wait
 */
export function awakeTimeout(act: () => void, ms: number): () => void {
  let looks = 0;
  const clock = setInterval(() => {
    if (++looks < LOOKS) return;
    clearInterval(clock);
    act();
  }, ms / LOOKS);
  return () => clearInterval(clock);
}
