import { entryAt, num } from '../../base/at.ts';
import type { Pull } from '../../stack/types.ts';

/** What a print needs when it is pulled alone. */
export interface Needs {
  /** A screen on the press with an ink, at an offset and turn, with a number of strokes, as the pull order counts them. */
  setUps: number;
  screens: number;
  inks: number;
}

/** How many different set-ups, screens and inks a print takes. By lists: a map and a set for each print took longer and were a tenth of all garbage. */
export function needs(pulls: readonly Pull[]): Needs {
  /** The first pull of each screen. */
  const firsts: number[] = [];
  const inks: string[] = [];
  let setUps = 0;
  for (let i = 0; i < pulls.length; i++) {
    const pull = entryAt(pulls, i);
    if (!inks.includes(pull.ink)) inks.push(pull.ink);
    let before = firstOf(pulls, pull.screen, firsts);
    if (before < 0) {
      firsts.push(i);
      before = i;
    }
    while (before < i && !sameSetUp(entryAt(pulls, before), pull)) before++;
    if (before === i) setUps++;
  }
  return { setUps, screens: firsts.length, inks: inks.length };
}

function firstOf(pulls: readonly Pull[], screen: string, firsts: readonly number[]): number {
  for (let k = 0; k < firsts.length; k++) {
    const first = num(firsts, k);
    if (entryAt(pulls, first).screen === screen) return first;
  }
  return -1;
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
