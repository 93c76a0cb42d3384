import { entryAt, f64, i32, num, u8 } from '../../base/at.ts';
import type { Random } from '../../base/random.ts';
import { Automaton } from '../automaton.ts';
import { MAX_SET_UPS, MOUNT, stepCost, type Meter, type Model } from '../model.ts';
import { Level, Offers, type Trail } from './beam-level.ts';
import { LetterNeeds } from './letter-needs.ts';
import { LevelWorth, type LevelOptions } from './level-worth.ts';

export interface BeamOptions extends LevelOptions {
  /** Partial plans kept side by side. */
  width: number;
  /** Only words cheaper than this (packed) are of use. */
  below: number;
  /** Letter before and after the word, −1 for none. */
  before: number;
  after: number;
  /** Random disturbance of the ranking, 0 for none. */
  noise: number;
  random: Random;
  meter: Meter;
}

/** Makes the automata of a model, one an order. */
export function automataOf(model: Model, meter: Meter): Automaton[] {
  const groups = model.kinds?.screen ?? null;
  return model.orders.map((order, salt) => new Automaton(order, { cascade: model.cascade, groups, salt }, meter));
}

/** A word and its packed cost, including the step to what follows it. */
export interface PricedWord {
  word: number[];
  cost: number;
}

/**
 * Beam search for a cheap word that finishes every order. Partial words of equal length are ranked
 * by the chance that a random continuation would finish all orders (the probability heuristic of
 * beam searches for the shortest common supersequence, Mousavi, Bahri and Tabataba 2012, from
 * memory), here on the longest chain left of each partial order; and by how many letters no sheet needs any more.
 * @returns the cheapest word met and its packed cost including the step to `after`, or null when
 *   none is cheaper than `below`
 */
export function beam(model: Model, automata: readonly Automaton[], options: BeamOptions): PricedWord | null {
  if (automata.length > 0) return new Beam(model, automata, options).run();
  const cost = stepCost(model, options.before, options.after);
  return cost < options.below ? { word: [], cost } : null;
}

/** The search, a level a step. */
class Beam {
  readonly #model: Model;
  readonly #automata: readonly Automaton[];
  readonly #options: BeamOptions;
  readonly #meter: Meter;
  readonly #orders: number;
  /** Whether each letter costs 1. */
  readonly #uniform: boolean;
  readonly #needs: LetterNeeds;
  #level: Level;
  #worth: LevelWorth;
  readonly #offers = new Offers();
  #best: PricedWord | null = null;
  #below: number;
  // By letter, for the word at hand: orders that it serves (0 again after use), orders that it ends
  // in, what it gains, and what it changes in the hash.
  readonly #serves: Int32Array;
  readonly #ends: Int32Array;
  readonly #gain: Float64Array;
  readonly #hash: Int32Array;
  /** Chances of the word at hand as it stands; and had it taken one mount more. */
  #base = 0;
  #mountedBase = 0;

  constructor(model: Model, automata: readonly Automaton[], options: BeamOptions) {
    this.#model = model;
    this.#automata = automata;
    this.#options = options;
    this.#meter = options.meter;
    this.#orders = automata.length;
    this.#uniform = model.kinds === null;
    this.#below = options.below;
    this.#needs = new LetterNeeds(model);
    this.#serves = new Int32Array(model.letterCount);
    this.#ends = new Int32Array(model.letterCount);
    this.#gain = new Float64Array(model.letterCount);
    this.#hash = new Int32Array(model.letterCount);
    this.#meter.units += 100 + model.letterCount;
    const level = new Level(new Int32Array(this.#orders));
    level.lasts.push(options.before);
    level.costs.push(0);
    level.trails.push(null);
    level.hashes.push(automata.reduce((h, automaton) => h ^ i32(automaton.hash, 0), 0));
    level.needs.push(this.#needs.start);
    level.dealt.push(0);
    this.#level = level;
    this.#worth = new LevelWorth(model, automata, level, options);
  }

  run(): PricedWord | null {
    for (let length = 1; length <= MAX_SET_UPS && this.#level.lasts.length > 0; length++) {
      if (length > 1) this.#worth = new LevelWorth(this.#model, this.#automata, this.#level, this.#options);
      this.#offers.clear();
      for (let b = 0; b < this.#level.lasts.length; b++) {
        if (num(this.#level.costs, b) < this.#below) this.#offer(b, this.#lookAhead(b));
      }
      this.#level = this.#keepBest();
    }
    return this.#best;
  }

  /**
   * Adds up what each letter would do for word b.
   * @returns the letters that find work
   */
  #lookAhead(b: number): number[] {
    const { states, costs } = this.#level;
    const mounts = this.#worth.mountsOf(num(costs, b));
    const chances = this.#worth.chances(mounts);
    const mounted = this.#uniform ? null : this.#worth.chances(mounts + 1);
    let base = 0;
    let mountedBase = 0;
    const letters: number[] = [];
    for (let c = 0; c < this.#orders; c++) {
      const automaton = entryAt(this.#automata, c);
      const state = i32(states, b * this.#orders + c);
      const chain = i32(automaton.chain, state);
      base += i32(chances, chain);
      if (mounted) mountedBase += i32(mounted, chain);
      if (chain !== 0) this.#lookAlong(automaton, state, chances, letters);
    }
    this.#base = base;
    this.#mountedBase = mountedBase;
    return letters;
  }

  /** Adds up what each letter would do on one order; new letters go on the list. */
  #lookAlong(automaton: Automaton, state: number, chances: Int32Array, letters: number[]): void {
    const serves = this.#serves;
    const ends = this.#ends;
    const gain = this.#gain;
    const hash = this.#hash;
    const start = automaton.edgeStart(state);
    const end = automaton.edgeEnd(state);
    const { chain, hash: hashOf, edgeLetter, edgeNext, edgeLast } = automaton;
    const value = i32(chances, i32(chain, state));
    this.#meter.units += end - start + 1;
    for (let e = start; e < end; e++) {
      const letter = i32(edgeLetter, e);
      const next = i32(edgeNext, e);
      if (serves[letter] === 0) {
        letters.push(letter);
        gain[letter] = 0;
        hash[letter] = 0;
        ends[letter] = 0;
      }
      ends[letter] = i32(ends, letter) + u8(edgeLast, e);
      serves[letter] = i32(serves, letter) + 1;
      // The small extra counts orders served, which breaks ties between equal chains.
      gain[letter] = f64(gain, letter) + (i32(chances, i32(chain, next)) - value + 24);
      hash[letter] = i32(hash, letter) ^ (i32(hashOf, next) ^ i32(hashOf, state));
    }
  }

  /** Offers word b with each letter that makes it no dearer than what is known. */
  #offer(b: number, foundLetters: readonly number[]): void {
    const level = this.#level;
    const { scores, froms, letters, costs, hashes } = this.#offers;
    const { noise, random } = this.#options;
    for (const letter of foundLetters) {
      this.#serves[letter] = 0;
      const step = stepCost(this.#model, num(level.lasts, b), letter);
      const cost = num(level.costs, b) + step;
      if (cost >= this.#below) continue;
      let score = (!this.#uniform && step >= MOUNT ? this.#mountedBase : this.#base) + f64(this.#gain, letter);
      if (!this.#uniform) score -= this.#worth.changes(cost);
      const fewer = i32(this.#ends, letter);
      if (fewer > 0) score += this.#worth.finish * this.#needs.gain(entryAt(level.needs, b), letter, fewer);
      score += this.#worth.finish * num(level.dealt, b);
      if (noise > 0) score += random.int(noise);
      scores.push(score);
      froms.push(b);
      letters.push(letter);
      costs.push(cost);
      hashes.push(num(level.hashes, b) ^ i32(this.#hash, letter));
    }
  }

  /** The best offers as the next level; whole words are taken out and the cheapest is noted. */
  #keepBest(): Level {
    const { scores, letters, costs, hashes } = this.#offers;
    const ranked = rank(scores);
    this.#meter.units += 2 * ranked.length;
    const { width } = this.#options;
    const next = new Level(new Int32Array(Math.min(width, ranked.length) * this.#orders));
    const seen = new Map<number, number>();
    for (const i of ranked) {
      if (next.lasts.length >= width) break;
      // For kinds the letter on the press counts too: it sets the price of the next one.
      const key = this.#uniform ? num(hashes, i) : num(hashes, i) ^ Math.imul(num(letters, i) + 1, 0x27d4eb2f);
      const twin = seen.get(key);
      if (twin !== undefined && num(next.costs, twin) <= num(costs, i)) continue;
      const slot = next.lasts.length;
      if (this.#take(i, next)) seen.set(key, slot);
    }
    next.states = next.states.subarray(0, next.lasts.length * this.#orders);
    return next;
  }

  /** Writes offer i at the end of a level, unless it is a whole word: then false. */
  #take(i: number, next: Level): boolean {
    const { froms, letters, costs, hashes } = this.#offers;
    const b = num(froms, i);
    const letter = num(letters, i);
    const cost = num(costs, i);
    const needs = entryAt(this.#level.needs, b).slice();
    const done = this.#play(letter, b * this.#orders, next.states.subarray(next.lasts.length * this.#orders), needs);
    this.#meter.units += this.#orders + (needs.length >> 1);
    const trail = { letter, up: this.#level.trails[b] ?? null };
    if (done) {
      this.#takeWhole(trail, cost + stepCost(this.#model, letter, this.#options.after));
      return false;
    }
    next.lasts.push(letter);
    next.costs.push(cost);
    next.trails.push(trail);
    next.hashes.push(num(hashes, i));
    next.needs.push(needs);
    next.dealt.push(this.#needs.worthOf(needs));
    return true;
  }

  /**
   * What a letter leads to from the level's states at `from`, written to `to`.
   * @param needs is brought up to date
   * @returns whether every order is finished
   */
  #play(letter: number, from: number, to: Int32Array, needs: Int32Array): boolean {
    const { states } = this.#level;
    let done = true;
    let ended = 0;
    for (let c = 0; c < this.#orders; c++) {
      const automaton = entryAt(this.#automata, c);
      let state = i32(states, from + c);
      const start = automaton.edgeStart(state);
      const end = automaton.edgeEnd(state);
      for (let e = start; e < end; e++) {
        if (automaton.edgeLetter[e] !== letter) continue;
        state = i32(automaton.edgeNext, e);
        ended += u8(automaton.edgeLast, e);
        break;
      }
      to[c] = state;
      if (automaton.chain[state] !== 0) done = false;
    }
    this.#needs.take(needs, letter, ended);
    return done;
  }

  #takeWhole(trail: Trail, cost: number): void {
    if (cost >= this.#below) return;
    this.#below = cost;
    const word: number[] = [];
    for (let t: Trail | null = trail; t; t = t.up) word.push(t.letter);
    this.#best = { word: word.reverse(), cost };
  }
}

/** Indexes of scores, best first; equal scores keep their order. */
function rank(scores: readonly number[]): Int32Array {
  const index = Int32Array.from(scores, (_, i) => i);
  return index.sort((a, b) => num(scores, b) - num(scores, a) || a - b);
}
