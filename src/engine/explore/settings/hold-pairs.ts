import type { Pull } from '../../stack/types.ts';
import type { Hold } from '../types.ts';

type Pulls = readonly Pick<Pull, 'id'>[];

/** A hold on pulls that are in the stack, and its place among all holds. */
export interface Known {
  hold: Hold;
  index: number;
}

/** The words of a hold, the same for holds that say the same. */
function nameOf(hold: Hold): string {
  return JSON.stringify(hold.kind === 'before' ? [hold.kind, hold.pull, hold.other] : [hold.kind, hold.pull]);
}

/** Holds without those that an earlier one says already. */
export function withoutRepeats(known: readonly Known[]): Known[] {
  const seen = new Set<string>();
  return known.filter(({ hold }) => {
    const name = nameOf(hold);
    const fresh = !seen.has(name);
    seen.add(name);
    return fresh;
  });
}

/**
 * Pairs of holds that may contradict each other; all others never do, since two holds leave room
 * enough: two on one pull, two on one end of the stack, two orders the other way round, and an order
 * with a place at the end that it needs.
 * @param known each by itself kept by some order, none twice
 * @param left pulls that are not held out, first down first
 * @returns in the order of the first, then the second; at most some thousand
 */
export function suspectPairs(known: readonly Known[], left: Pulls): [Known, Known][] {
  const ends = new Set([left[0]?.id, left.at(-1)?.id]);
  const stays = new Set(left.map(({ id }) => id));
  // Where a pull lies that is held out elsewhere, only a look at the whole stack tells.
  const atEnd = (id: string): boolean => ends.has(id) || !stays.has(id);
  const byPull = new Map<string, Known[]>();
  const orders = new Map<string, Known>();
  const firsts: Known[] = [];
  const lasts: Known[] = [];
  for (const each of known) {
    const { hold } = each;
    if (hold.kind === 'before') {
      orders.set(nameOf(hold), each);
      continue;
    }
    // Inks and offsets say nothing of the order.
    if (hold.kind === 'ink' || hold.kind === 'lies') continue;
    const own = byPull.get(hold.pull);
    if (own === undefined) byPull.set(hold.pull, [each]);
    else own.push(each);
    const end = hold.kind === 'place' && atEnd(hold.pull);
    if (hold.kind === 'first' || end) firsts.push(each);
    if (hold.kind === 'last' || end) lasts.push(each);
  }
  const pairs = [...byPull.values(), firsts, lasts].flatMap((group) => pairsOf(group));
  for (const each of orders.values()) {
    const { hold } = each;
    if (hold.kind !== 'before') continue;
    const back = orders.get(nameOf({ ...hold, pull: hold.other, other: hold.pull }));
    if (back !== undefined && back.index > each.index) pairs.push([each, back]);
    for (const [id, kind] of [[hold.pull, 'last'] as const, [hold.other, 'first'] as const]) {
      for (const other of byPull.get(id) ?? []) {
        if (other.hold.kind === kind || (other.hold.kind === 'place' && atEnd(id))) pairs.push(inTurn(each, other));
      }
    }
  }
  return withoutTwins(pairs);
}

/** So many pairs of one kind are looked at; the first hundred faults are told. */
const MOST_OF_A_KIND = 5000;

function pairsOf(group: readonly Known[]): [Known, Known][] {
  const pairs: [Known, Known][] = [];
  for (const [i, a] of group.entries()) {
    for (const b of group.slice(i + 1)) {
      if (pairs.length >= MOST_OF_A_KIND) return pairs;
      pairs.push([a, b]);
    }
  }
  return pairs;
}

function inTurn(a: Known, b: Known): [Known, Known] {
  return a.index < b.index ? [a, b] : [b, a];
}

function withoutTwins(pairs: readonly [Known, Known][]): [Known, Known][] {
  const sorted = [...pairs].sort(([a, b], [c, d]) => a.index - c.index || b.index - d.index);
  return sorted.filter(([a, b], i) => {
    const before = sorted[i - 1];
    return before === undefined || before[0] !== a || before[1] !== b;
  });
}
