import { type TargetSquare, targetSquares } from './target.ts';

/** Papers that a target is printed on, landscape, mm. */
export const PAGES = {
  A4: { widthMm: 297, heightMm: 210 },
  A3: { widthMm: 420, heightMm: 297 },
} as const;

export type PageName = keyof typeof PAGES;

/** Where a target's squares lie on its page, mm from the top left. */
export interface TargetLayout {
  widthMm: number;
  heightMm: number;
  sideMm: number;
  /** From one square's edge to the next one's. */
  pitchMm: number;
  squares: (TargetSquare & { xMm: number; yMm: number })[];
}

/** Smaller squares are hard to read: hand-held instruments look through 2 to 6 mm; common practice, no source. */
export const LEAST_SIDE_MM = 7;

/** Room on the page: edge, heading, names at the left and above, a line below. */
export const ROOM_MM = { edge: 10, heading: 13, left: 36, above: 24, below: 8 } as const;
const LARGEST_PITCH_MM = 26;
const GAP_MM = 2;

/** The squares as they lie on a page, as large as they fit. */
export function layOutTarget(inks: readonly string[], page: PageName): TargetLayout {
  const { widthMm, heightMm } = PAGES[page];
  const across = inks.length + 1;
  const width = widthMm - 2 * ROOM_MM.edge - ROOM_MM.left;
  const height = heightMm - 2 * ROOM_MM.edge - ROOM_MM.heading - ROOM_MM.above - ROOM_MM.below;
  const pitchMm = Math.min(LARGEST_PITCH_MM, width / across, height / Math.max(1, inks.length));
  const squares = targetSquares(inks).map((square, i) => ({
    ...square,
    xMm: ROOM_MM.edge + ROOM_MM.left + (i % across) * pitchMm,
    yMm: ROOM_MM.edge + ROOM_MM.heading + ROOM_MM.above + Math.floor(i / across) * pitchMm,
  }));
  return { widthMm, heightMm, sideMm: pitchMm - GAP_MM, pitchMm, squares };
}
