import { entryAt, u8 } from '../../base/at.ts';
import { EngineError } from '../../base/error.ts';
import { SHAPE_SCALE } from '../../base/limits.ts';
import { randomFrom, type Random } from '../../base/random.ts';
import { roundTo, toOffsetGrid } from '../../base/units.ts';
import type { Box } from '../../geometry/types.ts';
import type { PlacedShape, Shape } from '../types.ts';
import { type Mask, maskOf } from './mask.ts';
import { say } from '../../words/en/shapes/compose.ts';

/** How many shapes are put on screens at once. */
export interface Scatter {
  shapes: readonly Shape[];
  /** How many screens, 1 or more. */
  screens: number;
  /** Longest side of a piece, mm. */
  leastMm: number;
  mostMm: number;
  /** What share of the part that can be printed each screen covers, above 0 to 1. */
  cover: number;
  /** What share of a piece lies over pieces of the other screens, 0 to 1: kept to as nearly as there is room. */
  overlap: number;
  /** Whether pieces are turned; else all stand as they are drawn. */
  turned: boolean;
  seed: string;
  /** The part of the sheet that can be printed, mm. */
  printable: Box;
}

/** What came of it. */
export interface Scattered {
  /** What lies on each screen; pieces of one screen do not overlap. */
  placed: PlacedShape[][];
  /** Share of the printable part that a screen covers, on average. */
  cover: number;
  /** Share of the pieces' area that lies over another screen's. */
  overlap: number;
}

/** The sheet is looked at in so many cells along its longer side. */
const CELLS = 240;
/** Places that are tried for a piece. */
const TRIES = 40;
/** A screen on which so many pieces in a row found no place is full. */
const FULL_AFTER = 12;
const MOST_PIECES = 300;
/** A piece that overlaps by so much more than asked is not put down. */
const SLACK = 0.15;

interface Table {
  cellMm: number;
  columns: number;
  rows: number;
  /** How many screens cover each cell. */
  all: Uint8Array;
  own: Uint8Array[];
}

interface Place {
  column: number;
  row: number;
  over: number;
}

/**
 * Puts shapes of random sizes on screens, screen by screen in turn, until each is as covered as is asked or
 * full. The same seed and settings put the same.
 * @throws EngineError 'scatter.shapes', 'scatter.size', 'scatter.share', 'scatter.screens' for what cannot be
 */
export function scatter(ask: Scatter): Scattered {
  checkScatter(ask);
  const random = randomFrom(ask.seed);
  const table = tableOf(ask);
  const placed: PlacedShape[][] = Array.from({ length: ask.screens }, () => []);
  const cells = table.columns * table.rows;
  const covered = placed.map(() => 0);
  const failed = placed.map(() => 0);
  const laid = { cells: 0, over: 0 };
  const open = (i: number): boolean =>
    entryAt(covered, i) < ask.cover * cells && entryAt(failed, i) < FULL_AFTER && entryAt(placed, i).length < MOST_PIECES;
  for (let screens = placed.map((_, i) => i); screens.length > 0; screens = screens.filter(open)) {
    for (const i of screens) {
      const piece = drawPiece(ask, random, table.cellMm);
      const place = piece.mask.cells === 0 ? null : findPlace(piece.mask, { table, ask, random, screen: i });
      failed[i] = place === null ? entryAt(failed, i) + 1 : 0;
      if (place === null) continue;
      putDown(piece.mask, place, table, i);
      covered[i] = entryAt(covered, i) + piece.mask.cells;
      laid.cells += piece.mask.cells;
      laid.over += place.over;
      entryAt(placed, i).push(placedAt(piece, place, table.cellMm, ask.printable));
    }
  }
  return {
    placed,
    cover: roundTo(covered.reduce((sum, count) => sum + count, 0) / cells / ask.screens, 3),
    overlap: laid.cells === 0 ? 0 : roundTo(laid.over / laid.cells, 3),
  };
}

function checkScatter({ shapes, screens, leastMm, mostMm, cover, overlap }: Scatter): void {
  if (shapes.length === 0) throw new EngineError('scatter.shapes', say.chooseAtLeastOne);
  if (!Number.isInteger(screens) || screens < 1 || screens > 100) throw new EngineError('scatter.screens', say.shapesGoOn1(screens));
  if (!(leastMm > 0) || !(mostMm >= leastMm)) {
    throw new EngineError('scatter.size', say.piecesOfToMm(leastMm, mostMm));
  }
  if (!(cover > 0 && cover <= 1 && overlap >= 0 && overlap <= 1)) throw new EngineError('scatter.share', say.howMuchIsCovered);
}

function tableOf({ printable, screens }: Scatter): Table {
  const cellMm = Math.max(printable.widthMm, printable.heightMm) / CELLS;
  const columns = Math.max(1, Math.floor(printable.widthMm / cellMm));
  const rows = Math.max(1, Math.floor(printable.heightMm / cellMm));
  const empty = (): Uint8Array => new Uint8Array(columns * rows);
  return { cellMm, columns, rows, all: empty(), own: Array.from({ length: screens }, empty) };
}

interface Drawn {
  shape: string;
  turnDeg: number;
  scale: number;
  mask: Mask;
}

function drawPiece({ shapes, leastMm, mostMm, turned }: Scatter, random: Random, cellMm: number): Drawn {
  const shape = random.pick(shapes);
  const sizeMm = leastMm + random.int(Math.floor((mostMm - leastMm) * 10) + 1) / 10;
  const wanted = sizeMm / Math.max(shape.widthMm, shape.heightMm);
  const scale = Math.min(SHAPE_SCALE.most, Math.max(SHAPE_SCALE.least, roundTo(wanted, 4)));
  const turnDeg = turned ? random.int(360) : 0;
  return { shape: shape.id, turnDeg, scale, mask: maskOf(shape, { turnDeg, scale }, cellMm) };
}

interface Search {
  table: Table;
  ask: Scatter;
  random: Random;
  screen: number;
}

/** The place, of some at random, whose overlap is the nearest to what is asked; null where none will do. */
function findPlace(mask: Mask, { table, ask, random, screen }: Search): Place | null {
  const across = table.columns - mask.columns;
  const down = table.rows - mask.rows;
  if (across < 0 || down < 0) return null;
  let best: Place | null = null;
  let off = Infinity;
  for (let n = 0; n < TRIES; n++) {
    const column = random.int(across + 1);
    const row = random.int(down + 1);
    const over = overAt(mask, { column, row }, table, screen);
    if (over === null) continue;
    const share = over / mask.cells;
    if (share > ask.overlap + (ask.overlap === 0 ? 0 : SLACK)) continue;
    const gap = Math.abs(share - ask.overlap);
    if (gap >= off) continue;
    off = gap;
    best = { column, row, over };
  }
  return best;
}

/** How many cells of a piece would lie over other screens' pieces; null where it would meet its own screen's. */
function overAt(mask: Mask, at: { column: number; row: number }, table: Table, screen: number): number | null {
  const own = entryAt(table.own, screen);
  let over = 0;
  for (const { row, from, to } of mask.runs) {
    const start = (at.row + row) * table.columns + at.column;
    for (let cell = start + from; cell < start + to; cell++) {
      if (u8(own, cell) > 0) return null;
      if (u8(table.all, cell) > 0) over++;
    }
  }
  return over;
}

function putDown(mask: Mask, at: { column: number; row: number }, table: Table, screen: number): void {
  const own = entryAt(table.own, screen);
  for (const { row, from, to } of mask.runs) {
    const start = (at.row + row) * table.columns + at.column;
    for (let cell = start + from; cell < start + to; cell++) {
      own[cell] = 1;
      table.all[cell] = u8(table.all, cell) + 1;
    }
  }
}

function placedAt({ shape, turnDeg, scale, mask }: Drawn, { column, row }: Place, cellMm: number, printable: Box): PlacedShape {
  return {
    shape,
    xMm: toOffsetGrid(printable.xMm + column * cellMm + mask.middleXMm),
    yMm: toOffsetGrid(printable.yMm + row * cellMm + mask.middleYMm),
    turnDeg,
    scale,
  };
}
