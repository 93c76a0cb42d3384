import { defined, entryAt, i32, num, u16 } from '../../base/at.ts';
import type { Automaton } from '../automaton.ts';
import { grown } from '../grown.ts';
import type { Meter, Model } from '../model.ts';
import { Tuples } from '../tuples.ts';
import { GroupTable, type TabledGroup } from './group-table.ts';
import { RestTables } from './rest-tables.ts';
import { SheetRows } from './sheet-rows.ts';

/** Letters are bits of a number. */
const MAX_FEW_LETTERS = 31;
/** Most sheets; more leave groups too small to say much. */
export const MAX_FEW_SHEETS = 6;
/** States of one sheet that are told apart in 16 bits; a sheet of many free pulls has more. */
const MAX_STATES = 65_535;
/** Nodes that there is room for at first. */
const FIRST_ROOM = 4096;

/** Whether a model is one for `fewSheets`: it has few sheets, and letters that fit into a number. */
export function areFew(model: Model): boolean {
  return model.orders.length <= MAX_FEW_SHEETS && model.letterCount <= MAX_FEW_LETTERS;
}

/** Tables of all groups, one a step; null when one would be longer than `most`. */
export function* tabledGroups(
  model: Model,
  automata: readonly Automaton[],
  groups: readonly (readonly number[])[],
  limits: { most: number; meter: Meter },
): Generator<void, TabledGroup[] | null> {
  const tabled: TabledGroup[] = [];
  for (const letters of groups) {
    const table = GroupTable.of(model, automata, letters, limits);
    yield;
    if (!table) return null;
    tabled.push({ letters, table });
  }
  return tabled;
}

/** How far a search of few sheets goes. */
export interface FewSheetsOptions {
  /** Asked as the search goes on: only shorter words are looked for. */
  below: () => number;
  /** Most tuples. */
  maxNodes: number;
  /** Most states of one sheet; absent = 65535, the most that can be. */
  maxStates?: number;
  meter: Meter;
}

export interface FewSheetsResult {
  /** No word is shorter; `below` when there is none shorter than that. */
  lower: number;
  /** A shortest word, when there is one shorter than `below`. */
  word: number[] | null;
  /** False when the search ended for lack of room; `lower` holds all the same. */
  finished: boolean;
}

/**
 * A shortest word for a few sheets, by A* over the tuples of what is printed on each. What is still
 * to come is underestimated by tables of groups of letters (`GroupTable`): a split of the letters
 * into groups gives the sum of its tables, several splits the largest sum.
 *
 * A letter that would be finished everywhere comes at once: any word for the rest has it somewhere,
 * and may as well begin with it.
 *
 * What was tried on 10 problems of 5 sheets of about 18 pulls, shuffled: one split at random into
 * groups of 7 takes 0.1 to more than 4 million tuples, three such splits 10,000 to 1.6 million, three
 * by `LetterGroups` less than half the work of these; groups of 5 take several times as many, and
 * tables for groups of 10 (9 to 70 million entries) longer than all the rest. Leaving out x y where
 * y x prints more saved a tenth to a quarter of the tuples, and no time. With 7 sheets the groups get
 * too small: the bound was no better and the plan lost the time.
 * @param automata those of the model, which counts letters as 1 each and is one of few sheets
 *   (`areFew`)
 * @param splits each has every letter of the model once
 * @returns yields what `lower` is so far
 */
export function fewSheets(
  model: Model,
  automata: readonly Automaton[],
  splits: readonly (readonly TabledGroup[])[],
  options: FewSheetsOptions,
): Generator<number, FewSheetsResult> {
  return new FewSheetsSearch(model, automata, splits, options).run();
}

/** A node is a tuple of what is printed, one state a sheet. */
class FewSheetsSearch {
  readonly #automata: readonly Automaton[];
  readonly #options: FewSheetsOptions;
  readonly #meter: Meter;
  readonly #sheets: SheetRows[];
  readonly #rest: RestTables;
  /** First column of a sheet's row behind letters and tables; see `SheetRows`. */
  readonly #readyAt: number;
  readonly #nodes: Tuples;
  /** The node before, the letter that led here, the cost so far, what is to come at least; whether it was followed. */
  #parents = new Int32Array(FIRST_ROOM);
  #letterOf = new Int8Array(FIRST_ROOM);
  #costs = new Uint16Array(FIRST_ROOM);
  #guesses = new Uint16Array(FIRST_ROOM);
  #closed = new Uint8Array(FIRST_ROOM);
  /** Open nodes by least length of a word through them. */
  readonly #buckets: number[][] = [];
  #followed = 0;
  #goal = -1;
  #goalCost: number;
  /** The tuple at hand. */
  readonly #now: Int32Array;

  constructor(model: Model, automata: readonly Automaton[], splits: readonly (readonly TabledGroup[])[], options: FewSheetsOptions) {
    const tables = splits.flat().map((group) => group.table);
    this.#automata = automata;
    this.#options = options;
    this.#meter = options.meter;
    this.#readyAt = model.letterCount + tables.length;
    this.#sheets = automata.map((automaton, c) => new SheetRows(automaton, model.letterCount, tables, c));
    this.#nodes = new Tuples(automata.length, FIRST_ROOM);
    this.#now = new Int32Array(automata.length);
    this.#rest = new RestTables(splits, this.#sheets, this.#now, model.letterCount);
    this.#goalCost = options.below();
  }

  *run(): Generator<number, FewSheetsResult> {
    const { below, maxNodes, maxStates = MAX_STATES } = this.#options;
    this.#enter(0, 0, -1, -1);
    for (let total = 0; total < this.#goalCost; total++) {
      const bucket = (this.#buckets[total] ??= []);
      while (bucket.length > 0 && total < this.#goalCost) {
        const node = defined(bucket.pop());
        if (this.#closed[node] || u16(this.#costs, node) + u16(this.#guesses, node) !== total) continue;
        this.#closed[node] = 1;
        if (this.#nodes.count >= maxNodes) return { lower: total, word: null, finished: false };
        if (++this.#followed % 256 === 0) {
          yield total;
          if (below() < this.#goalCost) {
            this.#goalCost = below();
            this.#goal = -1;
          }
        }
        this.#follow(node);
        if (this.#automata.some((automaton) => automaton.states > maxStates)) return { lower: total, word: null, finished: false };
      }
    }
    return { lower: this.#goalCost, word: this.#goal < 0 ? null : this.#wordTo(this.#goal), finished: true };
  }

  /** Enters what each letter that finds work leads to. */
  #follow(node: number): void {
    const now = this.#now;
    const sheets = this.#sheets;
    const { values } = this.#nodes;
    const from = node * now.length;
    const cost = u16(this.#costs, node) + 1;
    this.#nodes.read(node, now);
    let ready = 0;
    for (let c = 0; c < now.length; c++) ready |= entryAt(sheets, c).get(i32(now, c), this.#readyAt);
    this.#rest.startFromNow();
    this.#meter.units += this.#rest.tables;
    for (let letters = ready; letters !== 0; letters &= letters - 1) {
      const letter = lowest(letters);
      for (let c = 0; c < now.length; c++) now[c] = entryAt(sheets, c).get(u16(values, from + c), letter);
      const left = this.#rest.after(letter, this.#goalCost - cost);
      this.#meter.units += 2;
      if (cost + left < this.#goalCost) this.#enter(cost, left, node, letter);
    }
  }

  /** Enters the tuple `now`, of which `left` is known to be still to come at least. */
  #enter(before: number, left: number, parent: number, letter: number): void {
    let cost = before;
    let guess = left;
    let all = this.#forced();
    if (all !== 0 || parent < 0) {
      for (; all !== 0; all = this.#forced()) {
        this.#play(lowest(all));
        cost++;
      }
      guess = this.#rest.now();
      this.#meter.units += this.#rest.tables;
      if (cost + guess >= this.#goalCost) return;
    }
    let node = this.#nodes.find(this.#now);
    if (node < 0) {
      node = this.#nodes.add(this.#now);
      this.#guesses[node] = guess;
    } else if (u16(this.#costs, node) <= cost) return;
    this.#costs[node] = cost;
    this.#parents[node] = parent;
    this.#letterOf[node] = letter;
    this.#closed[node] = 0;
    (this.#buckets[cost + guess] ??= []).push(node);
    if (this.#isDone()) {
      this.#goal = node;
      this.#goalCost = cost;
    }
    this.#meter.units += 4;
    if (this.#nodes.room > this.#costs.length) this.#grow(this.#nodes.room);
  }

  /** Letters that would be finished everywhere. */
  #forced(): number {
    const now = this.#now;
    let need = 0;
    let later = 0;
    for (let c = 0; c < now.length; c++) {
      need |= entryAt(this.#sheets, c).get(i32(now, c), this.#readyAt + 1);
      later |= entryAt(this.#sheets, c).get(i32(now, c), this.#readyAt + 2);
    }
    return need & ~later;
  }

  #play(letter: number): void {
    const now = this.#now;
    for (let c = 0; c < now.length; c++) now[c] = entryAt(this.#sheets, c).get(i32(now, c), letter);
  }

  #isDone(): boolean {
    const now = this.#now;
    for (let c = 0; c < now.length; c++) if (entryAt(this.#sheets, c).get(i32(now, c), this.#readyAt + 1) !== 0) return false;
    return true;
  }

  #grow(room: number): void {
    this.#parents = grown(this.#parents, room);
    this.#letterOf = grown(this.#letterOf, room);
    this.#costs = grown(this.#costs, room);
    this.#guesses = grown(this.#guesses, room);
    this.#closed = grown(this.#closed, room);
  }

  /** The chosen letters that lead to a node, each followed by those that are then forced. */
  #wordTo(node: number): number[] {
    const chosen: number[] = [];
    for (let i = node; i32(this.#parents, i) >= 0; i = i32(this.#parents, i)) chosen.push(num(this.#letterOf, i));
    const word: number[] = [];
    this.#now.fill(0);
    for (;;) {
      const all = this.#forced();
      if (all === 0 && chosen.length === 0) return word;
      const letter = all !== 0 ? lowest(all) : defined(chosen.pop());
      word.push(letter);
      this.#play(letter);
    }
  }
}

function lowest(bits: number): number {
  return 31 - Math.clz32(bits & -bits);
}
