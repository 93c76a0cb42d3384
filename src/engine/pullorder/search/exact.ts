import { entryAt, f64, i32 } from '../../base/at.ts';
import type { Automaton } from '../automaton.ts';
import { stepCost, type Meter, type Model } from '../model.ts';
import { estimator } from './estimate.ts';
import { Heap } from './heap.ts';

export interface ExactOptions {
  /** Only words cheaper than this are looked for. */
  below: number;
  before: number;
  after: number;
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
  const { below, before, after, maxNodes, meter } = options;
  const orders = automata.length;
  const startCost = stepCost(model, before, after);
  if (orders === 0) {
    return startCost < below ? { lower: startCost, word: [], finished: true } : { lower: below, word: null, finished: true };
  }
  const kinds = model.kinds;
  const estimate = estimator(model, automata, options.groups, meter);
  let room = 1024;
  let states = new Int32Array(room * orders);
  let lasts = new Int32Array(room);
  let parents = new Int32Array(room);
  let costs = new Float64Array(room);
  let closed = new Uint8Array(room);
  let count = 0;
  const heap = new Heap();
  let table = new Int32Array(4096).fill(-1);
  const current = new Int32Array(orders);
  let goal = -1;
  let goalCost = below;

  const hashOf = (at: number, last: number): number => {
    let h = kinds ? Math.imul(last + 2, 0x27d4eb2f) : 0;
    for (let c = 0; c < orders; c++) h ^= i32(entryAt(automata, c).mix, i32(states, at + c));
    return (h ^ (h >>> 15)) >>> 0;
  };
  const same = (node: number, at: number, last: number): boolean => {
    if (kinds && lasts[node] !== last) return false;
    for (let c = 0; c < orders; c++) if (states[node * orders + c] !== states[at + c]) return false;
    return true;
  };
  /** Enters the states written at slot `count`; drops them when known as cheap. */
  const enter = (last: number, cost: number, parent: number): void => {
    const at = count * orders;
    let done = true;
    for (let c = 0; c < orders && done; c++) done = entryAt(automata, c).chain[i32(states, at + c)] === 0;
    const total = cost + (done ? stepCost(model, last, after) : estimate(states, at, last));
    meter.units += 10 + orders;
    if (total >= goalCost) return;
    let slot = hashOf(at, last) & (table.length - 1);
    while (i32(table, slot) >= 0) {
      const node = i32(table, slot);
      if (same(node, at, last)) {
        if (f64(costs, node) <= cost) return;
        costs[node] = cost;
        parents[node] = parent;
        closed[node] = 0;
        if (done) {
          goal = node;
          goalCost = total;
        } else heap.push(total, node);
        return;
      }
      slot = (slot + 1) & (table.length - 1);
    }
    table[slot] = count;
    lasts[count] = last;
    parents[count] = parent;
    costs[count] = cost;
    if (done) {
      goal = count;
      goalCost = total;
    } else heap.push(total, count);
    count++;
    if (count === room) {
      room *= 2;
      states = copyTo(states, new Int32Array(room * orders));
      lasts = copyTo(lasts, new Int32Array(room));
      parents = copyTo(parents, new Int32Array(room));
      costs = copyTo(costs, new Float64Array(room));
      closed = copyTo(closed, new Uint8Array(room));
    }
    if (count * 2 > table.length) {
      table = new Int32Array(table.length * 2).fill(-1);
      for (let n = 0; n < count; n++) {
        let s = hashOf(n * orders, i32(lasts, n)) & (table.length - 1);
        while (i32(table, s) >= 0) s = (s + 1) & (table.length - 1);
        table[s] = n;
      }
    }
  };

  enter(before, 0, -1);
  const tried = new Uint8Array(model.letterCount);
  while (heap.size > 0) {
    const lower = heap.least;
    if (lower >= goalCost) break;
    if (count >= maxNodes) return { lower, word: null, finished: false };
    const node = heap.pop();
    if (closed[node]) continue;
    closed[node] = 1;
    const last = i32(lasts, node);
    const cost = f64(costs, node);
    for (let c = 0; c < orders; c++) current[c] = i32(states, node * orders + c);
    const letters: number[] = [];
    for (let c = 0; c < orders; c++) {
      const automaton = entryAt(automata, c);
      const start = automaton.edgeStart(i32(current, c));
      const end = automaton.edgeEnd(i32(current, c));
      for (let e = start; e < end; e++) {
        const letter = i32(automaton.edgeLetter, e);
        if (tried[letter] === 0) {
          tried[letter] = 1;
          letters.push(letter);
        }
      }
      meter.units += end - start;
    }
    for (const letter of letters) {
      tried[letter] = 0;
      for (let c = 0; c < orders; c++) states[count * orders + c] = entryAt(automata, c).step(i32(current, c), letter);
      enter(letter, cost + stepCost(model, last, letter), node);
    }
  }
  if (goal < 0) return { lower: below, word: null, finished: true };
  const word: number[] = [];
  for (let n = goal; i32(parents, n) >= 0; n = i32(parents, n)) word.push(i32(lasts, n));
  return { lower: goalCost, word: word.reverse(), finished: true };
}

function copyTo<T extends Int32Array | Float64Array | Uint8Array>(from: T, to: T): T {
  to.set(from as never);
  return to;
}
