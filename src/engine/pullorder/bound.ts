import type { Random } from '../base/random.ts';
import { automataOf } from './beam.ts';
import { coverBound, type CoverRow } from './cover.ts';
import { exact } from './exact.ts';
import { distinctOrders, type Meter, type Model, type Order } from './model.ts';
import { forcedCounts } from './multiplicity.ts';

/**
 * Lower bound on the length of any word that finishes a model, raised bit by bit.
 *
 * Three facts carry it. (1) Strike all letters outside a set X from a word: what is left finishes
 * the part of the model that keeps only the pulls of X, because turns that had come have still
 * come. So the letters of X come at least as often as a shortest word for that part is long.
 * (2) A word for all sheets is one for some of them. (3) Counts are whole numbers, so the least
 * total that agrees with all such facts is a covering integer programme. Parts are solved by A*,
 * whose lower bound holds even when it is cut short.
 */
export class BoundSearch {
  readonly #model: Model;
  readonly #random: Random;
  readonly #meter: Meter;
  readonly #counts: number[];
  readonly #rows = new Map<string, CoverRow>();
  readonly #letters: number[];
  /** For each order the pulls of each letter, ascending. */
  readonly #pullsOf: Map<number, number[]>[];
  readonly #clash = new Map<number, Map<number, number>>();
  readonly #tasks: Generator<void, void>;
  /** No word is shorter. */
  best: number;
  /** A shortest word of the whole model, when one was met on the way. */
  word: number[] | null = null;

  /** @param model letters count 1 each, whatever `kinds` says */
  constructor(model: Model, random: Random, meter: Meter) {
    this.#model = { ...model, kinds: null, orders: distinctOrders(model.orders) };
    this.#random = random;
    this.#meter = meter;
    this.#counts = forcedCounts(this.#model.orders, (l) => l, model.letterCount, model.cascade);
    this.#letters = this.#counts.flatMap((n, l) => (n > 0 ? [l] : []));
    this.best = this.#counts.reduce((a, b) => a + b, 0);
    this.#pullsOf = this.#model.orders.map((order) => {
      const pulls = new Map<number, number[]>();
      order.letters.forEach((l, p) => {
        if (!pulls.has(l)) pulls.set(l, []);
        pulls.get(l)!.push(p);
      });
      return pulls;
    });
    this.#tasks = this.#work();
  }

  /** Works for about so many units. @returns false when it has nothing left to try */
  run(units: number): boolean {
    const until = this.#meter.units + units;
    while (this.#meter.units < until) if (this.#tasks.next().done) return false;
    return true;
  }

  #sumOf(letters: readonly number[]): number {
    return letters.reduce((sum, l) => sum + this.#counts[l]!, 0);
  }

  /** Least number of times that these letters come together. */
  #least(letters: readonly number[], maxNodes: number): number {
    const sorted = [...letters].sort((a, b) => a - b);
    const key = sorted.join();
    const known = this.#rows.get(key);
    if (known) return known.least;
    const part = this.#onLetters(sorted);
    const { lower } = exact(part, automataOf(part, this.#meter), { below: Infinity, before: -1, after: -1, maxNodes, meter: this.#meter });
    const least = Math.max(lower, this.#sumOf(sorted));
    this.#rows.set(key, { letters: sorted, least });
    return least;
  }

  /** The model with the pulls of these letters only. */
  #onLetters(letters: readonly number[]): Model {
    const parts = this.#model.orders.map((order, c): Order => {
      const pulls = letters.flatMap((l) => this.#pullsOf[c]!.get(l) ?? []).sort((a, b) => a - b);
      this.#meter.units += 20 + 2 * pulls.length ** 2;
      return {
        letters: pulls.map((p) => order.letters[p]!),
        preds: pulls.map((p) => pulls.flatMap((q, i) => (q < p && holds(order.preds[p]!, q) ? [i] : []))),
      };
    });
    return { ...this.#model, orders: distinctOrders(parts) };
  }

  #cover(maxNodes: number): void {
    const useful = [...this.#rows.values()].filter((row) => row.least > this.#sumOf(row.letters));
    // The tightest rows first; a programme of thousands of rows would eat the time it saves.
    const excess = (row: CoverRow): number => row.least - this.#sumOf(row.letters);
    useful.sort((a, b) => excess(b) / b.letters.length - excess(a) / a.letters.length);
    this.best = Math.max(this.best, coverBound(this.#counts, useful.slice(0, 1500), this.best, maxNodes, this.#meter));
  }

  *#work(): Generator<void, void> {
    const { orders } = this.#model;
    if (orders.length === 0) return;
    yield* this.#pairs();
    this.#cover(200);
    yield;
    // Few pairs of sheets say much about all: the longest ones, and some at random.
    yield* this.#sheets(2, 6, 3000);
    for (let round = 0; round < 40; round++) {
      const size = 3 + Math.min(round, 9);
      const nodes = Math.min(60_000, 1500 * 2 ** round);
      for (let t = size <= 4 ? 6 : 2; t > 0; t--) {
        let total = 0;
        for (const group of this.split(size)) {
          if (group.length === 1) {
            total += this.#sumOf(group);
            continue;
          }
          total += this.#least(group, nodes);
          yield;
        }
        this.best = Math.max(this.best, total);
        yield;
      }
      this.#cover(300 * (1 + round));
      yield;
      yield* this.#sheets(2 + Math.min(round, 4), 4 + 2 * round, nodes);
    }
  }

  /** Finds how much each two letters clash: what they need together beyond what each needs alone. */
  *#pairs(): Generator<void, void> {
    const letters = this.#letters;
    if ((letters.length * (letters.length - 1)) / 2 > 3000) return;
    for (let i = 0; i < letters.length; i++) {
      for (let j = 0; j < i; j++) {
        const pair = [letters[j]!, letters[i]!];
        const excess = this.#least(pair, 2000) - this.#sumOf(pair);
        if (excess <= 0) continue;
        for (const [a, b] of [pair, [...pair].reverse()] as [number, number][]) {
          if (!this.#clash.has(a)) this.#clash.set(a, new Map());
          this.#clash.get(a)!.set(b, excess);
        }
      }
      yield;
    }
  }

  /** Shortest words for a few sheets with all their letters. */
  *#sheets(size: number, tries: number, maxNodes: number): Generator<void, void> {
    const { orders } = this.#model;
    const bySize = orders.map((_, c) => c).sort((a, b) => orders[b]!.letters.length - orders[a]!.letters.length);
    for (let t = 0; t < tries; t++) {
      const all = orders.length <= size;
      const chosen = new Set(all ? bySize : t < 2 ? bySize.slice(t, t + size) : this.#random.shuffle(bySize).slice(0, size));
      const part = { ...this.#model, orders: orders.filter((_, c) => chosen.has(c)) };
      const { lower, word } = exact(part, automataOf(part, this.#meter), { below: Infinity, before: -1, after: -1, maxNodes, meter: this.#meter });
      if (all && word) this.word = word;
      // Letters that these sheets lack still come as often as other sheets force.
      const counts = forcedCounts(part.orders, (l) => l, part.letterCount, part.cascade);
      this.#meter.units += part.orders.reduce((n, o) => n + o.letters.length ** 2, 0);
      const missing = this.#letters.filter((l) => counts[l] === 0);
      this.best = Math.max(this.best, lower + this.#sumOf(missing));
      yield;
      if (all) return;
    }
  }

  /**
   * Splits all letters into groups that clash much within; another split at each call.
   * @param size most letters in a group
   */
  split(size: number): number[][] {
    if (this.#clash.size === 0) return this.#letters.map((l) => [l]);
    this.#meter.units += this.#letters.length ** 2;
    const left = new Set(this.#random.shuffle(this.#letters));
    const groups: number[][] = [];
    for (const first of [...left]) {
      if (!left.delete(first)) continue;
      const group = [first];
      while (group.length < size && left.size > 0) {
        let best = -1;
        let most = 0;
        for (const l of left) {
          let clash = 0;
          for (const g of group) clash += this.#clash.get(g)?.get(l) ?? 0;
          if (clash > most) {
            most = clash;
            best = l;
          }
        }
        if (best < 0) break;
        left.delete(best);
        group.push(best);
      }
      groups.push(group);
    }
    return groups;
  }
}

/** Whether an ascending list holds a number. */
function holds(list: readonly number[], value: number): boolean {
  let low = 0;
  let high = list.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (list[middle]! < value) low = middle + 1;
    else high = middle;
  }
  return list[low] === value;
}
