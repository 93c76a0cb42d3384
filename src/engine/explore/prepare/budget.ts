import type { Paper } from '../../ink/types.ts';
import { within } from './screen-sets.ts';

/** What a question of preparing is about. */
export type PrepareBy = 'screens' | 'inks' | 'both';

/** What may be spent on new screens and inks; what is left out asks for nothing. */
export interface PrepareBudget {
  /** New ones, of whatever is asked for. */
  screens?: number | undefined;
  filmM2?: number | undefined;
  money?: number | undefined;
  hours?: number | undefined;
  /** What one screen costs and takes by the studio's own reckoning. */
  moneyEach?: number | undefined;
  hoursEach?: number | undefined;
  /** What one ink costs to have there, and how long it is mixed. */
  inkMoneyEach?: number | undefined;
  inkHoursEach?: number | undefined;
}

/** Something to be spent: how much there is, and what a new screen and a new ink take of it. */
export interface PrepareLimit {
  most: number;
  screen: number;
  ink: number;
}

/** Film positive of a screen, as large as the sheet, m². */
export function filmOfSheet({ widthMm, heightMm }: Pick<Paper, 'widthMm' | 'heightMm'>): number {
  return (widthMm * heightMm) / 1e6;
}

/** What a budget asks of new screens and inks; inks take no film. */
export function limitsOf(budget: PrepareBudget, paper: Pick<Paper, 'widthMm' | 'heightMm'>): PrepareLimit[] {
  const { moneyEach = 0, hoursEach = 0, inkMoneyEach = 0, inkHoursEach = 0 } = budget;
  const limit = (most: number | undefined, screen: number, ink: number): PrepareLimit[] =>
    most === undefined ? [] : [{ most, screen, ink }];
  return [
    ...limit(budget.screens, 1, 1),
    ...limit(budget.filmM2, filmOfSheet(paper), 0),
    ...limit(budget.money, moneyEach, inkMoneyEach),
    ...limit(budget.hours, hoursEach, inkHoursEach),
  ];
}

/** What a choice takes of what there is to spend; money and hours are undefined where nothing is said of what it takes. */
export interface PrepareCost {
  filmM2: number;
  money: number | undefined;
  hours: number | undefined;
}

/** What new screens and inks take. @param step their ids */
export function costOf(
  budget: PrepareBudget,
  paper: Pick<Paper, 'widthMm' | 'heightMm'>,
  step: { screens: readonly string[]; inks: readonly string[] },
): PrepareCost {
  const [screens, inks] = [step.screens.length, step.inks.length];
  const sum = (screen: number | undefined, ink: number | undefined): number | undefined => {
    const open = (screens > 0 && screen === undefined) || (inks > 0 && ink === undefined);
    return open ? undefined : screens * (screen ?? 0) + inks * (ink ?? 0);
  };
  return {
    filmM2: screens * filmOfSheet(paper),
    money: sum(budget.moneyEach, budget.inkMoneyEach),
    hours: sum(budget.hoursEach, budget.inkHoursEach),
  };
}

/** How many that each take so much can be had of what there is; Infinity where they take nothing. */
function howMany(most: number, each: number): number {
  return each <= 0 ? Infinity : Math.floor(most / each + 1e-9);
}

/** How many new screens, or new inks, the limits allow; Infinity where they ask for nothing. */
export function newWithin(limits: readonly PrepareLimit[], by: Exclude<PrepareBy, 'both'>): number {
  return Math.min(Infinity, ...limits.map((limit) => howMany(limit.most, by === 'screens' ? limit.screen : limit.ink)));
}

/** Of so many screens and inks that are new, how many together the limits allow at most. */
export function mostOfBoth(limits: readonly PrepareLimit[], { screens, inks }: { screens: number; inks: number }): number {
  let most = 0;
  for (let count = 0; count <= inks; count++) {
    if (!limits.every((limit) => within(count * limit.ink, limit.most))) break;
    const left = limits.map((limit) => ({ ...limit, most: limit.most - count * limit.ink }));
    most = Math.max(most, count + Math.max(0, Math.min(screens, newWithin(left, 'screens'))));
  }
  return most;
}
