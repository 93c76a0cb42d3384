import type { PrintPages } from './print-pages.ts';

/** With no more cores than this the search takes them all. */
const FEW_CORES = 2;
/** When no print came for so long, none is being searched for, ms: where other programs take the cores as well, a second may pass between two batches. */
const QUIET_MS = 3000;

/**
 * Resolves when the search leaves a core free. Asking for WebGL has the page wait for the graphics process, and that for a
 * core: on two cores without a graphics card 1 to 5 s, in which the page answers nothing.
 */
export async function coresFree(pages: PrintPages): Promise<void> {
  if (navigator.hardwareConcurrency > FEW_CORES) return;
  for (let before = -1; pages.count !== before;) {
    before = pages.count;
    await new Promise((resolve) => setTimeout(resolve, QUIET_MS));
  }
}

/** Lets the page answer before work goes on. */
export function nextTask(): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve));
}
