import { num } from '../base/at.ts';
import { changesOnBeds } from '../pullorder/timeline/beds.ts';
import { DAY_MINUTES } from '../pullorder/timeline/day-clock.ts';
import { earliestEnd, type EndReason } from '../pullorder/timeline/earliest-end.ts';
import type { TimelineInput, TimelineStart } from '../pullorder/timeline/start-state.ts';
import type { PullPlan, SetUp } from '../pullorder/types.ts';
import { type InkNeed, type StockNeed, visitInks, visitStocks } from './ink-needs.ts';
import { paperProblems } from './problem/paper-problems.ts';
import { type SetUpCard, setUpCards } from './set-up-cards.ts';
import { type VisitFigures, wholeFigures } from './visit-figures.ts';
import type { VisitProblem, VisitSheet } from './visit-problem.ts';
import { type Moment, momentOf, timelineInput, type VisitTimes, visitTimes } from './visit-times.ts';

/** What counts of an order when it is compared with another. */
export interface OrderFigures {
  setUps: number;
  mounts: number;
  inkChanges: number;
  registerMoves: number;
  /** When all is washed up. */
  ends: Moment;
  /** Set-ups that take longer than a day; absent = none. */
  overruns?: number;
}

/** A pull order as the Press shows and prints it. */
export interface PressPlan extends VisitTimes {
  sheets: VisitSheet[];
  /** Whether each set-up is first pulled on one test sheet; absent = no. */
  testSheet?: boolean | undefined;
  /** The number of that sheet, behind all others; absent without one and in orders kept from before it had one. */
  testNumber?: number | undefined;
  /** Titles of the recipes, by the index that sheets and cards use. */
  recipes: { id: string; title: string; sheets: number[] }[];
  cards: SetUpCard[];
  /** Set-ups of the visit that are done, behind which these are numbered; absent = none. */
  setUpsBefore?: number;
  inks: InkNeed[];
  /** The same ink by stock ink, as it is weighed out. */
  stocks: StockNeed[];
  mounts: number;
  inkChanges: number;
  registerMoves: number;
  /** No order has fewer; on several beds a frame that stays counts once. */
  bound: { setUps: number; mounts: number };
  /** No order of these pulls is washed up sooner; null while unknown or when a set-up runs past its day, absent in orders kept from before. */
  endsAtLeast?: Moment | null;
  /** What keeps it from ending sooner; absent where that is not known. */
  endsAtLeastBy?: EndReason;
  /** Overlapping pairs that may change places, over all recipes. */
  freeSwaps: number;
  /** How many set-ups and mounts no order can do without if no pair may change places, beyond what this one has; null while unknown. */
  savedSetUps: number | null;
  savedMounts: number | null;
  /** Going on by the order at hand, where there was one: this order is never worse. */
  before?: OrderFigures | undefined;
  /** True when nothing better was found and this is the order at hand itself. */
  kept?: boolean | undefined;
  /** Share of the work that is done, 0–1; absent in orders kept from before. */
  worked?: number | undefined;
  /** True when the search has ended: it found the best there is, or did the work it was given. */
  done: boolean;
}

/** A visit that is planned, and how it stands when its plan begins. */
export interface Planned {
  visit: VisitProblem;
  press: VisitFigures;
  start: TimelineStart | undefined;
}

/** Set-ups in sequence, with the bed of each where they have one. */
export interface Ordered {
  setUps: readonly SetUp[];
  beds?: readonly number[] | undefined;
}

type Bound = PullPlan['bound'];
/** A plan but for how the search for it stands. */
export type Described = Omit<PressPlan, 'savedSetUps' | 'savedMounts' | 'done' | 'worked'>;

/** An order in the words of the visit, on the clock. */
export function describe(order: Ordered, bound: Bound, { visit, press, start }: Planned): Described {
  const times = visitTimes(order, visit, press, start);
  const beds = order.beds ?? times.times.map(({ bed }) => bed);
  const late = times.problems.some(({ code }) => code === 'visit.long-set-up');
  const input = timelineInput(visit, press, start);
  const inks = visitInks(visit, press, { setUps: order.setUps, beds, onPress: start?.onPress });
  return {
    ...times,
    problems: [...times.problems, ...paperProblems(order.setUps, visit, start?.setUpsBefore)],
    sheets: visit.sheets,
    testSheet: visit.testSheet !== null,
    ...(visit.testSheet === null ? {} : { testNumber: visit.testSheet }),
    recipes: visit.recipes.map((recipe, r) => ({
      id: recipe.id,
      title: recipe.title,
      sheets: visit.sheets.filter((sheet) => sheet.recipe === r).map((sheet) => sheet.number),
    })),
    cards: setUpCards(order, visit, beds, start),
    ...(start?.setUpsBefore === undefined ? {} : { setUpsBefore: start.setUpsBefore }),
    inks,
    stocks: visitStocks(visit, inks),
    ...changesOnBeds(order.setUps, beds, start?.onPress),
    bound: { setUps: bound.setUps, mounts: leastMounts(bound, { visit, press, start }) },
    ...(order.beds !== undefined && !late ? leastEnd(input, bound.mounts) : { endsAtLeast: null }),
    freeSwaps: visit.freeSwaps.reduce((sum, count) => sum + count, 0),
  };
}

function leastEnd(input: TimelineInput, mounts: number): Pick<PressPlan, 'endsAtLeast' | 'endsAtLeastBy'> {
  const { minute, by } = earliestEnd(input, mounts);
  return { endsAtLeast: momentOf(minute), endsAtLeastBy: by };
}

/** On one bed what the planner proves; on several each frame may stay where it is. */
function leastMounts(bound: Bound, { visit, press, start }: Planned): number {
  const frames = new Set(visit.problem.sheets.flatMap((sheet) => sheet.pulls.map((pull) => pull.screen)));
  const there = (start?.onPress ?? []).filter((each) => each !== null && frames.has(each.screen)).length;
  return Math.max(0, (wholeFigures(press).beds > 1 ? frames.size : bound.mounts) - there);
}

/** What of a plan is compared with another. */
export function figuresOf({ cards, mounts, inkChanges, registerMoves, ends, problems }: Described): OrderFigures {
  const overruns = problems.filter(({ code }) => code === 'visit.long-set-up').length;
  return { setUps: cards.length, mounts, inkChanges, registerMoves, ends, ...(overruns === 0 ? {} : { overruns }) };
}

/**
 * Compares two orders of one visit: by mounts, then ink changes, then changes of offset, then the end.
 * On several beds mounts hardly tell how long a visit takes, so there the end comes first, and before it that
 * every set-up ends within its day.
 * @returns below 0 when the first is better
 */
export function compareOrders(one: OrderFigures, other: OrderFigures, beds: number): number {
  const costOf = ({ mounts, inkChanges, registerMoves, ends, overruns = 0 }: OrderFigures): number[] => {
    const end = ends.day * DAY_MINUTES + ends.minute;
    return beds > 1 ? [overruns, end, mounts, inkChanges, registerMoves] : [mounts, inkChanges, registerMoves, end];
  };
  const b = costOf(other);
  for (const [i, value] of costOf(one).entries()) if (value !== b[i]) return value - num(b, i);
  return 0;
}
