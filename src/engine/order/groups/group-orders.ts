import { entryAt, num } from '../../base/at.ts';
import { EngineError } from '../../base/error.ts';
import { LESSON_AREA_MM2, LESSON_PULLS, within } from '../../base/limits.ts';
import type { Stack } from '../../stack/types.ts';
import type { Studio } from '../../studio/studio.ts';
import { say } from '../../words/en/order/groups.ts';
import { checkMinDeltaE, type Overlap, type OverlapOptions, overlapsOf } from '../overlaps.ts';
import { completeLink, type Link } from './complete-link.ts';
import { differenceWithin, equalOrders, type PictureLimits } from './order-difference.ts';
import { type OrderPlace, orderPlaces } from './order-places.ts';
import { type PairOrder, pairReasons } from './pair-reasons.ts';

/** When two orders count as one picture. */
export interface GroupOptions extends OverlapOptions {
  /** Two orders are one picture when no more than this of the sheet differs by more than minDeltaE, mm²; left out, 25. */
  minAreaMm2?: number;
}

/** All orders of a few pulls, and which of them print the same picture. */
export interface OrderGroups {
  /** Every order, lexicographic, as positions in the stack given, first down first. */
  orders: number[][];
  /** Indexes into `orders`; a group prints one picture; groups by their first order. */
  groups: number[][];
  /** Pairs whose order matters on bare paper or over one other pull, whatever hides them. */
  edges: Overlap[];
  /** All pairs, and why their order shows or not. */
  pairs: PairOrder[];
  /** Number of groups. */
  count: number;
}

/**
 * Groups all orders of two to six pulls into the pictures that really differ. Whole pictures are
 * compared, place by place: two orders are one picture when the places that differ by more than
 * minDeltaE have together no more than minAreaMm2. Since likeness has no chains' end, groups are made
 * by complete link: no two orders of a group are two pictures.
 * @throws EngineError 'order.stack', 'order.lesson-size' for fewer or more pulls, 'order.min-area', and as overlapsOf
 */
export function groupOrders(stack: Stack, studio: Studio, options: GroupOptions): OrderGroups {
  const steps = groupOrderSteps(stack, studio, options);
  for (;;) {
    const step = steps.next();
    if (step.done === true) return step.value;
  }
}

/**
 * The same in steps, for work that shall be followed and stopped.
 * @returns steps that give the share done, 0 to 1, and end with the groups
 * @throws EngineError as groupOrders, at the first step
 */
export function* groupOrderSteps(stack: Stack, studio: Studio, options: GroupOptions): Generator<number, OrderGroups> {
  if (!Array.isArray(stack?.pulls))
    throw new EngineError('order.stack', 'The stack must have a list of pulls, first down first: { pulls }.');
  const limits = { minDeltaE: options?.minDeltaE, minAreaMm2: options?.minAreaMm2 ?? LESSON_AREA_MM2.usual };
  checkMinDeltaE(limits.minDeltaE);
  checkAsked(stack, limits);
  const n = stack.pulls.length;
  const meeting = overlapsOf(stack, studio, { ...options, minDeltaE: 0 });
  const edges = meeting.filter(({ deltaE }) => deltaE >= limits.minDeltaE);
  const meets = new Set(meeting.map(({ a, b }) => a * n + b));
  const orders = permutations(n);
  const places = orderPlaces(stack, studio, orders, (a, b) => meets.has(a * n + b));
  const equal = equalOrders(places, orders.length);
  const links = yield* linksOf(places, equal, limits);
  const groups = completeLink(equal.length, links)
    .map((group) => group.flatMap((item) => entryAt(equal, item)).sort((a, b) => a - b))
    .sort((a, b) => num(a, 0) - num(b, 0));
  const pairs = pairReasons({ pulls: stack.pulls, studio, orders, places }, meeting, limits);
  return { orders, groups, edges, pairs, count: groups.length };
}

/** All pairs of pictures that count as one. */
function* linksOf(places: readonly OrderPlace[], equal: readonly (readonly number[])[], limits: PictureLimits): Generator<number, Link[]> {
  const links: Link[] = [];
  const firsts = equal.map((group) => num(group, 0));
  for (let a = 1; a < firsts.length; a++) {
    for (let b = 0; b < a; b++) {
      const distance = differenceWithin(places, num(firsts, a), num(firsts, b), limits);
      if (distance <= limits.minDeltaE) links.push({ a, b, distance });
    }
    if (a % 32 === 0) yield (a / firsts.length) ** 2;
  }
  return links;
}

function checkAsked(stack: Stack, { minAreaMm2 }: PictureLimits): void {
  if (!(minAreaMm2 >= 0 && minAreaMm2 < Infinity)) {
    throw new EngineError('order.min-area', say.sizeUnderWhichDifference(minAreaMm2));
  }
  const n = stack?.pulls?.length;
  if (Array.isArray(stack?.pulls) && !within(LESSON_PULLS, n)) {
    throw new EngineError('order.lesson-size', say.chosenChooseTwoTo(n === 1 ? say.onePullWas : say.pullsWere(n)));
  }
}

function permutations(n: number): number[][] {
  const out: number[][] = [];
  const extend = (taken: number[]): void => {
    if (taken.length === n) out.push(taken);
    for (let next = 0; next < n; next++) if (!taken.includes(next)) extend([...taken, next]);
  };
  extend([]);
  return out;
}
