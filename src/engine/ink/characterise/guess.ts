import { f64, num } from '../../base/at.ts';
import type { Lab } from '../../colour/lab.ts';
import { curveFromColour } from '../film/curves.ts';
import { filmBands } from '../film/film.ts';
import { CARD_BLACK, CARD_WHITE } from './card.ts';
import { coloursOn, type InkCurves } from './characterise.ts';

/** How much an ink hides, for those who have only its one colour. */
export type Opacity = 'transparent' | 'translucent' | 'opaque';

/** S·X of one stroke, the same in all bands; chosen, not measured. */
const GUESSED_SCATTERING: Readonly<Record<Opacity, number>> = {
  transparent: 0.02,
  translucent: 0.3,
  opaque: 3.5,
};

const MOST_ABSORPTION = 50;

/**
 * A guess at an ink from one colour and how much it hides; to be marked as a guess.
 * @param colour one stroke over white, D50/2°
 * @param white reflectance of that white, 36 bands; the invented card by default
 * @param black reflectance of the black that overBlack is reported on
 * @returns curves with even scattering and the colours they give; overWhite differs from the colour
 *   where it is lighter than this much scattering could make it
 * @throws EngineError 'colour.outside-solid' when no surface can have the colour
 */
export function guessInk(
  colour: Readonly<Lab>,
  opacity: Opacity,
  white: ArrayLike<number> = CARD_WHITE,
  black: ArrayLike<number> = CARD_BLACK,
): InkCurves {
  const wanted = curveFromColour(colour);
  const s = GUESSED_SCATTERING[opacity];
  const kx = wanted.map((r, band) => absorptionFor(r, s, num(white, band)));
  const sx = new Float64Array(wanted.length).fill(s);
  return { kx, sx, adjusted: [], ...coloursOn({ kx, sx }, white, black) };
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
