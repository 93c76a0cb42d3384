import { i32 } from '../../../base/at.ts';
import type { Random } from '../../../base/random.ts';
import { grown } from '../../grown.ts';
import type { Meter, Model } from '../../model.ts';
import { OpenRows } from './open-rows.ts';

/** Steps without gain after which all that was forbidden is allowed again; by trial 300 to 1000 do about as well. */
const PATIENCE = 500;
/**
 * Steps for which a letter that was put in stays, in hundredths of the word's length: drawn anew from this
 * range now and then, as no one number suits all words. A tenth as long, words came out 2 % longer.
 */
const STAY = { least: 10, most: 100, drawnEvery: 100 };
/** Numbers that the masks and rows of a model may take, so that memory stays small. */
const MOST_NUMBERS = 4_000_000;

/** Whether a model is small enough to be walked. */
export function canExchange({ orders, cascade, kinds, letterCount }: Model, length: number): boolean {
  const pulls = orders.reduce((most, { letters }) => Math.max(most, letters.length), 1);
  const words = (pulls + 31) >>> 5;
  // Masks of what each pull needs, masks of each letter, and rows of the word.
  const most = words * orders.length * Math.max(32 * words, letterCount, length);
  return cascade && kinds === null && most <= MOST_NUMBERS;
}

/**
 * Shortens a word of a model of screens by exchanging letters. Where no letter can be spared, the one is
 * struck out without which the fewest pulls stay open, and the one put in, at the place, that leaves the
 * fewest; what was just put in or struck out may not be undone for a while, so that the walk goes on past
 * words that leave something open (tabu search, after Glover 1989, from memory). A word that leaves
 * nothing open is whole.
 */
export class Exchanger {
  readonly #rows: OpenRows;
  readonly #random: Random;
  readonly #meter: Meter;
  /** Looks at masks; two take as long as one unit of other searches. */
  readonly #looks: Meter = { units: 0 };
  /** Step until which each letter is not put in; and each place of the word is not struck out. */
  readonly #notIn: Int32Array;
  #notOut = new Int32Array(64);
  /** What each letter would print at the place at hand, 0 again after use; and letters that print any. */
  readonly #gain: Int32Array;
  readonly #touched: Int32Array;
  /** By place in the list of open orders: what fits at the place at hand, in masks, and how many pulls are open. */
  readonly #fitting: Int32Array;
  readonly #openOf: Int32Array;
  #open = 0;
  /** Places, or places and letters, that are equally good. */
  #places = new Int32Array(64);
  #letters = new Int32Array(64);
  /** The last whole word of the shortest length. */
  #whole = new Int32Array(64);
  #length = 0;
  #steps = 0;
  #idle = 0;
  #stay = 0;

  constructor(model: Model, random: Random, meter: Meter) {
    this.#rows = new OpenRows(model, this.#looks);
    this.#random = random;
    this.#meter = meter;
    this.#gain = new Int32Array(model.letterCount);
    this.#touched = new Int32Array(model.letterCount);
    this.#fitting = new Int32Array(this.#rows.width);
    this.#openOf = new Int32Array(this.#rows.sheets.count);
    this.#notIn = new Int32Array(model.letterCount);
  }

  /** The shortest whole word so far. */
  get word(): number[] {
    return [...this.#whole.subarray(0, this.#length)];
  }

  /** Its length. */
  get length(): number {
    return this.#length;
  }

  /** Takes another whole word. */
  set(word: readonly number[]): void {
    this.#rows.set(word);
    this.#keep();
    this.#drawStay();
    this.#goOn();
  }

  /** Walks for about so many units. @returns whether the word became shorter */
  run(units: number): boolean {
    const until = this.#meter.units + units;
    const length = this.#length;
    while (this.#meter.units < until && this.#rows.length > 1) {
      const before = this.#looks.units;
      this.#step();
      this.#meter.units += 1 + ((this.#looks.units - before) >> 1);
    }
    return this.#length < length;
  }

  #keep(): void {
    const { word, length } = this.#rows;
    if (length > this.#whole.length) {
      this.#whole = new Int32Array(2 * length);
      this.#notOut = grown(this.#notOut, 2 * length + 1);
    }
    this.#whole.set(length === word.length ? word : word.subarray(0, length));
    this.#length = length;
  }

  #goOn(): void {
    this.#rows.set(this.#whole.subarray(0, this.#length));
    this.#idle = 0;
    this.#notOut.fill(0);
    this.#notIn.fill(0);
  }

  #step(): void {
    this.#steps++;
    if (++this.#idle > PATIENCE) this.#goOn();
    if (this.#idle % STAY.drawnEvery === 0) this.#drawStay();
    const rows = this.#rows;
    const out = this.#leastLost();
    if (out < 0) return;
    const letter = i32(rows.word, out);
    this.#notOut.copyWithin(out, out + 1, rows.length);
    rows.strike(out);
    if (rows.openCount === 0) {
      this.#keep();
      this.#idle = 0;
      return;
    }
    this.#notIn[letter] = this.#steps + this.#random.int(2);
    this.#putBest();
  }

  #drawStay(): void {
    const share = STAY.least + this.#random.int(STAY.most - STAY.least + 1);
    this.#stay = Math.round((this.#rows.length * share) / 100);
  }

  /** The place of a letter that can be struck out with the least loss; −1 when none may be. */
  #leastLost(): number {
    const { lost, length } = this.#rows;
    let least = Infinity;
    let ties = 0;
    for (let i = 0; i < length; i++) {
      const value = i32(lost, i);
      if (value > least || (value > 0 && i32(this.#notOut, i) > this.#steps)) continue;
      if (value < least) ties = 0;
      least = value;
      this.#note(ties++, i, 0);
    }
    this.#looks.units += length >> 2;
    return ties === 0 ? -1 : i32(this.#places, this.#random.int(ties));
  }

  #note(tie: number, place: number, letter: number): void {
    if (tie >= this.#places.length) {
      this.#places = grown(this.#places, 2 * tie);
      this.#letters = grown(this.#letters, 2 * tie);
    }
    this.#places[tie] = place;
    this.#letters[tie] = letter;
  }

  /** Puts in the letter, at the place, that leaves the fewest pulls open. */
  #putBest(): void {
    const rows = this.#rows;
    const { length } = rows;
    let least = Infinity;
    let ties = 0;
    for (let j = 0; j <= length; j++) {
      const found = this.#gains(j);
      if (found === 0) continue;
      for (let n = 0; n < found; n++) {
        const letter = i32(this.#touched, n);
        const left = this.#open - i32(this.#gain, letter);
        this.#gain[letter] = 0;
        if (left > least || (left > 0 && i32(this.#notIn, letter) > this.#steps)) continue;
        if (left < least) ties = 0;
        least = left;
        this.#note(ties++, j, letter);
      }
    }
    this.#looks.units += (length * rows.openCount) >> 2;
    if (ties === 0) return this.#goOn();
    const chosen = this.#choose(ties);
    const at = i32(this.#places, chosen);
    this.#notOut.copyWithin(at + 1, at, length);
    rows.put(at, i32(this.#letters, chosen));
    this.#notOut[at] = this.#steps + this.#stay;
    if (least === 0) this.#keep();
  }

  /** Of equally good places now any, now the one at which the letter can print on most sheets: it may save another later on. */
  #choose(ties: number): number {
    const any = this.#random.int(ties);
    if (ties === 1 || this.#random.chance(1, 2)) return any;
    let best = any;
    let most = -1;
    for (let k = 0; k < ties; k++) {
      const tie = (any + k) % ties;
      const uses = this.#rows.uses(i32(this.#places, tie), i32(this.#letters, tie));
      if (uses <= most) continue;
      most = uses;
      best = tie;
    }
    return best;
  }

  /**
   * Notes how many open pulls each letter would print at a place.
   * @returns how many letters print any: the first of `#touched`
   */
  #gains(j: number): number {
    const { sheets, early, late, width, openOrders, openCount } = this.#rows;
    const { words } = sheets;
    let found = 0;
    this.#open = 0;
    for (let n = 0; n < openCount; n++) {
      const c = i32(openOrders, n);
      const at = j * width + c * words;
      // Most letters leave a given order alone: what fits is then what fitted at the place before.
      if (j === 0 || differ(early, at, width, words) || differ(late, at, width, words)) this.#fit(n, c, at);
      this.#open += i32(this.#openOf, n);
      for (let w = 0; w < words; w++) {
        let left = i32(this.#fitting, n * words + w);
        while (left !== 0) {
          const bit = 31 - Math.clz32(left);
          left &= ~(1 << bit);
          const letter = i32(sheets.letter, 32 * (c * words + w) + bit);
          const gain = i32(this.#gain, letter);
          if (gain === 0) this.#touched[found++] = letter;
          this.#gain[letter] = gain + 1;
        }
      }
    }
    return found;
  }

  /** Notes what is open and what fits on order c, whose masks stand at `at`. */
  #fit(n: number, c: number, at: number): void {
    const { sheets, early, late } = this.#rows;
    const { full, words } = sheets;
    let open = 0;
    for (let w = 0; w < words; w++) {
      let left = i32(full, c * words + w) & ~(i32(early, at + w) | i32(late, at + w));
      let fitting = 0;
      while (left !== 0) {
        const bit = 31 - Math.clz32(left);
        left &= ~(1 << bit);
        open++;
        if (sheets.fits(early, late, at, 32 * (c * words + w) + bit)) fitting |= 1 << bit;
      }
      this.#fitting[n * words + w] = fitting;
    }
    this.#openOf[n] = open;
    this.#looks.units += (1 + open) >> 1;
  }
}

/** Whether a mask is other than the one a row before. */
function differ(rows: Int32Array, at: number, width: number, words: number): boolean {
  for (let w = at; w < at + words; w++) if (rows[w] !== rows[w - width]) return true;
  return false;
}
