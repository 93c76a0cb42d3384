import { defined, entryAt, i32, num, u8 } from '../../base/at.ts';
import { grown } from '../grown.ts';
import type { Meter } from '../model.ts';
import { Tuples } from '../tuples.ts';
import { SetGuess } from './set-guess.ts';
import { SetOrderTable, type SetOrder } from './set-order-table.ts';
import type { SmallSets } from './small-sets.ts';

/** Nodes that there is room for at first. */
const FIRST_ROOM = 1024;
/** Steps along a likely word from one place at which letters are shared anew to the next, and how many such places. */
const SHARED_EVERY = 4;
const SHARES = 5;

/**
 * A* over the tuples of what is printed on each sheet, for a set of letters with all others struck
 * out; see `LetterSets` and `SetGuess` for what guides it.
 */
export class SetSearch {
  readonly #letters: number;
  readonly #meter: Meter;
  readonly #orders: SetOrderTable[];
  readonly #small: SmallSets;
  readonly #guess: SetGuess;
  /** Sets of four that guide, and for each letter those that hold it. */
  readonly #fours: readonly number[];
  readonly #holding: number[][];
  /** A node is a tuple of down-sets, one an order. */
  readonly #nodes: Tuples;
  /** Numbers of what is left on each four that guides, nodes × fours. */
  #rests: Int32Array;
  #costs = new Uint8Array(FIRST_ROOM);
  #guesses = new Uint8Array(FIRST_ROOM);
  #closed = new Uint8Array(FIRST_ROOM);
  /** Open nodes by least length of a word through them. */
  readonly #buckets: number[][] = [];
  #followed = 0;
  /** The tuple at hand. */
  readonly #now: Int32Array;
  /** Scratch: a set of small orders; what each four that guides needs. */
  readonly #mask: Int32Array;
  readonly #needs: Int32Array;

  /**
   * @param orders at least one
   * @param letters how many, more than four
   * @param small sets of four letters
   */
  constructor(orders: readonly SetOrder[], letters: number, small: SmallSets, meter: Meter) {
    const fours = foursOf(letters);
    this.#letters = letters;
    this.#meter = meter;
    this.#small = small;
    this.#orders = orders.map((order) => new SetOrderTable(order, fours, small.orders, meter));
    this.#nodes = new Tuples(orders.length, FIRST_ROOM);
    this.#now = new Int32Array(orders.length);
    this.#mask = new Int32Array(small.orders.words);
    this.#guess = this.#learn(fours);
    this.#fours = this.#guess.used;
    this.#holding = Array.from({ length: letters }, (_, l) => this.#guess.holding(l));
    this.#needs = new Int32Array(this.#fours.length);
    this.#rests = new Int32Array(FIRST_ROOM * this.#fours.length);
  }

  /** As `LetterSets.steps`. */
  *run(maxNodes: number): Generator<void, { least: number; finished: boolean }> {
    this.#now.fill(0);
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
    throw new Error('Some sheet cannot be finished: its order goes round in a circle.');
  }

  /** Shares letters among sets of four at the start and at some places along a word that greed finds. */
  #learn(fours: readonly (readonly number[])[]): SetGuess {
    const guess = new SetGuess(this.#letters, fours, this.#meter);
    const all = fours.map((_, t) => t);
    for (let step = 0, open = this.#openNow(); open !== 0; step++, open = this.#openNow()) {
      if (step % SHARED_EVERY === 0)
        guess.add(
          all.map((t) => this.#small.least(this.#restOf(t))),
          open,
        );
      if (step === SHARED_EVERY * (SHARES - 1)) break;
      this.#greedStep(guess);
    }
    return guess;
  }

  /** Moves the tuple at hand on by the letter that leaves least to come, and of those prints most. */
  #greedStep(guess: SetGuess): void {
    const from = Int32Array.from(this.#now);
    let best = from;
    let least = Infinity;
    for (let l = 0; l < this.#letters; l++) {
      this.#now.set(from);
      const moved = this.#move(l);
      if (moved === 0) continue;
      const needs = guess.used.map((t) => this.#small.least(this.#restOf(t)));
      const left = guess.least(needs, this.#openNow()) - moved / (this.#now.length + 1);
      if (left >= least) continue;
      least = left;
      best = Int32Array.from(this.#now);
    }
    this.#now.set(best);
  }

  /** Enters what each letter that finds work leads to. */
  #follow(node: number): void {
    const cost = u8(this.#costs, node) + 1;
    for (let l = 0; l < this.#letters; l++) {
      this.#nodes.read(node, this.#now);
      if (this.#move(l) > 0) this.#enter(cost, node, l);
    }
  }

  /** Lets a letter come on the tuple at hand. @returns how many orders it finds work in */
  #move(letter: number): number {
    const now = this.#now;
    let moved = 0;
    for (let c = 0; c < now.length; c++) {
      const from = i32(now, c);
      const to = entryAt(this.#orders, c).step(from, letter);
      if (to === from) continue;
      now[c] = to;
      moved++;
    }
    this.#meter.units += 1 + (now.length >> 4);
    return moved;
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
    this.#takeRests(node, parent, letter);
    this.#guesses[node] = this.#guessFor(node);
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

  /** What is left on each four that guides: as for the node before, but for those that hold the letter. */
  #takeRests(node: number, parent: number, letter: number): void {
    const fours = this.#fours;
    const at = node * fours.length;
    if (parent < 0) {
      fours.forEach((t, i) => (this.#rests[at + i] = this.#restOf(t)));
      return;
    }
    this.#rests.copyWithin(at, parent * fours.length, (parent + 1) * fours.length);
    for (const i of entryAt(this.#holding, letter)) this.#rests[at + i] = this.#restOf(num(fours, i));
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

  /** Letters that the tuple at hand leaves, as bits. */
  #openNow(): number {
    let open = 0;
    for (let c = 0; c < this.#now.length; c++) open |= entryAt(this.#orders, c).open(i32(this.#now, c));
    return open;
  }

  /** Least number of letters after the tuple at hand, which is this node's. */
  #guessFor(node: number): number {
    const at = node * this.#fours.length;
    for (let i = 0; i < this.#fours.length; i++) this.#needs[i] = this.#small.least(i32(this.#rests, at + i));
    this.#meter.units += 1 + (this.#fours.length >> 3);
    return this.#guess.least(this.#needs, this.#openNow());
  }

  #grow(room: number): void {
    this.#rests = grown(this.#rests, room * this.#fours.length);
    this.#costs = grown(this.#costs, room);
    this.#guesses = grown(this.#guesses, room);
    this.#closed = grown(this.#closed, room);
  }
}

/** All sets of four of k letters. */
function foursOf(k: number): number[][] {
  const out: number[][] = [];
  for (let a = 0; a < k; a++)
    for (let b = a + 1; b < k; b++) for (let c = b + 1; c < k; c++) for (let d = c + 1; d < k; d++) out.push([a, b, c, d]);
  return out;
}
