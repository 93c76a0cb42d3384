import { entryAt } from '../../../engine/base/at.ts';
import type { PressPlan } from '../../../engine/visit/visit.ts';
import { say } from '../../words/en/output/papers.ts';

/** What is printed of a visit: all of it, one of its days, one set-up, or the week that it has a place in. */
export interface PaperChoice {
  what: 'visit' | 'day' | 'set-up' | 'week';
  /** Whether a card for each set-up goes with it, four to a page. */
  cards: boolean;
}

/** A choice, with the day and the set-up that it is about. */
export interface PaperAsked extends PaperChoice {
  /** From 1. */
  day: number;
  /** Index of the set-up. */
  setUp: number;
}

/** What is printed when nobody has chosen. */
export const USUAL_CHOICE: PaperChoice = { what: 'visit', cards: false };

/** What a file of it is called: 'Pull sheet', 'Bench sheet, day 2', 'Set-up 7', 'Visits on this press'. */
export function choiceTitle({ what, day, setUp }: PaperAsked, plan: Pick<PressPlan, 'cards'>): string {
  if (what === 'visit') return say.pullSheet;
  if (what === 'week') return say.visitsOnThisPress;
  return what === 'day' ? say.benchSheetDay(day) : say.setUpNumber(entryAt(plan.cards, setUp).number);
}

/** Rows of the pictures: of a card alone, and where there are many, each of them small. */
export function pictureRows({ what }: PaperAsked): number {
  return what === 'set-up' ? 520 : 240;
}

/** What can be chosen, in the words of the list. @param day of the set-up that comes next @param visits how many are on this press */
export function choiceOptions(
  plan: Pick<PressPlan, 'daysNeeded' | 'cards'>,
  { day, setUp }: Pick<PaperAsked, 'day' | 'setUp'>,
  visits: number,
): { value: PaperChoice['what']; label: string }[] {
  return [
    { value: 'visit', label: say.wholeVisitDays(plan.daysNeeded) },
    { value: 'day', label: say.todayDay(day) },
    { value: 'set-up', label: say.thisSetUp(entryAt(plan.cards, setUp).number) },
    ...(visits > 1 ? [{ value: 'week' as const, label: say.weekVisits(visits) }] : []),
  ];
}
