import { entryAt, f64 } from '../../base/at.ts';
import { labD50, type Lab } from '../../colour/lab.ts';
import { BANDS } from '../../colour/weights.ts';
import { type FilmBands, filmBands, filmMatrix, overFilm } from '../film/film.ts';
import { insideOf, readThrough, type Surface } from '../film/saunderson.ts';

// Unknowns of an ink: its absorption as logarithms at knots evenly spaced over the bands, so that it stays
// smooth (of an ink whose curve was read: how far it leaves the one that shows that curve); then ln of its
// scattering per absorption, and of the scattering that is alike in all bands.
export const K_TERMS = 9;
export const S_TERMS = 5;
export const INK_TERMS = K_TERMS + 2 + S_TERMS;
/** After those of the inks: ln of the usual scattering per absorption, ln of trapping, k2, k1. */
export const PRESS_TERMS = 4;
/** k2 and k1 as far as they are tried; what is found beyond what a print can have is refused afterwards. */
const TRIED_K2 = [-0.3, 0.97] as const;
const MOST_K1 = 0.1;

const FAINTEST = 1e-4;
const STRONGEST = 30;
const ROUNDS = 12;
const humpsOfK = humps(K_TERMS);
const humpsOfS = humps(S_TERMS);
/**
 * A pigment's refractive index, and so its scattering, rises on the long-wave side of an absorption band
 * (anomalous dispersion: any textbook of optics, as Hecht, Optics, 3.5): scattering follows the mean
 * absorption of the bands 10 to 50 nm below. Why a magenta film looks bronze on a black one.
 */
const TRAIL = [1, 2, 3, 4, 5];
/** From band to band scattering changes by no larger factor: dispersion has long tails. */
const STEEPEST = 1.22;

/** One ink as found. */
export interface FoundFilm {
  kx: Float64Array;
  sx: Float64Array;
}

/** Films of one ink that are as thick. */
export interface FilmKind {
  ink: number;
  /** Thickness in films of the ink's own curves, by strokes and ink volume. */
  thickness: number;
  /** Place among the meshes whose film may differ from what their ink volume says; −1 for the ink's own. */
  mesh: number;
}

/** An ink on another, by index: the film may be thicker or thinner than the press's trapping says. */
export interface InkPair {
  under: number;
  over: number;
}

/** What a model is of. */
export interface ModelledInks {
  /** Reflectance as read, 36 bands. */
  paper: Float64Array;
  /** The same of each ink alone on the paper; null where only its colour was read. */
  curves: readonly (Float64Array | null)[];
  kinds: readonly FilmKind[];
  meshes: number;
  /** Those that squares hold. */
  pairs: readonly InkPair[];
}

/**
 * The films of inks, their trapping and their surface, that a vector of unknowns stands for. An ink's
 * absorption is the one with which it shows its curve alone on the paper, times a smooth factor; where no curve was read, any smooth one.
 */
export class StackModel {
  /** Reflectance that the instrument reads of the paper, and of each ink's own square; null where only its colour was read. */
  private readonly paper: Float64Array;
  private readonly curves: readonly (Float64Array | null)[];
  private readonly kinds: readonly FilmKind[];
  private readonly meshes: number;
  private readonly pairs: readonly InkPair[];
  private readonly ground = new Float64Array(BANDS);
  private readonly found: FoundFilm[];
  private readonly onPaper: FilmBands[] = [];
  private readonly onFilm: FilmBands[] = [];
  /** Of each kind: its film on inks with which it is a pair, by ink. */
  private readonly onInk: FilmBands[][];
  private surface: Surface = { k1: 0, k2: 0 };
  private trapping = 1;
  private last: Float64Array;

  constructor({ paper, curves, kinds, meshes, pairs }: ModelledInks) {
    this.paper = paper;
    this.curves = curves;
    this.kinds = kinds;
    this.meshes = meshes;
    this.pairs = pairs;
    this.onInk = kinds.map(() => []);
    this.found = curves.map(() => ({ kx: new Float64Array(BANDS), sx: new Float64Array(BANDS) }));
    this.last = new Float64Array(this.size).fill(NaN);
  }

  get size(): number {
    return this.curves.length * INK_TERMS + this.meshes + this.pairs.length + PRESS_TERMS;
  }

  /** Sets all films; those whose unknowns are as before stay. */
  set(x: Float64Array): void {
    const inks = this.curves.length * INK_TERMS;
    const pairs = inks + this.meshes;
    const press = pairs + this.pairs.length;
    const { last } = this;
    const movedAt = (at: number): boolean => x[at] !== last[at];
    const surfaceMoved = movedAt(press + 2) || movedAt(press + 3);
    const trappingMoved = movedAt(press + 1);
    this.trapping = Math.exp(f64(x, press + 1));
    this.surface = surfaceOf(x);
    if (surfaceMoved) for (let band = 0; band < BANDS; band++) this.ground[band] = insideOf(f64(this.paper, band), this.surface);
    const moves = this.curves.map((_, ink) => {
      const from = ink * INK_TERMS;
      const moved =
        (surfaceMoved && this.curves[ink] !== null) || x.subarray(from, from + INK_TERMS).some((value, i) => value !== last[from + i]);
      if (moved) this.setInk(x, ink);
      return moved;
    });
    this.kinds.forEach(({ ink, thickness, mesh }, kind) => {
      const moved = moves[ink] === true || (mesh >= 0 && movedAt(inks + mesh));
      const { kx, sx } = entryAt(this.found, ink);
      const thick = mesh < 0 ? thickness : thickness * Math.exp(f64(x, inks + mesh));
      if (moved) this.onPaper[kind] = filmBands(kx, sx, thick);
      if (moved || trappingMoved) this.onFilm[kind] = filmBands(kx, sx, thick * this.trapping);
      this.pairs.forEach(({ under, over }, pair) => {
        if (over !== ink || !(moved || trappingMoved || movedAt(pairs + pair))) return;
        entryAt(this.onInk, kind)[under] = filmBands(kx, sx, thick * this.trapping * Math.exp(f64(x, pairs + pair)));
      });
    });
    last.set(x);
  }

  /** What the instrument reads of a stack of kinds of film, by their index, first down first. */
  reflectance(stack: readonly number[]): Float64Array {
    const shown = this.ground.slice();
    stack.forEach((kind, at) => overFilm(at === 0 ? entryAt(this.onPaper, kind) : this.filmOn(entryAt(stack, at - 1), kind), shown, shown));
    for (let band = 0; band < BANDS; band++) shown[band] = readThrough(f64(shown, band), this.surface);
    return shown;
  }

  /** Places of the unknowns that a stack's colour depends on. */
  unknownsOf(stack: readonly number[]): number[] {
    const inks = new Set(stack.map((kind) => this.inkOf(kind)));
    const meshes = new Set(stack.map((kind) => entryAt(this.kinds, kind).mesh));
    const press = this.size - PRESS_TERMS;
    const from = this.curves.length * INK_TERMS;
    const pairs = from + this.meshes;
    const holds = ({ under, over }: InkPair): boolean =>
      stack.some((kind, at) => at > 0 && this.inkOf(kind) === over && this.inkOf(entryAt(stack, at - 1)) === under);
    return Array.from({ length: this.size }, (_, i) => i).filter((i) => {
      if (i < from) return inks.has(Math.floor(i / INK_TERMS));
      if (i < pairs) return meshes.has(i - from);
      return i >= press || holds(entryAt(this.pairs, i - pairs));
    });
  }

  lab(stack: readonly number[]): Lab {
    return labD50(this.reflectance(stack));
  }

  private inkOf(kind: number): number {
    return entryAt(this.kinds, kind).ink;
  }

  private filmOn(under: number, kind: number): FilmBands {
    return this.onInk[kind]?.[this.inkOf(under)] ?? entryAt(this.onFilm, kind);
  }

  /** What was set, copied; pairs in the order given, with their whole trapping. */
  result(): { films: FoundFilm[]; meshes: number[]; trapping: number; pairs: number[]; k1: number; k2: number } {
    const meshes = Array.from({ length: this.meshes }, (_, mesh) => Math.exp(f64(this.last, this.curves.length * INK_TERMS + mesh)));
    const from = this.curves.length * INK_TERMS + this.meshes;
    return {
      meshes,
      pairs: this.pairs.map((_, pair) => this.trapping * Math.exp(f64(this.last, from + pair))),
      films: this.found.map(({ kx, sx }) => ({ kx: kx.slice(), sx: sx.slice() })),
      trapping: this.trapping,
      ...this.surface,
    };
  }

  private setInk(x: Float64Array, ink: number): void {
    const { kx, sx } = entryAt(this.found, ink);
    const curve = entryAt(this.curves, ink);
    const from = ink * INK_TERMS;
    const level = Math.exp(Math.min(3, f64(x, from + K_TERMS + 1)));
    const share = Math.exp(Math.min(1, f64(x, from + K_TERMS)));
    for (let band = 0; band < BANDS; band++) {
      const leave = sumOf(humpsOfK, x, from, band);
      const own = curve === null ? 1 : this.absorption(curve, band, level);
      kx[band] = Math.min(STRONGEST, own * Math.exp(Math.min(4, leave)));
    }
    for (let band = 0; band < BANDS; band++) sx[band] = level + share * trailing(kx, band);
    for (let band = 0; band < BANDS; band++) sx[band] = f64(sx, band) * Math.exp(sumOf(humpsOfS, x, from + K_TERMS + 2, band));
    smooth(sx);
    if (curve === null) return;
    // Once more, as what scatters must be known for what absorbs.
    for (let band = 0; band < BANDS; band++) {
      kx[band] = (f64(kx, band) / this.absorption(curve, band, level)) * this.absorption(curve, band, f64(sx, band));
    }
  }

  private absorption(curve: Float64Array, band: number, scatter: number): number {
    return absorptionOf(insideOf(f64(curve, band), this.surface), scatter, f64(this.ground, band));
  }
}

/** The sum at a band of humps, each as high as its unknown. */
function sumOf(of: readonly Float64Array[], x: Float64Array, from: number, band: number): number {
  let sum = 0;
  for (let t = 0; t < of.length; t++) sum += f64(x, from + t) * f64(entryAt(of, t), band);
  return sum;
}

/** Fills what is too steep. */
function smooth(values: Float64Array): void {
  for (let band = 1; band < values.length; band++) values[band] = Math.max(f64(values, band), f64(values, band - 1) / STEEPEST);
  for (let band = values.length - 2; band >= 0; band--) values[band] = Math.max(f64(values, band), f64(values, band + 1) / STEEPEST);
}

/** Mean of the values of the bands below a band that dispersion reaches from. */
function trailing(values: Float64Array, band: number): number {
  let sum = 0;
  for (const below of TRAIL) sum += f64(values, Math.max(0, band - below));
  return sum / TRAIL.length;
}

/** The surface among the unknowns. */
function surfaceOf(x: Float64Array): Surface {
  const [least, most] = TRIED_K2;
  return { k2: Math.min(most, Math.max(least, f64(x, x.length - 2))), k1: Math.min(MOST_K1, Math.max(0, f64(x, x.length - 1))) };
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
