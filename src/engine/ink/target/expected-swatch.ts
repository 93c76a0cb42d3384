import { stackReflectance } from '../film/film.ts';
import { type Swatch, swatchOf } from '../film/swatch.ts';
import type { Ink, Paper } from '../types.ts';
import type { TargetSquare } from './target.ts';

/**
 * What a square of a target is thought to look like, a stroke each.
 * @param inks all that the square names
 * @param relative true shows the paper as the screen's white
 */
export function expectedSwatch(
  { first, over }: Pick<TargetSquare, 'first' | 'over'>,
  inks: readonly Ink[],
  paper: Pick<Paper, 'reflectance'>,
  relative: boolean,
): Swatch {
  const films = [first, over].flatMap((id) => inks.filter((ink) => ink.id === id));
  return swatchOf(stackReflectance(films, paper.reflectance), relative ? paper.reflectance : undefined);
}
