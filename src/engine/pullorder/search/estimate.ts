import { defined, entryAt, i32, num, u16 } from '../../base/at.ts';
import type { Automaton } from '../automaton.ts';
import { multiplicities } from '../bound/multiplicity.ts';
import { INK, MOUNT, type Meter, type Model } from '../model.ts';
import { Patterns } from './patterns.ts';

/** Letters grouped by what a part of the packed cost counts: screens, inks or the letters themselves. */
interface CostPart {
  groupOf: (letter: number) => number;
  /** Whether a group goes on while it finds work (see `multiplicities`). */
  runs: boolean;
  /** Packed cost of entering a group once. */
  weight: number;
}

/** Columns of the screens, inks and letters that a model uses, and the packed cost of one entry of each. */
interface Columns {
  /** By `keyOf`. */
  at: Map<string, number>;
  weights: number[];
}

/** Underestimates the cost still to come, part by part of the packed cost, hence of the whole. */
export class Estimator {
  readonly #automata: readonly Automaton[];
  readonly #meter: Meter;
  readonly #kinds: Model['kinds'];
  readonly #patterns: Patterns | null;
  readonly #columns: Columns;
  /** For each order, pulls × columns: how often each column must be entered from the pull on. */
  readonly #perPull: Uint16Array[];
  /** For each order and state, the same from the state on; worked out when first asked. */
  readonly #rows: (Uint16Array | undefined)[][];
  readonly #most: Uint16Array;

  /**
   * @param automata those of the model
   * @param groups groups of letters (screens, for kinds) for a sharper estimate; see `Patterns`
   */
  constructor(model: Model, automata: readonly Automaton[], groups: readonly (readonly number[])[] | undefined, meter: Meter) {
    this.#automata = automata;
    this.#meter = meter;
    this.#kinds = model.kinds;
    this.#patterns = groups?.length ? new Patterns(model, automata, groups, meter) : null;
    const parts = partsOf(model);
    this.#columns = columnsOf(model, parts);
    const width = this.#columns.weights.length;
    meter.units += 10 * width * automata.length;
    this.#perPull = automata.map((automaton) => pullRows(automaton, parts, this.#columns));
    this.#rows = automata.map(() => []);
    this.#most = new Uint16Array(width);
  }

  /**
   * @param states a state of each automaton, from `at` on
   * @param last letter on the press, −1 for none
   * @returns packed cost for kinds; else set-ups. No continuation costs less
   */
  estimate(states: Int32Array, at: number, last: number): number {
    const most = this.#most;
    const { weights } = this.#columns;
    most.fill(0);
    for (let c = 0; c < this.#automata.length; c++) {
      const row = this.#rowOf(c, i32(states, at + c));
      for (let g = 0; g < most.length; g++) if (u16(row, g) > u16(most, g)) most[g] = u16(row, g);
    }
    let changes = 0;
    let other = 0;
    const unit = num(weights, 0);
    for (let g = 0; g < most.length; g++) {
      if (weights[g] === unit) changes += u16(most, g);
      else other += u16(most, g) * num(weights, g);
    }
    if (this.#kinds && last >= 0) {
      // What is on the press may go on: one entry of its screen and of its ink may be free.
      if (this.#isLeft(0, i32(this.#kinds.screen, last))) changes--;
      if (this.#isLeft(1, i32(this.#kinds.ink, last))) other -= INK;
    }
    if (this.#patterns) changes = Math.max(changes, this.#patterns.estimate(states, at, last));
    return changes * unit + other;
  }

  /** Whether a group of a part of the cost must still be entered, after `most` is worked out. */
  #isLeft(part: number, group: number): boolean {
    const column = this.#columns.at.get(keyOf(part, group));
    return column !== undefined && u16(this.#most, column) > 0;
  }

  #rowOf(c: number, state: number): Uint16Array {
    const known = entryAt(this.#rows, c)[state];
    if (known) return known;
    const width = this.#most.length;
    const row = new Uint16Array(width);
    this.#meter.units += 2 * width;
    for (const p of entryAt(this.#automata, c).ready(state)) {
      for (let g = 0; g < width; g++) row[g] = Math.max(u16(row, g), u16(entryAt(this.#perPull, c), p * width + g));
    }
    entryAt(this.#rows, c)[state] = row;
    return row;
  }
}

function keyOf(part: number, group: number): string {
  return `${part}.${group}`;
}

/** Mounts, ink changes and set-ups for kinds; else set-ups, or mounts where letters go on. */
function partsOf({ kinds, cascade }: Model): CostPart[] {
  const letterOf = (l: number): number => l;
  if (!kinds) return [{ groupOf: letterOf, runs: cascade, weight: 1 }];
  return [
    { groupOf: (l) => i32(kinds.screen, l), runs: true, weight: MOUNT },
    { groupOf: (l) => i32(kinds.ink, l), runs: true, weight: INK },
    { groupOf: letterOf, runs: false, weight: 1 },
  ];
}

/** Groups that the model does not use have no column: parts of a model keep the letters' numbers. */
function columnsOf(model: Model, parts: readonly CostPart[]): Columns {
  const used = new Set<number>(model.orders.flatMap((order) => order.letters));
  const at = new Map<string, number>();
  const weights: number[] = [];
  parts.forEach(({ groupOf, weight }, i) => {
    for (const letter of used) {
      const key = keyOf(i, groupOf(letter));
      if (at.has(key)) continue;
      at.set(key, weights.length);
      weights.push(weight);
    }
  });
  return { at, weights };
}

/** Row-major, pulls × columns: how often each column must be entered from the pull on. */
function pullRows({ order }: Automaton, parts: readonly CostPart[], columns: Columns): Uint16Array {
  const width = columns.weights.length;
  const rows = new Uint16Array(order.letters.length * width);
  parts.forEach(({ groupOf, runs }, i) => {
    const own = [...new Set(order.letters.map(groupOf))];
    const dense = new Map(own.map((g, j) => [g, j]));
    const most = multiplicities(order, (l) => defined(dense.get(groupOf(l))), own.length, runs);
    const to = own.map((g) => defined(columns.at.get(keyOf(i, g))));
    for (let p = 0; p < order.letters.length; p++) {
      for (let j = 0; j < own.length; j++) rows[p * width + num(to, j)] = u16(most, p * own.length + j);
    }
  });
  return rows;
}
