import { f64, num } from '../../base/at.ts';
import { EngineError } from '../../base/error.ts';
import { REFLECTANCE, within } from '../../base/limits.ts';
import { say } from '../../words/en/ink/film.ts';
import { type Printing, realSurface, trappingOn } from './printing.ts';
import type { Surface } from './saunderson.ts';

/** What a film does to any ground, per band: R = (q·g + r0) / (1 + back·g), both as an instrument reads them. */
export interface FilmBands {
  /** Reflectance of the film over perfect black, 0–1. */
  r0: Float64Array;
  /** Without a surface T² − r0², T the transmittance; −1 to 1. */
  q: Float64Array;
  /** Without a surface −r0. */
  back: Float64Array;
}

/** Absorption and scattering of a film, one value a band. */
export interface FilmCurves {
  /** K·X, ≥ 0. */
  kx: ArrayLike<number>;
  /** S·X, ≥ 0. */
  sx: ArrayLike<number>;
}

/**
 * The map of one film in one band, from the reflectance below to the reflectance above it.
 * @param kx absorption times thickness, K·X, ≥ 0
 * @param sx scattering times thickness, S·X, ≥ 0
 * @returns [q, R0, −R0, 1]: the 2 × 2 matrix row by row, up to scale; over ground g the film shows
 *   (q·g + R0) / (−R0·g + 1), and a stack is the product of its matrices, last down first
 * @throws EngineError 'ink.bad-film' when either is negative or not a finite number
 * Source: Kubelka (1948), J. Opt. Soc. Am. 38(5), 448–457, in the stable form without a division
 * by S and without growing exponentials. Error about 1e−15.
 */
export function filmMatrix(kx: number, sx: number): Float64Array {
  const out = new Float64Array(4);
  film(kx, sx, out);
  // From 0 rather than by a sign, so that a film that does not scatter has 0 and not −0.
  out[2] = 0 - f64(out, 1);
  out[3] = 1;
  return out;
}

/**
 * The maps of a film in all its bands, to be made once an ink and thickness.
 * @param kx K·X of one stroke, a value a band, ≥ 0
 * @param sx S·X of one stroke, as many
 * @param thickness of the film in strokes, ≥ 0; see filmThickness
 * @param surface of paper and prints; left out, there is none
 * @throws EngineError 'ink.bad-film' when a value is negative or not finite, or the lengths differ
 * A surface maps what is inside to what is read, as films map grounds (Saunderson 1942 is a fraction of two
 * lines); so a film from reading to reading is the surface's map after the film's after its inverse, and
 * stacks need to know of no surface.
 */
export function filmBands(kx: ArrayLike<number>, sx: ArrayLike<number>, thickness = 1, surface?: Surface): FilmBands {
  if (kx.length !== sx.length) {
    throw new EngineError('ink.bad-film', say.filmNeedsAsMany(kx.length, sx.length));
  }
  const r0 = new Float64Array(kx.length);
  const q = new Float64Array(kx.length);
  const back = new Float64Array(kx.length);
  const pair = new Float64Array(2);
  for (let band = 0; band < kx.length; band++) {
    film(num(kx, band) * thickness, num(sx, band) * thickness, pair);
    q[band] = f64(pair, 0);
    r0[band] = f64(pair, 1);
    back[band] = 0 - f64(pair, 1);
  }
  const real = realSurface(surface);
  if (real !== undefined) seenThrough({ r0, q, back }, real);
  return { r0, q, back };
}

/** Turns a film's map of what is inside into one of what is read: O·F·O⁻¹, scaled so that the last entry is 1. */
function seenThrough({ r0, q, back }: FilmBands, { k1, k2 }: Surface): void {
  const a = (1 - k1) * (1 - k2) - k1 * k2;
  for (let band = 0; band < q.length; band++) {
    const [fq, fr] = [f64(q, band), f64(r0, band)];
    // F·O⁻¹, with O = [[a, k1], [−k2, 1]].
    const [m11, m12, m21, m22] = [fq + fr * k2, -fq * k1 + fr * a, -fr + k2, fr * k1 + a];
    const scale = -k2 * m12 + m22;
    q[band] = (a * m11 + k1 * m21) / scale;
    r0[band] = (a * m12 + k1 * m22) / scale;
    back[band] = (-k2 * m11 + m21) / scale;
  }
}

/**
 * Lays a film over a ground. Allocates nothing.
 * @param ground reflectance below, a value a band
 * @param out receives the reflectance above; may be the ground itself
 * @returns out
 */
export function overFilm(film: FilmBands, ground: ArrayLike<number>, out: Float64Array): Float64Array {
  const { r0, q, back } = film;
  for (let band = 0; band < r0.length; band++) {
    const g = num(ground, band);
    out[band] = (f64(q, band) * g + f64(r0, band)) / (1 + f64(back, band) * g);
  }
  return out;
}

/**
 * Reflectance of a stack of films on paper.
 * @param films first down first; `id` is the ink's, for pairs of inks with a trapping of their own
 * @param paper reflectance of the paper, 0–1, a value a band
 * @param printing the surface that readings are taken through, and how thick a film is on a film
 * @returns a new array, a value a band
 * @throws EngineError 'ink.bad-film' when a film has a bad value or another number of bands,
 *   'ink.bad-ground' when the paper reflects less than nothing or more than 1.2 in a band or has no number there
 */
export function stackReflectance(
  films: readonly (FilmCurves & { id?: string })[],
  paper: ArrayLike<number>,
  { surface, trapping }: Printing = {},
): Float64Array {
  if (!Array.isArray(films))
    throw new EngineError('ink.bad-film', 'The films must be a list of { kx, sx }, first down first; give [] for the bare paper.');
  if (paper?.length === undefined) throw new EngineError('ink.bad-ground', say.papersReflectanceMustBe);
  const out = Float64Array.from(paper);
  out.forEach((r, band) => {
    if (!within(REFLECTANCE, r)) {
      throw new EngineError('ink.bad-ground', say.papersReflectanceMustBeTo(REFLECTANCE.least, REFLECTANCE.most, r, band + 1), {
        path: [band],
      });
    }
  });
  films.forEach((film, i) => {
    const { kx, sx } = film ?? {};
    if (kx?.length !== paper.length || sx?.length !== paper.length) {
      throw new EngineError('ink.bad-film', say.filmHasBandsOf(i + 1, kx?.length ?? say.no, sx?.length ?? say.no, paper.length), {
        path: [i],
      });
    }
    const thickness = trappingOn(trapping, i === 0 ? null : (films[i - 1]?.id ?? ''), film.id ?? '');
    overFilm(filmBands(kx, sx, thickness, surface), out, out);
  });
  return out;
}

/**
 * Reflectance of a film so thick that what is below no longer matters.
 * @param ks K/S, ≥ 0, may be Infinity
 * Source: Kubelka & Munk (1931): R∞ = 1 + K/S − √((K/S)² + 2K/S), written as its reciprocal so that
 * large K/S keeps its digits; check values in tests/published/ink/km-worked-numbers.json
 */
export function infiniteReflectance(ks: number): number {
  return 1 / (1 + ks + Math.sqrt(ks * (ks + 2)));
}

/** Nearest below 1, because a film on a perfect white would otherwise divide 0 by 0. */
const LARGEST_R0 = 1 - 2 ** -53;

/** Writes q and R0 to the first two places. */
function film(k: number, s: number, out: Float64Array): void {
  if (!(k >= 0 && s >= 0 && k + 2 * s < Infinity)) {
    throw new EngineError('ink.bad-film', say.absorptionAndScatteringMust(k, s), {
      details: { kx: k, sx: s },
    });
  }
  // Two roots, because the product of huge values overflows.
  const alpha = Math.sqrt(k) * Math.sqrt(k + 2 * s);
  let sh: number;
  let c: number;
  if (alpha < 1e-7) {
    sh = 1 + (alpha * alpha) / 6;
    c = 1 + (alpha * alpha) / 2;
  } else {
    // Both scaled by e^−α, which cancels below and keeps dense films from overflowing.
    const fall = Math.expm1(-2 * alpha);
    sh = -fall / (2 * alpha);
    c = 1 + fall / 2;
  }
  const d = c + (k + s) * sh;
  const r0 = Math.min((s * sh) / d, LARGEST_R0);
  // From the rounded R0, so that over a white ground their errors cancel.
  out[0] = 1 - 2 * r0 - (2 * k * sh) / d;
  out[1] = r0;
}
