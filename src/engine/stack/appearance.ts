import { encodeSrgb8 } from '../colour/encode.ts';
import { labFromXyzD50 } from '../colour/lab.ts';
import { LINEAR_SRGB_FROM_BANDS } from '../colour/srgb.ts';
import { BANDS, WEIGHTS_D50 } from '../colour/weights.ts';
import { FilmWalk } from './film-walk.ts';
import type { Layer } from './layers.ts';
import type { CellMap } from './types.ts';

/** The colours of a map's cells, ready to paint. Arrays may be longer than `cells` asks for. */
export interface CellColours {
  cells: number;
  /** cells × 3: linear sRGB, 0–1, clipped to what the screen can show. */
  linear: Float64Array;
  /** 8-bit sRGB, one word a cell: 0xAABBGGRR, so R, G, B, A in the memory of an ImageData. */
  packed: Uint32Array;
}

// The module's own names: unbundled, hot loops would look up another module's each time.
const bandCount = BANDS;
const encode = encodeSrgb8;
const rgbFromBands = LINEAR_SRGB_FROM_BANDS;

const walk = new FilmWalk();
const rgb = new Float64Array(3);
const paperScale = new Float64Array(3);
const XYZ_FROM_BANDS = Float64Array.from({ length: bandCount * 3 }, (_, i) =>
  [WEIGHTS_D50.x, WEIGHTS_D50.y, WEIGHTS_D50.z][i % 3]![Math.floor(i / 3)]!,
);
// Marks, for each group of the walk, whether this call has its colour already.
let groupSeen = new Int32Array(0);
let groupCell = new Uint32Array(0);
let seenClock = 0;

/** Empty buffers, to be filled and grown by the functions here. */
export function createCellColours(): CellColours {
  return { cells: 0, linear: new Float64Array(0), packed: new Uint32Array(0) };
}

/**
 * The colour of every cell under a stack, by the full 36-band physics.
 * @param layers first down first; placed screens of the map that have no layer are left out
 * @param paperReflectance 36 bands from 380 to 730 nm, 0–1
 * @param out buffers that are filled, and grown when too small
 * @param relative true shows the paper as the screen's white; false shows it as it is
 * @returns out
 * @throws EngineError 'stack.bad-bands' when paper or a film has not 36 bands
 * Allocates nothing once the buffers are large enough.
 */
export function colourCells(
  map: CellMap,
  layers: readonly Layer[],
  paperReflectance: ArrayLike<number>,
  out: CellColours = createCellColours(),
  relative = true,
): CellColours {
  walk.start(map, paperReflectance);
  setPaperScale(relative);
  for (let i = 0; i < layers.length; i++) walk.lay(map, layers[i]!);
  fit(out, map.cells);
  colourByGroup(map.cells, out);
  return out;
}

/**
 * The colours of every cell after each pull, from bare paper on, in one pass.
 * @param out entries that are used again
 * @returns layers.length + 1 colourings; number k shows the sheet after k pulls
 * @throws EngineError 'stack.bad-bands'
 */
export function stateColours(
  map: CellMap,
  layers: readonly Layer[],
  paperReflectance: ArrayLike<number>,
  out: CellColours[] = [],
  relative = true,
): CellColours[] {
  walk.start(map, paperReflectance);
  setPaperScale(relative);
  out.length = layers.length + 1;
  for (let state = 0; state <= layers.length; state++) {
    if (state > 0) walk.lay(map, layers[state - 1]!);
    const colours = (out[state] ??= createCellColours());
    fit(colours, map.cells);
    colourByGroup(map.cells, colours);
  }
  return out;
}

/**
 * CIELAB of every cell under a stack, D50, 2° observer, relative to a perfect white (not to the paper).
 * @param out at least cells × 3 numbers; receives L, a, b a cell. A new array when left out
 * @returns out
 * @throws EngineError 'stack.bad-bands'
 */
export function cellLab(
  map: CellMap,
  layers: readonly Layer[],
  paperReflectance: ArrayLike<number>,
  out: Float64Array = new Float64Array(map.cells * 3),
): Float64Array {
  walk.start(map, paperReflectance);
  for (let i = 0; i < layers.length; i++) walk.lay(map, layers[i]!);
  beginGroups();
  for (let cell = 0; cell < map.cells; cell++) {
    const group = walk.groupOf[cell]!;
    if (groupSeen[group] === seenClock) {
      out.copyWithin(cell * 3, groupCell[group]! * 3, groupCell[group]! * 3 + 3);
      continue;
    }
    groupSeen[group] = seenClock;
    groupCell[group] = cell;
    sumBands(walk.reflectance, group * bandCount, XYZ_FROM_BANDS);
    const lab = labFromXyzD50(rgb[0]!, rgb[1]!, rgb[2]!);
    out[cell * 3] = lab[0];
    out[cell * 3 + 1] = lab[1];
    out[cell * 3 + 2] = lab[2];
  }
  return out;
}

/** sRGB of a linear colour as CellColours packs it, opaque. */
export function packSrgb(r: number, g: number, b: number): number {
  return (0xff000000 | (encode(b) << 16) | (encode(g) << 8) | encode(r)) >>> 0;
}

function colourByGroup(cells: number, out: CellColours): void {
  beginGroups();
  const { linear, packed } = out;
  for (let cell = 0; cell < cells; cell++) {
    const group = walk.groupOf[cell]!;
    const at = cell * 3;
    if (groupSeen[group] === seenClock) {
      const from = groupCell[group]!;
      linear[at] = linear[from * 3]!;
      linear[at + 1] = linear[from * 3 + 1]!;
      linear[at + 2] = linear[from * 3 + 2]!;
      packed[cell] = packed[from]!;
      continue;
    }
    groupSeen[group] = seenClock;
    groupCell[group] = cell;
    sumBands(walk.reflectance, group * bandCount, rgbFromBands);
    const r = clip(rgb[0]! * paperScale[0]!);
    const g = clip(rgb[1]! * paperScale[1]!);
    const b = clip(rgb[2]! * paperScale[2]!);
    linear[at] = r;
    linear[at + 1] = g;
    linear[at + 2] = b;
    packed[cell] = packSrgb(r, g, b);
  }
}

function beginGroups(): void {
  const groups = walk.reflectance.length / bandCount;
  if (groupSeen.length < groups) {
    groupSeen = new Int32Array(groups);
    groupCell = new Uint32Array(groups);
    seenClock = 0;
  }
  seenClock = (seenClock + 1) | 0;
}

function fit(out: CellColours, cells: number): void {
  out.cells = cells;
  if (out.packed.length >= cells) return;
  out.linear = new Float64Array(cells * 3);
  out.packed = new Uint32Array(cells);
}

function setPaperScale(relative: boolean): void {
  paperScale.fill(1);
  if (!relative) return;
  sumBands(walk.reflectance, 0, rgbFromBands);
  // A paper that reflects no light of a channel gives nothing to be relative to.
  for (let i = 0; i < 3; i++) if (rgb[i]! > 1e-9) paperScale[i] = 1 / rgb[i]!;
}

/** Σ over bands of reflectance × weight, three sums, into `rgb`. */
function sumBands(bands: Float64Array, from: number, weights: Float64Array): void {
  let x = 0;
  let y = 0;
  let z = 0;
  for (let band = 0, i = 0; band < bandCount; band++, i += 3) {
    const value = bands[from + band]!;
    x += value * weights[i]!;
    y += value * weights[i + 1]!;
    z += value * weights[i + 2]!;
  }
  rgb[0] = x;
  rgb[1] = y;
  rgb[2] = z;
}

function clip(value: number): number {
  return value > 0 ? (value < 1 ? value : 1) : 0;
}
