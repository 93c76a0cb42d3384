import { entryAt, f64, num, u32, u8 } from '../base/at.ts';
import { encodeSrgb8 } from '../colour/encode.ts';
import { mapIntoSrgb } from '../colour/gamut.ts';
import { LINEAR_SRGB_FROM_BANDS } from '../colour/srgb.ts';
import { BANDS, WEIGHTS_D50 } from '../colour/weights.ts';
import { FilmSums } from './films/film-sums.ts';
import { STEP } from './films/film-tree.ts';
import type { Layer } from './layers.ts';
import type { CellMap } from './types.ts';

/** The colours of a map's cells, ready to paint. Arrays may be longer than `cells` asks for. */
export interface CellColours {
  cells: number;
  /** cells × 3: linear sRGB, 0–1, brought into what the screen can show. */
  linear: Float64Array;
  /** 8-bit sRGB, one word a cell: 0xAABBGGRR, so R, G, B, A in the memory of an ImageData. */
  packed: Uint32Array;
  /** A cell each: 1 where the screen shows less chroma than the print has. */
  outside: Uint8Array;
}

// The module's own names: unbundled, hot loops would look up another module's each time.
const bandCount = BANDS;
const encode = encodeSrgb8;
const rgbFromBands = LINEAR_SRGB_FROM_BANDS;

const films = new FilmSums();
const rgb = new Float64Array(3);
const paperBands = new Float64Array(bandCount);
const paperScale = new Float64Array(3);
let clipped = false;
const XYZ_FROM_BANDS = Float64Array.from({ length: bandCount * 3 }, (_, i) =>
  num(entryAt([WEIGHTS_D50.x, WEIGHTS_D50.y, WEIGHTS_D50.z], i % 3), Math.floor(i / 3)),
);
// The colour of each pile of films, cells' worth of buffers used for piles.
const pileColours = createCellColours();

/** Empty buffers, to be filled and grown by the functions here. */
export function createCellColours(): CellColours {
  return { cells: 0, linear: new Float64Array(0), packed: new Uint32Array(0), outside: new Uint8Array(0) };
}

/**
 * The colour of every cell under a stack, by the full 36-band physics.
 * @param layers first down first; placed screens of the map that have no layer are left out
 * @param paperReflectance 36 bands from 380 to 730 nm, 0–1
 * @param how buffers that are filled, and grown when too small; and whether the paper is shown as the
 *   screen's white (when left out it is) or as it is; and whether channels are clipped, as names and
 *   measures of pictures were taken before, rather than mapped as swatches are
 * @returns the buffers
 * @throws EngineError 'stack.bad-bands' when paper or a film has not 36 bands
 * Makes no buffers once they are large enough.
 */
export function colourCells(
  map: CellMap,
  layers: readonly Layer[],
  paperReflectance: ArrayLike<number>,
  ...how: [out?: CellColours | undefined, relative?: boolean, clip?: boolean]
): CellColours {
  const [out = createCellColours(), relative = true] = how;
  clipped = how[2] ?? false;
  const sums = films.compute(map, layers, paperReflectance, rgbFromBands);
  setPaperScale(paperReflectance, relative);
  fit(out, map.cells);
  for (let cell = 0; cell < map.cells; cell++) setColour(out, cell, sums, cell * 3);
  return out;
}

/**
 * Screen colours of cells whose reflectances are known already.
 * @param reflectance cells × 36
 * @param how as in `colourCells`: buffers, and whether the paper is shown as white
 */
export function coloursOfReflectance(
  reflectance: Float64Array,
  paperReflectance: ArrayLike<number>,
  ...how: [out?: CellColours | undefined, relative?: boolean]
): CellColours {
  const [out = createCellColours(), relative = true] = how;
  clipped = false;
  setPaperScale(paperReflectance, relative);
  fit(out, reflectance.length / bandCount);
  for (let cell = 0; cell < out.cells; cell++) {
    sumBands(reflectance, cell * bandCount);
    setColour(out, cell, rgb, 0);
  }
  return out;
}

/**
 * The colours of every cell after each pull, from bare paper on, in one pass.
 * @param how entries that are used again; and whether the paper is white, as in `colourCells`
 * @returns layers.length + 1 colourings; number k shows the sheet after k pulls
 * @throws EngineError 'stack.bad-bands'
 */
export function stateColours(
  map: CellMap,
  layers: readonly Layer[],
  paperReflectance: ArrayLike<number>,
  ...how: [out?: CellColours[] | undefined, relative?: boolean]
): CellColours[] {
  const [out = [], relative = true] = how;
  clipped = false;
  const reflectances = films.reflectances(map, layers, paperReflectance);
  setPaperScale(paperReflectance, relative);
  const { count, steps, leaf } = films.lower;
  fit(pileColours, count);
  for (let pile = 0; pile < count; pile++) {
    sumBands(reflectances, pile * bandCount);
    setColour(pileColours, pile, rgb, 0);
  }
  // Steps lie one layer after another: from the last on they are taken back.
  const pileOf = leaf.slice();
  const below = Uint32Array.from({ length: count }, (_, pile) => pile);
  let step = steps.length;
  out.length = layers.length + 1;
  for (let state = layers.length; state >= 0; state--) {
    const colours = (out[state] ??= createCellColours());
    fit(colours, map.cells);
    spreadPiles(pileOf, colours);
    for (; step > 0 && steps[step - STEP] === state - 1; step -= STEP) below[u32(steps, step - 1)] = u32(steps, step - 2);
    for (let cell = 0; cell < map.cells; cell++) pileOf[cell] = u32(below, u32(pileOf, cell));
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
  const sums = films.compute(map, layers, paperReflectance, XYZ_FROM_BANDS);
  films.toLab(map.cells);
  out.set(sums.subarray(0, map.cells * 3));
  return out;
}

/** sRGB of a linear colour as CellColours packs it, opaque. */
export function packSrgb(r: number, g: number, b: number): number {
  return (0xff000000 | (encode(b) << 16) | (encode(g) << 8) | encode(r)) >>> 0;
}

/** Gives every cell the colour of its pile. */
function spreadPiles(pileOf: Uint32Array, out: CellColours): void {
  for (let cell = 0; cell < out.cells; cell++) {
    const pile = u32(pileOf, cell);
    out.packed[cell] = u32(pileColours.packed, pile);
    out.outside[cell] = u8(pileColours.outside, pile);
    for (let i = 0; i < 3; i++) out.linear[cell * 3 + i] = f64(pileColours.linear, pile * 3 + i);
  }
}

/** The screen colour of a cell from its three sums. */
function setColour(out: CellColours, cell: number, sums: Float64Array, from: number): void {
  const at = cell * 3;
  const { linear } = out;
  for (let i = 0; i < 3; i++) {
    const light = f64(sums, from + i) * f64(paperScale, i);
    linear[at + i] = clipped ? clip(light) : light;
  }
  out.outside[cell] = !clipped && mapIntoSrgb(linear, at) ? 1 : 0;
  out.packed[cell] = packSrgb(f64(linear, at), f64(linear, at + 1), f64(linear, at + 2));
}

function fit(out: CellColours, cells: number): void {
  out.cells = cells;
  if (out.packed.length >= cells) return;
  out.linear = new Float64Array(cells * 3);
  out.packed = new Uint32Array(cells);
  out.outside = new Uint8Array(cells);
}

function setPaperScale(paper: ArrayLike<number>, relative: boolean): void {
  paperScale.fill(1);
  if (!relative) return;
  paperBands.set(paper);
  sumBands(paperBands, 0);
  // A paper that reflects no light of a channel gives nothing to be relative to.
  for (let i = 0; i < 3; i++) if (f64(rgb, i) > 1e-9) paperScale[i] = 1 / f64(rgb, i);
}

/** Linear sRGB of a reflectance, into `rgb`. */
function sumBands(bands: Float64Array, from: number): void {
  let r = 0;
  let g = 0;
  let b = 0;
  for (let band = 0, i = 0; band < bandCount; band++, i += 3) {
    const value = f64(bands, from + band);
    r += value * f64(rgbFromBands, i);
    g += value * f64(rgbFromBands, i + 1);
    b += value * f64(rgbFromBands, i + 2);
  }
  rgb[0] = r;
  rgb[1] = g;
  rgb[2] = b;
}

function clip(value: number): number {
  return value > 0 ? (value < 1 ? value : 1) : 0;
}
