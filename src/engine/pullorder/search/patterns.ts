import { defined, entryAt, i32, num } from '../../base/at.ts';
import { Automaton } from '../automaton.ts';
import type { Meter, Model, Order } from '../model.ts';

/** States remembered for one group; beyond, the longest chain stands in for the exact value. */
const MAX_VALUES = 60_000;

interface Group {
  letters: Set<number>;
  automata: Automaton[];
  /** For each order of the model: which automaton, and where its pulls stand there (−1: left out). */
  which: number[];
  place: Int32Array[];
  /** For each order and state of the model: the state in the group, −1 when not looked up yet. */
  cache: Int32Array[];
  values: Map<string, number>;
}

/**
 * Estimates what is left from any state as a sum over groups of letters that share none: for each
 * group, the exact shortest word for what is left of its pulls alone. A letter of a word serves one
 * group, so the sum never exceeds the true length. For models of kinds the groups are of screens
 * and the sum counts mounts.
 */
export class Patterns {
  readonly #model: Model;
  readonly #automata: readonly Automaton[];
  readonly #groups: Group[];
  readonly #letterOf: (letter: number) => number;
  readonly #meter: Meter;

  /**
   * @param automata those of the model
   * @param groups letters (screens, for models of kinds), no letter twice
   */
  constructor(model: Model, automata: readonly Automaton[], groups: readonly (readonly number[])[], meter: Meter) {
    this.#model = model;
    this.#automata = automata;
    this.#meter = meter;
    const screen = model.kinds?.screen;
    this.#letterOf = screen ? (l) => i32(screen, l) : (l) => l;
    this.#groups = groups.map((letters) => this.#group(new Set(letters)));
  }

  #group(letters: Set<number>): Group {
    const cascade = this.#model.cascade || this.#model.kinds !== null;
    const byText = new Map<string, number>();
    const automata: Automaton[] = [];
    const which: number[] = [];
    const place: Int32Array[] = [];
    for (const { order } of this.#automata) {
      const at = new Int32Array(order.letters.length).fill(-1);
      const part: Order = { letters: [], preds: [] };
      order.letters.forEach((letter, p) => {
        const own = this.#letterOf(letter);
        if (!letters.has(own)) return;
        at[p] = part.letters.length;
        part.letters.push(own);
        part.preds.push(entryAt(order.preds, p).flatMap((q) => (i32(at, q) >= 0 ? [i32(at, q)] : [])));
      });
      const text = JSON.stringify(part);
      if (!byText.has(text)) {
        byText.set(text, automata.length);
        automata.push(new Automaton(part, { cascade, salt: automata.length }, this.#meter));
      }
      which.push(defined(byText.get(text)));
      place.push(at);
    }
    return { letters, automata, which, place, cache: this.#automata.map(() => new Int32Array(0)), values: new Map() };
  }

  /**
   * @param states the model's states from `at` on
   * @param last letter on the press, −1 for none; its screen may go on for nothing
   */
  estimate(states: Int32Array, at: number, last: number): number {
    const screen = this.#model.kinds && last >= 0 ? this.#letterOf(last) : -1;
    let sum = 0;
    for (const group of this.#groups) {
      const goesOn = group.letters.has(screen);
      const left: number[][] = group.automata.map(() => []);
      for (let c = 0; c < this.#automata.length; c++) {
        let state = this.#project(group, c, i32(states, at + c));
        const w = num(group.which, c);
        if (goesOn) state = entryAt(group.automata, w).step(state, screen);
        add(entryAt(group.automata, w), entryAt(left, w), state);
      }
      sum += this.#value(group, left);
    }
    return sum;
  }

  #project(group: Group, c: number, state: number): number {
    let cache = entryAt(group.cache, c);
    if (state >= cache.length) {
      const grown = new Int32Array(2 * state + 16).fill(-1);
      grown.set(cache);
      group.cache[c] = cache = grown;
    }
    if (i32(cache, state) >= 0) return i32(cache, state);
    const automaton = entryAt(group.automata, num(group.which, c));
    const mask = new Int32Array(automaton.words);
    entryAt(group.place, c).forEach((to, p) => {
      if (to >= 0 && entryAt(this.#automata, c).has(state, p)) mask[to >>> 5] = i32(mask, to >>> 5) | (1 << (to & 31));
    });
    return (cache[state] = automaton.intern(mask));
  }

  /** Shortest word for a set of states of the group's orders. */
  #value(group: Group, left: readonly (readonly number[])[]): number {
    let key = '';
    let chain = 0;
    for (let w = 0; w < left.length; w++) {
      for (const state of entryAt(left, w)) {
        const own = i32(entryAt(group.automata, w).chain, state);
        if (own === 0) continue;
        chain = Math.max(chain, own);
        key += String.fromCharCode(w, state >>> 15, state & 32767);
      }
    }
    if (chain === 0) return 0;
    const known = group.values.get(key);
    if (known !== undefined) return known;
    if (group.values.size >= MAX_VALUES) return chain;
    let best = Infinity;
    for (const letter of group.letters) {
      let moves = false;
      const next = left.map((states, w) => {
        const automaton = entryAt(group.automata, w);
        const out: number[] = [];
        for (const state of states) {
          const to = automaton.step(state, letter);
          if (to !== state) moves = true;
          add(automaton, out, to);
        }
        return out;
      });
      this.#meter.units += 6 * this.#automata.length;
      if (!moves) continue;
      best = Math.min(best, 1 + this.#value(group, next));
      if (best <= chain) break;
    }
    group.values.set(key, best);
    return best;
  }
}

/** Adds a state to a list that keeps only those with most left; what finishes them finishes the rest. */
function add(automaton: Automaton, list: number[], state: number): void {
  for (const other of list) if (automaton.within(other, state)) return;
  let kept = 0;
  for (const other of list) if (!automaton.within(state, other)) list[kept++] = other;
  list.length = kept;
  let i = kept;
  while (i > 0 && num(list, i - 1) > state) {
    list[i] = num(list, i - 1);
    i--;
  }
  list[i] = state;
}
