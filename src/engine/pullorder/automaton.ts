import { entryAt, i32, num } from '../base/at.ts';
import type { Meter, Order } from './model.ts';

/** How an automaton reads its order. */
export interface AutomatonOptions {
  /** Whether a letter goes on while it finds work. */
  cascade: boolean;
  /** Group of each letter (its screen), for the chain lengths; absent = itself. */
  groups?: ArrayLike<number> | null;
  /** Makes the hash numbers of different orders differ; absent = 0. */
  salt?: number;
}

/**
 * What an order looks like as the word goes on: its states are the sets of pulls already printed
 * that some word leads to, numbered as they turn up. State 0 is the bare sheet. Each state knows
 * which letters find work and where they lead, so the searches only look numbers up.
 */
export class Automaton {
  readonly order: Order;
  /** 32-bit words a mask takes. */
  readonly words: number;
  readonly #cascade: boolean;
  readonly #meter: Meter;
  readonly #predMasks: Int32Array;
  readonly #height: Int32Array;
  readonly #ids = new Map<number | string, number>();
  #count = 0;
  #masks: Int32Array;
  #edgeStart: Int32Array;
  #edgeEnd: Int32Array;
  #edges = 0;
  /** Longest chain still to print, counted in changes of group (see `groups`). 0 = finished. */
  chain: Int32Array;
  /** A number per state for hashing. */
  hash: Int32Array;
  edgeLetter = new Int32Array(64);
  edgeNext = new Int32Array(64);
  /** 1 when the letter has no pull left after the edge. */
  edgeLast = new Uint8Array(64);

  /**
   * @param order the partial order
   * @param meter is charged for every new state
   */
  constructor(order: Order, { cascade, groups = null, salt = 0 }: AutomatonOptions, meter: Meter) {
    this.#meter = meter;
    this.order = order;
    this.#cascade = cascade;
    const count = order.letters.length;
    this.words = Math.max(1, (count + 31) >>> 5);
    this.#predMasks = new Int32Array(count * this.words);
    order.preds.forEach((preds, p) => {
      for (const q of preds)
        this.#predMasks[p * this.words + (q >>> 5)] = i32(this.#predMasks, p * this.words + (q >>> 5)) | (1 << (q & 31));
    });
    this.#height = chainHeights(order, groups);
    this.#masks = new Int32Array(16 * this.words);
    this.#edgeStart = new Int32Array(16);
    this.#edgeEnd = new Int32Array(16);
    this.chain = new Int32Array(16);
    this.hash = new Int32Array(16);
    this.#salt = Math.imul(salt + 1, 0x9e3779b1);
    this.intern(new Int32Array(this.words));
  }

  readonly #salt: number;

  /** States met so far. */
  get states(): number {
    return this.#count;
  }

  /** First edge of a state; edges run up to `edgeEnd(state)`. Works them out when first asked. */
  edgeStart(state: number): number {
    if (i32(this.#edgeEnd, state) < 0) this.#expand(state);
    return i32(this.#edgeStart, state);
  }

  /** One past the last edge; ask `edgeStart` first. */
  edgeEnd(state: number): number {
    return i32(this.#edgeEnd, state);
  }

  /** Where a letter leads; the same state when it finds no work. */
  step(state: number, letter: number): number {
    const start = this.edgeStart(state);
    const end = i32(this.#edgeEnd, state);
    for (let e = start; e < end; e++) if (this.edgeLetter[e] === letter) return i32(this.edgeNext, e);
    return state;
  }

  /** Whether a pull is printed in a state. */
  has(state: number, pull: number): boolean {
    return ((i32(this.#masks, state * this.words + (pull >>> 5)) >>> (pull & 31)) & 1) === 1;
  }

  /** Whether all that is printed in state `a` is printed in `b` too. */
  within(a: number, b: number): boolean {
    if (a === b) return true;
    for (let w = 0; w < this.words; w++) {
      if ((i32(this.#masks, a * this.words + w) & ~i32(this.#masks, b * this.words + w)) !== 0) return false;
    }
    return true;
  }

  /** Pulls whose turn has come in a state, ascending. */
  ready(state: number): number[] {
    const out: number[] = [];
    const at = state * this.words;
    for (let p = 0; p < this.order.letters.length; p++) {
      if (!this.has(state, p) && this.#turnHasCome(p, this.#masks, at)) out.push(p);
    }
    return out;
  }

  /** The number of the state with this set of printed pulls (a down-set). */
  intern(mask: Int32Array): number {
    const key = this.words === 1 ? i32(mask, 0) : mask.join();
    const known = this.#ids.get(key);
    if (known !== undefined) return known;
    const id = this.#count++;
    this.#meter.units += 2 + ((this.order.letters.length * this.words) >> 5);
    this.#ids.set(key, id);
    if (id >= this.chain.length) this.#grow();
    this.#masks.set(mask, id * this.words);
    this.#edgeEnd[id] = -1;
    let chain = 0;
    for (const p of this.ready(id)) chain = Math.max(chain, i32(this.#height, p));
    this.chain[id] = chain;
    let h = Math.imul(id ^ this.#salt, 0x85ebca6b);
    h = Math.imul(h ^ (h >>> 13), 0xc2b2ae35);
    this.hash[id] = h ^ (h >>> 16) ^ this.#salt;
    return id;
  }

  #turnHasCome(pull: number, masks: Int32Array, at: number): boolean {
    for (let w = 0; w < this.words; w++) {
      if ((i32(this.#predMasks, pull * this.words + w) & ~i32(masks, at + w)) !== 0) return false;
    }
    return true;
  }

  #expand(state: number): void {
    const ready = this.ready(state);
    const letters = [...new Set(ready.map((p) => num(this.order.letters, p)))];
    const nexts = letters.map((letter) => {
      const mask = this.#masks.slice(state * this.words, (state + 1) * this.words);
      for (const p of ready) if (this.order.letters[p] === letter) mask[p >>> 5] = i32(mask, p >>> 5) | (1 << (p & 31));
      if (this.#cascade) {
        // Pulls stand with their preds first, so one pass finds all that follows on.
        for (let p = 0; p < this.order.letters.length; p++) {
          if (this.order.letters[p] === letter && this.#turnHasCome(p, mask, 0)) mask[p >>> 5] = i32(mask, p >>> 5) | (1 << (p & 31));
        }
      }
      return this.intern(mask);
    });
    if (this.#edges + letters.length > this.edgeLetter.length) {
      const size = 2 * (this.#edges + letters.length);
      this.edgeLetter = resized(this.edgeLetter, size);
      this.edgeNext = resized(this.edgeNext, size);
      const last = new Uint8Array(size);
      last.set(this.edgeLast);
      this.edgeLast = last;
    }
    this.#edgeStart[state] = this.#edges;
    for (let i = 0; i < letters.length; i++) {
      this.edgeLetter[this.#edges] = num(letters, i);
      this.edgeLast[this.#edges] = this.order.letters.some((l, p) => l === letters[i] && !this.has(num(nexts, i), p)) ? 0 : 1;
      this.edgeNext[this.#edges++] = num(nexts, i);
    }
    this.#edgeEnd[state] = this.#edges;
  }

  #grow(): void {
    const size = this.chain.length * 2;
    this.#masks = resized(this.#masks, size * this.words);
    this.#edgeStart = resized(this.#edgeStart, size);
    this.#edgeEnd = resized(this.#edgeEnd, size);
    this.chain = resized(this.chain, size);
    this.hash = resized(this.hash, size);
  }
}

function resized(from: Int32Array, size: number): Int32Array<ArrayBuffer> {
  const to = new Int32Array(size);
  to.set(from);
  return to;
}

/** For each pull the most changes of group on a chain that starts with it, itself counting one. */
function chainHeights(order: Order, groups: ArrayLike<number> | null): Int32Array {
  const count = order.letters.length;
  const height = new Int32Array(count).fill(1);
  const group = (p: number): number => (groups ? num(groups, num(order.letters, p)) : num(order.letters, p));
  for (let p = count - 1; p >= 0; p--) {
    for (const q of entryAt(order.preds, p)) {
      height[q] = Math.max(i32(height, q), i32(height, p) + (group(q) === group(p) ? 0 : 1));
    }
  }
  return height;
}
