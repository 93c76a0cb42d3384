import { f64, num } from '../../base/at.ts';
import type { Random } from '../../base/random.ts';
import type { Meter } from '../model.ts';
import type { Clashes } from './clashes.ts';
import type { CoverRows } from './cover-rows.ts';
import { LetterGroups, MAX_FOR_TRIPLES } from './letter-groups.ts';
import { ThreeGuess } from './three-guess.ts';

/** Letters up to which what each three need is a row of the covering programme. */
const MAX_TRIPLE_ROWS = 26;
/** Letters of a set, and states of its search, round by round; the last ones over and over, with four times the states each time. */
const ROUNDS = [
  { size: 10, states: 50 },
  { size: 10, states: 200 },
  { size: 12, states: 400 },
  { size: 10, states: 1000 },
];
const AGAIN = 2;

/**
 * Sets of letters whose need is looked for, round by round: sets that split all letters and are
 * likely to need much, then such that need more than the present mix of counts gives them.
 */
export class SetRounds {
  readonly #rows: CoverRows;
  readonly #groups: LetterGroups;
  #round = 0;

  private constructor(rows: CoverRows, groups: LetterGroups) {
    this.#rows = rows;
    this.#groups = groups;
  }

  /** Looks at what each two and three letters need; three only where letters are not too many. */
  static *begin(rows: CoverRows, clashes: Clashes, random: Random, meter: Meter): Generator<void, SetRounds> {
    const { letters } = rows;
    const groups = new LetterGroups(letters, random, meter);
    for (let i = 0; i < letters.length; i++) {
      for (let j = 0; j < i; j++) {
        const pair = [num(letters, i), num(letters, j)] as const;
        groups.setPair(i, j, rows.sumOf(pair) + clashes.get(...pair));
      }
    }
    if (letters.length > MAX_FOR_TRIPLES) return new SetRounds(rows, groups);
    const guess = new ThreeGuess(rows.orders, letters, meter);
    for (let i = 2; i < letters.length; i++) {
      for (let j = 1; j < i; j++) {
        for (let h = 0; h < j; h++) {
          const three = [num(letters, i), num(letters, j), num(letters, h)];
          if (letters.length <= MAX_TRIPLE_ROWS) yield* rows.least(three, 2000);
          groups.setTriple(i, j, h, guess.of(i, j, h));
        }
        yield;
      }
    }
    groups.useTriples();
    return new SetRounds(rows, groups);
  }

  /** Splits all letters, or some, into even groups that are likely to need much; another split at each call. */
  split(size: number, among?: readonly number[], kicks?: number): number[][] {
    return this.#groups.split(size, among, kicks);
  }

  /**
   * The next round.
   * @param total called with what sets that split all letters need together
   * @param counts how often each letter comes in a cheapest mix of fractions
   */
  *next(total: (least: number) => void, counts: () => Float64Array): Generator<void, void> {
    const { size, states } = this.#sizes();
    const groups = this.#groups.split(size);
    let guessed = 0;
    let found = 0;
    let sum = 0;
    for (const group of groups) {
      const least = group.length === 1 ? this.#rows.sumOf(group) : yield* this.#rows.least(group, states);
      sum += least;
      if (group.length > 3) {
        guessed += this.#groups.guessFor(group);
        found += least;
      }
      yield;
    }
    total(sum);
    if (groups.length > 1 && found > 0)
      yield* this.#price({ size, states, factor: found / guessed, tries: groups.length + 4 + 2 * this.#round }, counts);
    this.#round++;
  }

  #sizes(): { size: number; states: number } {
    const known = ROUNDS[this.#round];
    if (known) return known;
    const over = this.#round - ROUNDS.length;
    const again = ROUNDS.length - AGAIN;
    const { size, states } = ROUNDS[AGAIN + (over % again)] ?? { size: 10, states: 400 };
    return { size, states: Math.min(24_000, states * 4 ** (1 + Math.floor(over / again))) };
  }

  /** Looks for sets that need more than the cheapest mix of fractions gives them, while it finds some. */
  *#price(
    { size, states, factor, tries }: { size: number; states: number; factor: number; tries: number },
    counts: () => Float64Array,
  ): Generator<void, void> {
    let given = counts();
    yield;
    for (let vain = 0, t = 0; vain < 3 && t < tries; t++) {
      const set = this.#groups.wanting(size, given, factor);
      const least = yield* this.#rows.least(set, states);
      if (least <= set.reduce((sum, l) => sum + f64(given, l), 0) + 1e-6) vain++;
      else {
        vain = 0;
        given = counts();
      }
      yield;
    }
  }
}
