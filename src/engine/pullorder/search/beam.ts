import { entryAt, f64, i32, num, u8 } from '../../base/at.ts';
import type { Random } from '../../base/random.ts';
import { Automaton } from '../automaton.ts';
import { INK, MAX_SET_UPS, MOUNT, MOVE, stepCost, type Meter, type Model } from '../model.ts';
import { chanceTable, worthTable } from './ranking.ts';

export interface BeamOptions {
  /** Partial plans kept side by side. */
  width: number;
  /** Only words cheaper than this (packed) are of use. */
  below: number;
  /** Letter before and after the word, −1 for none. */
  before: number;
  after: number;
  /** How far ahead progress is judged, in tenths of the standard reach. */
  reachTenths: number;
  /** How much finishing letters for all sheets counts beside progress on each; about 6. */
  finish: number;
  /** What an ink change counts in the ranking, in tenths of a mount. */
  thriftTenths: number;
  /** Random disturbance of the ranking, 0 for none. */
  noise: number;
  random: Random;
  meter: Meter;
}

/** Makes the automata of a model, one an order. */
export function automataOf(model: Model, meter: Meter): Automaton[] {
  return model.orders.map((order, i) => new Automaton(order, model.cascade, model.kinds?.screen ?? null, i, meter));
}

interface Trail {
  letter: number;
  up: Trail | null;
}

/**
 * Beam search for a cheap word that finishes every order. Partial words of equal length are ranked
 * by the chance that a random continuation would finish all orders (the probability heuristic of
 * beam searches for the shortest common supersequence, Mousavi, Bahri and Tabataba 2012, from
 * memory), here on the longest chain left of each partial order; and by how many letters no sheet needs any more.
 * @returns the cheapest word met and its packed cost including the step to `after`, or null when
 *   none is cheaper than `below`
 */
export function beam(model: Model, automata: readonly Automaton[], options: BeamOptions): { word: number[]; cost: number } | null {
  const orders = automata.length;
  const { width, meter, noise, random } = options;
  let best: { word: number[]; cost: number } | null = null;
  let below = options.below;
  if (orders === 0) {
    const cost = stepCost(model, options.before, options.after);
    return cost < below ? { word: [], cost } : null;
  }
  const uniform = model.kinds === null;
  let states = new Int32Array(orders);
  let lasts = [options.before];
  let costs = [0];
  let trails: (Trail | null)[] = [null];
  let hashes = [automata.reduce((h, a) => h ^ i32(a.mix, 0), 0)];
  meter.units += 100 + model.letterCount;
  const gain = new Float64Array(model.letterCount);
  const hash = new Int32Array(model.letterCount);
  const found = new Int32Array(model.letterCount);
  const served = new Int32Array(model.letterCount);
  // How many orders still have pulls of each letter, per partial word.
  const place = new Int32Array(model.letterCount).fill(-1);
  const totals: number[] = [];
  for (const order of model.orders) {
    for (const l of new Set(order.letters)) {
      if (i32(place, l) < 0) place[l] = totals.push(0) - 1;
      totals[i32(place, l)] = num(totals, i32(place, l)) + 1;
    }
  }
  const worths = totals.map(worthTable);
  let needs = [Int32Array.from(totals)];
  let potentials = [0];
  const scores: number[] = [];
  const froms: number[] = [];
  const letters: number[] = [];
  const childCosts: number[] = [];
  const childHashes: number[] = [];

  for (let length = 1; length <= MAX_SET_UPS && lasts.length > 0; length++) {
    let longest = 0;
    for (let i = 0; i < states.length; i++) longest = Math.max(longest, i32(entryAt(automata, i % orders).chain, i32(states, i)));
    let leastMounts = Infinity;
    for (const cost of costs) leastMounts = Math.min(leastMounts, uniform ? cost : Math.floor(cost / MOUNT));
    const tables = new Map<number, Int32Array>();
    const reach = Math.max(1, Math.round((longest * options.reachTenths) / 10));
    const tableFor = (mounts: number): Int32Array => {
      const left = Math.max(0, reach - (mounts - leastMounts));
      let table = tables.get(left);
      if (!table) tables.set(left, (table = chanceTable(longest, left, model.letterCount)));
      return table;
    };
    // What one set-up more or less is worth in the currency of chances.
    let stepWorth = 0;
    const now = tableFor(leastMounts);
    const later = tableFor(leastMounts + 1);
    for (let c = 0; c < orders; c++) {
      const chain = i32(entryAt(automata, c).chain, i32(states, c));
      stepWorth += i32(now, chain) - i32(later, chain);
    }
    const thrift = (stepWorth * options.thriftTenths) / 10;
    stepWorth = (stepWorth * options.finish) / 1000;
    scores.length = froms.length = letters.length = childCosts.length = childHashes.length = 0;
    for (let b = 0; b < lasts.length; b++) {
      const cost = num(costs, b);
      if (cost >= below) continue;
      const at = b * orders;
      const table = tableFor(uniform ? cost : Math.floor(cost / MOUNT));
      const stepTable = uniform ? null : tableFor(Math.floor(cost / MOUNT) + 1);
      let base = 0;
      let stepBase = 0;
      const touched: number[] = [];
      for (let c = 0; c < orders; c++) {
        const automaton = entryAt(automata, c);
        const state = i32(states, at + c);
        const chain = i32(automaton.chain, state);
        const value = i32(table, chain);
        base += value;
        if (stepTable) stepBase += i32(stepTable, chain);
        if (chain === 0) continue;
        const start = automaton.edgeStart(state);
        const end = automaton.edgeEnd(state);
        meter.units += end - start + 1;
        for (let e = start; e < end; e++) {
          const letter = i32(automaton.edgeLetter, e);
          const next = i32(automaton.edgeNext, e);
          if (found[letter] === 0) {
            touched.push(letter);
            gain[letter] = 0;
            hash[letter] = 0;
            served[letter] = 0;
          }
          served[letter] = i32(served, letter) + u8(automaton.edgeLast, e);
          found[letter] = i32(found, letter) + 1;
          // The small extra counts orders served, which breaks ties between equal chains.
          gain[letter] = f64(gain, letter) + (i32(table, i32(automaton.chain, next)) - value + 24);
          hash[letter] = i32(hash, letter) ^ (i32(automaton.mix, next) ^ i32(automaton.mix, state));
        }
      }
      for (const letter of touched) {
        found[letter] = 0;
        const step = stepCost(model, num(lasts, b), letter);
        const childCost = cost + step;
        if (childCost >= below) continue;
        let score = (stepTable && step >= MOUNT ? stepBase : base) + f64(gain, letter);
        if (!uniform)
          score -= thrift * ((Math.floor(childCost / INK) % (MOUNT / INK)) + 0.3 * (Math.floor(childCost / MOVE) % (INK / MOVE)));
        if (i32(served, letter) > 0) {
          const need = i32(entryAt(needs, b), i32(place, letter));
          const worth = entryAt(worths, i32(place, letter));
          score += stepWorth * (i32(worth, need - i32(served, letter)) - i32(worth, need));
        }
        score += stepWorth * num(potentials, b);
        if (noise > 0) score += random.int(noise);
        scores.push(score);
        froms.push(b);
        letters.push(letter);
        childCosts.push(childCost);
        childHashes.push(num(hashes, b) ^ i32(hash, letter));
      }
    }
    const ranked = rank(scores);
    meter.units += 2 * ranked.length;
    const nextStates = new Int32Array(Math.min(width, ranked.length) * orders);
    const nextLasts: number[] = [];
    const nextCosts: number[] = [];
    const nextTrails: (Trail | null)[] = [];
    const nextHashes: number[] = [];
    const nextNeeds: Int32Array<ArrayBuffer>[] = [];
    const nextPotentials: number[] = [];
    const seen = new Map<number, number>();
    for (const i of ranked) {
      if (nextLasts.length >= width) break;
      // For kinds the letter on the press counts too: it sets the price of the next one.
      const key = uniform ? num(childHashes, i) : num(childHashes, i) ^ Math.imul(num(letters, i) + 1, 0x27d4eb2f);
      const twin = seen.get(key);
      if (twin !== undefined && num(nextCosts, twin) <= num(childCosts, i)) continue;
      const b = num(froms, i);
      const letter = num(letters, i);
      const slot = nextLasts.length;
      let done = true;
      const need = entryAt(needs, b).slice();
      for (let c = 0; c < orders; c++) {
        const automaton = entryAt(automata, c);
        const state = i32(states, b * orders + c);
        let next = state;
        const start = automaton.edgeStart(state);
        const end = automaton.edgeEnd(state);
        for (let e = start; e < end; e++) {
          if (automaton.edgeLetter[e] !== letter) continue;
          next = i32(automaton.edgeNext, e);
          need[i32(place, letter)] = i32(need, i32(place, letter)) - u8(automaton.edgeLast, e);
          break;
        }
        nextStates[slot * orders + c] = next;
        if (entryAt(automata, c).chain[next] !== 0) done = false;
      }
      meter.units += orders + (totals.length >> 1);
      const trail = { letter, up: trails[b] ?? null };
      if (done) {
        const cost = num(childCosts, i) + stepCost(model, letter, options.after);
        if (cost < below) {
          below = cost;
          best = { word: wordOf(trail), cost };
        }
        continue;
      }
      seen.set(key, slot);
      nextLasts.push(letter);
      nextCosts.push(num(childCosts, i));
      nextTrails.push(trail);
      nextHashes.push(num(childHashes, i));
      nextNeeds.push(need);
      let potential = 0;
      for (let l = 0; l < need.length; l++) potential += i32(entryAt(worths, l), i32(need, l));
      nextPotentials.push(potential);
    }
    states = nextStates.subarray(0, nextLasts.length * orders);
    lasts = nextLasts;
    costs = nextCosts;
    trails = nextTrails;
    hashes = nextHashes;
    needs = nextNeeds;
    potentials = nextPotentials;
  }
  return best;
}

function wordOf(trail: Trail | null): number[] {
  const word: number[] = [];
  for (let t = trail; t; t = t.up) word.push(t.letter);
  return word.reverse();
}

/** Indexes of scores, best first; equal scores keep their order. */
function rank(scores: readonly number[]): Int32Array {
  const index = Int32Array.from(scores, (_, i) => i);
  return index.sort((a, b) => num(scores, b) - num(scores, a) || a - b);
}
