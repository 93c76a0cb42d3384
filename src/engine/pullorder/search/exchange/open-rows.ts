import { i32, num } from '../../../base/at.ts';
import type { Meter, Model } from '../../model.ts';
import { SheetPulls } from './sheet-pulls.ts';

/**
 * A word that need not finish every order, with what it leaves open. `early` row i holds what is printed
 * on each order before letter i, as early as can be; `late` row i what can still be printed from letter i
 * on, as late as can be. Pulls in neither of the rows of one place are open there: a word that has none
 * open at some place has none open anywhere, and finishes every order. Rows follow a change of the word
 * order by order, only as far as that order differs.
 */
export class OpenRows {
  readonly sheets: SheetPulls;
  readonly word: number[] = [];
  readonly #meter: Meter;
  /** Numbers of one row: an order after another, its mask in `words` numbers. */
  readonly #width: number;
  early: Int32Array;
  late: Int32Array;
  /** How many pulls are open before letter i, and would be were it struck out. */
  readonly open: number[] = [];
  readonly lost: number[] = [];
  /** Orders that differ from what their rows say further on, and further back. */
  readonly #ahead: Int32Array;
  readonly #behind: Int32Array;
  readonly #mask: Int32Array;

  constructor(model: Model, meter: Meter) {
    this.#meter = meter;
    this.sheets = new SheetPulls(model);
    this.#width = this.sheets.count * this.sheets.words;
    this.early = new Int32Array(64 * this.#width);
    this.late = new Int32Array(64 * this.#width);
    this.#ahead = new Int32Array(this.sheets.count);
    this.#behind = new Int32Array(this.sheets.count);
    this.#mask = new Int32Array(this.sheets.words);
  }

  get width(): number {
    return this.#width;
  }

  /** Takes another word. */
  set(word: readonly number[]): void {
    const { sheets } = this;
    this.word.length = 0;
    this.word.push(...word);
    const length = word.length;
    this.#room(length + 2);
    const width = this.#width;
    this.early.fill(0, 0, width);
    this.late.fill(0, length * width, (length + 1) * width);
    for (let i = 0; i < length; i++) {
      this.early.copyWithin((i + 1) * width, i * width, (i + 1) * width);
      for (let c = 0; c < sheets.count; c++) sheets.forward(this.early, (i + 1) * width + c * sheets.words, c, num(word, i));
    }
    for (let i = length - 1; i >= 0; i--) {
      this.late.copyWithin(i * width, (i + 1) * width, (i + 2) * width);
      for (let c = 0; c < sheets.count; c++) sheets.backward(this.late, i * width + c * sheets.words, c, num(word, i));
    }
    this.open.length = this.lost.length = 0;
    for (let i = 0; i <= length; i++) this.open.push(this.#missing(i, i));
    for (let i = 0; i < length; i++) this.lost.push(this.#missing(i, i + 1));
    this.#meter.units += 2 * length * width;
  }

  /** Strikes out letter i. */
  strike(i: number): void {
    const width = this.#width;
    const { word, early, late, open, lost } = this;
    const length = word.length;
    const ahead = differing(this.sheets, early, [i * width, (i + 1) * width], this.#ahead);
    const behind = differing(this.sheets, late, [i * width, (i + 1) * width], this.#behind);
    word.splice(i, 1);
    early.copyWithin((i + 1) * width, (i + 2) * width, (length + 1) * width);
    late.copyWithin(i * width, (i + 1) * width, (length + 1) * width);
    open.splice(i + 1, 1);
    lost.splice(i, 1);
    this.#forward(i, ahead);
    this.#backward(i - 1, behind);
    open[i] = this.#missing(i, i);
    for (const at of [i - 1, i]) if (at >= 0 && at < word.length) lost[at] = this.#missing(at, at + 1);
    this.#meter.units += 3 * (width >> 2) + (length >> 1);
  }

  /** Puts a letter before letter i. */
  put(i: number, letter: number): void {
    const width = this.#width;
    const { sheets, word, open, lost } = this;
    const length = word.length;
    this.#room(length + 3);
    const { early, late } = this;
    word.splice(i, 0, letter);
    early.copyWithin((i + 1) * width, i * width, (length + 1) * width);
    late.copyWithin((i + 1) * width, i * width, (length + 1) * width);
    for (let c = 0; c < sheets.count; c++) {
      sheets.forward(early, (i + 1) * width + c * sheets.words, c, letter);
      sheets.backward(late, i * width + c * sheets.words, c, letter);
    }
    open.splice(i, 0, 0);
    lost.splice(i, 0, 0);
    this.#forward(i + 1, differing(sheets, early, [i * width, (i + 1) * width], this.#ahead));
    this.#backward(i - 1, differing(sheets, late, [i * width, (i + 1) * width], this.#behind));
    for (const at of [i, i + 1]) open[at] = this.#missing(at, at);
    for (const at of [i - 1, i, i + 1]) if (at >= 0 && at < word.length) lost[at] = this.#missing(at, at + 1);
    this.#meter.units += 5 * (width >> 2) + (length >> 1);
  }

  /** Brings early rows after i up to date. @param differ how many orders do */
  #forward(i: number, differ: number): void {
    const { sheets, word, early } = this;
    const width = this.#width;
    let left = differ;
    for (let j = i; j < word.length && left > 0; j++) {
      const letter = num(word, j);
      this.#meter.units += left;
      let kept = 0;
      for (let d = 0; d < left; d++) {
        const c = i32(this.#ahead, d);
        const from = j * width + c * sheets.words;
        const to = from + width;
        for (let w = 0; w < sheets.words; w++) this.#mask[w] = i32(early, from + w);
        sheets.forward(this.#mask, 0, c, letter);
        if (!this.#writes(early, to, c, j + 1)) continue;
        this.#ahead[kept++] = c;
      }
      left = kept;
    }
  }

  /** Brings late rows from i down up to date. */
  #backward(i: number, differ: number): void {
    const { sheets, word, late } = this;
    const width = this.#width;
    let left = differ;
    for (let j = i; j >= 0 && left > 0; j--) {
      const letter = num(word, j);
      this.#meter.units += left;
      let kept = 0;
      for (let d = 0; d < left; d++) {
        const c = i32(this.#behind, d);
        const to = j * width + c * sheets.words;
        for (let w = 0; w < sheets.words; w++) this.#mask[w] = i32(late, to + width + w);
        sheets.backward(this.#mask, 0, c, letter);
        if (!this.#writes(late, to, c, j)) continue;
        this.#behind[kept++] = c;
      }
      left = kept;
    }
  }

  /** Writes the mask at hand to a row; false when it stood there already. */
  #writes(rows: Int32Array, to: number, c: number, row: number): boolean {
    const { words } = this.sheets;
    let same = true;
    for (let w = 0; w < words; w++) if (i32(rows, to + w) !== i32(this.#mask, w)) same = false;
    if (same) return false;
    const ofEarly = rows === this.early;
    const { early, late, open, lost } = this;
    const width = this.#width;
    const place = c * words;
    const lostAt = ofEarly ? row : row - 1;
    for (let w = 0; w < words; w++) {
      const full = i32(this.sheets.full, place + w);
      const was = i32(rows, to + w);
      const is = i32(this.#mask, w);
      const across = i32(ofEarly ? late : early, row * width + place + w);
      const beyond = ofEarly
        ? row < this.word.length
          ? i32(late, (row + 1) * width + place + w)
          : full
        : row > 0
          ? i32(early, (row - 1) * width + place + w)
          : full;
      open[row] = num(open, row) + bits(full & ~(is | across)) - bits(full & ~(was | across));
      if (lostAt >= 0 && lostAt < lost.length)
        lost[lostAt] = num(lost, lostAt) + bits(full & ~(is | beyond)) - bits(full & ~(was | beyond));
      rows[to + w] = is;
    }
    return true;
  }

  #missing(early: number, late: number): number {
    const width = this.#width;
    const { full } = this.sheets;
    let sum = 0;
    for (let n = 0; n < width; n++) {
      const open = i32(full, n) & ~(i32(this.early, early * width + n) | i32(this.late, late * width + n));
      if (open !== 0) sum += bits(open);
    }
    return sum;
  }

  #room(rows: number): void {
    if (rows * this.#width <= this.early.length) return;
    for (const name of ['early', 'late'] as const) {
      const grown = new Int32Array(2 * rows * this.#width);
      grown.set(this[name]);
      this[name] = grown;
    }
  }
}

/** Lists the orders in which two rows differ. @returns how many */
function differing({ count, words }: SheetPulls, rows: Int32Array, [one, other]: readonly [number, number], into: Int32Array): number {
  let found = 0;
  for (let c = 0; c < count; c++) {
    for (let w = 0; w < words; w++) {
      if (i32(rows, one + c * words + w) === i32(rows, other + c * words + w)) continue;
      into[found++] = c;
      break;
    }
  }
  return found;
}

/** How many bits of a 32-bit number are set. */
function bits(value: number): number {
  const pairs = value - ((value >>> 1) & 0x55555555);
  const fours = (pairs & 0x33333333) + ((pairs >>> 2) & 0x33333333);
  return Math.imul((fours + (fours >>> 4)) & 0x0f0f0f0f, 0x01010101) >>> 24;
}
