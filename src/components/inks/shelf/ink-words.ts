import type { InkBasis } from '../../../engine/ink/types.ts';

/** How an ink's colour was come by, in a few words. */
export const BASIS_SHORT: Record<InkBasis, string> = {
  invented: 'invented',
  measured: 'measured',
  drawdown: 'from two colours',
  guess: 'guess from one colour',
};

/** How far to trust it. */
export const BASIS_TRUST: Record<InkBasis, string> = {
  invented: 'Invented for trying things out: no pot of ink matches it. Pull a test of your own ink and put in its colours.',
  measured: 'Measured over white and over black: as good as the reading and the film that was read.',
  drawdown: 'Estimated from two colours; pull a test before you rely on it.',
  guess: 'Guess: one colour and how much it seems to hide. Good for sketching only; pull a test before you rely on it.',
};
