import type { Automaton } from './automaton.ts';
import type { Meter } from './beam.ts';
import { INK, MOUNT, stepCost, type Model } from './model.ts';
import { multiplicities } from './multiplicity.ts';
import { Patterns } from './patterns.ts';

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
    return startCost < below
      ? { lower: startCost, word: [], finished: true }
      : { lower: below, word: null, finished: true };
  }
  const kinds = model.kinds;
  const estimate = estimator(model, automata, options);
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
    for (let c = 0; c < orders; c++) h ^= automata[c]!.mix[states[at + c]!]!;
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
    for (let c = 0; c < orders && done; c++) done = automata[c]!.chain[states[at + c]!] === 0;
    const total = cost + (done ? stepCost(model, last, after) : estimate(states, at, last));
    meter.units += 10 + orders;
    if (total >= goalCost) return;
    let slot = hashOf(at, last) & (table.length - 1);
    while (table[slot]! >= 0) {
      const node = table[slot]!;
      if (same(node, at, last)) {
        if (costs[node]! <= cost) return;
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
        let s = hashOf(n * orders, lasts[n]!) & (table.length - 1);
        while (table[s]! >= 0) s = (s + 1) & (table.length - 1);
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
    const last = lasts[node]!;
    const cost = costs[node]!;
    for (let c = 0; c < orders; c++) current[c] = states[node * orders + c]!;
    const letters: number[] = [];
    for (let c = 0; c < orders; c++) {
      const automaton = automata[c]!;
      const start = automaton.edgeStart(current[c]!);
      const end = automaton.edgeEnd(current[c]!);
      for (let e = start; e < end; e++) {
        const letter = automaton.edgeLetter[e]!;
        if (tried[letter] === 0) {
          tried[letter] = 1;
          letters.push(letter);
        }
      }
      meter.units += end - start;
    }
    for (const letter of letters) {
      tried[letter] = 0;
      for (let c = 0; c < orders; c++) states[count * orders + c] = automata[c]!.step(current[c]!, letter);
      enter(letter, cost + stepCost(model, last, letter), node);
    }
  }
  if (goal < 0) return { lower: below, word: null, finished: true };
  const word: number[] = [];
  for (let n = goal; parents[n]! >= 0; n = parents[n]!) word.push(lasts[n]!);
  return { lower: goalCost, word: word.reverse(), finished: true };
}

/** Underestimate of the cost still to come, part by part of the packed cost, hence of the whole. */
function estimator(model: Model, automata: readonly Automaton[], options: ExactOptions): (states: Int32Array, at: number, last: number) => number {
  const { meter, groups } = options;
  const patterns = groups?.length ? new Patterns(model, automata, groups, meter) : null;
  const kinds = model.kinds;
  const letterOf = (l: number): number => l;
  const layers: { groupOf: (l: number) => number; groups: number; runs: boolean; weight: number }[] = kinds
    ? [
        { groupOf: (l) => kinds.screen[l]!, groups: 1 + Math.max(-1, ...kinds.screen), runs: true, weight: MOUNT },
        { groupOf: (l) => kinds.ink[l]!, groups: 1 + Math.max(-1, ...kinds.ink), runs: true, weight: INK },
        { groupOf: letterOf, groups: model.letterCount, runs: false, weight: 1 },
      ]
    : [{ groupOf: letterOf, groups: model.letterCount, runs: model.cascade, weight: 1 }];
  // Groups that the model does not use are squeezed out: parts of a model keep the letters' numbers.
  const used = new Set<number>(model.orders.flatMap((o) => o.letters));
  const column = new Map<string, number>();
  const weights: number[] = [];
  layers.forEach((layer, i) => {
    for (const l of used) {
      const key = `${i}.${layer.groupOf(l)}`;
      if (!column.has(key)) {
        column.set(key, weights.length);
        weights.push(layer.weight);
      }
    }
  });
  const width = weights.length;
  meter.units += 10 * width * automata.length;
  const perPull = automata.map((automaton) => {
    const rows = new Uint16Array(automaton.order.letters.length * width);
    layers.forEach((layer, i) => {
      const own = [...new Set(automaton.order.letters.map(layer.groupOf))];
      const dense = new Map(own.map((g, j) => [g, j]));
      const most = multiplicities(automaton.order, (l) => dense.get(layer.groupOf(l))!, own.length, layer.runs);
      automaton.order.letters.forEach((_, p) =>
        own.forEach((g, j) => {
          rows[p * width + column.get(`${i}.${g}`)!] = most[p * own.length + j]!;
        }),
      );
    });
    return rows;
  });
  const cache: (Uint16Array | undefined)[][] = automata.map(() => []);
  const rowOf = (c: number, state: number): Uint16Array => {
    const known = cache[c]![state];
    if (known) return known;
    const row = new Uint16Array(width);
    meter.units += 2 * width;
    for (const p of automata[c]!.ready(state)) {
      for (let g = 0; g < width; g++) row[g] = Math.max(row[g]!, perPull[c]![p * width + g]!);
    }
    cache[c]![state] = row;
    return row;
  };
  const screenColumn = (last: number): number | undefined => (kinds && last >= 0 ? column.get(`0.${kinds.screen[last]}`) : undefined);
  const inkColumn = (last: number): number | undefined => (kinds && last >= 0 ? column.get(`1.${kinds.ink[last]}`) : undefined);
  const most = new Uint16Array(width);
  return (states, at, last) => {
    most.fill(0);
    for (let c = 0; c < automata.length; c++) {
      const row = rowOf(c, states[at + c]!);
      for (let g = 0; g < width; g++) if (row[g]! > most[g]!) most[g] = row[g]!;
    }
    let changes = 0;
    let other = 0;
    const unit = weights[0]!;
    for (let g = 0; g < width; g++) {
      if (weights[g] === unit) changes += most[g]!;
      else other += most[g]! * weights[g]!;
    }
    // What is on the press may go on: one entry of its screen and of its ink may be free.
    const screen = screenColumn(last);
    if (screen !== undefined && most[screen]! > 0) changes--;
    const ink = inkColumn(last);
    if (ink !== undefined && most[ink]! > 0) other -= INK;
    if (patterns) changes = Math.max(changes, patterns.estimate(states, at, last));
    return changes * unit + other;
  };
}

function copyTo<T extends Int32Array | Float64Array | Uint8Array>(from: T, to: T): T {
  to.set(from as never);
  return to;
}

/** Binary heap of nodes by value; among equals the latest goes first, which dives to a goal. */
class Heap {
  #values: number[] = [];
  #nodes: number[] = [];

  get size(): number {
    return this.#values.length;
  }

  get least(): number {
    return this.#values[0]!;
  }

  push(value: number, node: number): void {
    const values = this.#values;
    const nodes = this.#nodes;
    let i = values.length;
    values.push(value);
    nodes.push(node);
    while (i > 0) {
      const up = (i - 1) >> 1;
      if (values[up]! < value || (values[up]! === value && nodes[up]! > node)) break;
      values[i] = values[up]!;
      nodes[i] = nodes[up]!;
      i = up;
    }
    values[i] = value;
    nodes[i] = node;
  }

  pop(): number {
    const values = this.#values;
    const nodes = this.#nodes;
    const top = nodes[0]!;
    const value = values.pop()!;
    const node = nodes.pop()!;
    const size = values.length;
    if (size === 0) return top;
    let i = 0;
    for (;;) {
      let down = 2 * i + 1;
      if (down >= size) break;
      const right = down + 1;
      if (right < size && (values[right]! < values[down]! || (values[right]! === values[down]! && nodes[right]! > nodes[down]!))) down = right;
      if (values[down]! > value || (values[down]! === value && nodes[down]! < node)) break;
      values[i] = values[down]!;
      nodes[i] = nodes[down]!;
      i = down;
    }
    values[i] = value;
    nodes[i] = node;
    return top;
  }
}
