import { CARD_BLACK, CARD_WHITE } from '../characterise/card.ts';
import type { FilmCurves } from './film.ts';
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
 * @throws EngineError 'ink.bad-strokes', 'ink.bad-stroke-gain', 'ink.bad-film'
 */
export function drawdown(ink: FilmCurves, strokes: number, strokeGain: number): Drawdown {
  return {
    white: swatchOf(swatchReflectance(ink, strokes, strokeGain, CARD_WHITE)),
    black: swatchOf(swatchReflectance(ink, strokes, strokeGain, CARD_BLACK)),
  };
}
