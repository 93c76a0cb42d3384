import { entryAt, f64 } from '../../base/at.ts';
import { BANDS } from '../../colour/weights.ts';
import { filmMatrix } from '../film/film.ts';

// Unknowns are ln(value + OFFSET): in proportion for strong values, level for faint ones, so that an
// ink that was thought not to scatter can begin to.
const OFFSET = 0.01;
const STEP = 1e-5;

/** The lowest unknown: a value of 0. */
export const LOWEST_UNKNOWN = Math.log(OFFSET);

/** The unknown that stands for an absorption or scattering. */
export function unknownOf(value: number): number {
  return Math.log(value + OFFSET);
}

/** The absorption or scattering that an unknown stands for, 0 or more. */
export function valueOf(unknown: number): number {
  return Math.max(0, Math.exp(unknown) - OFFSET);
}

/** Two films on a ground: the reflectance of a square and what moves it. */
export interface SquareSlopes {
  /** Reflectance of the square. */
  r: number;
  /** Its change with the unknowns of the first film: absorption, scattering. */
  firstK: number;
  firstS: number;
  /** The same of the film over it; 0 where there is none. */
  overK: number;
  overS: number;
}

/** The film of an ink in a band, as FitFilms counts them; NO_FILM for no ink. */
export function filmAt(ink: number, band: number): number {
  return ink < 0 ? NO_FILM : ink * BANDS + band;
}

/** In the place of a film that is not there. */
const NO_FILM = -1;

/** Films of several inks in all bands with their changes by the unknowns, each set by itself; see filmAt. */
export class FitFilms {
  // Six numbers a film: q, r0, and the changes of both by the unknowns of K and of S.
  private readonly table: Float64Array;

  constructor(inks: number) {
    this.table = new Float64Array(inks * BANDS * 6);
  }

  /** @param withSlopes false leaves the changes as they were */
  set(film: number, k: number, s: number, withSlopes: boolean): void {
    const at = film * 6;
    const { table } = this;
    const matrix = filmMatrix(valueOf(k), valueOf(s));
    table[at] = f64(matrix, 0);
    table[at + 1] = f64(matrix, 1);
    if (!withSlopes) return;
    const more = [filmMatrix(valueOf(k + STEP), valueOf(s)), filmMatrix(valueOf(k), valueOf(s + STEP))];
    const less = [filmMatrix(valueOf(k - STEP), valueOf(s)), filmMatrix(valueOf(k), valueOf(s - STEP))];
    for (let i = 0; i < 2; i++) {
      // At the lowest value only one side moves.
      const span = (i === 0 ? k : s) - STEP < LOWEST_UNKNOWN ? STEP : 2 * STEP;
      table[at + 2 + 2 * i] = (f64(entryAt(more, i), 0) - f64(entryAt(less, i), 0)) / span;
      table[at + 3 + 2 * i] = (f64(entryAt(more, i), 1) - f64(entryAt(less, i), 1)) / span;
    }
  }

  /** Reflectance of a square in the band of its films; over NO_FILM for a film alone. */
  reflectance(first: number, over: number, ground: number): number {
    const one = this.cover(first, ground);
    return over < 0 ? one : this.cover(over, one);
  }

  /** The same with its changes, written to out. */
  slopes(first: number, over: number, ground: number, out: SquareSlopes): void {
    const { table } = this;
    const a = first * 6;
    const one = this.cover(first, ground);
    const below = 1 - f64(table, a + 1) * ground;
    // R = (q·g + r0) / (1 − r0·g): ∂R/∂q = g / d, ∂R/∂r0 = (1 + R·g) / d, ∂R/∂g = (q + R·r0) / d.
    const k = (f64(table, a + 2) * ground + f64(table, a + 3) * (1 + one * ground)) / below;
    const s = (f64(table, a + 4) * ground + f64(table, a + 5) * (1 + one * ground)) / below;
    if (over < 0) {
      out.r = one;
      out.firstK = k;
      out.firstS = s;
      out.overK = out.overS = 0;
      return;
    }
    const b = over * 6;
    const two = this.cover(over, one);
    const between = 1 - f64(table, b + 1) * one;
    const through = (f64(table, b) + two * f64(table, b + 1)) / between;
    out.r = two;
    out.firstK = through * k;
    out.firstS = through * s;
    out.overK = (f64(table, b + 2) * one + f64(table, b + 3) * (1 + two * one)) / between;
    out.overS = (f64(table, b + 4) * one + f64(table, b + 5) * (1 + two * one)) / between;
  }

  private cover(film: number, ground: number): number {
    const at = film * 6;
    const r0 = f64(this.table, at + 1);
    return (f64(this.table, at) * ground + r0) / (1 - r0 * ground);
  }
}
