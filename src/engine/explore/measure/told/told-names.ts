import type { CodeLists } from '../../../base/code/code-room.ts';

/** All that the function reads and writes; lists of cells, of what is asked together, of colours, of bins and of their blocks. */
export const TOLD_NAMES = [
  ...(['blocksRoom', 'asked', 'state', 'deltaE'] as const),
  ...(['labs', 'lab', 'list', 'colourOf', 'numberOf'] as const),
  ...(['asks', 'ends', 'unknown', 'pairs', 'near', 'held', 'open', 'colours'] as const),
  ...(['cellOf', 'first', 'last', 'filled', 'blocks', 'parts', 'swatchBlocks', 'far'] as const),
] as const;

export type ToldLists = CodeLists<(typeof TOLD_NAMES)[number]>;

/** What is asked: the places [FROM, TO) in the list of cells, and what is done with them. */
export const [FROM, TO, DO] = [0, 1, 2] as const;
/** Asks what each may be near; joins those of which what is near is known; asks which swatches each may be near; or lists those that are near none. */
export const [TELL, JOIN, TO_SWATCHES, LIST_FAR] = [0, 1, 2, 3] as const;
/** What is told and kept from call to call: pairs to compare, colours, blocks, cells that are near no known colour, cells that are near no swatch. */
export const [PAIRS, COUNT, BLOCKS, UNKNOWN, FARS, STATES] = [0, 1, 2, 3, 4, 5] as const;

/** What the function gives back: all done, or more blocks than there is room for. */
export const DONE = 0;
export const MORE = 1;

/** Words of a colour that is asked about, in single precision: L, a, b, the address of its bin's first block, its name, its chroma. */
export const ASK = 8;
/**
 * A block of a bin holds four colours, in single precision: four times L, four times a, b, what squares of differences are times that are 1
 * at its reach, in L, in a and b, and where one is bluish; then four names and the address of the next block. Blocks of swatches are the same, with
 * chromas fourth and no more.
 */
export const [NAME, NEXT, BLOCK] = [24, 28, 32] as const;
/** Further away in L than any colour. */
export const FAR = 1e18;
/** Widths of a bin in L, and in a and b; how many there are of each, and of all. What lies beyond is in the first and the last. */
export const [L_WIDTH, AB_WIDTH, L_BINS, AB_BINS] = [6, 36, 18, 8] as const;
export const BINS = L_BINS * AB_BINS * AB_BINS;
/** Swatches lie by parts of L; the first and the last hold all that lies beyond. */
export const [PART_L, PARTS] = [2, 50] as const;
