import { entryAt } from '../../base/at.ts';
import type { Pull } from '../../stack/types.ts';

/** What a print needs when it is pulled alone. */
export interface Needs {
  /** A screen on the press with an ink, at an offset and turn, with a number of strokes, as the pull order counts them. */
  setUps: number;
  screens: number;
  inks: number;
}

/** How many different set-ups, screens and inks a print takes. */
export function needs(pulls: readonly Pull[]): Needs {
  const firstOf = new Map<string, number>();
  const inks = new Set<string>();
  let setUps = 0;
  for (let i = 0; i < pulls.length; i++) {
    const pull = entryAt(pulls, i);
    inks.add(pull.ink);
    let before = firstOf.get(pull.screen) ?? i;
    if (before === i) firstOf.set(pull.screen, i);
    while (before < i && !sameSetUp(entryAt(pulls, before), pull)) before++;
    if (before === i) setUps++;
  }
  return { setUps, screens: firstOf.size, inks: inks.size };
}

function sameSetUp(one: Pull, other: Pull): boolean {
  return (
    one.screen === other.screen &&
    one.dxMm === other.dxMm &&
    one.dyMm === other.dyMm &&
    one.turnDeg === other.turnDeg &&
    one.strokes === other.strokes &&
    one.ink === other.ink
  );
}
