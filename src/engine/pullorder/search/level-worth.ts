import { entryAt, i32 } from '../../base/at.ts';
import type { Automaton } from '../automaton.ts';
import { INK, MOUNT, MOVE, type Model } from '../model.ts';
import { chanceTable } from './ranking.ts';

/** How the partial words of one length are weighed. */
export interface LevelOptions {
  /** How far ahead progress is judged, in tenths of the standard reach. */
  reachTenths: number;
  /** How much finishing letters for all sheets counts beside progress on each; about 6. */
  finish: number;
  /** What an ink change counts in the ranking, in tenths of a mount. */
  thriftTenths: number;
}

/**
 * What progress is worth at one length of word. Words that took fewer mounts than others have more
 * of them left, so each number of mounts has a table of chances of its own.
 */
export class LevelWorth {
  /** What finishing a thousandth of a letter is worth, in the currency of chances. */
  readonly finish: number;
  readonly #letterCount: number;
  readonly #uniform: boolean;
  readonly #tables = new Map<number, Int32Array>();
  readonly #longest: number;
  readonly #reach: number;
  readonly #leastMounts: number;
  /** What an ink change costs, in the same currency. */
  readonly #thrift: number;

  /**
   * @param states of all partial words, a row of one an order each; the first row is the best word's
   * @param costs packed costs of the words
   */
  constructor(
    model: Model,
    automata: readonly Automaton[],
    level: { states: Int32Array; costs: readonly number[] },
    options: LevelOptions,
  ) {
    const { states, costs } = level;
    const orders = automata.length;
    this.#letterCount = model.letterCount;
    this.#uniform = model.kinds === null;
    let longest = 0;
    for (let i = 0; i < states.length; i++) longest = Math.max(longest, i32(entryAt(automata, i % orders).chain, i32(states, i)));
    let leastMounts = Infinity;
    for (const cost of costs) leastMounts = Math.min(leastMounts, this.mountsOf(cost));
    this.#longest = longest;
    this.#leastMounts = leastMounts;
    this.#reach = Math.max(1, Math.round((longest * options.reachTenths) / 10));
    // What one set-up more or less is worth in the currency of chances.
    let step = 0;
    const now = this.chances(leastMounts);
    const later = this.chances(leastMounts + 1);
    for (let c = 0; c < orders; c++) {
      const chain = i32(entryAt(automata, c).chain, i32(states, c));
      step += i32(now, chain) - i32(later, chain);
    }
    this.#thrift = (step * options.thriftTenths) / 10;
    this.finish = (step * options.finish) / 1000;
  }

  /** Mounts of a packed cost; in models that count letters as 1 each, the letters. */
  mountsOf(cost: number): number {
    return this.#uniform ? cost : Math.floor(cost / MOUNT);
  }

  /** By longest chain left: the logarithm of the chance that the set-ups left are enough for it. */
  chances(mounts: number): Int32Array {
    const left = Math.max(0, this.#reach - (mounts - this.#leastMounts));
    let table = this.#tables.get(left);
    if (!table) this.#tables.set(left, (table = chanceTable(this.#longest, left, this.#letterCount)));
    return table;
  }

  /** What the ink changes and changes of offset of a packed cost take off. */
  changes(cost: number): number {
    return this.#thrift * ((Math.floor(cost / INK) % (MOUNT / INK)) + 0.3 * (Math.floor(cost / MOVE) % (INK / MOVE)));
  }
}
