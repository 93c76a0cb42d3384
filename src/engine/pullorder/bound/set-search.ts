import { defined, entryAt, i32, u16, u8 } from '../../base/at.ts';
import { say } from '../../words/en/pullorder/bound.ts';
import { grown } from '../grown.ts';
import type { Meter } from '../model.ts';
import { Tuples } from '../tuples.ts';
import { SetOrderTable, type SetOrder } from './set-order-table.ts';
import { setsOf } from './sets-of.ts';
import type { SmallSets } from './small-sets.ts';

/** Nodes that there is room for at first. */
const FIRST_ROOM = 1024;

/**
 * A* over the tuples of what is printed on each sheet, for a set of letters with all others struck
 * out; see `LetterSets` for what guides it.
 */
export class SetSearch {
  readonly #letters: number;
  readonly #meter: Meter;
  readonly #orders: SetOrderTable[];
  readonly #small: SmallSets;
  /** Sets of four letters; and which of them hold a letter, letters × fours. */
  readonly #fours: number;
  readonly #inFour: Uint8Array;
  /** How many of the sets of four a letter is in. */
  readonly #share: number;
  /** A node is a tuple of down-sets, one an order. */
  readonly #nodes: Tuples;
  /** Numbers of what is left on each four letters, nodes × fours. */
  #rests: Int32Array;
  #costs = new Uint8Array(FIRST_ROOM);
  #guesses = new Uint8Array(FIRST_ROOM);
  #closed = new Uint8Array(FIRST_ROOM);
  /** Open nodes by least length of a word through them. */
  readonly #buckets: number[][] = [];
  #followed = 0;
  /** The tuple at hand. */
  readonly #now: Int32Array;
  /** Scratch: a set of small orders. */
  readonly #mask: Int32Array;

  /**
   * @param orders at least one
   * @param letters how many, more than four
   * @param small sets of four letters
   */
  constructor(orders: readonly SetOrder[], letters: number, small: SmallSets, meter: Meter) {
    const fours = [...setsOf([...Array(letters).keys()], 4)];
    this.#letters = letters;
    this.#meter = meter;
    this.#small = small;
    this.#fours = fours.length;
    this.#share = (fours.length * 4) / letters;
    this.#inFour = new Uint8Array(letters * fours.length);
    fours.forEach((set, t) => set.forEach((l) => (this.#inFour[l * fours.length + t] = 1)));
    this.#orders = orders.map((order) => new SetOrderTable(order, fours, small.orders, meter));
    this.#nodes = new Tuples(orders.length, FIRST_ROOM);
    this.#rests = new Int32Array(FIRST_ROOM * fours.length);
    this.#now = new Int32Array(orders.length);
    this.#mask = new Int32Array(small.orders.words);
  }

  /** As `LetterSets.steps`. */
  *run(maxNodes: number): Generator<void, { least: number; finished: boolean }> {
    for (let t = 0; t < this.#fours; t++) this.#rests[t] = this.#restOf(t);
    this.#enter(0, -1, -1);
    for (let total = 0; total < this.#buckets.length; total++) {
      const bucket = (this.#buckets[total] ??= []);
      while (bucket.length > 0) {
        const node = defined(bucket.pop());
        if (this.#closed[node] || u8(this.#costs, node) + u8(this.#guesses, node) !== total) continue;
        this.#closed[node] = 1;
        if (++this.#followed % 200 === 0) yield;
        if (this.#isDone(node)) return { least: total, finished: true };
        if (this.#nodes.count >= maxNodes) return { least: total, finished: false };
        this.#follow(node);
      }
    }
    throw new Error(say.someSheetCannotBe);
  }

  /** Enters what each letter that finds work leads to. */
  #follow(node: number): void {
    const { values } = this.#nodes;
    const now = this.#now;
    const cost = u8(this.#costs, node) + 1;
    for (let l = 0; l < this.#letters; l++) {
      let moves = false;
      for (let c = 0, at = node * now.length; c < now.length; c++, at++) {
        const from = u16(values, at);
        const to = entryAt(this.#orders, c).step(from, l);
        now[c] = to;
        if (to !== from) moves = true;
      }
      this.#meter.units += 1 + (now.length >> 4);
      if (moves) this.#enter(cost, node, l);
    }
  }

  /** Enters the tuple at hand. */
  #enter(cost: number, parent: number, letter: number): void {
    const known = this.#nodes.find(this.#now);
    if (known >= 0) {
      if (u8(this.#costs, known) <= cost) return;
      this.#costs[known] = cost;
      this.#closed[known] = 0;
      this.#open(known);
      return;
    }
    const node = this.#nodes.add(this.#now);
    this.#costs[node] = cost;
    if (parent >= 0) this.#takeRests(node, parent, letter);
    this.#guesses[node] = this.#guess(node);
    this.#open(node);
    if (this.#nodes.room > this.#costs.length) this.#grow(this.#nodes.room);
  }

  #open(node: number): void {
    (this.#buckets[u8(this.#costs, node) + u8(this.#guesses, node)] ??= []).push(node);
  }

  #isDone(node: number): boolean {
    const n = this.#orders.length;
    for (let c = 0; c < n; c++) if (this.#nodes.values[node * n + c] !== entryAt(this.#orders, c).last) return false;
    return true;
  }

  /** What is left on each four letters: as for the node before, but for those that hold the letter. */
  #takeRests(node: number, parent: number, letter: number): void {
    const fours = this.#fours;
    for (let t = 0; t < fours; t++) {
      const changed = this.#inFour[letter * fours + t] === 1;
      this.#rests[node * fours + t] = changed ? this.#restOf(t) : i32(this.#rests, parent * fours + t);
    }
  }

  /** Number of what the tuple at hand leaves on a set of four letters. */
  #restOf(t: number): number {
    const now = this.#now;
    const mask = this.#mask;
    mask.fill(0);
    for (let c = 0; c < now.length; c++) {
      const id = entryAt(this.#orders, c).left(i32(now, c), t);
      mask[id >> 5] = i32(mask, id >> 5) | (1 << (id & 31));
    }
    this.#meter.units += 1 + (now.length >> 4);
    return this.#small.setOf(mask);
  }

  #guess(node: number): number {
    const at = node * this.#fours;
    let sum = 0;
    let most = 0;
    for (let t = 0; t < this.#fours; t++) {
      const value = this.#small.least(i32(this.#rests, at + t));
      sum += value;
      if (value > most) most = value;
    }
    this.#meter.units += 1 + (this.#fours >> 3);
    return Math.max(most, Math.ceil(sum / this.#share));
  }

  #grow(room: number): void {
    this.#rests = grown(this.#rests, room * this.#fours);
    this.#costs = grown(this.#costs, room);
    this.#guesses = grown(this.#guesses, room);
    this.#closed = grown(this.#closed, room);
  }
}
