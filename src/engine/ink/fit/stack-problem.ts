import { entryAt, f64, num } from '../../base/at.ts';
import type { Lab } from '../../colour/lab.ts';
import { BANDS } from '../../colour/weights.ts';
import { rulerAt } from './lab-ruler.ts';
import type { NormalEquations, SquareSum } from './least-squares.ts';
import { INK_TERMS, K_TERMS, PRESS_TERMS, type StackModel } from './stack-model.ts';

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
}

/** What a square is expected to miss by, ΔE: the model, less where a curve leaves nothing to guess, and a film alone. */
const MISS = 1.2;
const MISS_CURVE = 0.5;
const MISS_ALONE = 0.3;
/** How far ln K may leave the curve of the ink's own square. */
const LEAVE = 0.3;
/** Without a curve: how far ln K may go from knot to knot (44 nm), and how far its mean from a strong film's. */
const SLOPE = 1.1;
const ABSORB = -1.5;
const ABSORB_SPREAD = 3;
/**
 * ln of what inks scatter per absorption: pigments of transparent inks some percent, alike in the inks of
 * one series give or take a factor 2; and what they scatter in all bands alike, next to nothing.
 */
const SCATTER = Math.log(0.012);
const SCATTER_SPREAD = 1;
const SERIES_SPREAD = 0.7;
const LEVEL = Math.log(0.003);
const LEVEL_SPREAD = 1;
/** The same where curves were read, which tell it by themselves. */
const LEVEL_SPREAD_CURVED = 2.5;
/**
 * Trapping, k2 and k1 before squares tell: the middle of what screenprint is said to do (0.7 to 1,
 * common practice, no source); k2 of paints and prints from memory 0.4 to 0.6; an instrument at 45/0 sees
 * little k1, most on uncoated paper. Squares that tell otherwise are believed: the price of leaving levels off.
 */
const TRAPPING = Math.log(0.85);
const TRAPPING_SPREAD = 0.05;
const K2 = 0.55;
const K2_SPREAD = 0.12;
const K1_SPREAD = 0.05;
/** ln of a mesh's film over what its ink volume says; common practice, no source. */
const MESH_SPREAD = 0.15;
const UNTOLD_SPREAD = 1e-3;
const TAIL = 6;
/** Curves are compared as cube roots, softened where readings are noise; all bands of a square weigh about as its colour. */
const SOFT = 0.01;
const CURVE_WEIGHT = 10;
const STEP = 1e-4;

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
  private readonly squares: readonly ReadStack[];
  private readonly before: Beforehand;
  private readonly rulers: readonly Lab[][];

  constructor(model: StackModel, squares: readonly ReadStack[], before: Beforehand) {
    this.model = model;
    this.squares = squares;
    this.before = before;
    this.size = model.size;
    this.rulers = squares.map(({ lab }) => rulerAt(lab));
  }

  sum(x: Float64Array, into: NormalEquations | null): number {
    const misses = this.misses(x);
    if (into !== null) this.gather(x, misses, into);
    return misses.reduce((total, miss) => total + miss * miss, 0);
  }

  /** The changes of all misses with each unknown, by steps: films are cheap. */
  private gather(x: Float64Array, misses: Float64Array, { normal, slope }: NormalEquations): void {
    const moved = x.slice();
    const columns = Array.from(x, (value, i) => {
      moved[i] = value + STEP;
      const after = this.misses(moved);
      moved[i] = value;
      return after.map((miss, row) => (miss - f64(misses, row)) / STEP);
    });
    columns.forEach((column, i) => {
      slope[i] = f64(slope, i) + dot(column, misses);
      for (let j = 0; j <= i; j++) {
        const sum = f64(normal, i * x.length + j) + dot(column, entryAt(columns, j));
        normal[i * x.length + j] = normal[j * x.length + i] = sum;
      }
    });
  }

  private misses(x: Float64Array): Float64Array {
    const out: number[] = [];
    this.model.set(x);
    this.squares.forEach(({ stack, lab, reflectance }, n) => {
      const expected = stack.length === 1 ? MISS_ALONE : reflectance === undefined ? MISS : MISS_CURVE;
      const shown = this.model.lab(stack);
      for (const row of entryAt(this.rulers, n)) {
        out.push((row[0] * (shown[0] - lab[0]) + row[1] * (shown[1] - lab[1]) + row[2] * (shown[2] - lab[2])) / expected);
      }
      if (reflectance === undefined) return;
      const curve = this.model.reflectance(stack);
      for (let band = 0; band < BANDS; band++) {
        out.push((CURVE_WEIGHT * (root(f64(curve, band)) - root(num(reflectance, band)))) / expected);
      }
    });
    this.expect(x, out);
    return Float64Array.from(out);
  }

  private expect(x: Float64Array, out: number[]): void {
    const { curved, stacked } = this.before;
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
    });
    for (let at = curved.length * INK_TERMS; at < press; at++) out.push(f64(x, at) / MESH_SPREAD);
    out.push((series - SCATTER) / SCATTER_SPREAD);
    const [trapping, k2, k1] = [f64(x, press + 1), f64(x, press + 2), f64(x, press + 3)];
    if (stacked) out.push(levelling((trapping - TRAPPING) / TRAPPING_SPREAD), levelling((k2 - K2) / K2_SPREAD), k1 / K1_SPREAD);
    else out.push(trapping / UNTOLD_SPREAD, k2 / UNTOLD_SPREAD, k1 / UNTOLD_SPREAD);
  }
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
