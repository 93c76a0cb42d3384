import { f64, num } from '../../base/at.ts';
import { EngineError } from '../../base/error.ts';
import { type Limits, within } from '../../base/limits.ts';
import type { Lab } from '../../colour/lab.ts';
import { say } from '../../words/en/ink/characterise.ts';
import { curveFromColour } from '../film/curves.ts';
import { filmBands } from '../film/film.ts';
import { curveInside } from '../film/saunderson.ts';
import { CARD, type Grounds } from './card.ts';
import { coloursOn, type InkCurves } from './characterise.ts';

/** How much an ink hides, for those who have only its one colour. */
export type Opacity = 'transparent' | 'translucent' | 'opaque';

/**
 * Opacity: how light one stroke would be over perfect black if it took no light at all, 0 to 1, which is
 * S·X / (1 + S·X) by Kubelka and Munk. The names stand for S·X of 0.02, 0.3 and 3.5, chosen, not measured.
 */
export const OPACITIES: Readonly<Record<Opacity, number>> = {
  transparent: 0.02 / 1.02,
  translucent: 0.3 / 1.3,
  opaque: 3.5 / 4.5,
};
/** What can be asked for; at 1 a film would be a mirror. */
export const OPACITY: Limits = { least: 0, most: 0.95 };

const MOST_ABSORPTION = 50;

/**
 * A guess at an ink from one colour and how much it hides; to be marked as a guess.
 * @param colour one stroke over white, D50/2°
 * @param opacity a name, or how light it would be over black if it took no light (OPACITIES)
 * @param grounds the white of that colour, and the black that overBlack is reported on; the invented card by default
 * @returns curves with even scattering and the colours they give; overWhite differs from the colour
 *   where it is lighter than this much scattering could make it
 * @throws EngineError 'colour.outside-solid' when no surface can have the colour, 'ink.opacity'
 */
export function guessInk(colour: Readonly<Lab>, opacity: Opacity | number, grounds: Grounds = CARD): InkCurves {
  const { white, black, surface } = grounds;
  const wanted = curveInside(curveFromColour(colour), surface);
  const ground = curveInside(white, surface);
  const s = scatteringOf(opacity);
  const kx = wanted.map((r, band) => absorptionFor(r, s, num(ground, band)));
  const sx = new Float64Array(wanted.length).fill(s);
  return { kx, sx, adjusted: [], ...coloursOn({ kx, sx }, white, black, surface) };
}

/** S·X of one stroke, the same in all bands. */
function scatteringOf(opacity: Opacity | number): number {
  if (opacity === 'transparent') return 0.02;
  if (opacity === 'translucent') return 0.3;
  if (opacity === 'opaque') return 3.5;
  if (!within(OPACITY, opacity)) {
    throw new EngineError('ink.opacity', say.inkCannotBeOpaque(opacity * 100, OPACITY.least * 100, OPACITY.most * 100));
  }
  return opacity / (1 - opacity);
}

/** The absorption with which a film of given scattering shows r over g; r falls as K grows. */
function absorptionFor(r: number, s: number, g: number): number {
  let low = 0;
  let high = MOST_ABSORPTION;
  for (let i = 0; i < 60; i++) {
    const k = (low + high) / 2;
    const film = filmBands([k], [s]);
    const reached = (f64(film.q, 0) * g + f64(film.r0, 0)) / (1 - f64(film.r0, 0) * g);
    if (reached > r) low = k;
    else high = k;
  }
  return low === 0 || high < 1e-12 ? 0 : (low + high) / 2;
}
