import { entryAt, i32, num } from '../../base/at.ts';
import type { Random } from '../../base/random.ts';
import type { Automaton } from '../automaton.ts';
import { INK, MOUNT, MOVE, partOf, stepCost, wordCost, type Meter, type Model, type Order } from '../model.ts';
import { automataOf, beam, type PricedWord } from './beam.ts';
import { exact, type ExactOptions } from './exact.ts';

/** Windows without gain after which the word is shaken. */
const PATIENCE = 150;

/** The model with time running backwards: words read from the end. */
function reversed(model: Model): Model {
  const orders = model.orders.map((order): Order => {
    const count = order.letters.length;
    const preds: number[][] = Array.from({ length: count }, () => []);
    for (let b = count - 1; b >= 0; b--) for (const a of entryAt(order.preds, b)) entryAt(preds, count - 1 - a).push(count - 1 - b);
    return { letters: [...order.letters].reverse(), preds };
  });
  return { ...model, orders };
}

/**
 * Betters a word by re-planning windows of it. Before the window everything is printed as early as
 * the word allows, after it as late as it allows; what lies between is a small problem of its own,
 * solved afresh. A new window that costs no more is taken, equal ones too, so that the word drifts
 * over the plateau. When nothing has come of that for a while, one window is made a little dearer and
 * the search goes on from there; it returns to the best word unless that pays.
 */
export class Improver {
  readonly #model: Model;
  #automata: Automaton[];
  #back: Automaton[];
  readonly #random: Random;
  readonly #meter: Meter;
  /** The best word so far and its packed cost. */
  word: number[] = [];
  cost = 0;
  /** The word that is being changed. */
  #now: number[] = [];
  #nowCost = 0;
  #idle = 0;
  /** States before each set-up, from the start; rows of one number an order. */
  #early: Int32Array[] = [];
  /** States after each set-up, read from the end. */
  #late: Int32Array[] = [];

  constructor(model: Model, word: readonly number[], random: Random, meter: Meter) {
    this.#model = model;
    this.#automata = automataOf(model, meter);
    this.#back = automataOf(reversed(model), meter);
    this.#random = random;
    this.#meter = meter;
    this.set(word);
  }

  /** The automata of the model, which others may use and grow. */
  get automata(): readonly Automaton[] {
    return this.#automata;
  }

  /** Takes another word as the one to better. */
  set(word: readonly number[]): void {
    this.word = [...word];
    this.cost = wordCost(this.#model, this.word);
    this.#goOnFrom(this.word, this.cost);
  }

  #goOnFrom(word: readonly number[], cost: number): void {
    this.#now = [...word];
    this.#nowCost = cost;
    this.#idle = 0;
    this.#early = [];
    this.#late = [];
    this.#trace(0, word.length);
  }

  /** States that the automata hold; a caller with little memory starts afresh when they are many. */
  get states(): number {
    return this.#automata.reduce((n, a, i) => n + a.states + entryAt(this.#back, i).states, 0);
  }

  /** Drops all states but those of the word. */
  forget(): void {
    this.#automata = automataOf(this.#model, this.#meter);
    this.#back = automataOf(reversed(this.#model), this.#meter);
    this.#early = [];
    this.#late = [];
    this.#trace(0, this.#now.length);
  }

  /** Redoes early states after `from` and late states before `to` (positions in the new word). */
  #trace(from: number, to: number): void {
    const orders = this.#automata.length;
    const length = this.#now.length;
    const early = this.#early.slice(0, from + 1);
    if (early.length === 0) early.push(new Int32Array(orders));
    for (let i = early.length - 1; i < length; i++) early.push(this.#next(this.#automata, entryAt(early, i), num(this.#now, i)));
    const tail = length - to;
    const late =
      tail === 0 || this.#late.length === 0 ? [new Int32Array(orders)] : this.#late.slice(this.#late.length - 1 - tail).reverse();
    for (let i = late.length - 1; i < length; i++) late.push(this.#next(this.#back, entryAt(late, i), num(this.#now, length - 1 - i)));
    this.#early = early;
    this.#late = late.reverse();
    this.#meter.units += orders * (2 * length - from - tail);
  }

  #next(automata: readonly Automaton[], states: Int32Array, letter: number): Int32Array {
    const out = new Int32Array(states.length);
    for (let c = 0; c < states.length; c++) out[c] = entryAt(automata, c).step(i32(states, c), letter);
    return out;
  }

  /**
   * Re-plans one window.
   * @param span set-ups in the window
   * @param width beam width
   * @param slack how much dearer the new window may be
   */
  #window(start: number, span: number, width: number, slack: number): void {
    const end = Math.min(this.#now.length, start + span);
    const early = entryAt(this.#early, start);
    const late = entryAt(this.#late, end);
    const part = partOf(this.#model, (c, p) => {
      const count = entryAt(this.#automata, c).order.letters.length;
      return !entryAt(this.#automata, c).has(i32(early, c), p) && !entryAt(this.#back, c).has(i32(late, c), count - 1 - p);
    });
    const left = part.orders.reduce((n, o) => n + o.letters.length, 0);
    // Setting a window up costs about this much beside the search in it.
    this.#meter.units += 600 + 12 * early.length + 40 * left;
    const before = start > 0 ? num(this.#now, start - 1) : -1;
    const after = end < this.#now.length ? num(this.#now, end) : -1;
    let old = 0;
    for (let i = start; i <= end; i++)
      old += stepCost(this.#model, i > 0 ? num(this.#now, i - 1) : -1, i < end ? num(this.#now, i) : after);
    const automata = automataOf(part, this.#meter);
    const found =
      span <= 5 && slack === 0
        ? this.#exactly(part, automata, { below: old + 1, before, after })
        : beam(part, automata, {
            width,
            below: old + slack + 1,
            before,
            after,
            reachTenths: 10 + this.#random.int(30),
            finish: this.#random.pick([0, 3, 6, 12]),
            thriftTenths: this.#random.pick([0, 1, 3, 8]),
            noise: slack > 0 ? 6000 : this.#random.chance(3, 4) ? 1 + this.#random.int(1500) : 0,
            random: this.#random,
            meter: this.#meter,
          });
    if (!found) return;
    const was = this.#now.slice(start, end);
    if (found.cost === old && found.word.length === was.length && found.word.every((l, i) => l === was[i])) return;
    this.#now.splice(start, end - start, ...found.word);
    this.#nowCost += found.cost - old;
    this.#trace(start, start + found.word.length);
  }

  #exactly(part: Model, automata: readonly Automaton[], ends: Pick<ExactOptions, 'below' | 'before' | 'after'>): PricedWord | null {
    const result = exact(part, automata, { ...ends, maxNodes: 400, meter: this.#meter });
    return result.word ? { word: result.word, cost: result.lower } : null;
  }

  /** Re-plans random windows for about so many units; true when the best word became cheaper. */
  run(units: number): boolean {
    const until = this.#meter.units + units;
    let better = false;
    while (this.#meter.units < until && this.#now.length > 0) {
      const length = this.#now.length;
      const kick = ++this.#idle % PATIENCE === 0;
      if (kick && this.#nowCost > this.cost) {
        const idle = this.#idle;
        this.#goOnFrom(this.word, this.cost);
        this.#idle = idle;
        continue;
      }
      const longest = Math.min(length, !kick && this.#random.chance(1, 4) ? 40 : 18);
      const span = Math.min(length, 2 + this.#random.int(Math.max(1, longest - 1)));
      const start = this.#random.int(length - span + 1);
      if (kick) this.#window(start, span, 4, this.#slack());
      else this.#window(start, span, span > 20 ? 12 : 24, 0);
      if (this.#nowCost < this.cost) {
        this.word = [...this.#now];
        this.cost = this.#nowCost;
        this.#idle = 0;
        better = true;
      }
    }
    return better;
  }

  /** One mount or, for kinds, one or two ink changes or a few changes of offset more. */
  #slack(): number {
    if (!this.#model.kinds) return 1;
    return this.#random.pick([MOVE * 3, INK, INK * 2, INK * 3, MOUNT]);
  }
}
