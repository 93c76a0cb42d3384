import { EngineError } from '../../base/error.ts';
import type { Paper } from '../../ink/types.ts';
import { say } from '../../words/en/explore/prepare.ts';
import { screensToMake } from './screens-to-make.ts';

/** A print that one would like to pull: what it takes, and how much it counts. */
export interface WantedPrint {
  name: string;
  /** Ids; one may stand twice. */
  screens: readonly string[];
  inks: readonly string[];
  weight: number;
}

/** What a question of preparing is about. */
export type PrepareBy = 'screens' | 'inks' | 'both';

/** What is asked of `prepareSteps`. */
export interface PrepareAsked {
  prints: readonly WantedPrint[];
  /** Ids of screens and inks that are there already. */
  haveScreens: readonly string[];
  haveInks: readonly string[];
  by: PrepareBy;
  /** New ones at most; up to there every number is answered. */
  most: number;
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

/**
 * For every number of new screens, inks or both, up to the most that any choice needs, the set with which
 * most of the prints can be pulled, each by weight.
 * @yields the share that is done, 0–1
 * @throws EngineError 'prepare.none' without prints, and as screensToMake
 */
export function* prepareSteps({ prints, haveScreens, haveInks, by, most }: PrepareAsked): Generator<number, PrepareStep[]> {
  if (prints.length === 0) {
    throw new EngineError('prepare.none', say.noPrintsAreChosen);
  }
  const have = [...haveScreens.map((id) => SCREEN + id), ...haveInks.map((id) => INK + id)];
  const there = new Set(have);
  const sets = prints.map((print) => ({ screens: taken(print, by), weight: print.weight }));
  const lacking = new Set(sets.flatMap(({ screens }) => screens).filter((id) => !there.has(id)));
  const steps: PrepareStep[] = [];
  const last = Math.min(most, lacking.size);
  for (let count = 0; count <= last; count++) {
    const found = screensToMake({ prints: sets, have, most: count });
    const before = steps.at(-1);
    const named = (kind: string): string[] => found.screens.filter((id) => id.startsWith(kind)).map((id) => id.slice(kind.length));
    const step = { count, screens: named(SCREEN), inks: named(INK), printed: found.printed, bound: found.bound };
    // One more never prints less, though a search that ends early may find less.
    steps.push(
      before !== undefined && before.printed > step.printed ? { ...before, count, bound: Math.max(step.bound, before.printed) } : step,
    );
    yield (count + 1) / (last + 1);
  }
  return steps;
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

/** What may be spent on new screens; what is left out asks for nothing. */
export interface ScreenBudget {
  screens?: number | undefined;
  filmM2?: number | undefined;
  money?: number | undefined;
  hours?: number | undefined;
}

/** What may be spent, and what one screen costs and takes by the studio's own reckoning. */
export interface PrepareBudget extends ScreenBudget {
  moneyEach?: number | undefined;
  hoursEach?: number | undefined;
}

/** What one screen takes. */
export interface ScreenCost {
  filmM2: number;
  money: number;
  hours: number;
}

/** Film positive of a screen, as large as the sheet, m². */
export function filmOfSheet({ widthMm, heightMm }: Pick<Paper, 'widthMm' | 'heightMm'>): number {
  return (widthMm * heightMm) / 1e6;
}

/** How many screens a budget allows; Infinity where it asks for nothing. */
export function screensWithin({ screens = Infinity, ...budget }: ScreenBudget, cost: ScreenCost): number {
  const by = (limit: number | undefined, each: number): number =>
    limit === undefined || each <= 0 ? Infinity : Math.floor(limit / each + 1e-9);
  return Math.max(
    0,
    Math.min(Math.floor(screens), by(budget.filmM2, cost.filmM2), by(budget.money, cost.money), by(budget.hours, cost.hours)),
  );
}
