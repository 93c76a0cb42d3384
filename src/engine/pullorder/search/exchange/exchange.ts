import { i32, num } from '../../../base/at.ts';
import type { Random } from '../../../base/random.ts';
import type { Meter, Model } from '../../model.ts';
import { OpenRows } from './open-rows.ts';

/** Steps without gain after which the walk goes on from the shortest word; by trial 300 to 1000 do about as well. */
const PATIENCE = 500;
/** Steps for which a letter that was put in stays: drawn anew from this range now and then, as no one number suits all words. */
const STAY = { least: 3, most: 42, drawnEvery: 100 };
/** Numbers that the masks and rows of a model may take, so that memory stays small. */
const MOST_NUMBERS = 4_000_000;

/** Whether a model is small enough to be walked. */
export function canExchange({ orders, cascade, kinds }: Model, length: number): boolean {
  const pulls = orders.reduce((most, { letters }) => Math.max(most, letters.length), 1);
  const words = (pulls + 31) >>> 5;
  const masks = 32 * words * words * orders.length;
  return cascade && kinds === null && masks <= MOST_NUMBERS && length * words * orders.length <= MOST_NUMBERS;
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
  readonly #gain: Int32Array;
  /** Step until which each letter is not put in; and each place of the word is not struck out. */
  readonly #notIn: Int32Array;
  readonly #notOut: number[] = [];
  #steps = 0;
  #idle = 0;
  #stay = STAY.least;
  /** The shortest whole word so far. */
  word: number[] = [];

  constructor(model: Model, random: Random, meter: Meter) {
    this.#rows = new OpenRows(model, meter);
    this.#random = random;
    this.#meter = meter;
    this.#gain = new Int32Array(model.letterCount);
    this.#notIn = new Int32Array(model.letterCount);
  }

  /** Takes another whole word. */
  set(word: readonly number[]): void {
    this.word = [...word];
    this.#goOn();
  }

  #goOn(): void {
    this.#rows.set(this.word);
    this.#idle = 0;
    this.#notOut.length = 0;
    for (let i = 0; i < this.word.length; i++) this.#notOut.push(0);
    this.#notIn.fill(0);
  }

  /** Walks for about so many units. @returns whether the word became shorter */
  run(units: number): boolean {
    const until = this.#meter.units + units;
    const length = this.word.length;
    while (this.#meter.units < until && this.#rows.word.length > 1) this.#step();
    return this.word.length < length;
  }

  #step(): void {
    this.#steps++;
    if (++this.#idle > PATIENCE) this.#goOn();
    if (this.#idle % STAY.drawnEvery === 0) this.#stay = STAY.least + this.#random.int(STAY.most - STAY.least + 1);
    const out = this.#leastLost();
    if (out < 0) return;
    const letter = num(this.#rows.word, out);
    const lost = num(this.#rows.lost, out);
    this.#rows.strike(out);
    this.#notOut.splice(out, 1);
    if (lost === 0) {
      this.word = [...this.#rows.word];
      this.#idle = 0;
      return;
    }
    this.#notIn[letter] = this.#steps + this.#random.int(2);
    this.#putBest();
  }

  /** The place of a letter that can be struck out with the least loss; −1 when none may be. */
  #leastLost(): number {
    const { lost } = this.#rows;
    let least = Infinity;
    const places: number[] = [];
    for (let i = 0; i < lost.length; i++) {
      const value = num(lost, i);
      if (value > least || (num(this.#notOut, i) > this.#steps && value > 0)) continue;
      if (value < least) places.length = 0;
      least = value;
      places.push(i);
    }
    this.#meter.units += lost.length >> 2;
    return places.length === 0 ? -1 : this.#random.pick(places);
  }

  /** Puts in the letter, at the place, that leaves the fewest pulls open. */
  #putBest(): void {
    const { word, open } = this.#rows;
    let least = Infinity;
    const choices: number[] = [];
    const letters: number[] = [];
    const touched: number[] = [];
    for (let j = 0; j <= word.length; j++) {
      touched.length = 0;
      this.#gains(j, touched);
      for (const letter of touched) {
        const left = num(open, j) - i32(this.#gain, letter);
        this.#gain[letter] = 0;
        if (left > least || (i32(this.#notIn, letter) > this.#steps && left > 0)) continue;
        if (left < least) choices.length = letters.length = 0;
        least = left;
        choices.push(j);
        letters.push(letter);
      }
    }
    if (choices.length === 0) return this.#goOn();
    const chosen = this.#random.int(choices.length);
    const at = num(choices, chosen);
    this.#rows.put(at, num(letters, chosen));
    this.#notOut.splice(at, 0, this.#steps + this.#stay);
    if (least === 0) this.word = [...this.#rows.word];
  }

  /** How many open pulls each letter would print at a place; letters that print any go on the list. */
  #gains(j: number, touched: number[]): void {
    const { sheets, early, late, width } = this.#rows;
    const { full, words } = sheets;
    const from = j * width;
    this.#meter.units += width >> 3;
    for (let n = 0; n < width; n++) {
      let left = i32(full, n) & ~(i32(early, from + n) | i32(late, from + n));
      // All pulls of an order look at its whole mask, which begins at a multiple of the words.
      const at = from + n - (n % words);
      while (left !== 0) {
        const bit = 31 - Math.clz32(left);
        left &= ~(1 << bit);
        const pull = 32 * n + bit;
        if (!sheets.fits(early, late, at, pull)) continue;
        const letter = i32(sheets.letter, pull);
        const gain = i32(this.#gain, letter);
        if (gain === 0) touched.push(letter);
        this.#gain[letter] = gain + 1;
      }
    }
  }
}
