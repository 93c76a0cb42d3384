import type { Printing } from '../ink/film/printing.ts';
import type { Ink, Paper } from '../ink/types.ts';
import type { Screen, Shape } from '../shapes/types.ts';

/** All that a stack is printed from. */
export interface Studio extends Printing {
  shapes: readonly Shape[];
  screens: readonly Screen[];
  inks: readonly Ink[];
  paper: Paper;
  /**
   * How much film each stroke after the first adds, as a share of the first.
   * In pure theory 1 (two strokes = twice the film); in practice less: 0.2–0.6, from memory.
   */
  strokeGain: number;
}
