import { EngineError } from '../../base/error.ts';
import { say } from '../../words/en/ink/film.ts';

/**
 * Thickness of the film that a number of strokes leaves.
 * @param strokes whole, 1 or more
 * @param strokeGain how much each stroke after the first adds, as a share of the first: 1 in pure
 *   theory, 0.2–0.6 in practice (common practice, no source)
 * @returns thickness in films of one stroke
 * @throws EngineError 'ink.bad-strokes', 'ink.bad-stroke-gain'
 */
export function filmThickness(strokes: number, strokeGain: number): number {
  if (!(Number.isInteger(strokes) && strokes >= 1)) {
    throw new EngineError('ink.bad-strokes', say.strokesMustBeWhole(strokes));
  }
  if (!(strokeGain >= 0 && strokeGain < Infinity)) {
    throw new EngineError('ink.bad-stroke-gain', say.furtherStrokeMustAdd(strokeGain));
  }
  return 1 + (strokes - 1) * strokeGain;
}
