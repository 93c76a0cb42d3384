import { defined, f64, num } from '../../base/at.ts';
import { EngineError } from '../../base/error.ts';
import { deltaE2000 } from '../../colour/delta-e.ts';
import { labFromXyzD50, xyzD50, xyzD50FromLab, type Lab, type Xyz } from '../../colour/lab.ts';
import { BANDS, WEIGHTS_D50 } from '../../colour/weights.ts';
import { say } from '../../words/en/ink/film.ts';
import { leastSlopeShares } from '../characterise/least-slope.ts';
import { reachIn, solidOf, type Solid } from './solid.ts';

// Colours on the surface itself have a step for a curve; a hair inside it is a curve again. The
// hair is widened where Newton's method needs it: at most 5e−5 in XYZ.
const SKINS = [1e-9, 1e-8, 1e-7, 1e-6];
const SKIN = num(SKINS, 0);

// Up to so much Y above a film without scattering, a colour over black is too dark to tell its hue.
const DARK_Y = 1;

/** Largest ΔE00 by which a colour over black may be brought within reach without complaint. */
export const PAIR_TOLERANCE_DELTA_E = 2;

/** One ink's reflectance over the white and the black half of a card. */
export interface PairCurves {
  /** Reflectance over white, 36 bands. */
  overWhite: Float64Array;
  /** Reflectance over black, 36 bands; never above overWhite. */
  overBlack: Float64Array;
}

/**
 * The smoothest reflectance curve that has a colour.
 * @param lab D50/2°
 * @returns 36 bands, 0–1, with exactly this colour; all 0 for black and all 1 for white
 * @throws EngineError 'colour.not-a-colour'; 'colour.outside-solid' when no surface can have this colour; details.nearest
 *   is the nearest possible Lab of the same lightness and hue
 * Source: see leastSlopeShares; a guess of the spectrum, exact only in colour.
 */
export function curveFromColour(lab: Readonly<Lab>): Float64Array {
  if (lab?.length !== 3 || !Array.from(lab).every(Number.isFinite)) {
    throw new EngineError('colour.not-a-colour', say.colourNeedsThreeNumbers(Array.isArray(lab) ? lab.join(', ') : String(lab)));
  }
  const grey = lab[1] === 0 && lab[2] === 0;
  if (grey && lab[0] === 0) return new Float64Array(BANDS);
  if (grey && lab[0] === 100) return new Float64Array(BANDS).fill(1);
  const solid = plainSolid();
  const xyz = xyzD50FromLab(lab);
  const reach = reachIn(solid, xyz);
  // Written so that NaN is refused as well.
  const shares = reach <= 1 + SKIN ? sharesWithin(solid, xyz, reach) : null;
  if (shares !== null) return shares;
  const nearest = nearestPossible(lab);
  throw new EngineError(
    'colour.outside-solid',
    say.noInkOnPaper(show(lab[0]), show(lab[1]), show(lab[2])) +
      say.nearestOfSameHue(show(nearest[0]), showInward(nearest[1])) +
      `b ${showInward(nearest[2])}.`,
    { details: { nearest } },
  );
}

/**
 * The strongest possible colour of the same lightness and hue.
 * @param lab D50/2°
 * @returns the colour itself when it is possible; white or black where only they have the lightness
 */
export function nearestPossible(lab: Readonly<Lab>): Lab {
  if (!(lab[0] > 0)) return [0, 0, 0];
  if (!(lab[0] < 100)) return [100, 0, 0];
  if (!Number.isFinite(lab[1]) || !Number.isFinite(lab[2])) return [lab[0], 0, 0];
  const at = (share: number): Lab => [lab[0], lab[1] * share, lab[2] * share];
  const possible = (share: number): boolean => reachIn(plainSolid(), xyzD50FromLab(at(share))) <= 1 - SKIN;
  if (possible(1)) return [...lab];
  let inside = 0;
  let outside = 1;
  for (let i = 0; i < 50; i++) {
    const middle = (inside + outside) / 2;
    if (possible(middle)) inside = middle;
    else outside = middle;
  }
  return at(inside);
}

/**
 * Smooth curves of one film over white and over black that have the two given colours, and that a
 * film could show: over white never lighter than the white, over black never lighter than over
 * white nor darker than the same film without scattering, band by band.
 * @param overWhite D50/2°
 * @param overBlack D50/2°
 * @param white reflectance of the card's white half, 36 bands
 * @param black reflectance of its black half, 36 bands
 * @throws EngineError 'colour.outside-solid' when no surface can have the colour over white;
 *   'ink.impossible-pair' when a colour over black differs by more than PAIR_TOLERANCE_DELTA_E from
 *   what the film can show; details.possible is a near colour that it can. A colour hardly lighter
 *   than a film without scattering, or darker, is never refused: dark photos are common.
 */
export function pairCurves(
  overWhite: Readonly<Lab>,
  overBlack: Readonly<Lab>,
  white: ArrayLike<number>,
  black: ArrayLike<number>,
): PairCurves {
  const overWhiteCurve = curveOverWhite(overWhite, white);
  const floor = overWhiteCurve.map((r, band) => r * Math.min(1, num(black, band) / num(white, band)));
  const room = overWhiteCurve.map((r, band) => r - f64(floor, band));
  const floorXyz = xyzD50(floor);
  const wanted = xyzD50FromLab(overBlack).map((v, i) => v - num(floorXyz, i)) as Xyz;
  const shares = sharesOf(room, wanted);
  const overBlackCurve = floor.map((r, band) => r + f64(room, band) * f64(shares, band));
  const [x, y, z] = xyzD50(overBlackCurve);
  const possible = labFromXyzD50(x, y, z);
  const miss = deltaE2000(overBlack, possible);
  if (!(miss <= PAIR_TOLERANCE_DELTA_E || wanted[1] <= DARK_Y)) {
    throw new EngineError(
      'ink.impossible-pair',
      say.inkWithThisColour(show(overBlack[0])) +
        say.bOverBlackIt(show(overBlack[1]), show(overBlack[2])) +
        `L ${show(possible[0])}, a ${show(possible[1])}, b ${show(possible[2])}.`,
      { details: { possible, deltaE: miss } },
    );
  }
  return { overWhite: overWhiteCurve, overBlack: overBlackCurve };
}

function curveOverWhite(lab: Readonly<Lab>, white: ArrayLike<number>): Float64Array {
  const plain = curveFromColour(lab);
  const solid = solidOf(scaledWeights(white));
  const xyz = xyzD50FromLab(lab);
  const reach = reachIn(solid, xyz);
  // An ink lighter than the white, or a colour the white has not the light for: the plain curve.
  if (!(reach <= 1 + SKIN)) return plain;
  const shares = sharesWithin(solid, xyz, reach);
  return shares === null ? plain : shares.map((share, band) => share * num(white, band));
}

/** Shares of the room above the floor that add up to the wanted colour, or come nearest. */
function sharesOf(room: Float64Array, wanted: Xyz): Float64Array {
  const top = xyzD50(room);
  if (!(wanted[1] > 0)) return new Float64Array(BANDS);
  if (!(wanted[1] < top[1])) return new Float64Array(BANDS).fill(1);
  const solid = solidOf(scaledWeights(room));
  const shares = sharesWithin(solid, wanted, reachIn(solid, wanted));
  return shares ?? new Float64Array(BANDS).fill(wanted[1] / top[1]);
}

/** Shares for the colour, or for where the line to it from the middle leaves the solid. */
function sharesWithin(solid: Solid, xyz: Xyz, reach: number): Float64Array | null {
  if (reach <= 1 - defined(SKINS.at(-1))) return leastSlopeShares(solid, xyz);
  for (const skin of SKINS) {
    const scale = Math.min(1, (1 - skin) / reach);
    const point = xyz.map((v, i) => num(solid.centre, i) + (v - num(solid.centre, i)) * scale) as Xyz;
    const shares = leastSlopeShares(solid, point);
    if (shares !== null) return shares;
  }
  return null;
}

let plain: Solid | null = null;
function plainSolid(): Solid {
  plain ??= solidOf(scaledWeights(null));
  return plain;
}

function scaledWeights(by: ArrayLike<number> | null): Float64Array {
  const out = new Float64Array(BANDS * 3);
  for (let band = 0; band < BANDS; band++) {
    const scale = by === null ? 1 : num(by, band);
    out[3 * band] = num(WEIGHTS_D50.x, band) * scale;
    out[3 * band + 1] = num(WEIGHTS_D50.y, band) * scale;
    out[3 * band + 2] = num(WEIGHTS_D50.z, band) * scale;
  }
  return out;
}

function show(value: number): string {
  return (Math.round(value * 10) / 10 + 0).toString();
}

/** Rounded towards grey, so that typing what the message says stays possible. */
function showInward(value: number): string {
  return (Math.trunc(value * 10) / 10 + 0).toString();
}
