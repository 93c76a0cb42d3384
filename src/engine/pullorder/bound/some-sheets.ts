import { entryAt } from '../../base/at.ts';
import type { Random } from '../../base/random.ts';
import type { Meter, Model } from '../model.ts';
import { automataOf } from '../search/beam.ts';
import { exact } from '../search/exact.ts';
import type { CoverRows } from './cover-rows.ts';
import { forcedCounts } from './multiplicity.ts';

/** What stays the same over searches. */
interface Means {
  rows: CoverRows;
  random: Random;
  meter: Meter;
  /** Called with each bound that is shown. */
  raise: (least: number) => void;
}

/**
 * Shortest words for a few sheets with all their letters.
 * @param asked sheets at a time, how many times, and states of a search
 * @returns the best bound that they gave, and a shortest word where they are all sheets
 */
export function* someSheets(
  model: Model,
  { size, tries, maxNodes }: { size: number; tries: number; maxNodes: number },
  { rows, random, meter, raise }: Means,
): Generator<void, { most: number; word: number[] | null }> {
  const { orders } = model;
  let most = 0;
  let found: number[] | null = null;
  const bySize = orders.map((_, c) => c).sort((a, b) => entryAt(orders, b).letters.length - entryAt(orders, a).letters.length);
  for (let t = 0; t < tries; t++) {
    const all = orders.length <= size;
    const chosen = new Set(all ? bySize : t < 2 ? bySize.slice(t, t + size) : random.shuffle(bySize).slice(0, size));
    const part = { ...model, orders: orders.filter((_, c) => chosen.has(c)) };
    const { lower, word } = exact(part, automataOf(part, meter), { below: Infinity, before: -1, after: -1, maxNodes, meter });
    if (all && word) found = word;
    // Letters that these sheets lack still come as often as other sheets force.
    const counts = forcedCounts(part.orders, (l) => l, part.letterCount, part.cascade);
    meter.units += part.orders.reduce((n, o) => n + o.letters.length ** 2, 0);
    const missing = rows.letters.filter((l) => counts[l] === 0);
    most = Math.max(most, lower + rows.sumOf(missing));
    raise(most);
    yield;
    if (all) break;
  }
  return { most, word: found };
}
