import type { CodeLists } from '../../base/code/code-room.ts';

/** All that the function reads and writes; lists of screens, of rows, of crossings, of events in a row, of runs and of cells. */
export const MAP_NAMES = [
  ...(['rows', 'cellsRoom', 'slotMask', 'sheet', 'found'] as const),
  ...(['firstIn', 'nextIn', 'here', 'firstRow', 'rowCount', 'startAt', 'xAt', 'dxMm', 'had', 'next', 'bitHash'] as const),
  ...(['starts', 'xMm'] as const),
  ...(['x', 'newX', 'bit', 'aboveBit', 'cells', 'aboveCells', 'newBit', 'left'] as const),
  ...(['rowStart', 'runEndMm', 'runCell'] as const),
  ...(['cover', 'areaMm2', 'hashOf', 'slots'] as const),
] as const;

export type MapLists = CodeLists<(typeof MAP_NAMES)[number]>;

/** What the function gives back: all done, more cells than there is room for, or rows that hardly go on from one another. */
export const DONE = 0;
export const MORE_CELLS = 1;
export const MESSY = 2;

/** Entries before the first cell of a row, and beyond the last. */
export const PAD = 2;
