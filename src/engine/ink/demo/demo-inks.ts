import { makeInk, type InkEntry } from '../characterise/make-ink.ts';
import { INK_MESH } from '../film/film-factor.ts';
import type { Ink } from '../types.ts';

// Invented, not measured: chosen by looking at all their overprints on the demo paper. From the
// transparent shoal, dusk and weed by the veil foam to clay, which hides nearly all; tar hides by
// absorbing.
const ENTRIES: readonly Omit<InkEntry, 'basis'>[] = [
  { id: 'tar', name: 'Tar', overWhite: [17, 1, -5], overBlack: [11.6, 0.3, -1.7] },
  { id: 'rust', name: 'Rust', overWhite: [51, 33, 36], overBlack: [28.5, 10.6, 11.5] },
  { id: 'weed', name: 'Weed', overWhite: [63, -17, 35], overBlack: [21.5, -5, 9.8] },
  { id: 'shoal', name: 'Shoal', overWhite: [73, -26, -12], overBlack: [19.6, -7.6, -3.6] },
  { id: 'foam', name: 'Foam', overWhite: [90, -5, -1], overBlack: [71.8, -2.1, -0.4] },
  { id: 'signal', name: 'Signal', overWhite: [61, 57, 43], overBlack: [50.4, 34.8, 25] },
  { id: 'dusk', name: 'Dusk', overWhite: [49, 8, -33], overBlack: [12.8, 2, -9.4] },
  { id: 'clay', name: 'Clay', overWhite: [79, 11, 17], overBlack: [73.9, 6.4, 11.4] },
];

/**
 * The demo's eight invented inks, new objects at every call.
 * @returns tar, rust, weed, shoal, foam, signal, dusk, clay
 */
export function demoInks(): Ink[] {
  return ENTRIES.map((entry) => makeInk({ ...entry, basis: 'invented', mesh: INK_MESH }));
}
