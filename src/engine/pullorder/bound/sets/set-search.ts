import { defined, i32, u8 } from '../../../base/at.ts';
import { say } from '../../../words/en/pullorder/bound.ts';
import { grown } from '../../grown.ts';
import type { Meter } from '../../model.ts';
import { Tuples } from '../../tuples.ts';
import type { FourNeeds } from './four-needs.ts';
import { LeftOnSets } from './left-on-sets.ts';
import { RestSums } from './rest-sums.ts';
import type { SetOrder } from './set-order.ts';
import { smallOrders } from './small-orders.ts';

/** Nodes that there is room for at first. */
const FIRST_ROOM = 256;

/**
 * A* over what is left on each sheet, for a set of letters with all others struck out; see
 * `LetterSets` for what guides it.
 */
export class SetSearch {
  readonly #letters: number;
  readonly #meter: Meter;
  readonly #four: FourNeeds;
  readonly #sums: RestSums;
  readonly #left: LeftOnSets;
  readonly #fours: number;
  /** Orders × letters: letters before. */
  readonly #preds: Int32Array;
  /** A node is the letters that are left, by order. */
  readonly #nodes: Tuples;
  /** Where a node comes from, by which letter. */
  #parents = new Int32Array(FIRST_ROOM);
  #letterOf = new Uint8Array(FIRST_ROOM);
  /** Places of nodes that were looked at, −1 for others; what they leave on each four letters needs (`FourNeeds`), places × fours. */
  #slots = new Int32Array(FIRST_ROOM);
  #rests: Uint8Array;
  #looked = 0;
  /** Scratch: what each four letters still need. */
  readonly #needs: Uint8Array;
  #costs = new Uint8Array(FIRST_ROOM);
  #guesses = new Uint8Array(FIRST_ROOM);
  #closed = new Uint8Array(FIRST_ROOM);
  /** Open nodes by least length of a word through them. */
  readonly #buckets: number[][] = [];
  #followed = 0;
  /** Words are at least so long. */
  #total = 0;
  /** The tuple at hand, and the one that it comes from. */
  readonly #now: Int32Array;
  readonly #from: Int32Array;

  /**
   * @param orders at least one
   * @param letters how many, more than four
   * @param four what sets of four letters need
   */
  constructor(orders: readonly SetOrder[], letters: number, four: FourNeeds, meter: Meter) {
    this.#letters = letters;
    this.#meter = meter;
    this.#four = four;
    this.#sums = new RestSums(letters, meter);
    this.#fours = this.#sums.fours.length;
    this.#left = new LeftOnSets(orders, this.#sums.fours, smallOrders(4), meter);
    this.#preds = new Int32Array(orders.length * letters);
    orders.forEach(({ preds }, c) => this.#preds.set(preds, c * letters));
    this.#nodes = new Tuples(orders.length, FIRST_ROOM);
    this.#rests = new Uint8Array(FIRST_ROOM * this.#fours);
    this.#needs = new Uint8Array(this.#fours);
    this.#now = Int32Array.from(orders, ({ present }) => present);
    this.#from = new Int32Array(orders.length);
  }

  /** As `LetterSets.steps`. */
  *run(maxNodes: number): Generator<void, { least: number; finished: boolean }> {
    this.#enter(0, -1, 0);
    for (; this.#total < this.#buckets.length; this.#total++) {
      const bucket = (this.#buckets[this.#total] ??= []);
      while (bucket.length > 0) {
        const node = defined(bucket.pop());
        if (this.#closed[node]) continue;
        if (this.#looked >= maxNodes) return { least: this.#total, finished: false };
        this.#look(node);
        if (u8(this.#costs, node) + u8(this.#guesses, node) > this.#total) {
          this.#open(node);
          continue;
        }
        this.#closed[node] = 1;
        if (u8(this.#guesses, node) === 0) return { least: this.#total, finished: true };
        if (++this.#followed % 20 === 0) yield;
        this.#follow(node);
      }
    }
    throw new Error(say.someSheetCannotBe);
  }

  /** Enters what each letter that finds work leads to, from a node that was looked at last. */
  #follow(node: number): void {
    const cost = u8(this.#costs, node) + 1;
    const at = i32(this.#slots, node) * this.#fours;
    for (let t = 0; t < this.#fours; t++) {
      const packed = u8(this.#rests, at + t);
      if (packed !== 0 && (packed & 15) === 0) this.#rests[at + t] = this.#four.of(this.#left.on(t, this.#from), packed >> 4);
    }
    const { come, finish } = this.#ways();
    // A letter that finishes wherever it is left does never better for coming later.
    const ways = finish === 0 ? come : finish & -finish;
    for (let l = 0; l < this.#letters; l++) {
      if (!((ways >> l) & 1)) continue;
      this.#come(l);
      this.#enter(cost, node, l);
    }
  }

  /** Letters that find work; and those of them that no sheet has left after that. */
  #ways(): { come: number; finish: number } {
    const k = this.#letters;
    let come = 0;
    let wait = 0;
    for (let c = 0, at = 0; c < this.#from.length; c++, at += k) {
      const own = i32(this.#from, c);
      for (let bits = own; bits !== 0; bits &= bits - 1) {
        const l = 31 - Math.clz32(bits & -bits);
        if ((i32(this.#preds, at + l) & own) === 0) come |= 1 << l;
        else wait |= 1 << l;
      }
    }
    return { come, finish: come & ~wait };
  }

  /** Takes the tuple at hand to what a letter leaves of the one before. */
  #come(letter: number): void {
    const bit = 1 << letter;
    for (let c = 0, at = letter; c < this.#from.length; c++, at += this.#letters) {
      const own = i32(this.#from, c);
      this.#now[c] = (i32(this.#preds, at) & own) === 0 ? own & ~bit : own;
    }
    this.#meter.units += 1 + (this.#now.length >> 3);
  }

  /**
   * Enters the tuple at hand. What it needs is underestimated at first by what a letter leaves on
   * each four letters when others do not hold it back, which is known from earlier questions.
   */
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
    this.#parents[node] = parent;
    this.#letterOf[node] = letter;
    this.#slots[node] = -1;
    if (parent >= 0) {
      const from = i32(this.#slots, parent) * this.#fours;
      for (const t of this.#sums.foursWith(letter)) this.#needs[t] = needAfter(u8(this.#rests, from + t), this.#left.placeOf(t, letter));
      this.#guesses[node] = this.#sums.after(letter, this.#needs);
    }
    this.#open(node);
    if (this.#nodes.room > this.#costs.length) this.#grow(this.#nodes.room);
  }

  /** A guess may fall by more than a letter; no word through the node is shorter than those looked at now all the same. */
  #open(node: number): void {
    (this.#buckets[Math.max(this.#total, u8(this.#costs, node) + u8(this.#guesses, node))] ??= []).push(node);
  }

  /** Looks at what a node leaves on each four letters. */
  #look(node: number): void {
    const fours = this.#fours;
    this.#nodes.read(node, this.#from);
    if (i32(this.#slots, node) < 0) {
      const slot = this.#looked++;
      if (this.#looked * fours > this.#rests.length) this.#rests = grown(this.#rests, 2 * this.#rests.length);
      const at = slot * fours;
      const parent = i32(this.#parents, node);
      if (parent < 0) for (let t = 0; t < fours; t++) this.#rests[at + t] = this.#four.of(this.#left.on(t, this.#from), 0);
      else {
        const letter = u8(this.#letterOf, node);
        const from = i32(this.#slots, parent) * fours;
        this.#rests.copyWithin(at, from, from + fours);
        for (const t of this.#sums.foursWith(letter)) {
          const packed = u8(this.#rests, at + t);
          const least = needAfter(packed, this.#left.placeOf(t, letter));
          // Where no shortest word begins with the letter as much is needed as before.
          const same = least === packed >> 4;
          this.#rests[at + t] = same ? least << 4 : this.#four.either(this.#left.on(t, this.#from), least);
        }
      }
      this.#slots[node] = slot;
      this.#meter.units += fours * (1 + (this.#from.length >> 5));
    }
    const at = i32(this.#slots, node) * fours;
    for (let t = 0; t < fours; t++) this.#needs[t] = u8(this.#rests, at + t) >> 4;
    this.#guesses[node] = Math.max(u8(this.#guesses, node), this.#sums.all(this.#needs));
  }

  #grow(room: number): void {
    this.#costs = grown(this.#costs, room);
    this.#guesses = grown(this.#guesses, room);
    this.#closed = grown(this.#closed, room);
    this.#parents = grown(this.#parents, room);
    this.#letterOf = grown(this.#letterOf, room);
    this.#slots = grown(this.#slots, room);
  }
}

/** How much four letters need at least after one of them has come: one less where shortest words begin with it. */
function needAfter(packed: number, place: number): number {
  return (packed >> 4) - ((packed >> place) & 1);
}
