import { entryAt } from '../base/at.ts';
import { recipeWithout } from './leave-out.ts';
import type { VisitFigures } from './visit-figures.ts';
import type { VisitRunInput } from './visit-problem.ts';
import type { PressPlan, VisitInput } from './visit.ts';

/** A change to a visit that does not fit. `run` counts all runs of the visit. */
export type VisitChange =
  | { kind: 'screen'; run: number; screen: string }
  | { kind: 'recipe'; run: number }
  | { kind: 'sheets'; run: number; fewer: number }
  | { kind: 'days'; days: number }
  | { kind: 'hours'; hoursPerDay: number };

/** A change that takes something away. */
export type Taking = Extract<VisitChange, { run: number }>;

/** Whether a change takes something away; the others give more time. */
export function takes(change: VisitChange): change is Taking {
  return 'run' in change;
}

const MOST_HOURS = 16;

/** Single changes worth a try: screens of a recipe, whole recipes, a quarter or half of its sheets. */
export function takingsOf(input: VisitInput): Taking[] {
  const changes: Taking[] = [];
  const runs = input.runs.map((run, at) => ({ ...run, at })).filter((run) => run.sheets > 0);
  for (const { recipe, sheets, at } of runs) {
    const screens = new Set(recipe.pulls.map((pull) => pull.screen));
    if (screens.size > 1) for (const screen of screens) changes.push({ kind: 'screen', run: at, screen });
    if (runs.length > 1) changes.push({ kind: 'recipe', run: at });
    for (const share of [0.25, 0.5]) {
      const fewer = Math.round(sheets * share);
      if (fewer > 0 && fewer < sheets && !changes.some((c) => c.kind === 'sheets' && c.run === at && c.fewer === fewer)) {
        changes.push({ kind: 'sheets', run: at, fewer });
      }
    }
  }
  return changes;
}

/** More time worth a try: as many days as the plan needs, longer days. */
export function timesOf(input: VisitInput, plan: Pick<PressPlan, 'daysNeeded'>): Exclude<VisitChange, Taking>[] {
  const hours = [1, 2, 4].map((more) => input.press.hoursPerDay + more).filter((hoursPerDay) => hoursPerDay <= MOST_HOURS);
  return [
    ...hours.map((hoursPerDay) => ({ kind: 'hours' as const, hoursPerDay })),
    ...(plan.daysNeeded > input.press.days ? [{ kind: 'days' as const, days: plan.daysNeeded }] : []),
  ];
}

/** What a list of changes leaves of each run: nothing, fewer sheets, fewer screens. */
export function leftOf(changes: readonly VisitChange[], run: number): { gone: boolean; fewer: number; screens: ReadonlySet<string> } {
  const own = changes.filter((change): change is Taking => takes(change) && change.run === run);
  return {
    gone: own.some((change) => change.kind === 'recipe'),
    fewer: own.reduce((most, change) => (change.kind === 'sheets' ? Math.max(most, change.fewer) : most), 0),
    screens: new Set(own.flatMap((change) => (change.kind === 'screen' ? [change.screen] : []))),
  };
}

/** Whether a further change can be made to what a list of changes leaves, and does anything. */
export function canAlso(input: VisitInput, changes: readonly VisitChange[], change: Taking): boolean {
  const left = leftOf(changes, change.run);
  const printed = input.runs.filter((run, at) => run.sheets > 0 && !leftOf(changes, at).gone).length;
  if (left.gone) return false;
  if (change.kind === 'recipe') return printed > 1;
  if (change.kind === 'sheets') return change.fewer > left.fewer;
  const screens = new Set(entryAt(input.runs, change.run).recipe.pulls.map((pull) => pull.screen));
  return !left.screens.has(change.screen) && left.screens.size + 1 < screens.size;
}

/** What a visit prints after changes; a recipe that lost screens is a recipe of its own, its id made of theirs. */
export function runsAfter(input: VisitInput, changes: readonly VisitChange[]): VisitRunInput[] {
  return input.runs.flatMap((run, at): VisitRunInput[] => {
    const { gone, fewer, screens } = leftOf(changes, at);
    if (gone) return [];
    const recipe =
      screens.size === 0 ? run.recipe : recipeWithout(run.recipe, [...screens], `${run.recipe.id}-without-${[...screens].join('-')}`);
    return [{ ...run, recipe, sheets: run.sheets - fewer }];
  });
}

/** What changes in the studio's figures. */
export function pressAfter(changes: readonly VisitChange[]): Partial<VisitFigures> {
  const press: Partial<VisitFigures> = {};
  for (const change of changes) {
    if (change.kind === 'days') press.days = change.days;
    if (change.kind === 'hours') press.hoursPerDay = change.hoursPerDay;
  }
  return press;
}
