import type { CodeLists } from '../../base/code/code-room.ts';

/** All that the function reads and writes; lists of cells, of words, of bits, of layers and of piles. */
export const TREE_NAMES = [
  ...(['cells', 'layers', 'pilesRoom', 'slotMask', 'found'] as const),
  ...(['cover', 'leaf', 'mask', 'layerOf', 'first'] as const),
  ...(['slots', 'pattern', 'parent', 'next', 'steps'] as const),
] as const;

export type TreeLists = CodeLists<(typeof TREE_NAMES)[number]>;

/** What the function gives back: all done, or more piles than there is room for. */
export const DONE = 0;
export const MORE_PILES = 1;
