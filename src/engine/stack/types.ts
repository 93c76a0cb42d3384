import type { RowSpans } from '../geometry/row-crossings.ts';

/** One impression of one screen in one ink on one sheet. */
export interface Pull {
  /** Unique within its stack; kept when the pull moves. */
  id: string;
  screen: string;
  ink: string;
  /** Lay offset to the right, mm, on the 0.1 mm grid. */
  dxMm: number;
  /** Lay offset downwards, mm, on the 0.1 mm grid. */
  dyMm: number;
  /** Turn about the sheet's centre, clockwise, degrees. */
  turnDeg: number;
  /** Whole strokes, 1 or more. */
  strokes: number;
}

/** The pulls of one sheet, first down first. */
export interface Stack {
  pulls: readonly Pull[];
}

/** The sheet cut into rows; each row's crossings are taken at its middle. */
export interface RowGrid {
  widthMm: number;
  heightMm: number;
  rows: number;
}

/** The spans of one placed screen, with the shift that puts them on the grid. */
export interface PlacedSpans {
  spans: RowSpans;
  /** Added to every x, mm. */
  dxMm: number;
  /** Added to every row number: an offset downwards by whole rows. */
  rowShift: number;
}

/**
 * Which pulls cover which part of the sheet. One map serves every reorder, recolour and
 * leaving-out of the same placed screens: only the colours of its cells change.
 */
export interface CellMap extends RowGrid {
  /** Number of placed screens; bit i of a cell's cover is placed screen i. */
  screens: number;
  /** Number of cells; cell 0 is bare paper, whether or not any is left. */
  cells: number;
  /** 32-bit words of cover a cell: ⌈screens / 32⌉, at least 1. */
  words: number;
  /** cells × words; bit i of word i >> 5 is set when placed screen i covers the cell. */
  cover: Uint32Array;
  /** Area of each cell, mm², the sum of its runs × row height. */
  areaMm2: Float64Array;
  /** rows + 1 indexes into the runs. */
  rowStart: Uint32Array;
  /** Right end of each run, mm; a run starts where the one before ends, a row at 0. */
  runEndMm: Float64Array;
  /** Cell of each run. */
  runCell: Uint32Array;
}
