import type { Pull } from '../../stack/types.ts';

/**
 * How many set-ups a print takes when it is pulled alone: a screen on the press with an ink, at an
 * offset and turn, with a number of strokes, as the pull order counts them.
 */
export function setUps(pulls: readonly Pull[]): number {
  const found = new Set<string>();
  for (const { screen, ink, dxMm, dyMm, turnDeg, strokes } of pulls) {
    // The length of the first name tells where it ends.
    found.add(`${dxMm},${dyMm},${turnDeg},${strokes},${screen.length},${screen}${ink}`);
  }
  return found.size;
}
