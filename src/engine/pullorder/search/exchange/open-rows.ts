import { i32, num } from '../../../base/at.ts';
import { bitCount } from '../../../base/bits.ts';
import { grown } from '../../grown.ts';
import type { Meter, Model } from '../../model.ts';
import { SheetPulls } from './sheet-pulls.ts';

/**
 * A word that need not finish every order, with what it leaves open. `early` row i holds what is printed
 * on each order before letter i, as early as can be; `late` row i what can still be printed from letter i
 * on, as late as can be. Pulls in neither of the rows of one place are open there: an order that has none
 * open at some place has none open anywhere, and is finished. Rows follow a change of the word order by
 * order, only as far as that order differs.
 */
export class OpenRows {
  readonly sheets: SheetPulls;
  readonly #meter: Meter;
  /** Numbers of one row: an order after another, its mask in `words` numbers. */
  readonly width: number;
  /** How many letters the word has; lists hold more than it needs. */
  length = 0;
  word = new Int32Array(64);
  /** How many pulls would be open before letter i, were it struck out. */
  lost = new Int32Array(64);
  early: Int32Array;
  late: Int32Array;
  /** Orders that are not finished: the first `openCount` of the list. */
  readonly openOrders: Int32Array;
  openCount = 0;
  readonly #mask: Int32Array;

  constructor(model: Model, meter: Meter) {
    this.#meter = meter;
    this.sheets = new SheetPulls(model);
    this.width = this.sheets.count * this.sheets.words;
    this.early = new Int32Array(64 * this.width);
    this.late = new Int32Array(64 * this.width);
    this.openOrders = new Int32Array(this.sheets.count);
    this.#mask = new Int32Array(this.sheets.words);
  }

  /** Takes another word. */
  set(word: ArrayLike<number>): void {
    const { sheets, width } = this;
    const { length } = word;
    this.#room(length + 2);
    const { early, late } = this;
    this.length = length;
    this.word.set(word);
    early.fill(0, 0, width);
    late.fill(0, length * width, (length + 1) * width);
    for (let i = 0; i < length; i++) {
      early.copyWithin((i + 1) * width, i * width, (i + 1) * width);
      for (let c = 0; c < sheets.count; c++) sheets.forward(early, (i + 1) * width + c * sheets.words, c, num(word, i));
    }
    for (let i = length - 1; i >= 0; i--) {
      late.copyWithin(i * width, (i + 1) * width, (i + 2) * width);
      for (let c = 0; c < sheets.count; c++) sheets.backward(late, i * width + c * sheets.words, c, num(word, i));
    }
    for (let i = 0; i < length; i++) this.lost[i] = this.missing(i, i + 1);
    this.#listOpen();
    this.#meter.units += 2 * length * width;
  }

  /** Strikes out letter i. */
  strike(i: number): void {
    const { word, lost, early, late, length, width, sheets } = this;
    const letter = i32(word, i);
    word.copyWithin(i, i + 1, length);
    lost.copyWithin(i, i + 1, length);
    early.copyWithin((i + 1) * width, (i + 2) * width, (length + 1) * width);
    late.copyWithin(i * width, (i + 1) * width, (length + 1) * width);
    this.length--;
    for (let c = 0; c < sheets.count; c++) {
      if (!sheets.has(c, letter)) continue;
      this.#forward(i, c);
      this.#backward(i - 1, c);
    }
    this.#lostFrom(i - 1, i);
    this.#listOpen();
    this.#meter.units += (width >> 1) + (length >> 2);
  }

  /** Puts a letter before letter i. */
  put(i: number, letter: number): void {
    const { sheets, length, width } = this;
    this.#room(length + 3);
    const { word, lost, early, late } = this;
    word.copyWithin(i + 1, i, length);
    lost.copyWithin(i + 1, i, length);
    early.copyWithin((i + 1) * width, i * width, (length + 1) * width);
    late.copyWithin((i + 1) * width, i * width, (length + 1) * width);
    word[i] = letter;
    this.length++;
    for (let c = 0; c < sheets.count; c++) {
      if (!sheets.has(c, letter)) continue;
      const place = c * sheets.words;
      if (sheets.forward(early, (i + 1) * width + place, c, letter)) this.#forward(i + 1, c);
      if (sheets.backward(late, i * width + place, c, letter)) this.#backward(i - 1, c);
    }
    this.#lostFrom(i - 1, i + 1);
    this.#listOpen();
    this.#meter.units += (width >> 1) + (length >> 2);
  }

  /** On how many orders a letter could print before letter j, with all else of the word as early or late as need be. */
  uses(j: number, letter: number): number {
    const { sheets, early, late, width } = this;
    let n = 0;
    for (let c = 0; c < sheets.count; c++) if (sheets.prints(early, late, j * width + c * sheets.words, [c, letter])) n++;
    this.#meter.units += sheets.count >> 2;
    return n;
  }

  /** How many pulls are neither printed before letter `early` nor printed from letter `late` on. */
  missing(early: number, late: number): number {
    const { width } = this;
    const { full } = this.sheets;
    let sum = 0;
    for (let n = 0, a = early * width, b = late * width; n < width; n++, a++, b++) {
      const open = i32(full, n) & ~(i32(this.early, a) | i32(this.late, b));
      if (open !== 0) sum += bitCount(open);
    }
    return sum;
  }

  /** Brings early rows of order c after i up to date. */
  #forward(i: number, c: number): void {
    const { sheets, word, length, early, late, lost, width } = this;
    const { words, full } = sheets;
    const place = c * words;
    const mask = this.#mask;
    for (let w = 0; w < words; w++) mask[w] = i32(early, i * width + place + w);
    let j = i;
    for (; j < length; j++) {
      sheets.forward(mask, 0, c, i32(word, j));
      const to = (j + 1) * width + place;
      let same = true;
      let more = 0;
      for (let w = 0; w < words; w++) {
        const was = i32(early, to + w);
        const is = i32(mask, w);
        if (was === is) continue;
        same = false;
        const room = i32(full, place + w) & ~i32(late, to + width + w);
        more += bitCount(room & ~is) - bitCount(room & ~was);
        early[to + w] = is;
      }
      if (same) break;
      lost[j + 1] = i32(lost, j + 1) + more;
    }
    this.#meter.units += (j - i) >> 2;
  }

  /** Brings late rows of order c from i down up to date. */
  #backward(i: number, c: number): void {
    const { sheets, word, early, late, lost, width } = this;
    const { words, full } = sheets;
    const place = c * words;
    const mask = this.#mask;
    for (let w = 0; w < words; w++) mask[w] = i32(late, (i + 1) * width + place + w);
    let j = i;
    for (; j >= 0; j--) {
      sheets.backward(mask, 0, c, i32(word, j));
      const to = j * width + place;
      let same = true;
      let more = 0;
      for (let w = 0; w < words; w++) {
        const was = i32(late, to + w);
        const is = i32(mask, w);
        if (was === is) continue;
        same = false;
        late[to + w] = is;
        if (j === 0) continue;
        const room = i32(full, place + w) & ~i32(early, to - width + w);
        more += bitCount(room & ~is) - bitCount(room & ~was);
      }
      if (same) break;
      if (j > 0) lost[j - 1] = i32(lost, j - 1) + more;
    }
    this.#meter.units += (i - j) >> 2;
  }

  #lostFrom(first: number, last: number): void {
    for (let at = Math.max(0, first); at <= last && at < this.length; at++) this.lost[at] = this.missing(at, at + 1);
  }

  #listOpen(): void {
    const { full, count, words } = this.sheets;
    const at = this.length * this.width;
    this.openCount = 0;
    for (let c = 0; c < count; c++) {
      for (let w = c * words; w < (c + 1) * words; w++) {
        if (i32(this.early, at + w) === i32(full, w)) continue;
        this.openOrders[this.openCount++] = c;
        break;
      }
    }
  }

  #room(rows: number): void {
    if (rows > this.word.length) {
      this.word = grown(this.word, 2 * rows);
      this.lost = grown(this.lost, 2 * rows);
    }
    if (rows * this.width <= this.early.length) return;
    this.early = grown(this.early, 2 * rows * this.width);
    this.late = grown(this.late, 2 * rows * this.width);
  }
}
