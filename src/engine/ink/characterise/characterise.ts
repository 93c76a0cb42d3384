import { num } from '../../base/at.ts';
import { EngineError } from '../../base/error.ts';
import { labD50, type Lab } from '../../colour/lab.ts';
import { say } from '../../words/en/ink/characterise.ts';
import { MOST_REFLECTANCE } from '../cgats/scale.ts';
import { pairCurves } from '../film/curves.ts';
import { filmBands, overFilm } from '../film/film.ts';
import { realSurface } from '../film/printing.ts';
import { curveInside, type Surface } from '../film/saunderson.ts';
import type { Grounds } from './card.ts';

/** Transmittance below which a film hides its ground for the eye and only K/S can be known. */
export const LEAST_TRANSMITTANCE = 1e-3;
/** How much lighter than its black a card's white must be, in every band. */
export const LEAST_CONTRAST = 0.05;
/** How much brighter a band may be over black than over white: noise; more is a swapped reading. */
export const MOST_EXCESS = 0.02;
const ROUNDING = 1e-6;

/** Absorption and scattering of a film, as found from what it shows. */
export interface FoundCurves {
  /** K·X, ≥ 0, a value a band. */
  kx: Float64Array;
  /** S·X, ≥ 0, a value a band. */
  sx: Float64Array;
  /** Bands where the readings were no possible film, or one that hides all, and were mended. */
  adjusted: number[];
}

/** Curves with the colours that they really give on the card. */
export interface InkCurves extends FoundCurves {
  overWhite: Lab;
  overBlack: Lab;
}

/**
 * Absorption and scattering of an ink from its two colours.
 * @param overWhite one stroke over the white half of the card, D50/2°
 * @param overBlack one stroke over its black half
 * @param white reflectance of the white half, 36 bands
 * @param black reflectance of the black half, 36 bands
 * @returns curves of one stroke and the colours they give, which may differ from those asked for
 *   where no film could have both
 * @throws EngineError 'colour.outside-solid', 'ink.impossible-pair', 'ink.card-contrast'
 * An estimate: two colours do not fix a spectrum. On invented inks overprints predicted from such
 * curves erred by ΔE00 0.8 in the mean, 6.7 at most.
 */
export function inkCurvesFromColours(
  overWhite: Readonly<Lab>,
  overBlack: Readonly<Lab>,
  white: ArrayLike<number>,
  black: ArrayLike<number>,
): InkCurves {
  return inkCurvesOn(overWhite, overBlack, { white, black });
}

/** inkCurvesFromColours on grounds that were measured through a surface. */
export function inkCurvesOn(overWhite: Readonly<Lab>, overBlack: Readonly<Lab>, grounds: Grounds): InkCurves {
  const { white, black, surface } = grounds;
  const pair = pairCurves(overWhite, overBlack, white, black);
  const found = filmFromReadings(pair.overWhite, pair.overBlack, grounds);
  return { ...found, ...coloursOn(found, white, black, surface) };
}

/**
 * twoBackground for what an instrument read through a surface.
 * @param rw reflectance as read over the light ground
 * @param rb the same over the dark one
 * @throws EngineError as twoBackground; its figures are then those inside the surface
 */
export function filmFromReadings(rw: ArrayLike<number>, rb: ArrayLike<number>, { white, black, surface }: Grounds): FoundCurves {
  const real = realSurface(surface);
  if (real === undefined) return twoBackground(rw, rb, white, black);
  const inside = (curve: ArrayLike<number>): Float64Array => curveInside(curve, real);
  return twoBackground(inside(rw), inside(rb), inside(white), inside(black));
}

/**
 * The colours of a film over the two halves of a card.
 * @param curves K·X and S·X, 36 bands
 * @param surface that they are seen through; left out, there is none
 * @returns Lab, D50/2°
 */
export function coloursOn(
  curves: { kx: ArrayLike<number>; sx: ArrayLike<number> },
  white: ArrayLike<number>,
  black: ArrayLike<number>,
  surface?: Surface,
): { overWhite: Lab; overBlack: Lab } {
  const film = filmBands(curves.kx, curves.sx, 1, surface);
  const out = new Float64Array(film.q.length);
  return {
    overWhite: labD50(overFilm(film, white, out)),
    overBlack: labD50(overFilm(film, black, out)),
  };
}

/**
 * Absorption and scattering of a film from its reflectance over two backgrounds, band by band.
 * @param rw reflectance over the light background, 0–1
 * @param rb reflectance over the dark background
 * @param gw reflectance of the light background
 * @param gb reflectance of the dark background
 * @returns K·X and S·X; bands whose readings no film could give are moved to the nearest that can
 *   (no negative scattering; no light gained; no more hidden than T = 0.001), those with a reading
 *   above 1 as if it were 1, and listed
 * @throws EngineError 'ink.card-contrast' when the backgrounds are too alike, 'ink.bad-reflectance'
 *   when a value is not from 0 to 1.2, 'ink.bands' when the lengths differ, 'ink.over-black-brighter' when a band is brighter over the
 *   dark background by more than noise; details.band names it
 * Source: Kubelka (1948), J. Opt. Soc. Am. 38(5); linear in R0 and q, without a division by S.
 */
export function twoBackground(rw: ArrayLike<number>, rb: ArrayLike<number>, gw: ArrayLike<number>, gb: ArrayLike<number>): FoundCurves {
  const bands = [rw, rb, gw, gb].map((curve) => curve?.length ?? 0);
  if (bands[0] === 0 || bands.some((count) => count !== bands[0])) {
    throw new EngineError('ink.bands', say.fourCurvesMustHave(bands.slice(0, 3).join(', '), bands[3] ?? ''));
  }
  const kx = new Float64Array(rw.length);
  const sx = new Float64Array(rw.length);
  const adjusted: number[] = [];
  for (let band = 0; band < rw.length; band++) {
    const values = [num(rw, band), num(rb, band), num(gw, band), num(gb, band)];
    // A reading above 1 is brightener or gloss, which no film of this theory has.
    const [w, b, onWhite, onBlack] = values.map((value) => (value <= MOST_REFLECTANCE ? Math.min(1, value) : value)) as [
      number,
      number,
      number,
      number,
    ];
    const read: BandReadings = { rw: w, rb: b, gw: onWhite, gb: onBlack };
    check(read, band);
    const film = mendedFilm(read);
    const { r0, t } = film;
    if (film.mended || values.some((value) => value > 1)) adjusted.push(band);
    const lost = Math.max(0, (1 - r0) * (1 - r0) - t * t);
    const sinh = Math.sqrt(lost * ((1 + r0) * (1 + r0) - t * t)) / (2 * t);
    const ratio = sinh < 1e-7 ? 1 : Math.asinh(sinh) / sinh;
    kx[band] = (lost / (2 * t)) * ratio;
    sx[band] = (r0 / t) * ratio;
  }
  return { kx, sx, adjusted };
}

/** Reflectances of one band: read over white and over black, and of those grounds. */
interface BandReadings {
  rw: number;
  rb: number;
  gw: number;
  gb: number;
}

/** The possible film nearest to the readings of one band. */
function mendedFilm({ rw, rb, gw, gb }: BandReadings): { r0: number; t: number; mended: boolean } {
  const det = (1 + rw * gw) * gb - (1 + rb * gb) * gw;
  let r0 = (rw * gb - rb * gw) / det;
  let t2 = ((1 + rw * gw) * rb - (1 + rb * gb) * rw) / det + r0 * r0;
  let mended = false;
  if (r0 < 0) {
    mended = r0 < -ROUNDING;
    r0 = 0;
    t2 = rw / gw;
  }
  let t = Math.sqrt(Math.max(0, t2));
  if (!(t >= LEAST_TRANSMITTANCE)) {
    mended = true;
    t = LEAST_TRANSMITTANCE;
    // What little still shines through is taken off, so that the reading over white holds.
    r0 = Math.min(1 - t, Math.max(0, rw - (t * t * gw) / (1 - rw * gw)));
  }
  if (r0 + t > 1) {
    mended ||= r0 + t > 1 + ROUNDING;
    r0 = Math.min(r0, 1 - LEAST_TRANSMITTANCE);
    t = 1 - r0;
  }
  return { r0, t, mended };
}

/** @throws EngineError 'ink.bad-reflectance', 'ink.card-contrast', 'ink.over-black-brighter' */
function check({ rw, rb, gw, gb }: BandReadings, band: number): void {
  for (const value of [rw, rb, gw, gb]) {
    if (!(value >= 0 && value <= MOST_REFLECTANCE)) {
      throw new EngineError('ink.bad-reflectance', say.reflectanceMustBeFrom(MOST_REFLECTANCE, band + 1, value), {
        details: { band },
      });
    }
  }
  // The second term keeps readings from so filling the gap that nothing can be told apart.
  if (!(gw - gb >= LEAST_CONTRAST && gw - gb - gw * gb * (rw - rb) > LEAST_CONTRAST / 10)) {
    throw new EngineError('ink.card-contrast', say.cardsWhiteMustBe(LEAST_CONTRAST, band + 1, gw, gb), { details: { band } });
  }
  if (rb > rw + MOST_EXCESS) {
    throw new EngineError('ink.over-black-brighter', say.inkCannotBeBrighter(band + 1) + say.overBlackAndOver(rb, rw), {
      details: { band },
    });
  }
}
