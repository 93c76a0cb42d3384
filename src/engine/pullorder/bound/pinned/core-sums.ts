import { entryAt, i32, num, u8 } from '../../../base/at.ts';

/** Letters that are looked at together. */
export interface Core {
  /** At most 16, as numbers in the set that is split into cores. */
  letters: readonly number[];
  /** What sets of them need, as bits of places in `letters`. */
  least: Uint8Array;
}

/** More than any word has. */
const TOO_MANY = 1000;

/**
 * How many letters a word must have when it is known what it has on some of them.
 *
 * Of the letters that are not in yet, each comes at least as often as the word asks for it (`WordPoints`),
 * and any set of them as often as it needs by itself. In each core both are put together: the letters that
 * are asked for most by the word, the others by what they need; the best of such splits counts.
 */
export class CoreSums {
  readonly #cores: readonly Core[];
  readonly #coreOf: Int32Array;
  readonly #bitOf: Int32Array;
  /** By core: no word has fewer of its letters. */
  readonly #needs: ArrayLike<number>;
  /** The core that has exactly so many letters, and no more. */
  readonly #exact: number;
  /** By core: letters of the word at hand, and what it must have of them. */
  readonly #has: Int32Array;
  readonly #own: Int32Array;
  #total = 0;

  /**
   * @param letters how many there are in all cores
   * @param needs by core; the word has exactly so many of the core `exact`. They may rise.
   */
  constructor(letters: number, cores: readonly Core[], needs: ArrayLike<number>, exact: number) {
    this.#cores = cores;
    this.#needs = needs;
    this.#exact = exact;
    this.#coreOf = new Int32Array(letters);
    this.#bitOf = new Int32Array(letters);
    this.#has = new Int32Array(cores.length);
    this.#own = new Int32Array(cores.length);
    cores.forEach((core, j) =>
      core.letters.forEach((l, place) => {
        this.#coreOf[l] = j;
        this.#bitOf[l] = 1 << place;
      }),
    );
  }

  /** By core, as bits of places: those of some letters. */
  restOf(letters: readonly number[]): Int32Array {
    const rest = new Int32Array(this.#cores.length);
    for (const l of letters) rest[i32(this.#coreOf, l)] = i32(rest, i32(this.#coreOf, l)) | i32(this.#bitOf, l);
    return rest;
  }

  /** Counts the letters of a word that begins at `at`. */
  count(word: Uint8Array, at: number, length: number): void {
    this.#has.fill(0);
    for (let g = at; g < at + length; g++) this.add(u8(word, g), 1);
  }

  /** Counts a letter more often. */
  add(letter: number, times: number): void {
    const j = i32(this.#coreOf, letter);
    this.#has[j] = i32(this.#has, j) + times;
  }

  /**
   * Least letters of a word that has what was counted.
   * @param rest by core: letters that it lacks, as bits of places
   * @param points from `at`, by letter: how often each of them must come at least
   */
  total(rest: Int32Array, points: Uint8Array, at: number): number {
    let total = 0;
    for (let j = 0; j < this.#cores.length; j++) total += this.#own[j] = this.#value(j, i32(rest, j), points, at);
    this.#total = total;
    return total;
  }

  /** The same once a letter must come more often, after `total`. */
  again(letter: number, rest: Int32Array, points: Uint8Array, at: number): number {
    const j = i32(this.#coreOf, letter);
    const before = i32(this.#own, j);
    const now = (this.#own[j] = this.#value(j, i32(rest, j), points, at));
    this.#total += now - before;
    return this.#total;
  }

  #value(j: number, rest: number, points: Uint8Array, at: number): number {
    const { letters, least } = entryAt(this.#cores, j);
    let most = u8(least, rest);
    let sum = 0;
    for (let left = rest; left !== 0;) {
      let bit = 0;
      let highest = -1;
      for (let bits = left; bits !== 0; bits &= bits - 1) {
        const place = 31 - Math.clz32(bits & -bits);
        const own = u8(points, at + num(letters, place));
        if (own > highest) {
          highest = own;
          bit = 1 << place;
        }
      }
      sum += highest;
      left ^= bit;
      const all = sum + u8(least, left);
      if (all > most) most = all;
    }
    const own = i32(this.#has, j) + most;
    const need = num(this.#needs, j);
    if (own <= need) return need;
    return j === this.#exact ? TOO_MANY : own;
  }
}
