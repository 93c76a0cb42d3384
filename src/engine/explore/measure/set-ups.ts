import type { Pull } from '../../stack/types.ts';

/**
 * How many set-ups a print takes when it is pulled alone: a screen on the press with an ink, at an
 * offset and turn, with a number of strokes, as the pull order counts them.
 */
export function setUps(pulls: readonly Pull[]): number {
  return new Set(pulls.map(({ screen, ink, dxMm, dyMm, turnDeg, strokes }) => JSON.stringify([screen, ink, dxMm, dyMm, turnDeg, strokes])))
    .size;
}
