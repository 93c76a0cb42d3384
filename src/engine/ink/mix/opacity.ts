import { f64, num } from '../../base/at.ts';
import { EngineError } from '../../base/error.ts';
import { BANDS } from '../../colour/weights.ts';
import { say } from '../../words/en/ink/mix.ts';
import { CARD_BLACK, CARD_WHITE } from '../characterise/card.ts';
import { coloursOn, twoBackground } from '../characterise/characterise.ts';
import { filmBands, overFilm } from '../film/film.ts';
import { realSurface } from '../film/printing.ts';
import { curveInside, type Surface } from '../film/saunderson.ts';
import type { Ink } from '../types.ts';

/** What is left open below a film that hides all, so that its curves stay finite: a thousandth is beyond the eye. */
const MOST_HIDING = 0.999;

/** What an ink that is made clearer or more opaque lies on. */
export interface OpacityGround {
  /** Of the paper, 36 bands. */
  reflectance: ArrayLike<number>;
  surface?: Surface | undefined;
}

/**
 * The same colour on the paper, in an ink that lets more or less of what is below show through. Over
 * black, a film shows from nothing (it only absorbs) to what it shows on the paper (it hides all): the
 * opacity walks that way, band by band, while one film on the paper keeps its reflectance.
 * @param opacity −1 only absorbs, 0 is the ink as it is, 1 hides what is below
 * @returns the ink itself at 0, else another with the same id
 * @throws EngineError 'ink.bad-opacity' beyond −1 to 1, and as filmBands and twoBackground
 * Source: Kubelka (1948), by way of twoBackground; without scattering Bouguer's law, R = Rg·e^(−2KX).
 */
export function inkOfOpacity(ink: Ink, opacity: number, { reflectance, surface }: OpacityGround): Ink {
  if (!(opacity >= -1 && opacity <= 1)) {
    throw new EngineError('ink.bad-opacity', say.opacityOfInkIs(ink.name, opacity));
  }
  if (opacity === 0) return ink;
  const film = filmBands(ink.kx, ink.sx);
  const real = realSurface(surface);
  const ground = real === undefined ? Float64Array.from(reflectance) : curveInside(reflectance, real);
  const black = new Float64Array(ground.length);
  const onPaper = overFilm(film, ground, new Float64Array(BANDS));
  const curves = opacity === -1 ? clearest(onPaper, ground) : twoBackground(onPaper, overBlack(film.r0, onPaper, opacity), ground, black);
  return { ...ink, kx: Array.from(curves.kx), sx: Array.from(curves.sx), ...coloursOn(curves, CARD_WHITE, CARD_BLACK, surface) };
}

function overBlack(now: Float64Array, onPaper: Float64Array, opacity: number): Float64Array {
  if (opacity < 0) return now.map((r) => r * (1 + opacity));
  return now.map((r, band) => r + opacity * MOST_HIDING * Math.max(0, f64(onPaper, band) - r));
}

/** Least that a film shows of the paper's light, so that its absorption stays finite. */
const LEAST_SHARE = 1e-6;

function clearest(onPaper: Float64Array, ground: Float64Array): Pick<Ink, 'kx' | 'sx'> {
  const kx = Array.from(onPaper, (r, band) => -Math.log(Math.min(1, Math.max(LEAST_SHARE, r / num(ground, band)))) / 2);
  return { kx, sx: kx.map(() => 0) };
}
