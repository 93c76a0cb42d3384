import { entryAt, i32, u32 } from '../base/at.ts';
import type { Random } from '../base/random.ts';
import { leastOrder } from './canonical.ts';
import type { Graph } from './graph.ts';

/** Where a walk begins, how far it goes and what it keeps. */
export interface Walk {
  /** [low, high] pairs that keep their order, whether they overlap or not. */
  fixed: readonly (readonly [number, number])[];
  /** An order of all pulls that keeps the fixed pairs. */
  start: readonly number[];
  /** Number of steps, 0 or more; each costs at most one search over the overlaps. */
  steps: number;
}

/**
 * A random walk over order classes: each step picks an overlap and, unless that closes a circle,
 * turns it round with probability one half. Steps are symmetric and every class can be reached,
 * so the limit is uniform over the classes that keep the fixed arcs.
 * @param graph what must not change places freely
 * @returns an order of the class reached
 * Reachability: classes are the regions of the hyperplanes x_a = x_b (Greene and Zaslavsky 1983);
 * fixed pairs cut out a convex part, and a straight way through it crosses one wall at a time.
 */
export function walkOrientation(graph: Graph, { fixed, start, steps }: Walk, random: Random): number[] {
  const n = graph.pulls;
  const place = new Int32Array(n);
  start.forEach((pull, index) => {
    place[pull] = index;
  });
  const arcs = new Arcs(n);
  const held = new Set(fixed.map(([low, high]) => low * n + high));
  for (const [low, high] of fixed) arcs.flip(low, high);
  const turnable: [number, number][] = [];
  for (const [a, b] of graph.edges) {
    const [low, high] = i32(place, a) < i32(place, b) ? [a, b] : [b, a];
    if (held.has(low * n + high)) continue;
    arcs.flip(low, high);
    turnable.push([low, high]);
  }
  for (let step = 1; step <= steps && turnable.length > 0; step++) {
    const edge = entryAt(turnable, random.int(turnable.length));
    if (random.int(2) === 0) continue;
    const [low, high] = edge;
    if (arcs.longWay(low, high)) continue;
    arcs.flip(low, high);
    arcs.flip(high, low);
    edge[0] = high;
    edge[1] = low;
  }
  return leastOrder([...fixed, ...turnable], n);
}

/** Which pulls lie straight above which, as bits, with scratch for searches. */
class Arcs {
  /** 32-bit words of a row. */
  readonly #words: number;
  /** Row v holds the pulls straight above v. */
  readonly #over: Uint32Array;
  readonly #todo: Uint32Array;
  readonly #done: Uint32Array;

  constructor(pulls: number) {
    this.#words = (pulls + 31) >> 5;
    this.#over = new Uint32Array(pulls * this.#words);
    this.#todo = new Uint32Array(this.#words);
    this.#done = new Uint32Array(this.#words);
  }

  /** Puts an arc in, or takes it out. */
  flip(low: number, high: number): void {
    const at = low * this.#words + (high >> 5);
    this.#over[at] = u32(this.#over, at) ^ (1 << (high & 31));
  }

  /** Whether a way other than the direct one leads up from low to high. */
  longWay(low: number, high: number): boolean {
    const over = this.#over;
    const words = this.#words;
    const todo = this.#todo;
    const done = this.#done;
    const highWord = high >> 5;
    const highBit = 1 << (high & 31);
    for (let w = 0; w < words; w++) todo[w] = u32(over, low * words + w);
    todo[highWord] = u32(todo, highWord) & ~highBit;
    done.fill(0);
    for (let word = 0; word < words;) {
      if (todo[word] === 0) {
        word++;
        continue;
      }
      const bit = u32(todo, word) & -u32(todo, word);
      const row = ((word << 5) + 31 - Math.clz32(bit)) * words;
      if (u32(over, row + highWord) & highBit) return true;
      todo[word] = u32(todo, word) ^ bit;
      done[word] = u32(done, word) | bit;
      let first = word;
      for (let w = words - 1; w >= 0; w--) {
        todo[w] = u32(todo, w) | (u32(over, row + w) & ~u32(done, w));
        if (todo[w] !== 0 && w < first) first = w;
      }
      word = first;
    }
    return false;
  }
}
