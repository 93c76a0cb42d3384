import type { CodeLists } from '../../../base/code/code-room.ts';

/** All that the function reads and writes; lists of rows, of runs, of notes, of pairs and of cells; and lists of a map that does not lie in memory. */
export const EDGE_NAMES = [
  ...(['rows', 'cells', 'notesRoom', 'sheet', 'found'] as const),
  ...(['rowStart', 'runEndMm', 'runCell', 'edgeOf'] as const),
  ...(['noteCells', 'noteMm', 'order', 'ofCell', 'pairOf'] as const),
  ...(['pairCells', 'lengthMm'] as const),
  ...(['areaMm2', 'moments', 'bySize', 'sizes', 'half', 'halfSizes', 'lower', 'upper'] as const),
  ...(['ownStarts', 'ownEnds', 'ownCells', 'ownAreas'] as const),
] as const;

export type EdgeLists = CodeLists<(typeof EDGE_NAMES)[number]>;

/** What the function gives back: all done, more notes than there is room for, or what other means find sooner. */
export const DONE = 0;
export const MORE_NOTES = 1;
export const PARTED = 2;

/** Where the edges of two rows part, more than so many pairs of them are found by lists. */
export const MANY = 2 ** 20;
