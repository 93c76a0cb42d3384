import type { PrintPages } from './print-pages.ts';

/** With no more cores than this the search takes them all. */
const FEW_CORES = 2;
/** When no print came for so long, none is being searched for, ms. */
const QUIET_MS = 1000;

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
