import { defined, entryAt } from '../../base/at.ts';
import { randomFrom } from '../../base/random.ts';
import { BedOrder } from './arrangement.ts';
import { BedClock, type BedCost, type BedSetUp } from './bed-clock.ts';
import { neighbourOf, together } from './moves.ts';
import type { Shop } from './shop.ts';

/** A worse order is measured against the one so many steps ago; 180 to 500 of them found the soonest ends. */
const MEMORY_STEPS = 400;
/** What a step takes beside laying out, in pulls. */
const STEP_WORK = 30;
/** Work between two reports: some milliseconds. */
const REPORT_WORK = 40_000;

/** How long and with what luck orders are tried. */
export interface BedSearchOptions {
  seed: string;
  /** Pulls laid out, over all orders tried, and what else a step takes. */
  work: number;
  /** An end that nothing can beat, tenths of a minute. */
  enough: number;
  /** Whether set-ups may be split and joined. */
  regroups: boolean;
}

/** Below 0 when the first is better: on several beds the end counts first, on one what is changed. */
function compareBedCosts(a: BedCost, b: BedCost, beds: number): number {
  const changes = a.mounts - b.mounts || a.inkChanges - b.inkChanges || a.registerMoves - b.registerMoves;
  if (beds > 1) return a.overruns - b.overruns || a.end - b.end || changes || a.wait - b.wait;
  return changes || a.end - b.end || a.wait - b.wait;
}

/** The end and a little how soon all beds are done, which leads a search over plains where the end stays. */
function height({ overruns, end, ends }: BedCost): number {
  return 1e9 * overruns + 8 * end + ends;
}

/**
 * Searches for a good order: the best of those given, then better ones by moving, splitting and
 * joining set-ups and by giving them other beds. A worse one is taken for a while when it is no worse
 * than the one so many steps ago (late acceptance, Burke and Bykov 2017).
 * @param starts at least one
 * @yields the share that is done, 0–1
 * @returns the best found; the same for the same seed and work
 */
export function* searchBeds(
  shop: Shop,
  starts: readonly (readonly BedSetUp[])[],
  { seed, work, enough, regroups }: BedSearchOptions,
): Generator<number, readonly BedSetUp[]> {
  const { beds } = shop;
  const clock = new BedClock(shop);
  const random = randomFrom(`beds ${seed}`);
  const better = (a: BedCost, b: BedCost): boolean => compareBedCosts(a, b, beds) < 0;
  const costed = starts.map((setUps) => ({ setUps, cost: defined(clock.cost(setUps)) }));
  let { setUps: best, cost: least } = costed.reduce((a, b) => (better(b.cost, a.cost) ? b : a));
  if (best.length === 0 || (best.length < 2 && beds < 2)) return best;
  const frames = leastMounts(shop);
  const isEnough = ({ overruns, end, mounts }: BedCost): boolean => beds > 1 && overruns === 0 && end <= enough && mounts <= frames;
  // Few long orders are found better by what counts, many short ones by the height: each has half of the work.
  const ways = beds > 1 ? [better, (a: BedCost, b: BedCost): boolean => height(a) < height(b)] : [better];
  let reported = 0;
  for (const [half, lower] of ways.entries()) {
    const until = (work * (half + 1)) / ways.length;
    let now = new BedOrder(best, shop);
    let nowCost = least;
    const memory = Array.from({ length: MEMORY_STEPS }, () => nowCost);
    for (let step = 0; clock.laid < until && !isEnough(least); step++) {
      clock.laid += STEP_WORK;
      if (clock.laid > reported + REPORT_WORK) {
        reported = clock.laid;
        yield Math.min(1, reported / work);
      }
      const next = neighbourOf(now, random, { shop, regroups });
      if (next === null) continue;
      const slot = step % memory.length;
      const before = entryAt(memory, slot);
      const most = beds > 1 && before.overruns === 0 && nowCost.overruns === 0 ? Math.max(before.end, nowCost.end) : Infinity;
      const cost = clock.cost(next, most);
      if (cost !== null && (!lower(before, cost) || !lower(nowCost, cost))) [now, nowCost] = [new BedOrder(next, shop), cost];
      memory[slot] = nowCost;
      if (better(nowCost, least)) [best, least] = [now.setUps, nowCost];
    }
  }
  return regroups ? joinedAgain(best, shop, clock) : best;
}

/** Joins what was split for nothing: set-ups of a kind become one wherever that costs no more. */
function joinedAgain(from: readonly BedSetUp[], shop: Shop, clock: BedClock): readonly BedSetUp[] {
  let order = new BedOrder(from, shop);
  let cost = clock.cost(from);
  for (let at = 0; at < order.setUps.length; at++) {
    const setUp = entryAt(order.setUps, at);
    const { low, high } = order.windowOf(setUp.pulls);
    for (const to of order.ofKind(setUp.kind)) {
      if (to === at || to <= low || to >= high) continue;
      const other = entryAt(order.setUps, to);
      const next = order.setUps.with(to, { ...other, pulls: together(other.pulls, setUp.pulls) });
      next.splice(at, 1);
      const joined = clock.cost(next);
      if (joined === null || cost === null || compareBedCosts(joined, cost, shop.beds) > 0) continue;
      [order, cost] = [new BedOrder(next, shop), joined];
      at = -1;
      break;
    }
  }
  return order.setUps;
}

/** Each frame is mounted once, but for those that are on the press. */
function leastMounts({ kindOf, kinds, onPress }: Shop): number {
  const frames = new Set(Array.from(kindOf, (kind) => entryAt(kinds, kind).screen));
  return frames.size - onPress.filter((there) => there !== null && frames.has(there.screen)).length;
}
