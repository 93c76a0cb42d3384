import { entryAt, f64, i32 } from '../../base/at.ts';
import type { Automaton } from '../automaton.ts';
import { grown } from '../grown.ts';
import { stepCost, type Meter, type Model } from '../model.ts';
import { Estimator } from './estimate.ts';
import { Heap } from './heap.ts';

/** What an exact search is for. */
export interface ExactOptions {
  /** Only words cheaper than this are looked for. */
  below: number;
  /** Letter before and after the word, −1 for none. */
  before: number;
  after: number;
  /** Nodes after which the search ends. */
  maxNodes: number;
  meter: Meter;
  /** Groups of letters (screens, for kinds) for a sharper estimate; see `Patterns`. */
  groups?: readonly (readonly number[])[];
}

export interface ExactResult {
  /** No word costs less; `below` when the search shows that none is cheaper than that. */
  lower: number;
  /** The cheapest word, when found. */
  word: number[] | null;
  /** False when `maxNodes` ended the search; `lower` holds all the same. */
  finished: boolean;
}

/**
 * A* over the sets of printed pulls. Cheapest first; what is still to come is underestimated by the
 * forced counts of screens, inks and kinds, so the first word taken from the queue is a cheapest
 * one, and at every moment no word costs less than the head of the queue.
 * @param automata those of the model; one that is not a model of kinds costs 1 a letter
 */
export function exact(model: Model, automata: readonly Automaton[], options: ExactOptions): ExactResult {
  if (automata.length > 0) return new ExactSearch(model, automata, options).run();
  const cost = stepCost(model, options.before, options.after);
  return cost < options.below ? { lower: cost, word: [], finished: true } : { lower: options.below, word: null, finished: true };
}

/** A node is what is printed on each sheet and, for kinds, what is on the press. */
class ExactSearch {
  readonly #model: Model;
  readonly #automata: readonly Automaton[];
  readonly #options: ExactOptions;
  readonly #meter: Meter;
  readonly #estimator: Estimator;
  readonly #orders: number;
  #room = 1024;
  #count = 0;
  /** Nodes × orders. */
  #states: Int32Array;
  /** Letter on the press, the node before, the cost so far; whether a node was followed. */
  #lasts = new Int32Array(this.#room);
  #parents = new Int32Array(this.#room);
  #costs = new Float64Array(this.#room);
  #closed = new Uint8Array(this.#room);
  readonly #queue = new Heap();
  /** Hash table of nodes, −1 where empty; its length is a power of 2. */
  #table = new Int32Array(4096).fill(-1);
  /** The cheapest node known that is done with all orders. */
  #goal = -1;
  #goalCost: number;
  /** States of the node that is followed. */
  readonly #current: Int32Array;
  readonly #tried: Uint8Array;

  constructor(model: Model, automata: readonly Automaton[], options: ExactOptions) {
    this.#model = model;
    this.#automata = automata;
    this.#options = options;
    this.#meter = options.meter;
    this.#estimator = new Estimator(model, automata, options.groups, options.meter);
    this.#orders = automata.length;
    this.#states = new Int32Array(this.#room * this.#orders);
    this.#goalCost = options.below;
    this.#current = new Int32Array(this.#orders);
    this.#tried = new Uint8Array(model.letterCount);
  }

  run(): ExactResult {
    const { before, below, maxNodes } = this.#options;
    this.#enter(before, 0, -1);
    while (this.#queue.size > 0) {
      const lower = this.#queue.least;
      if (lower >= this.#goalCost) break;
      if (this.#count >= maxNodes) return { lower, word: null, finished: false };
      const node = this.#queue.pop();
      if (this.#closed[node]) continue;
      this.#closed[node] = 1;
      this.#follow(node);
    }
    if (this.#goal < 0) return { lower: below, word: null, finished: true };
    return { lower: this.#goalCost, word: this.#wordTo(this.#goal), finished: true };
  }

  /** Enters what each letter that finds work leads to. */
  #follow(node: number): void {
    const orders = this.#orders;
    const current = this.#current;
    const last = i32(this.#lasts, node);
    const cost = f64(this.#costs, node);
    for (let c = 0; c < orders; c++) current[c] = i32(this.#states, node * orders + c);
    for (const letter of this.#lettersNow()) {
      this.#tried[letter] = 0;
      for (let c = 0; c < orders; c++) {
        this.#states[this.#count * orders + c] = entryAt(this.#automata, c).step(i32(current, c), letter);
      }
      this.#enter(letter, cost + stepCost(this.#model, last, letter), node);
    }
  }

  /** Letters that find work in `current`, each marked as tried. */
  #lettersNow(): number[] {
    const letters: number[] = [];
    for (let c = 0; c < this.#orders; c++) {
      const automaton = entryAt(this.#automata, c);
      const start = automaton.edgeStart(i32(this.#current, c));
      const end = automaton.edgeEnd(i32(this.#current, c));
      for (let e = start; e < end; e++) {
        const letter = i32(automaton.edgeLetter, e);
        if (this.#tried[letter] !== 0) continue;
        this.#tried[letter] = 1;
        letters.push(letter);
      }
      this.#meter.units += end - start;
    }
    return letters;
  }

  /** Enters the states written at slot `count`; drops them when known as cheap. */
  #enter(last: number, cost: number, parent: number): void {
    const at = this.#count * this.#orders;
    const done = this.#isDone(at);
    const toCome = done ? stepCost(this.#model, last, this.#options.after) : this.#estimator.estimate(this.#states, at, last);
    const total = cost + toCome;
    this.#meter.units += 10 + this.#orders;
    if (total >= this.#goalCost) return;
    const slot = this.#slotOf(at, last);
    let node = i32(this.#table, slot);
    if (node >= 0) {
      if (f64(this.#costs, node) <= cost) return;
      this.#closed[node] = 0;
    } else {
      node = this.#count++;
      this.#table[slot] = node;
      this.#lasts[node] = last;
    }
    this.#parents[node] = parent;
    this.#costs[node] = cost;
    if (done) {
      this.#goal = node;
      this.#goalCost = total;
    } else this.#queue.push(total, node);
    if (this.#count === this.#room) this.#grow();
    if (this.#count * 2 > this.#table.length) this.#growTable();
  }

  #isDone(at: number): boolean {
    for (let c = 0; c < this.#orders; c++) if (entryAt(this.#automata, c).chain[i32(this.#states, at + c)] !== 0) return false;
    return true;
  }

  /** Where the table has the node of these states, or has room for it. */
  #slotOf(at: number, last: number): number {
    const mask = this.#table.length - 1;
    let slot = this.#hashOf(at, last) & mask;
    while (i32(this.#table, slot) >= 0 && !this.#same(i32(this.#table, slot), at, last)) slot = (slot + 1) & mask;
    return slot;
  }

  #hashOf(at: number, last: number): number {
    let h = this.#model.kinds ? Math.imul(last + 2, 0x27d4eb2f) : 0;
    for (let c = 0; c < this.#orders; c++) h ^= i32(entryAt(this.#automata, c).hash, i32(this.#states, at + c));
    return (h ^ (h >>> 15)) >>> 0;
  }

  #same(node: number, at: number, last: number): boolean {
    if (this.#model.kinds && this.#lasts[node] !== last) return false;
    const states = this.#states;
    const from = node * this.#orders;
    for (let c = 0; c < this.#orders; c++) if (states[from + c] !== states[at + c]) return false;
    return true;
  }

  #grow(): void {
    const room = (this.#room *= 2);
    this.#states = grown(this.#states, room * this.#orders);
    this.#lasts = grown(this.#lasts, room);
    this.#parents = grown(this.#parents, room);
    this.#costs = grown(this.#costs, room);
    this.#closed = grown(this.#closed, room);
  }

  #growTable(): void {
    const table = new Int32Array(this.#table.length * 2).fill(-1);
    for (let node = 0; node < this.#count; node++) {
      let slot = this.#hashOf(node * this.#orders, i32(this.#lasts, node)) & (table.length - 1);
      while (i32(table, slot) >= 0) slot = (slot + 1) & (table.length - 1);
      table[slot] = node;
    }
    this.#table = table;
  }

  #wordTo(node: number): number[] {
    const word: number[] = [];
    for (let n = node; i32(this.#parents, n) >= 0; n = i32(this.#parents, n)) word.push(i32(this.#lasts, n));
    return word.reverse();
  }
}
