import { entryAt } from '../../base/at.ts';
import { meshKey } from '../../ink/film/mesh.ts';
import { traps } from '../../ink/film/printing.ts';
import type { Pull } from '../../stack/types.ts';
import type { Studio } from '../../studio/studio.ts';
import type { SharedPair } from '../overlaps.ts';
import { areaBeyond, orderDifference, type PictureLimits } from './order-difference.ts';
import type { OrderPlace } from './order-places.ts';

/**
 * Why the order of two pulls shows or not, when they are neighbours:
 * - 'shows' in all orders of the others, 'hidden' in some: see `hiddenUnder`
 * - 'apart': they never meet
 * - 'small': they meet, or differ, on no more than the size
 * - 'same-ink': either way it is as much of the same ink; with films thinner on films only of equal films
 * - 'absorb': both films only absorb, and take the same light in either order; never where films are
 *   thinner on films, as it then matters which of them lies on the paper
 * - 'alike': the two orders differ by no more than the threshold
 */
export type PairReason = 'shows' | 'hidden' | 'apart' | 'small' | 'same-ink' | 'absorb' | 'alike';

/** Two pulls, and what their exchange does. Positions in the stack, a < b. */
export interface PairOrder extends SharedPair {
  reason: PairReason;
  /** Most that their exchange shows in any order of the others, ΔE00 over more than the size; else 0. */
  deltaE: number;
  /** Largest area that differs by more than the threshold when they are exchanged, mm². */
  shownMm2: number;
  /** With 'hidden': the pulls each of which hides the pair when it lies over both; none when only several do. */
  hiddenUnder: number[];
}

/** All orders of a stack, and where they can differ. */
export interface OrderedStack {
  pulls: readonly Pull[];
  studio: Studio;
  orders: readonly (readonly number[])[];
  places: readonly OrderPlace[];
}

/**
 * For each pair of pulls, why their order shows or not.
 * @param meeting pairs that share area
 * @returns all pairs, by a, then b
 */
export function pairReasons(stack: OrderedStack, meeting: readonly SharedPair[], limits: PictureLimits): PairOrder[] {
  const n = stack.pulls.length;
  const indexOf = new Map(stack.orders.map((order, index) => [order.join(), index]));
  const areas = new Map(meeting.map(({ a, b, areaMm2 }) => [a * n + b, areaMm2]));
  const pairs: PairOrder[] = [];
  for (let a = 0; a < n; a++) {
    for (let b = a + 1; b < n; b++) {
      const areaMm2 = areas.get(a * n + b) ?? 0;
      const swaps = areaMm2 > 0 ? swapsOf(stack, indexOf, { a, b }, limits) : [];
      const deltaE = Math.max(0, ...swaps.map((swap) => swap.deltaE));
      const shownMm2 = Math.max(0, ...swaps.map((swap) => swap.shownMm2));
      const reason = reasonOf(stack, { a, b, areaMm2 }, swaps, limits);
      pairs.push({ a, b, areaMm2, reason, deltaE, shownMm2, hiddenUnder: reason === 'hidden' ? hidersOf(swaps, n) : [] });
    }
  }
  return pairs;
}

/** An exchange of two neighbours. */
interface Swap {
  over: readonly number[];
  deltaE: number;
  shownMm2: number;
  shows: boolean;
}

function swapsOf(
  { orders, places }: OrderedStack,
  indexOf: ReadonlyMap<string, number>,
  { a, b }: { a: number; b: number },
  { minDeltaE, minAreaMm2 }: PictureLimits,
): Swap[] {
  const swaps: Swap[] = [];
  orders.forEach((order, index) => {
    const at = order.indexOf(a);
    if (order[at + 1] !== b) return;
    const over = order.slice(at + 2);
    const other = indexIn(indexOf, [...order.slice(0, at), b, a, ...over]);
    const deltaE = orderDifference(places, index, other, minAreaMm2);
    swaps.push({ over, deltaE, shownMm2: areaBeyond(places, index, other, minDeltaE), shows: deltaE > minDeltaE });
  });
  return swaps;
}

function indexIn(indexOf: ReadonlyMap<string, number>, order: readonly number[]): number {
  return indexOf.get(order.join()) ?? NaN;
}

function reasonOf({ pulls, studio }: OrderedStack, pair: SharedPair, swaps: readonly Swap[], limits: PictureLimits): PairReason {
  if (pair.areaMm2 === 0) return 'apart';
  if (swaps.every((swap) => swap.shows)) return 'shows';
  if (swaps.some((swap) => swap.shows)) return 'hidden';
  const [one, other] = [entryAt(pulls, pair.a), entryAt(pulls, pair.b)];
  const commute = !traps(studio.trapping);
  if (one.ink === other.ink && (commute || sameFilm(studio, one, other))) return 'same-ink';
  if (commute && onlyAbsorbs(studio, one.ink) && onlyAbsorbs(studio, other.ink)) return 'absorb';
  if (pair.areaMm2 <= limits.minAreaMm2 || swaps.some((swap) => swap.shownMm2 > 0)) return 'small';
  return 'alike';
}

function sameFilm({ screens }: Studio, one: Pull, other: Pull): boolean {
  const meshOf = ({ screen }: Pull): string => meshKey(screens.find(({ id }) => id === screen)?.mesh);
  return one.strokes === other.strokes && meshOf(one) === meshOf(other);
}

function onlyAbsorbs(studio: Studio, ink: string): boolean {
  return studio.inks.find(({ id }) => id === ink)?.sx.every((s) => s === 0) ?? false;
}

/** Pulls under which the exchange never shows. */
function hidersOf(swaps: readonly Swap[], pulls: number): number[] {
  return Array.from({ length: pulls }, (_, pull) => pull).filter((pull) => {
    const under = swaps.filter(({ over }) => over.includes(pull));
    return under.length > 0 && under.every(({ shows }) => !shows);
  });
}
