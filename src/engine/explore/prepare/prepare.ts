import { entryAt } from '../../base/at.ts';
import { EngineError } from '../../base/error.ts';
import { say } from '../../words/en/explore/prepare.ts';
import { mostOfBoth, type PrepareBy, type PrepareLimit, screenTakes } from './budget.ts';
import type { PrintScreens } from './screen-sets.ts';
import { effortOf, screensWithinAll, type ScreensToMake } from './screens-to-make.ts';

/** A print that one would like to pull: what it takes, and how much it counts. */
export interface WantedPrint {
  name: string;
  /** Ids; one may stand twice. */
  screens: readonly string[];
  inks: readonly string[];
  weight: number;
}

/** What is asked of `prepareSteps`. */
export interface PrepareAsked {
  prints: readonly WantedPrint[];
  /** Ids of screens and inks that are there already. */
  haveScreens: readonly string[];
  haveInks: readonly string[];
  by: PrepareBy;
  /** New ones at most; up to there every number is answered. */
  most: number;
  /** What every choice keeps to beside its number. */
  limits?: readonly PrepareLimit[] | undefined;
}

/** The best choice of so many new screens, inks, or both. */
export interface PrepareStep {
  count: number;
  screens: string[];
  inks: string[];
  /** Weight of the prints that can be pulled then, and what no choice of so many exceeds. */
  printed: number;
  bound: number;
}

const SCREEN = 's ';
const INK = 'i ';

/** What a print takes, of what the question is about. */
function taken({ screens, inks }: WantedPrint, by: PrepareBy): string[] {
  return [...(by === 'inks' ? [] : screens.map((id) => SCREEN + id)), ...(by === 'screens' ? [] : inks.map((id) => INK + id))];
}

/** Questions with more numbers than this are each answered with less effort. */
const NUMBERS_IN_FULL = 12;

/** What is new for some print. */
function newOnes(sets: readonly PrintScreens[], have: readonly string[]): { screens: string[]; inks: number } {
  const there = new Set(have);
  const ids = [...new Set(sets.flatMap(({ screens }) => screens))].filter((id) => !there.has(id));
  const screens = ids.filter((id) => id.startsWith(SCREEN)).map((id) => id.slice(SCREEN.length));
  return { screens, inks: ids.length - screens.length };
}

/**
 * For every number of new screens, inks or both, up to the most that any choice needs or may have, the set with
 * which most of the prints can be pulled, each by weight.
 * @yields the share that is done, 0–1
 * @throws EngineError 'prepare.none' without prints, and as screensToMake
 */
export function* prepareSteps({ prints, haveScreens, haveInks, by, most, limits = [] }: PrepareAsked): Generator<number, PrepareStep[]> {
  if (prints.length === 0) {
    throw new EngineError('prepare.none', say.noPrintsAreChosen);
  }
  const have = [...haveScreens.map((id) => SCREEN + id), ...haveInks.map((id) => INK + id)];
  const sets = prints.map((print) => ({ screens: taken(print, by), weight: print.weight }));
  const spent = limits.map((limit) => ({
    each: (id: string): number => (id.startsWith(SCREEN) ? screenTakes(limit, id.slice(SCREEN.length)) : limit.ink),
    most: limit.most,
  }));
  const last = Math.min(most, mostOfBoth(limits, newOnes(sets, have)));
  const effort = effortOf(Math.min(1, NUMBERS_IN_FULL / (last + 1)));
  const found: ScreensToMake[] = [];
  for (let count = 0; count <= last; count++) {
    found.push(screensWithinAll({ prints: sets, have, most: count }, { spent, effort, start: found.at(-1)?.screens ?? [] }));
    yield (count + 1) / (last + 1);
  }
  // What more cannot print, fewer cannot either.
  for (let count = last - 1; count >= 0; count--) {
    const step = entryAt(found, count);
    step.bound = Math.min(step.bound, entryAt(found, count + 1).bound);
  }
  return found.map(({ screens, printed, bound }, count) => {
    const named = (kind: string): string[] => screens.filter((id) => id.startsWith(kind)).map((id) => id.slice(kind.length));
    return { count, screens: named(SCREEN), inks: named(INK), printed, bound };
  });
}

/** What a print lacks of screens and inks, beyond those that are there. */
export function lacks(print: WantedPrint, screens: ReadonlySet<string>, inks: ReadonlySet<string>): { screens: string[]; inks: string[] } {
  return {
    screens: [...new Set(print.screens)].filter((id) => !screens.has(id)),
    inks: [...new Set(print.inks)].filter((id) => !inks.has(id)),
  };
}

/** Of some screens, those that no print takes, in their order. */
export function takenByNone(screens: readonly string[], prints: readonly WantedPrint[]): string[] {
  const taken = new Set(prints.flatMap((print) => print.screens));
  return screens.filter((id) => !taken.has(id));
}
