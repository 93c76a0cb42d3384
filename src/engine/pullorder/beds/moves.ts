import { entryAt, num } from '../../base/at.ts';
import type { Random } from '../../base/random.ts';
import type { BedOrder } from './arrangement.ts';
import type { BedSetUp } from './bed-clock.ts';
import type { Shop } from './shop.ts';

/** What of an order may change. */
export interface MoveRules {
  shop: Shop;
  /** Whether set-ups may be split and joined; without, they stay whole. */
  regroups: boolean;
}

/** Of a hundred steps, how many at most do each thing where there are several beds; measured. */
const MOVE = 35;
const OTHER_BED = 50;
const EXCHANGE_TAILS = 55;
const SPLIT = 75;

/**
 * A random neighbour of an order that keeps what lies under and over what.
 * @returns null where the step that was drawn is none
 */
export function neighbourOf(order: BedOrder, random: Random, { shop, regroups }: MoveRules): BedSetUp[] | null {
  const { setUps } = order;
  const { beds } = shop;
  const at = random.int(setUps.length);
  const draw = beds > 1 ? random.int(regroups ? 100 : EXCHANGE_TAILS) : 0;
  if (draw < MOVE) return moved(order, at, random, shop);
  if (draw < OTHER_BED) return setUps.with(at, onOther(entryAt(setUps, at), random, beds));
  if (draw < EXCHANGE_TAILS) return tailsExchanged(order, at, random, beds);
  const setUp = entryAt(setUps, at);
  if (draw < SPLIT) {
    if (setUp.pulls.length < 2) return null;
    const part = partOf(order, setUp, random);
    return inserted(order, { part, at, left: without(setUp, part) }, random, shop);
  }
  return joined(order, at, random);
}

function onOther(setUp: BedSetUp, random: Random, beds: number): BedSetUp {
  return { ...setUp, bed: (setUp.bed + 1 + random.int(beds - 1)) % beds };
}

/** From a place on, what is on one bed goes to another and what is there comes to it. */
function tailsExchanged({ setUps }: BedOrder, at: number, random: Random, beds: number): BedSetUp[] {
  const one = entryAt(setUps, at).bed;
  const other = (one + 1 + random.int(beds - 1)) % beds;
  return setUps.map((setUp, i) => {
    if (i < at || (setUp.bed !== one && setUp.bed !== other)) return setUp;
    return { ...setUp, bed: setUp.bed === one ? other : one };
  });
}

function moved(order: BedOrder, at: number, random: Random, shop: Shop): BedSetUp[] | null {
  return inserted(order, { part: entryAt(order.setUps, at), at, left: null }, random, shop);
}

/**
 * Puts a set-up, or a part of one, where it may stand: beside one of its screen, or anywhere.
 * @param part the set-up or the part, with the index of the set-up that it is or was, and what is left of that
 */
function inserted(
  order: BedOrder,
  { part, at, left }: { part: BedSetUp; at: number; left: BedSetUp | null },
  random: Random,
  shop: Shop,
): BedSetUp[] | null {
  const { setUps } = order;
  const { low, high } = order.windowOf(part.pulls);
  let gap = low + 1 + random.int(high - low);
  let { bed } = part;
  const way = random.int(3);
  if (way === 0) {
    const alike = order.ofScreen(entryAt(shop.kinds, part.kind).screen);
    const beside = num(alike, random.int(alike.length));
    gap = Math.min(high, Math.max(low + 1, beside + random.int(2)));
    ({ bed } = entryAt(setUps, beside));
  } else if (way === 1) bed = random.int(shop.beds);
  if (left === null && (gap === at || gap === at + 1) && bed === part.bed) return null;
  const out = setUps.slice();
  if (left === null) out.splice(at, 1);
  else out[at] = left;
  out.splice(left === null && gap > at ? gap - 1 : gap, 0, bed === part.bed ? part : { ...part, bed });
  return out;
}

/** A set-up, or a part of it, printed with another of its kind. */
function joined(order: BedOrder, at: number, random: Random): BedSetUp[] | null {
  const { setUps } = order;
  const setUp = entryAt(setUps, at);
  const alike = order.ofKind(setUp.kind);
  if (alike.length < 2) return null;
  const to = num(alike, random.int(alike.length));
  if (to === at) return null;
  const whole = setUp.pulls.length < 2 || random.chance(1, 2);
  const part = whole ? setUp : partOf(order, setUp, random);
  const { low, high } = order.windowOf(part.pulls);
  if (to <= low || to >= high) return null;
  const other = entryAt(setUps, to);
  const out = setUps.with(to, { ...other, pulls: together(other.pulls, part.pulls) });
  if (whole) out.splice(at, 1);
  else out[at] = without(setUp, part);
  return out;
}

/** Pulls of two set-ups, ascending. */
export function together(one: Int32Array, other: Int32Array): Int32Array {
  const all = new Int32Array(one.length + other.length);
  all.set(one);
  all.set(other, one.length);
  return all.sort();
}

function without(setUp: BedSetUp, part: BedSetUp): BedSetUp {
  const gone = new Set(part.pulls);
  return { ...setUp, pulls: setUp.pulls.filter((pull) => !gone.has(pull)) };
}

/** Some of a set-up's sheets, not all: those whose turn comes late or early, those that stand together, or any. */
function partOf(order: BedOrder, setUp: BedSetUp, random: Random): BedSetUp {
  const { pulls } = setUp;
  const count = 1 + random.int(pulls.length - 1);
  const way = random.int(3);
  if (way === 0) {
    const from = random.int(pulls.length);
    return { ...setUp, pulls: pulls.filter((_, k) => (k - from + pulls.length) % pulls.length < count) };
  }
  if (way === 1) return { ...setUp, pulls: Int32Array.from(random.shuffle([...pulls]).slice(0, count)).sort() };
  const turns = Array.from(pulls, (pull) => ({ pull, turn: order.freeAfter(pull) })).sort((a, b) => a.turn - b.turn || a.pull - b.pull);
  // Sheets whose turn comes at once stay together.
  const { turn } = entryAt(turns, count);
  const late = turns.filter((each) => each.turn >= turn).map(({ pull }) => pull);
  const part = late.length < pulls.length ? late : turns.slice(count).map(({ pull }) => pull);
  return { ...setUp, pulls: Int32Array.from(part).sort() };
}
