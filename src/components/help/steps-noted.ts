import { FIRST_STEPS } from './steps.ts';

const KEY = 'pullstack-first-steps';

/** Which first step comes next in this browser; null when all are done or were closed. */
export function stepNoted(): number | null {
  try {
    const noted = Number(localStorage.getItem(KEY) ?? 0);
    return Number.isInteger(noted) && noted >= 0 && noted < FIRST_STEPS.length ? noted : null;
  } catch {
    // Where nothing can be kept they would come again with every visit.
    return null;
  }
}

/** Notes which one comes next; null when they are to stay away. */
export function noteStep(step: number | null): void {
  try {
    localStorage.setItem(KEY, String(step ?? FIRST_STEPS.length));
  } catch {
    // They are gone until the page is loaded again.
  }
}
