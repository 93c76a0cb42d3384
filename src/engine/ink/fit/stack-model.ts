import { entryAt, f64 } from '../../base/at.ts';
import { labD50, type Lab } from '../../colour/lab.ts';
import { BANDS } from '../../colour/weights.ts';
import { type FilmBands, filmBands, filmMatrix, overFilm } from '../film/film.ts';
import { insideOf, readThrough, type Surface } from '../film/saunderson.ts';

// Unknowns of an ink: how its absorption leaves the curve of its own square, then its scattering, both as
// logarithms at knots evenly spaced over the bands, so that they stay smooth.
export const K_TERMS = 6;
const S_TERMS = 2;
export const INK_TERMS = K_TERMS + S_TERMS;
/** After those of the inks: ln of trapping, k2, k1. */
export const PRESS_TERMS = 3;
/** k2 and k1 stay below; from memory no print comes near. */
const MOST_K2 = 0.9;
const MOST_K1 = 0.1;

const FAINTEST = 1e-4;
const STRONGEST = 30;
const ROUNDS = 12;
const humpsOfK = humps(K_TERMS);
const humpsOfS = humps(S_TERMS);

/** One ink as found. */
export interface FoundFilm {
  kx: Float64Array;
  sx: Float64Array;
}

/**
 * The films of inks, their trapping and their surface, that a vector of unknowns stands for. An ink's
 * absorption is the one with which it shows its curve alone on the paper, times a smooth factor.
 */
export class StackModel {
  /** Reflectance that the instrument reads of the paper, and of each ink's own square. */
  private readonly paper: Float64Array;
  private readonly curves: readonly Float64Array[];
  private readonly ground = new Float64Array(BANDS);
  private readonly found: FoundFilm[];
  private readonly onPaper: FilmBands[] = [];
  private readonly onFilm: FilmBands[] = [];
  private surface: Surface = { k1: 0, k2: 0 };
  private trapping = 1;
  private last: Float64Array;

  /**
   * @param paper reflectance as read, 36 bands
   * @param curves the same of each ink alone on the paper
   */
  constructor(paper: Float64Array, curves: readonly Float64Array[]) {
    this.paper = paper;
    this.curves = curves;
    this.found = curves.map(() => ({ kx: new Float64Array(BANDS), sx: new Float64Array(BANDS) }));
    this.last = new Float64Array(this.size).fill(NaN);
  }

  get size(): number {
    return this.curves.length * INK_TERMS + PRESS_TERMS;
  }

  /** Sets all films; those whose unknowns are as before stay. */
  set(x: Float64Array): void {
    const inks = this.curves.length * INK_TERMS;
    const { last } = this;
    const surfaceMoved = x[inks + 1] !== last[inks + 1] || x[inks + 2] !== last[inks + 2];
    const trappingMoved = x[inks] !== last[inks];
    this.trapping = Math.exp(f64(x, inks));
    this.surface = surfaceOf(x);
    if (surfaceMoved) for (let band = 0; band < BANDS; band++) this.ground[band] = insideOf(f64(this.paper, band), this.surface);
    this.curves.forEach((_, ink) => {
      const from = ink * INK_TERMS;
      const moved = surfaceMoved || x.subarray(from, from + INK_TERMS).some((value, i) => value !== last[from + i]);
      if (moved) this.setInk(x, ink);
      const { kx, sx } = entryAt(this.found, ink);
      if (moved) this.onPaper[ink] = filmBands(kx, sx);
      if (moved || trappingMoved) this.onFilm[ink] = filmBands(kx, sx, this.trapping);
    });
    last.set(x);
  }

  /** What the instrument reads of a stack, inks by their index, first down first. */
  reflectance(stack: readonly number[]): Float64Array {
    const shown = this.ground.slice();
    stack.forEach((ink, at) => overFilm(entryAt(at === 0 ? this.onPaper : this.onFilm, ink), shown, shown));
    for (let band = 0; band < BANDS; band++) shown[band] = readThrough(f64(shown, band), this.surface);
    return shown;
  }

  lab(stack: readonly number[]): Lab {
    return labD50(this.reflectance(stack));
  }

  /** What was set, copied. */
  result(): { films: FoundFilm[]; trapping: number; k1: number; k2: number } {
    return { films: this.found.map(({ kx, sx }) => ({ kx: kx.slice(), sx: sx.slice() })), trapping: this.trapping, ...this.surface };
  }

  private setInk(x: Float64Array, ink: number): void {
    const { kx, sx } = entryAt(this.found, ink);
    const curve = entryAt(this.curves, ink);
    const from = ink * INK_TERMS;
    for (let band = 0; band < BANDS; band++) {
      let leave = 0;
      humpsOfK.forEach((hump, t) => (leave += f64(x, from + t) * f64(hump, band)));
      let s = 0;
      humpsOfS.forEach((hump, t) => (s += f64(x, from + K_TERMS + t) * f64(hump, band)));
      const scatter = Math.exp(Math.min(3, s));
      sx[band] = scatter;
      const absorb = absorptionOf(insideOf(f64(curve, band), this.surface), scatter, f64(this.ground, band));
      kx[band] = Math.min(STRONGEST, absorb * Math.exp(leave));
    }
  }
}

/** The surface among the unknowns. */
function surfaceOf(x: Float64Array): Surface {
  return { k2: Math.min(MOST_K2, Math.max(0, f64(x, x.length - 2))), k1: Math.min(MOST_K1, Math.max(0, f64(x, x.length - 1))) };
}

/** Absorption of a film that scatters so much and shows so much over a ground, by Newton's method on logarithms. */
function absorptionOf(shown: number, scatter: number, ground: number): number {
  const wanted = Math.log(Math.max(1e-5, shown));
  let k = Math.min(STRONGEST, Math.max(0.01, (Math.log(Math.max(1e-5, ground)) - wanted) / 2));
  for (let round = 0; round < ROUNDS; round++) {
    const here = logShown(k, scatter, ground);
    const step = k * 1e-4;
    const slope = (logShown(k + step, scatter, ground) - here) / step;
    if (!(slope < 0)) break;
    const next = Math.min(k * 4, Math.max(k / 4, k + (wanted - here) / slope), STRONGEST);
    const moved = Math.abs(next - k);
    k = Math.max(FAINTEST, next);
    if (moved < 1e-10 * k) break;
  }
  return k;
}

function logShown(k: number, s: number, ground: number): number {
  const matrix = filmMatrix(k, s);
  return Math.log((f64(matrix, 0) * ground + f64(matrix, 1)) / (1 - f64(matrix, 1) * ground));
}

/** Humps that sum to 1 everywhere: linear between evenly spaced knots. */
function humps(terms: number): Float64Array[] {
  return Array.from({ length: terms }, (_, term) =>
    Float64Array.from({ length: BANDS }, (_none, band) => Math.max(0, 1 - Math.abs((band * (terms - 1)) / (BANDS - 1) - term))),
  );
}
