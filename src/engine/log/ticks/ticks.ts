import { defined } from '../../base/at.ts';
import type { PressPlan } from '../../visit/visit.ts';

/** Names a sheet in a set-up among the ticks. */
export function tickKey(setUp: number, sheet: number): string {
  return `${setUp}:${sheet}`;
}

/** More sheets than this are ticked by tens: nobody ticks each of five hundred with wet hands. */
const MOST_SINGLE = 40;
const TEN = 10;

/** Sheets that share a check box: each its own, or, with many, runs of numbers of ten at most. */
export function tickGroups(sheets: readonly number[]): number[][] {
  if (sheets.length <= MOST_SINGLE) return sheets.map((sheet) => [sheet]);
  const groups: number[][] = [];
  for (const sheet of sheets) {
    const last = groups.at(-1);
    if (last !== undefined && last.length < TEN && defined(last.at(-1)) + 1 === sheet) last.push(sheet);
    else groups.push([sheet]);
  }
  return groups;
}

/** Indices of the set-ups of which every sheet is ticked. */
export function setUpsDone(plan: Pick<PressPlan, 'cards'>, ticked: ReadonlySet<string>): ReadonlySet<number> {
  const done = new Set<number>();
  for (const [at, card] of plan.cards.entries()) {
    if (ticked.size > 0 && card.sheets.every((sheet) => ticked.has(tickKey(card.number, sheet)))) done.add(at);
  }
  return done;
}

/** How many set-ups of a visit are done: those before the plan and those of it, so that what is planned next is numbered on. */
export function setUpsBehind(plan: PressPlan, ticked: ReadonlySet<string>): number {
  return (plan.setUpsBefore ?? 0) + setUpsDone(plan, ticked).size;
}

/** How many set-ups a visit has, those before the plan with them. */
export function setUpsInAll({ setUpsBefore = 0, cards }: Pick<PressPlan, 'setUpsBefore' | 'cards'>): number {
  return setUpsBefore + cards.length;
}

/** The first set-up with something left to pull; the last when all is done. */
export function nextSetUp(plan: Pick<PressPlan, 'cards'>, ticked: ReadonlySet<string>): number {
  const done = setUpsDone(plan, ticked);
  const left = plan.cards.findIndex((_, at) => !done.has(at));
  return left < 0 ? Math.max(0, plan.cards.length - 1) : left;
}

/** For each bed the index of the first set-up there with something left; -1 where a bed has none. */
export function nextAtBeds(plan: Pick<PressPlan, 'cards' | 'times'>, ticked: ReadonlySet<string>): number[] {
  const done = setUpsDone(plan, ticked);
  const beds = Math.max(0, ...plan.times.map(({ bed }) => bed + 1));
  return Array.from({ length: beds }, (_, bed) => plan.cards.findIndex((_card, at) => plan.times[at]?.bed === bed && !done.has(at)));
}

/**
 * What the printer of a set-up goes on with at the same bed: after one that is done, the first there with something
 * left, or the first of any bed where that has none; otherwise the one after it.
 * @returns an index of the plan's cards; as many as there are when none comes after
 */
export function nextAtBed(plan: Pick<PressPlan, 'cards' | 'times'>, ticked: ReadonlySet<string>, at: number): number {
  const done = setUpsDone(plan, ticked);
  const bed = plan.times[at]?.bed;
  const next = plan.cards.findIndex((_, i) => plan.times[i]?.bed === bed && (done.has(at) ? !done.has(i) : i > at));
  if (next >= 0) return next;
  return done.has(at) ? nextSetUp(plan, ticked) : plan.cards.length;
}
