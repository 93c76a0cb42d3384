import { entryAt, f64, num, u8 } from '../../base/at.ts';
import type { Random } from '../../base/random.ts';
import type { Meter } from '../model.ts';
import { noteEveryWay } from './every-way.ts';
import { SplitSearch } from './split-search.ts';
import { GUESS_PARTS } from './three-guess.ts';

/** Letters up to which all triples are looked at. */
export const MAX_FOR_TRIPLES = 100;

/**
 * Splits letters into groups that are likely to need many set-ups. How often a group must come is
 * guessed as the mean of what its pairs or triples need, per letter; letters change groups while the
 * guess for all groups does not fall.
 */
export class LetterGroups {
  readonly #letters: readonly number[];
  readonly #random: Random;
  readonly #meter: Meter;
  readonly #pairs: Float64Array;
  readonly #triples: Uint8Array;
  #byTriples = false;

  constructor(letters: readonly number[], random: Random, meter: Meter) {
    const n = letters.length;
    this.#letters = letters;
    this.#random = random;
    this.#meter = meter;
    this.#pairs = new Float64Array(n * n);
    this.#triples = new Uint8Array(n <= MAX_FOR_TRIPLES ? n ** 3 : 0);
  }

  /** What the letters at places i and j need together. */
  setPair(i: number, j: number, need: number): void {
    this.#pairs[i * this.#letters.length + j] = this.#pairs[j * this.#letters.length + i] = need;
  }

  /** What three letters need together, in parts of a mount (`ThreeGuess`). */
  setTriple(i: number, j: number, h: number, need: number): void {
    noteEveryWay(this.#triples, this.#letters.length, [i, j, h], need);
  }

  /** From now on triples are the measure; all must be set. */
  useTriples(): void {
    this.#byTriples = true;
  }

  /** @param group places, in any order */
  #guess(group: readonly number[]): number {
    const n = this.#letters.length;
    const k = group.length;
    let sum = 0;
    if (k < 3 || !this.#byTriples) {
      for (let a = 1; a < k; a++) for (let b = 0; b < a; b++) sum += f64(this.#pairs, num(group, a) * n + num(group, b));
      this.#meter.units += 1 + ((k * k) >> 3);
      return k > 1 ? sum / (k - 1) : 1;
    }
    for (let a = 0; a < k; a++)
      for (let b = a + 1; b < k; b++)
        for (let c = b + 1; c < k; c++) sum += u8(this.#triples, (num(group, a) * n + num(group, b)) * n + num(group, c));
    this.#meter.units += 2 + ((k ** 3) >> 5);
    return (2 * sum) / ((k - 1) * (k - 2) * GUESS_PARTS);
  }

  /**
   * @param size most letters in a group
   * @param among the letters that are split
   * @param kicks asks for a split that is guessed to need more, by so many kicks (`SplitSearch`); triples alone tell that
   * @returns groups of letters, each letter once, sizes as even as can be; another split each time
   */
  split(size: number, among: readonly number[] = this.#letters, kicks?: number): number[][] {
    const count = Math.ceil(among.length / size);
    const places = this.#random.shuffle(among.map((l) => this.#letters.indexOf(l)));
    const groups: number[][] = Array.from({ length: count }, () => []);
    places.forEach((p, i) => entryAt(groups, i % count).push(p));
    if (kicks !== undefined && this.#byTriples && count > 1 && groups.every(({ length }) => length > 2)) {
      const worths = { places: this.#letters.length, triples: this.#triples };
      const best = new SplitSearch(groups, worths, this.#random, this.#meter).best(kicks);
      return best.map((group) => group.map((p) => num(this.#letters, p)));
    }
    const guesses = groups.map((g) => this.#guess(g));
    if (count > 1) {
      for (let idle = 0, t = 0; idle < 40 * count && t < 4000; idle++, t++) {
        const g = this.#random.int(count);
        const h = (g + 1 + this.#random.int(count - 1)) % count;
        const i = this.#random.int(entryAt(groups, g).length);
        const j = this.#random.int(entryAt(groups, h).length);
        const swap = (): void => {
          [entryAt(groups, g)[i], entryAt(groups, h)[j]] = [num(entryAt(groups, h), j), num(entryAt(groups, g), i)];
        };
        swap();
        const first = this.#guess(entryAt(groups, g));
        const second = this.#guess(entryAt(groups, h));
        const gain = first + second - num(guesses, g) - num(guesses, h);
        if (gain < -1e-9) swap();
        else {
          if (gain > 1e-9) idle = 0;
          guesses[g] = first;
          guesses[h] = second;
        }
      }
    }
    return groups.map((group) => group.map((p) => num(this.#letters, p)));
  }

  /**
   * A group that is likely to need more than it is given.
   * @param given for each letter how often it comes so far
   * @param factor what groups of this size needed, as a part of what was guessed
   * @returns letters; another group each time where several are about as likely
   */
  wanting(size: number, given: ArrayLike<number>, factor: number): number[] {
    const n = this.#letters.length;
    const places = this.#random.shuffle(this.#letters.map((_, i) => i));
    const group = places.slice(0, size);
    const rest = places.slice(size);
    const want = (): number => {
      let sum = factor * this.#guess(group);
      for (const p of group) sum -= num(given, num(this.#letters, p));
      return sum;
    };
    let best = want();
    for (let idle = 0, t = 0; rest.length > 0 && idle < 3 * n && t < 1000; idle++, t++) {
      const i = this.#random.int(group.length);
      const j = this.#random.int(rest.length);
      [group[i], rest[j]] = [num(rest, j), num(group, i)];
      const now = want();
      if (now >= best) {
        if (now > best + 1e-9) idle = 0;
        best = now;
      } else [group[i], rest[j]] = [num(rest, j), num(group, i)];
    }
    return group.map((p) => num(this.#letters, p));
  }

  /** The guess for a group of letters. */
  guessFor(letters: readonly number[]): number {
    return this.#guess(letters.map((l) => this.#letters.indexOf(l)));
  }
}
