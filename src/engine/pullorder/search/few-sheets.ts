import { defined, entryAt, i32, num, u16, u8 } from '../../base/at.ts';
import type { Automaton } from '../automaton.ts';
import type { Meter, Model } from '../model.ts';
import { GroupTable } from './group-table.ts';
import { grown, SheetRows } from './sheet-rows.ts';

/** Letters are bits of a number. */
const MAX_FEW_LETTERS = 31;
/** Most sheets; more leave groups too small to say much. */
export const MAX_FEW_SHEETS = 6;
/** States of one sheet that are told apart in 16 bits; a sheet of many free pulls has more. */
const MAX_STATES = 65_535;

/** A group of letters and how often it must come. */
export interface Share {
  letters: readonly number[];
  table: GroupTable;
}

/** Whether a model is one for `fewSheets`: it has few sheets, and letters that fit into a number. */
export function areFew(model: Model): boolean {
  return model.orders.length <= MAX_FEW_SHEETS && model.letterCount <= MAX_FEW_LETTERS;
}

/** Tables of all groups, one a step; null when one would be longer than `most`. */
export function* sharesOf(
  model: Model,
  automata: readonly Automaton[],
  groups: readonly (readonly number[])[],
  most: number,
  meter: Meter,
): Generator<void, Share[] | null> {
  const shares: Share[] = [];
  for (const letters of groups) {
    const table = GroupTable.of(model, automata, letters, most, meter);
    yield;
    if (!table) return null;
    shares.push({ letters, table });
  }
  return shares;
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
 * @param options `below` is asked as the search goes on: only shorter words are looked for. The
 *   search ends beyond `maxNodes` tuples, or `maxStates` (at most 65535) states of one sheet
 * @returns yields what `lower` is so far
 */
export function* fewSheets(
  model: Model,
  automata: readonly Automaton[],
  splits: readonly (readonly Share[])[],
  options: { below: () => number; maxNodes: number; meter: Meter; maxStates?: number },
): Generator<number, FewSheetsResult> {
  const { below, maxNodes, meter, maxStates = MAX_STATES } = options;
  const n = automata.length;
  const letterCount = model.letterCount;
  const shares = splits.flat();
  const tables = shares.map((share) => share.table);
  const least = tables.map((table) => table.least);
  /** Which table has a letter, splits × letters. */
  const tableOf = new Int32Array(splits.length * letterCount);
  splits.forEach((split, s) =>
    split.forEach((share) => share.letters.forEach((l) => (tableOf[s * letterCount + l] = shares.indexOf(share)))),
  );
  const sheets = automata.map((automaton, c) => new SheetRows(automaton, letterCount, tables, c));
  const readyAt = letterCount + tables.length;

  let room = 4096;
  let states = new Uint16Array(room * n);
  let parents = new Int32Array(room);
  let letterOf = new Int8Array(room);
  let costs = new Uint16Array(room);
  let guesses = new Uint16Array(room);
  let closed = new Uint8Array(room);
  let count = 0;
  let table = new Int32Array(8192).fill(-1);
  const buckets: number[][] = [];
  const now = new Int32Array(n);
  let goal = -1;
  let goalCost = below();

  const slotOf = (): number => {
    let h = 0;
    for (let c = 0; c < n; c++) h = Math.imul(h ^ i32(now, c), 0x9e3779b1) ^ (h >>> 15);
    return (h ^ (h >>> 13)) & (table.length - 1);
  };
  /** Letters that would be finished everywhere. */
  const forced = (): number => {
    let need = 0;
    let later = 0;
    for (let c = 0; c < n; c++) {
      need |= entryAt(sheets, c).get(i32(now, c), readyAt + 1);
      later |= entryAt(sheets, c).get(i32(now, c), readyAt + 2);
    }
    return need & ~later;
  };
  const play = (letter: number): void => {
    for (let c = 0; c < n; c++) now[c] = entryAt(sheets, c).get(i32(now, c), letter);
  };
  const leftOn = (t: number): number => {
    let place = 0;
    for (let c = 0; c < n; c++) place += entryAt(sheets, c).get(i32(now, c), letterCount + t);
    return u8(entryAt(least, t), place);
  };
  const guess = (): number => {
    let most = 0;
    for (let s = 0, t = 0; s < splits.length; s++) {
      let sum = 0;
      for (let i = entryAt(splits, s).length; i > 0; i--, t++) sum += leftOn(t);
      if (sum > most) most = sum;
    }
    meter.units += tables.length;
    return most;
  };
  /** Enters the tuple `now`, of which `left` is known to be still to come at least. */
  const enter = (before: number, left: number, parent: number, letter: number): void => {
    let cost = before;
    let h = left;
    let all = forced();
    if (all !== 0 || parent < 0) {
      for (; all !== 0; all = forced()) {
        play(lowest(all));
        cost++;
      }
      h = guess();
      if (cost + h >= goalCost) return;
    }
    let slot = slotOf();
    let node = -1;
    for (; i32(table, slot) >= 0; slot = (slot + 1) & (table.length - 1)) {
      const other = i32(table, slot);
      let c = 0;
      while (c < n && states[other * n + c] === now[c]) c++;
      if (c < n) continue;
      if (u16(costs, other) <= cost) return;
      node = other;
      break;
    }
    if (node < 0) {
      node = count++;
      table[slot] = node;
      for (let c = 0; c < n; c++) states[node * n + c] = i32(now, c);
      guesses[node] = h;
    }
    costs[node] = cost;
    parents[node] = parent;
    letterOf[node] = letter;
    closed[node] = 0;
    (buckets[cost + h] ??= []).push(node);
    if (sheets.every((sheet, c) => sheet.get(i32(now, c), readyAt + 1) === 0)) {
      goal = node;
      goalCost = cost;
    }
    meter.units += 4;
    if (count === room) {
      room *= 2;
      states = grown(states, room * n);
      parents = grown(parents, room);
      letterOf = grown(letterOf, room);
      costs = grown(costs, room);
      guesses = grown(guesses, room);
      closed = grown(closed, room);
    }
    if (count * 2 > table.length) {
      table = new Int32Array(table.length * 2).fill(-1);
      for (let other = 0; other < count; other++) {
        for (let c = 0; c < n; c++) now[c] = u16(states, other * n + c);
        let s = slotOf();
        while (i32(table, s) >= 0) s = (s + 1) & (table.length - 1);
        table[s] = other;
      }
    }
  };
  const wordTo = (node: number): number[] => {
    const chosen: number[] = [];
    for (let i = node; i32(parents, i) >= 0; i = i32(parents, i)) chosen.push(num(letterOf, i));
    const word: number[] = [];
    now.fill(0);
    for (;;) {
      const all = forced();
      if (all === 0 && chosen.length === 0) return word;
      const letter = all !== 0 ? lowest(all) : defined(chosen.pop());
      word.push(letter);
      play(letter);
    }
  };
  enter(0, 0, -1, -1);
  const here = new Int32Array(tables.length);
  const sums = new Int32Array(splits.length);
  let looked = 0;
  for (let total = 0; total < goalCost; total++) {
    const bucket = (buckets[total] ??= []);
    while (bucket.length > 0 && total < goalCost) {
      const node = defined(bucket.pop());
      const cost = u16(costs, node);
      if (closed[node] || cost + u16(guesses, node) !== total) continue;
      closed[node] = 1;
      if (count >= maxNodes) return { lower: total, word: null, finished: false };
      if (++looked % 256 === 0) {
        yield total;
        if (below() < goalCost) {
          goalCost = below();
          goal = -1;
        }
      }
      let ready = 0;
      for (let c = 0; c < n; c++) {
        now[c] = u16(states, node * n + c);
        ready |= entryAt(sheets, c).get(i32(now, c), readyAt);
      }
      for (let s = 0, t = 0; s < splits.length; s++) {
        sums[s] = 0;
        for (let i = entryAt(splits, s).length; i > 0; i--, t++) sums[s] = i32(sums, s) + (here[t] = leftOn(t));
      }
      meter.units += tables.length;
      for (let letters = ready; letters !== 0; letters &= letters - 1) {
        const letter = lowest(letters);
        for (let c = 0; c < n; c++) now[c] = entryAt(sheets, c).get(u16(states, node * n + c), letter);
        let left = 0;
        for (let s = 0; s < splits.length && cost + 1 + left < goalCost; s++) {
          const t = i32(tableOf, s * letterCount + letter);
          left = Math.max(left, i32(sums, s) - i32(here, t) + leftOn(t));
        }
        meter.units += 2;
        if (cost + 1 + left < goalCost) enter(cost + 1, left, node, letter);
      }
      if (automata.some((automaton) => automaton.states > maxStates)) return { lower: total, word: null, finished: false };
    }
  }
  return { lower: goalCost, word: goal < 0 ? null : wordTo(goal), finished: true };
}

function lowest(bits: number): number {
  return 31 - Math.clz32(bits & -bits);
}
