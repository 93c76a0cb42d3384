import { entryAt, i32, num, u8 } from '../../base/at.ts';
import type { Random } from '../../base/random.ts';
import type { Meter } from '../model.ts';

/** Gains below this are rounding. */
const TINY = 1e-9;
/** Swaps by chance after which a split that no swap makes better is made better anew. */
const A_KICK = 3;

/** What each three places are worth in a group, whatever their order: places × places × places. */
export interface Worths {
  places: number;
  triples: Uint8Array;
}

/**
 * Makes a split into groups worth more, swap by swap: a group is worth the mean of its triples for each
 * place. What a swap gains is known from what each place would be worth in each group, which is kept, so
 * that all swaps can be looked at.
 */
export class SplitSearch {
  readonly #worths: Worths;
  readonly #random: Random;
  readonly #meter: Meter;
  readonly #groups: number[][];
  /** By group: what a sum of triples is to be multiplied by. */
  readonly #factors: number[];
  /** Groups × places: the triples that a place makes with the pairs of a group. */
  readonly #with: Int32Array;

  /** @param groups three places or more in each */
  constructor(groups: readonly (readonly number[])[], worths: Worths, random: Random, meter: Meter) {
    this.#worths = worths;
    this.#random = random;
    this.#meter = meter;
    this.#groups = groups.map((group) => [...group]);
    this.#factors = groups.map(({ length: k }) => 2 / ((k - 1) * (k - 2)));
    this.#with = new Int32Array(groups.length * worths.places);
    groups.forEach((_, g) => this.#sumUp(g));
  }

  /**
   * @param kicks how often a split that no swap makes better is changed by chance and made better again
   * @returns the best split that was met
   */
  best(kicks: number): number[][] {
    let gained = this.#climb();
    let most = gained;
    let best = this.#groups.map((group) => [...group]);
    for (let kick = 0; kick < kicks; kick++) {
      for (let s = 0; s < A_KICK; s++) gained += this.#anySwap();
      gained += this.#climb();
      if (gained > most - TINY) {
        most = gained;
        best = this.#groups.map((group) => [...group]);
        continue;
      }
      gained = most;
      best.forEach((group, g) => {
        const own = entryAt(this.#groups, g);
        if (group.every((p, i) => own[i] === p)) return;
        this.#groups[g] = [...group];
        this.#sumUp(g);
      });
    }
    return best;
  }

  /** Swaps for as long as some swap gains. @returns all gains */
  #climb(): number {
    let all = 0;
    for (let gain = Infinity; gain > TINY; all += gain) {
      gain = 0;
      for (let g = 1; g < this.#groups.length; g++) for (let h = 0; h < g; h++) gain += this.#between(g, h);
    }
    return all;
  }

  /** Tries all swaps between two groups. @returns what those that were made gained */
  #between(g: number, h: number): number {
    const [one, other] = [entryAt(this.#groups, g).length, entryAt(this.#groups, h).length];
    let all = 0;
    for (let at = 0; at < one * other; at++) {
      const [i, j] = [Math.floor(at / other), at % other];
      const gain = this.#gain(g, i, h, j);
      if (gain <= TINY) continue;
      this.#swap(g, i, h, j);
      all += gain;
    }
    this.#meter.units += (one * other * (one + other)) >> 6;
    return all;
  }

  #anySwap(): number {
    const groups = this.#groups;
    const g = this.#random.int(groups.length);
    const h = (g + 1 + this.#random.int(groups.length - 1)) % groups.length;
    const i = this.#random.int(entryAt(groups, g).length);
    const j = this.#random.int(entryAt(groups, h).length);
    const gain = this.#gain(g, i, h, j);
    this.#swap(g, i, h, j);
    return gain;
  }

  #gain(g: number, i: number, h: number, j: number): number {
    const n = this.#worths.places;
    const [a, b] = [num(entryAt(this.#groups, g), i), num(entryAt(this.#groups, h), j)];
    const first = i32(this.#with, g * n + b) - this.#both(g, a, b) - i32(this.#with, g * n + a);
    const second = i32(this.#with, h * n + a) - this.#both(h, b, a) - i32(this.#with, h * n + b);
    return first * num(this.#factors, g) + second * num(this.#factors, h);
  }

  /** The triples of two places with each of a group. */
  #both(g: number, a: number, b: number): number {
    const { places, triples } = this.#worths;
    const at = (a * places + b) * places;
    const group = entryAt(this.#groups, g);
    let sum = 0;
    for (let i = 0; i < group.length; i++) sum += u8(triples, at + num(group, i));
    return sum;
  }

  #swap(g: number, i: number, h: number, j: number): void {
    const [one, other] = [entryAt(this.#groups, g), entryAt(this.#groups, h)];
    [one[i], other[j]] = [num(other, j), num(one, i)];
    this.#sumUp(g);
    this.#sumUp(h);
  }

  #sumUp(g: number): void {
    const { places: n, triples } = this.#worths;
    const group = entryAt(this.#groups, g);
    for (let p = 0; p < n; p++) {
      let sum = 0;
      for (let i = 1; i < group.length; i++) {
        const at = (p * n + num(group, i)) * n;
        for (let k = 0; k < i; k++) sum += u8(triples, at + num(group, k));
      }
      this.#with[g * n + p] = sum;
    }
    this.#meter.units += (n * group.length ** 2) >> 7;
  }
}
