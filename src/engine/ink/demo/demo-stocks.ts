import { makeInk, type InkEntry } from '../characterise/make-ink.ts';
import { INK_MESH } from '../film/film-factor.ts';
import type { Ink } from '../types.ts';

// Invented, not measured: strong inks round the hue circle that mix to most colours a print may
// have, a covering white, a black, and a base that hardly shows.
const ENTRIES: readonly (Omit<InkEntry, 'basis' | 'id'> & { id: string; role?: 'base' })[] = [
  {
    id: 'stock-base',
    name: 'Clear water',
    role: 'base',
    overWhite: [94.6, -0.1, 0.6],
    overBlack: [21.2, -0.1, -0.3],
    densityGPerCm3: 1.04,
  },
  { id: 'stock-lime', name: 'Quay lime', overWhite: [94.5, 0, 1.2], overBlack: [84, -1.2, -1.8], densityGPerCm3: 1.32 },
  { id: 'stock-soot', name: 'Stack soot', overWhite: [11, 0.2, -0.6], overBlack: [8.5, 0.1, -0.3], densityGPerCm3: 1.1 },
  { id: 'stock-gorse', name: 'Gorse', overWhite: [84, 4, 84], overBlack: [24, 0.5, 10], densityGPerCm3: 1.14 },
  { id: 'stock-ochre', name: 'Cliff ochre', overWhite: [60, 19, 52], overBlack: [36, 9, 23], densityGPerCm3: 1.22 },
  { id: 'stock-buoy', name: 'Buoy', overWhite: [55, 62, 52], overBlack: [24, 20, 13], densityGPerCm3: 1.15 },
  { id: 'stock-madder', name: 'Madder weed', overWhite: [41, 63, 8], overBlack: [12.5, 10, 1], densityGPerCm3: 1.1 },
  { id: 'stock-mussel', name: 'Mussel', overWhite: [25, 28, -44], overBlack: [10, 6, -10], densityGPerCm3: 1.12 },
  { id: 'stock-deep', name: 'Deep water', overWhite: [34, 2, -49], overBlack: [11, 1, -12], densityGPerCm3: 1.12 },
  { id: 'stock-shallow', name: 'Shallows', overWhite: [58, -36, -37], overBlack: [16, -6, -8], densityGPerCm3: 1.1 },
  { id: 'stock-kelp', name: 'Kelp', overWhite: [44, -51, 14], overBlack: [14, -9, 3], densityGPerCm3: 1.13 },
  { id: 'stock-iron', name: 'Old iron', overWhite: [33, 27, 26], overBlack: [20, 11, 10], densityGPerCm3: 1.25 },
];

/**
 * The demo's invented stock inks, new objects at every call; they live among the drawer's inks,
 * marked `stock`, and on no explorer's palette.
 * @returns a transparent base (role 'base') first, then eleven stock inks
 */
export function demoStocks(): Ink[] {
  return ENTRIES.map(({ role, ...entry }) => ({
    ...makeInk({ ...entry, basis: 'invented', mesh: INK_MESH }),
    stock: true,
    ...(role === undefined ? {} : { role }),
  }));
}
