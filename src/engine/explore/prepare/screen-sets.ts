import { entryAt } from '../../base/at.ts';
import { EngineError } from '../../base/error.ts';
import { say } from '../../words/en/explore/prepare.ts';

/** A print as far as its screens go. */
export interface PrintScreens {
  /** Ids of all screens that it is pulled with; one may stand twice. */
  screens: readonly string[];
  /** How much it counts, 0 or more; 1 when left out. */
  weight?: number | undefined;
}

/** What is asked of `screensToMake`. */
export interface ScreensAsked {
  prints: readonly PrintScreens[];
  /** Screens that are there already. */
  have?: readonly string[] | undefined;
  /** New screens that may be made, at most. */
  most: number;
}

/** Prints that lack the same screens, counted together. */
export interface Group {
  /** Indexes of the screens that they lack. */
  lacks: number[];
  weight: number;
}

/** The question in numbers: groups of prints, new screens by index. */
export interface ScreenSets {
  /** Screens that some print lacks, in the order of their ids. */
  names: string[];
  /** Groups that lack something and at most as many as may be made. */
  groups: Group[];
  /** Weight of the prints that lack nothing. */
  printedNow: number;
  most: number;
}

function checked({ prints, most, have = [] }: ScreensAsked): void {
  if (!Array.isArray(prints)) throw new EngineError('prepare.prints', say.listOfPrintsIs);
  if (!Array.isArray(have)) throw new EngineError('prepare.have', say.screensThereAreList);
  if (!Number.isInteger(most) || most < 0) {
    throw new EngineError('prepare.most', say.numberOfNewScreens(most));
  }
  prints.forEach((print: Partial<PrintScreens> | null | undefined, i) => {
    const weight = print?.weight ?? 1;
    if (!Array.isArray(print?.screens) || !print.screens.every((id: unknown) => typeof id === 'string')) {
      throw new EngineError('prepare.print', say.printNamesNoScreens(i + 1));
    }
    if (!Number.isFinite(weight) || weight < 0) {
      throw new EngineError('prepare.weight', say.printCountsGive0(i + 1, weight));
    }
  });
}

/**
 * The question in numbers.
 * @throws EngineError 'prepare.prints', 'prepare.have', 'prepare.most', 'prepare.print', 'prepare.weight'
 */
export function screenSets(asked: ScreensAsked): ScreenSets {
  checked(asked);
  const have = new Set(asked.have ?? []);
  const lacking = asked.prints.map(({ screens, weight = 1 }) => ({
    lacks: [...new Set(screens)].filter((id) => !have.has(id)).sort(),
    weight,
  }));
  const possible = lacking.filter(({ lacks, weight }) => lacks.length > 0 && lacks.length <= asked.most && weight > 0);
  const names = [...new Set(possible.flatMap(({ lacks }) => lacks))].sort();
  const index = new Map(names.map((name, i) => [name, i]));
  const groups = new Map<string, Group>();
  for (const { lacks, weight } of possible) {
    const key = JSON.stringify(lacks);
    const group = groups.get(key) ?? { lacks: lacks.map((name) => index.get(name) ?? 0), weight: 0 };
    group.weight += weight;
    groups.set(key, group);
  }
  const printedNow = lacking.reduce((sum, { lacks, weight }) => sum + (lacks.length === 0 ? weight : 0), 0);
  return { names, groups: [...groups.values()], printedNow, most: asked.most };
}

/** Weight of the groups whose screens are all among those made. */
export function weightWith(groups: readonly Group[], made: ReadonlySet<number>): number {
  return groups.reduce((sum, { lacks, weight }) => sum + (lacks.every((screen) => made.has(screen)) ? weight : 0), 0);
}

/** Adds to a set, group by group, what brings most weight for a screen as long as it fits; in place. */
export function fillUp(groups: readonly Group[], made: Set<number>, most: number): void {
  for (;;) {
    let best = -1;
    let value = 0;
    groups.forEach(({ lacks, weight }, i) => {
      const more = lacks.reduce((count, screen) => count + (made.has(screen) ? 0 : 1), 0);
      if (more === 0 || made.size + more > most || weight / more <= value) return;
      best = i;
      value = weight / more;
    });
    if (best < 0) return;
    for (const screen of entryAt(groups, best).lacks) made.add(screen);
  }
}
