/** All steps of work in one go. @returns what it finds at its end */
export function atOnce<T>(steps: Generator<unknown, T>): T {
  for (;;) {
    const next = steps.next();
    if (next.done === true) return next.value;
  }
}
