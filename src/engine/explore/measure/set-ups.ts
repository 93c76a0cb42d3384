import type { Pull } from '../../stack/types.ts';

/**
 * How many set-ups a print takes when it is pulled alone: a screen on the press with an ink, at an
 * offset and turn, with a number of strokes, as the pull order counts them.
 */
export function setUps(pulls: readonly Pull[]): number {
  const found = new Map<string, Pull[]>();
  let count = 0;
  for (const pull of pulls) {
    const ofScreen = found.get(pull.screen);
    if (ofScreen?.some((other) => sameSetUp(other, pull)) === true) continue;
    if (ofScreen === undefined) found.set(pull.screen, [pull]);
    else ofScreen.push(pull);
    count++;
  }
  return count;
}

function sameSetUp(one: Pull, other: Pull): boolean {
  return (
    one.dxMm === other.dxMm &&
    one.dyMm === other.dyMm &&
    one.turnDeg === other.turnDeg &&
    one.strokes === other.strokes &&
    one.ink === other.ink
  );
}
