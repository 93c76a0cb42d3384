import { CARD_BLACK, CARD_WHITE } from '../characterise/card.ts';
import type { FilmCurves } from './film.ts';
import type { Surface } from './saunderson.ts';
import { type Swatch, swatchOf, swatchReflectance } from './swatch.ts';

/** An ink over both halves of the contrast card. */
export interface Drawdown {
  white: Swatch;
  black: Swatch;
}

/**
 * What strokes of an ink give on the card.
 * @param strokes whole, 1 or more
 * @param strokeGain what each further stroke adds, as a share of the first
 * @param surface that prints are seen through; left out, there is none
 * @throws EngineError 'ink.bad-strokes', 'ink.bad-stroke-gain', 'ink.bad-film'
 */
export function drawdown(ink: FilmCurves, strokes: number, strokeGain: number, surface?: Surface): Drawdown {
  const how = { strokes, strokeGain, surface };
  return {
    white: swatchOf(swatchReflectance(ink, CARD_WHITE, how)),
    black: swatchOf(swatchReflectance(ink, CARD_BLACK, how)),
  };
}
