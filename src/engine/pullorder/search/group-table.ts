import { entryAt, i32, num, u8 } from '../../base/at.ts';
import { Automaton } from '../automaton.ts';
import type { Meter, Model, Order } from '../model.ts';

/** Sets of pulls of one sheet in a table; a group whose sheets are freer has none. */
const MAX_MASKS = 2048;
/** No word of a group is longer than its pulls are many, and lengths are kept in bytes. */
const MAX_PULLS = 250;

/**
 * How often a group of letters must come from any tuple of printed pulls, one set a sheet, when all
 * other letters are struck out: a whole table, filled from the finished tuple backwards. Exact for
 * the group, hence a lower bound for all letters, and tables of groups that share no letter add up.
 */
export class GroupTable {
  /** Least lengths by place; a tuple's place is the sum of its parts' (`placeOf`). */
  readonly least: Uint8Array;
  readonly #automata: readonly Automaton[];
  readonly #parts: readonly Part[];

  /**
   * @param automata those of the model, in the order of its sheets
   * @param letters the group
   * @param limits `most`: the longest table
   * @returns null when the table would be longer, or sheets are too free or too long for one
   */
  static of(
    model: Model,
    automata: readonly Automaton[],
    letters: readonly number[],
    { most, meter }: { most: number; meter: Meter },
  ): GroupTable | null {
    const parts: Part[] = [];
    let size = 1;
    let pulls = 0;
    for (const { order } of automata) {
      const part = partOn(order, model.cascade, letters, meter);
      if (!part) return null;
      size *= part.masks;
      pulls += part.pulls.length;
      if (size > most || pulls > MAX_PULLS) return null;
      parts.push(part);
    }
    meter.units += Math.ceil((size * letters.length) / 12);
    return new GroupTable(automata, parts, size, letters.length);
  }

  private constructor(automata: readonly Automaton[], parts: Part[], size: number, letters: number) {
    this.#automata = automata;
    this.#parts = parts;
    this.least = new Uint8Array(size);
    let stride = 1;
    for (const part of parts) {
      part.stride = stride;
      stride *= part.masks;
    }
    fill(this.least, parts, letters);
  }

  /** What a sheet in one of its automaton's states adds to the place. */
  placeOf(sheet: number, state: number): number {
    const part = entryAt(this.#parts, sheet);
    const known = part.places[state];
    if (known !== undefined) return known;
    const automaton = entryAt(this.#automata, sheet);
    const mask = new Int32Array(part.automaton.words);
    part.pulls.forEach((p, i) => {
      if (automaton.has(state, p)) mask[i >>> 5] = i32(mask, i >>> 5) | (1 << (i & 31));
    });
    return (part.places[state] = part.stride * i32(part.rank, part.automaton.intern(mask)));
  }
}

/** A group of letters and the table of how often it must come. */
export interface TabledGroup {
  letters: readonly number[];
  table: GroupTable;
}

interface Part {
  automaton: Automaton;
  /** The order's pulls that the part keeps. */
  pulls: number[];
  /** Sets of pulls; `rank` numbers them so that what grows comes later. */
  masks: number;
  rank: Int32Array;
  /** Rank × letter of the group → how many ranks further. */
  steps: Int32Array;
  stride: number;
  places: number[];
}

function partOn(order: Order, cascade: boolean, letters: readonly number[], meter: Meter): Part | null {
  const pulls = order.letters.flatMap((l, p) => (letters.includes(l) ? [p] : []));
  const at = new Map(pulls.map((p, i) => [p, i]));
  const own: Order = {
    letters: pulls.map((p) => num(order.letters, p)),
    preds: pulls.map((p) => entryAt(order.preds, p).flatMap((q) => at.get(q) ?? [])),
  };
  const automaton = new Automaton(own, { cascade }, meter);
  // All down-sets, not only those that words of the group lead to: other letters hold pulls back.
  const count: number[] = [];
  for (let s = 0; s < automaton.states; s++) {
    if (automaton.states > MAX_MASKS) return null;
    let printed = 0;
    for (let i = 0; i < pulls.length; i++) if (automaton.has(s, i)) printed++;
    count.push(printed);
    for (const p of automaton.ready(s)) {
      const mask = new Int32Array(automaton.words);
      for (let i = 0; i < pulls.length; i++) if (i === p || automaton.has(s, i)) mask[i >>> 5] = i32(mask, i >>> 5) | (1 << (i & 31));
      automaton.intern(mask);
    }
  }
  const byCount = count.map((_, s) => s).sort((a, b) => num(count, a) - num(count, b) || a - b);
  const rank = new Int32Array(byCount.length);
  byCount.forEach((s, i) => (rank[s] = i));
  const steps = new Int32Array(byCount.length * letters.length);
  byCount.forEach((s, i) => letters.forEach((l, j) => (steps[i * letters.length + j] = i32(rank, automaton.step(s, l)) - i)));
  return { automaton, pulls, masks: byCount.length, rank, steps, stride: 1, places: [] };
}

/** Backwards over all tuples, the first part running fastest. */
function fill(least: Uint8Array, parts: readonly Part[], letters: number): void {
  const ahead = parts.map(() => new Int32Array(letters));
  const inner = entryAt(parts, 0);
  const walk = (c: number, place: number, given: Int32Array): void => {
    const { masks, steps, stride } = entryAt(parts, c);
    if (c > 0) {
      const own = entryAt(ahead, c);
      for (let s = masks - 1; s >= 0; s--) {
        for (let l = 0; l < letters; l++) own[l] = i32(given, l) + stride * i32(steps, s * letters + l);
        walk(c - 1, place + s * stride, own);
      }
      return;
    }
    for (let s = masks - 1; s >= 0; s--) {
      let best = 254;
      const here = place + s;
      for (let l = 0, i = s * letters; l < letters; l++, i++) {
        const step = i32(given, l) + i32(inner.steps, i);
        if (step === 0) continue;
        const value = u8(least, here + step);
        if (value < best) best = value;
      }
      least[here] = best === 254 ? 0 : best + 1;
    }
  };
  walk(parts.length - 1, 0, new Int32Array(letters));
}
