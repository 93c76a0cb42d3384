import { labD50 } from '../../colour/lab.ts';
import { CARD_BLACK, CARD_WHITE } from '../../ink/characterise/card.ts';
import { filmBands, overFilm } from '../../ink/film/film.ts';
import type { Ink } from '../../ink/types.ts';

/** Of the lightness between a card's white and its black, a veil lets at least so much show through. */
const LEAST_SHOW_THROUGH = 0.35;

/** Whether so thick a film of an ink still is a veil: what is below it shows. */
export function isTranslucent(ink: Ink, thickness: number): boolean {
  const film = filmBands(ink.kx, ink.sx, thickness);
  const gap = (white: ArrayLike<number>, black: ArrayLike<number>): number => labD50(white)[0] - labD50(black)[0];
  const over = (ground: readonly number[]): Float64Array => overFilm(film, ground, new Float64Array(ground.length));
  return gap(over(CARD_WHITE), over(CARD_BLACK)) >= LEAST_SHOW_THROUGH * gap(CARD_WHITE, CARD_BLACK);
}
