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

/** Something that new screens use up: what each takes of it, 0 or more, and how much there is. */
export interface Spent {
  each: (screen: string) => number;
  most: number;
}

/** The same by index. */
export interface Limit {
  costs: readonly number[];
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
  /** Groups that lack something and no more than may be made. */
  groups: Group[];
  /** Weight of the prints that lack nothing. */
  printedNow: number;
  /** What a choice keeps to; the first is the number of screens. */
  limits: Limit[];
}

/** Of what may be spent, sums of costs go beyond by less than this share through rounding alone. */
const SLACK = 1e-9;
/** What prints may count together: a bound, which adds prices times numbers to it, is still a number then. */
const MOST_WEIGHT = 1e300;

/** Whether a sum of costs keeps to what there is. */
export function within(cost: number, most: number): boolean {
  return cost <= most + SLACK * Math.max(1, most);
}

/** What screens cost together. */
export function costOf(screens: Iterable<number>, { costs }: Limit): number {
  let sum = 0;
  for (const screen of screens) sum += costs[screen] ?? 0;
  return sum;
}

/** Whether all of these screens may be made. */
export function affordable(screens: ReadonlySet<number>, limits: readonly Limit[]): boolean {
  return limits.every((limit) => within(costOf(screens, limit), limit.most));
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
  const all = prints.reduce((sum, { weight = 1 }) => sum + weight, 0);
  if (all > MOST_WEIGHT) throw new EngineError('prepare.weight', say.printsCountTooMuch);
}

/**
 * The question in numbers.
 * @param spent what else is used up, beside the number
 * @throws EngineError 'prepare.prints', 'prepare.have', 'prepare.most', 'prepare.print', 'prepare.weight'
 */
export function screenSets(asked: ScreensAsked, spent: readonly Spent[] = []): ScreenSets {
  checked(asked);
  const have = new Set(asked.have ?? []);
  const lacking = asked.prints.map(({ screens, weight }) => ({
    lacks: [...new Set(screens)].filter((id) => !have.has(id)).sort(),
    weight: weight ?? 1,
  }));
  const all: Spent[] = [{ each: () => 1, most: asked.most }, ...spent];
  const reached = (lacks: readonly string[]): boolean =>
    all.every(({ each, most }) =>
      within(
        lacks.reduce((sum, name) => sum + each(name), 0),
        most,
      ),
    );
  const possible = lacking.filter(({ lacks, weight }) => lacks.length > 0 && weight > 0 && reached(lacks));
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
  const limits = all.map(({ each, most }) => ({ costs: names.map(each), most }));
  return { names, groups: [...groups.values()], printedNow, limits };
}

/** Weight of the groups whose screens are all among those made. */
export function weightWith(groups: readonly Group[], made: ReadonlySet<number>): number {
  return groups.reduce((sum, { lacks, weight }) => sum + (lacks.every((screen) => made.has(screen)) ? weight : 0), 0);
}

/** Adds to a set, group by group, what brings most weight for a screen as long as it may be made; in place. */
export function fillUp({ groups, limits }: Pick<ScreenSets, 'groups' | 'limits'>, made: Set<number>): void {
  for (;;) {
    let best: number[] = [];
    let value = 0;
    for (const { lacks, weight } of groups) {
      const more = lacks.filter((screen) => !made.has(screen));
      if (more.length === 0 || weight / more.length <= value || !affordable(new Set([...made, ...more]), limits)) continue;
      best = more;
      value = weight / more.length;
    }
    if (best.length === 0) return;
    for (const screen of best) made.add(screen);
  }
}
