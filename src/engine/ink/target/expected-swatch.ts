import { stackReflectance } from '../film/film.ts';
import type { Printing } from '../film/printing.ts';
import { type Swatch, swatchOf } from '../film/swatch.ts';
import type { Ink, Paper } from '../types.ts';
import type { TargetSquare } from './target.ts';

/**
 * What a square of a target is thought to look like, a stroke each.
 * @param inks all that the square names
 * @param printing paper, surface and trapping of the studio
 * @param relative true shows the paper as the screen's white
 */
export function expectedSwatch(
  { first, over }: Pick<TargetSquare, 'first' | 'over'>,
  inks: readonly Ink[],
  printing: Printing & { paper: Pick<Paper, 'reflectance'> },
  relative: boolean,
): Swatch {
  const films = [first, over].flatMap((id) => inks.filter((ink) => ink.id === id));
  const { reflectance } = printing.paper;
  return swatchOf(stackReflectance(films, reflectance, printing), relative ? reflectance : undefined);
}
