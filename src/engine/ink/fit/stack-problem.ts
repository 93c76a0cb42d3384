import { entryAt, f64, num } from '../../base/at.ts';
import { labD50, type Lab } from '../../colour/lab.ts';
import { BANDS } from '../../colour/weights.ts';
import { rulerAt } from './lab-ruler.ts';
import type { NormalEquations, SquareSum } from './least-squares.ts';
import { INK_TERMS, K_TERMS, PRESS_TERMS, S_TERMS, type StackModel } from './stack-model.ts';

/** A square that was read: kinds of film by their index, first down first. */
export interface ReadStack {
  stack: readonly number[];
  lab: Lab;
  reflectance?: ArrayLike<number> | undefined;
}

/** What is known before any square is read. */
export interface Beforehand {
  /** Of each ink: whether its curve was read, alone on the paper. */
  curved: readonly boolean[];
  /** Whether films lie on films, so that squares can tell trapping and surface. */
  stacked: boolean;
  /** How many pairs of inks may have a trapping of their own. */
  pairs: number;
  /** What squares miss by, in what is usual. */
  noise: number;
}

/** What a square is expected to miss by, ΔE: the model, less where a curve leaves nothing to guess, and a film alone. */
const MISS = 1.8;
const MISS_CURVE = 0.5;
const MISS_ALONE = 1;
const MISS_ALONE_CURVE = 0.3;
/** How far ln K may leave the curve of the ink's own square. */
const LEAVE = 0.3;
/** Without a curve: how far ln K may go from knot to knot (44 nm), and how far its mean from a strong film's. */
const SLOPE = 0.8;
const ABSORB = -1.5;
const ABSORB_SPREAD = 3;
/**
 * ln of what inks scatter per absorption: pigments of transparent inks some percent, alike in the inks of
 * one series give or take a factor 2; and what they scatter in all bands alike, next to nothing.
 */
const SCATTER = Math.log(0.012);
const SCATTER_SPREAD = 1;
const SERIES_SPREAD = 0.7;
/** How far ln S may leave that, band by band. */
const SCATTER_LEAVE = 0.25;
const SCATTER_LEAVE_CURVED = 1.2;
const LEVEL = Math.log(0.003);
const LEVEL_SPREAD = 1;
/** The same where curves were read, which tell it by themselves. */
const LEVEL_SPREAD_CURVED = 2.5;
/**
 * Trapping, k2 and k1 before squares tell: within what screenprint is said to do (0.7 to 1, common practice,
 * no source); k2 of paints and prints from memory 0.4 to 0.6; an instrument at 45/0 sees little k1, most on
 * uncoated paper. Squares that tell otherwise are believed: the price of leaving levels off. How
 * these and the spreads above were found on published sets, and how little that proves, says DECISIONS.md.
 */
const TRAPPING = Math.log(0.88);
const TRAPPING_SPREAD = 0.04;
const K2 = 0.45;
const K2_SPREAD = 0.12;
const K1_SPREAD = 0.07;
/** ln of a mesh's film over what its ink volume says; common practice, no source. */
const MESH_SPREAD = 0.15;
/** ln of a pair's trapping over the press's. */
const PAIR_SPREAD = 0.05;
const UNTOLD_SPREAD = 1e-3;
const TAIL = 3;
/** Curves are compared as cube roots, softened where readings are noise; all bands of a square weigh about as its colour. */
const SOFT = 0.01;
const CURVE_WEIGHT = 10;
const STEP = 1e-4;
/** Lightness, chroma, hue. */
const PARTS = 3;

/** Where the unknowns begin. */
export function startOf(size: number, { stacked, curved }: Beforehand): Float64Array {
  const x = new Float64Array(size);
  const press = size - PRESS_TERMS;
  curved.forEach((read, ink) => {
    const at = ink * INK_TERMS;
    if (!read) x.fill(-1, at, at + K_TERMS);
    x[at + K_TERMS] = SCATTER;
    x[at + K_TERMS + 1] = LEVEL;
  });
  x.set(stacked ? [SCATTER, TRAPPING, K2, 0.005] : [SCATTER, 0, 0, 0], press);
  return x;
}

/** Misses of all squares, and how far the unknowns are from what is expected before any is read. */
export class StackProblem implements SquareSum {
  readonly size: number;
  readonly lowest = -Infinity;
  private readonly model: StackModel;
  private readonly before: Beforehand;
  private readonly squares: readonly SquareRows[];
  /** Of each unknown: the squares that it moves. */
  private readonly movedBy: readonly (readonly SquareRows[])[];

  constructor(model: StackModel, squares: readonly ReadStack[], before: Beforehand) {
    this.model = model;
    this.before = before;
    this.size = model.size;
    this.squares = squares.map((square) => rowsOf(square, model.unknownsOf(square.stack), before.noise));
    this.movedBy = Array.from({ length: this.size }, (_, i) => this.squares.filter(({ unknowns }) => unknowns.includes(i)));
  }

  sum(x: Float64Array, into: NormalEquations | null): number {
    this.model.set(x);
    let total = 0;
    for (const square of this.squares) {
      this.miss(square, square.misses);
      total += dot(square.misses, square.misses);
    }
    const expected = this.expect(x);
    if (into !== null) this.gather(x, expected, into);
    return total + dot(expected, expected);
  }

  /** Misses of a square and how each unknown that moves it changes them, as of the last sum with normal equations. */
  slopesOf(square: number): Readonly<SquareSlopes> {
    return entryAt(this.squares, square);
  }

  /** The changes of all misses with each unknown, by steps: films are cheap. */
  private gather(x: Float64Array, expected: Float64Array, { normal, slope }: NormalEquations): void {
    const moved = x.slice();
    const { size } = this;
    const priors = Array.from(x, (value, i) => {
      moved[i] = value + STEP;
      this.model.set(moved);
      for (const square of this.movedBy[i] ?? []) this.slopesBy(i, square);
      const after = this.expect(moved);
      moved[i] = value;
      return after.map((miss, row) => (miss - f64(expected, row)) / STEP);
    });
    this.model.set(x);
    for (const square of this.squares) addSquare(square, size, normal, slope);
    priors.forEach((column, i) => {
      slope[i] = f64(slope, i) + dot(column, expected);
      for (let j = 0; j <= i; j++) addBoth(normal, size, [i, j], dot(column, entryAt(priors, j)));
    });
  }

  /** Fills the column of an unknown that was moved by a step. */
  private slopesBy(unknown: number, square: SquareRows): void {
    const { misses, moved, slopes, unknowns } = square;
    this.miss(square, moved);
    const at = unknowns.indexOf(unknown) * misses.length;
    for (let row = 0; row < misses.length; row++) slopes[at + row] = (f64(moved, row) - f64(misses, row)) / STEP;
  }

  private miss({ square: { stack, lab, reflectance }, ruler, expected }: SquareRows, out: Float64Array): void {
    const curve = this.model.reflectance(stack);
    const shown = labD50(curve);
    ruler.forEach((row, i) => {
      out[i] = (row[0] * (shown[0] - lab[0]) + row[1] * (shown[1] - lab[1]) + row[2] * (shown[2] - lab[2])) / expected;
    });
    if (reflectance === undefined) return;
    for (let band = 0; band < BANDS; band++) {
      out[PARTS + band] = (CURVE_WEIGHT * (root(f64(curve, band)) - root(num(reflectance, band)))) / expected;
    }
  }

  private expect(x: Float64Array): Float64Array {
    const out: number[] = [];
    const { curved, stacked, pairs: pairCount } = this.before;
    const press = x.length - PRESS_TERMS;
    const series = f64(x, press);
    curved.forEach((read, ink) => {
      const at = ink * INK_TERMS;
      let sum = 0;
      for (let t = 0; t < K_TERMS; t++) {
        sum += f64(x, at + t);
        if (read) out.push(f64(x, at + t) / LEAVE);
        else if (t > 0) out.push((f64(x, at + t) - f64(x, at + t - 1)) / SLOPE);
      }
      if (!read) out.push((sum / K_TERMS - ABSORB) / ABSORB_SPREAD);
      const level = (f64(x, at + K_TERMS + 1) - LEVEL) / (read ? LEVEL_SPREAD_CURVED : LEVEL_SPREAD);
      // Covering inks are no surprise.
      out.push((f64(x, at + K_TERMS) - series) / SERIES_SPREAD, levelling(level));
      const spread = read ? SCATTER_LEAVE_CURVED : SCATTER_LEAVE;
      for (let t = 0; t < S_TERMS; t++) out.push(f64(x, at + K_TERMS + 2 + t) / spread);
    });
    const pairs = press - pairCount;
    for (let at = curved.length * INK_TERMS; at < press; at++) out.push(f64(x, at) / (at < pairs ? MESH_SPREAD : PAIR_SPREAD));
    out.push((series - SCATTER) / SCATTER_SPREAD);
    const [trapping, k2, k1] = [f64(x, press + 1), f64(x, press + 2), f64(x, press + 3)];
    if (stacked) out.push(levelling((trapping - TRAPPING) / TRAPPING_SPREAD), levelling((k2 - K2) / K2_SPREAD), k1 / K1_SPREAD);
    else out.push(trapping / UNTOLD_SPREAD, k2 / UNTOLD_SPREAD, k1 / UNTOLD_SPREAD);
    return Float64Array.from(out);
  }
}

/** How a square misses, each part in what is expected of it, and what moves that. */
export interface SquareSlopes {
  /** Lightness, chroma and hue, then the bands of a curve. */
  misses: Float64Array;
  /** Unknowns that move the square. */
  unknowns: readonly number[];
  /** Change of the misses with each of them, one after the other. */
  slopes: Float64Array;
  /** What one part is expected to miss by, ΔE. */
  expected: number;
}

/** A square with room for its misses. */
interface SquareRows extends SquareSlopes {
  square: ReadStack;
  ruler: readonly Lab[];
  /** Misses after a step. */
  moved: Float64Array;
}

function rowsOf(square: ReadStack, unknowns: readonly number[], noise: number): SquareRows {
  const { lab, reflectance } = square;
  const rows = PARTS + (reflectance === undefined ? 0 : BANDS);
  return {
    square,
    unknowns,
    ruler: rulerAt(lab),
    expected: noise * expectedOf(square),
    misses: new Float64Array(rows),
    moved: new Float64Array(rows),
    slopes: new Float64Array(rows * unknowns.length),
  };
}

function expectedOf({ stack, reflectance }: ReadStack): number {
  if (stack.length === 1) return reflectance === undefined ? MISS_ALONE : MISS_ALONE_CURVE;
  return reflectance === undefined ? MISS : MISS_CURVE;
}

function addSquare({ misses, unknowns, slopes }: SquareSlopes, size: number, normal: Float64Array, slope: Float64Array): void {
  const rows = misses.length;
  const columns = unknowns.map((_, at) => slopes.subarray(at * rows, (at + 1) * rows));
  unknowns.forEach((i, at) => {
    const column = entryAt(columns, at);
    slope[i] = f64(slope, i) + dot(column, misses);
    for (let other = 0; other <= at; other++) addBoth(normal, size, [i, num(unknowns, other)], dot(column, entryAt(columns, other)));
  });
}

/** Adds to an entry and to its mirror. */
function addBoth(normal: Float64Array, size: number, [i, j]: readonly [number, number], value: number): void {
  normal[i * size + j] = f64(normal, i * size + j) + value;
  if (i !== j) normal[j * size + i] = f64(normal, j * size + i) + value;
}

/** A miss that grows ever slower, as for a Student distribution: surprising values are possible. */
function levelling(miss: number): number {
  return Math.sign(miss) * Math.sqrt(TAIL * Math.log1p((miss * miss) / TAIL));
}

function root(reflectance: number): number {
  return Math.cbrt(Math.max(0, reflectance) + SOFT);
}

function dot(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += f64(a, i) * f64(b, i);
  return sum;
}
