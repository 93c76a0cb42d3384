import { entryAt, i32, num } from '../../base/at.ts';
import type { Graph } from '../graph.ts';
import { fromResidues, moduliFor } from './residues.ts';
import { StateTable } from './state-table.ts';

/** Pulls that may wait at a time: each is a bit of a word. */
const MOST_WAITING = 31;
/** A state names the block of each waiting pull in so many bits, so many to a word. */
const LABEL_BITS = 5;
const LABELS_A_WORD = 6;
/** More states than this take too much memory (some 60 MB). */
const MOST_STATES = 500_000;
/** States between two looks up from the work. */
const STATES_A_BREATH = 2_000;

/**
 * Number of acyclic orientations of a graph, as |P(−1)| of its chromatic polynomial, pull by pull: one
 * is taken out by deleting and contracting its overlaps, P(G) = P(G − e) − P(G / e). What is left is
 * the graph of the others with some of them made one; where these overlap, P is 0. A state says which
 * of the waiting pulls (those that overlap one taken out) are one. In a flat graph few can be, as they
 * may not cross; colour classes (countByColourClasses) are better where many pulls are alike.
 * @param order each pull once: taken out in this order
 * @param most no less than the count
 * @param budget steps left, counted down across calls
 * @yields now and then
 * @returns null when it would take more steps, or too much memory
 * Sources: Stanley (1973); Read (1968), deletion and contraction; Salas and Sokal (2001), J. Stat.
 * Phys. 104, 609–699, transfer matrices on non-crossing partitions of nearest neighbours (from memory).
 */
export function* countByContraction(
  graph: Graph,
  order: readonly number[],
  most: bigint,
  budget: { steps: number },
): Generator<void, bigint | null> {
  const moduli = moduliFor(most.toString(2).length + 1);
  const counting = new Contraction(graph, moduli, budget);
  for (const pull of order) if (!(yield* counting.takeOut(pull))) return null;
  const value = fromResidues(counting.states.values, moduli);
  let product = 1n;
  for (const modulus of moduli) product *= BigInt(modulus);
  // P(−1) has the sign of (−1)^pulls.
  return graph.pulls % 2 === 0 || value === 0n ? value : product - value;
}

class Contraction {
  states: StateTable;
  private next: StateTable;
  private waiting: number[] = [];
  private readonly graph: Graph;
  private readonly residues: number;
  private readonly budget: { steps: number };
  private readonly out: Uint8Array;
  // Of the pull being taken out: its place among the waiting, its neighbours', and the others'.
  private place = 0;
  private beside: number[] = [];
  private others: number[] = [];
  private readonly overlaps = new Int32Array(MOST_WAITING + 1);
  // Of the state at hand: block of each waiting pull; by block its pulls, and what they overlap, as bits.
  private readonly block = new Int32Array(MOST_WAITING + 1);
  private readonly members = new Int32Array(MOST_WAITING + 1);
  private readonly near = new Int32Array(MOST_WAITING + 1);
  private readonly renamed = new Int32Array(MOST_WAITING + 1);
  private readonly key = new Int32Array(8);
  private readonly mergeable = new Int32Array(MOST_WAITING + 1);
  private mergeables = 0;
  private blocks = 0;
  private from = 0;
  private own = 0;
  private alone = false;

  constructor(graph: Graph, moduli: readonly number[], budget: { steps: number }) {
    this.graph = graph;
    this.budget = budget;
    this.residues = moduli.length;
    this.out = new Uint8Array(graph.pulls);
    this.states = new StateTable(moduli);
    this.next = new StateTable(moduli);
    this.states.start(1);
    this.states.add(this.key, new Float64Array(moduli.length).fill(1), 0, 1);
  }

  /** False when it would take too much. */
  *takeOut(pull: number): Generator<void, boolean> {
    const old = this.waiting.length;
    if (!this.lookAround(pull)) return false;
    const { states, next, budget } = this;
    const words = wordsFor(old);
    next.start(wordsFor(this.others.length));
    for (let state = 0; state < states.count; state++) {
      this.open(state * words, old);
      this.from = state * this.residues;
      this.merge(0, 0, 0, 0);
      if (budget.steps < 0 || next.count > MOST_STATES) return false;
      if (state % STATES_A_BREATH === STATES_A_BREATH - 1) yield;
    }
    this.waiting = this.others.map((at) => num(this.waiting, at));
    this.states = next;
    this.next = states;
    return true;
  }

  /** Who waits now, and who overlaps whom; false when they are too many. */
  private lookAround(pull: number): boolean {
    const { waiting, out, overlaps } = this;
    out[pull] = 1;
    const neighbours = entryAt(this.graph.neighbours, pull).filter((other) => out[other] === 0);
    for (const each of [pull, ...neighbours]) if (!waiting.includes(each)) waiting.push(each);
    if (waiting.length > MOST_WAITING) return false;
    this.place = waiting.indexOf(pull);
    this.beside = neighbours.map((each) => waiting.indexOf(each));
    this.others = Array.from(waiting.keys()).filter((at) => at !== this.place);
    overlaps.fill(0);
    for (const at of this.others) {
      for (const other of entryAt(this.graph.neighbours, num(waiting, at))) {
        const bit = waiting.indexOf(other);
        if (bit >= 0 && bit !== this.place) overlaps[at] = i32(overlaps, at) | (1 << bit);
      }
    }
    return true;
  }

  /** Reads a state, and which blocks the pull's may be made one with. */
  private open(at: number, old: number): void {
    const { block, members, near, overlaps, states, mergeable } = this;
    const now = this.waiting.length;
    let blocks = 0;
    members.fill(0);
    near.fill(0);
    for (let i = 0; i < now; i++) {
      const word = i < old ? i32(states.keys, at + Math.floor(i / LABELS_A_WORD)) : 0;
      const label = i < old ? (word >> ((i % LABELS_A_WORD) * LABEL_BITS)) & 31 : blocks;
      if (label >= blocks) blocks = label + 1;
      block[i] = label;
      members[label] = i32(members, label) | (1 << i);
      near[label] = i32(near, label) | i32(overlaps, i);
    }
    this.blocks = blocks;
    this.own = i32(block, this.place);
    const rest = i32(members, this.own) & ~(1 << this.place);
    this.alone = rest === 0;
    this.mergeables = 0;
    let seen = 0;
    for (const each of this.beside) {
      const label = i32(block, each);
      // An overlap that the rest of its block has as well says nothing new.
      if (((seen >> label) & 1) === 1 || (i32(near, label) & rest) !== 0) continue;
      seen |= 1 << label;
      mergeable[this.mergeables++] = label;
    }
  }

  /**
   * All ways to make the pull one with blocks beside it that do not overlap each other.
   * @param first of `mergeable` that may still be chosen
   * @param chosen blocks, as bits, and how many
   * @param pulls of these blocks, as bits
   */
  private merge(first: number, chosen: number, count: number, pulls: number): void {
    const sign = count % 2 === 0 ? 1 : -1;
    if (!this.alone) this.emit(chosen | (1 << this.own), sign);
    // By itself it has −1 colours; made one with one block it leaves that as it is.
    else if (count === 0) this.emit(0, -1 - this.mergeables);
    else if (count > 1) this.emit(chosen, sign);
    for (let i = first; i < this.mergeables; i++) {
      const label = i32(this.mergeable, i);
      if ((i32(this.near, label) & pulls) !== 0) continue;
      this.merge(i + 1, chosen | (1 << label), count + 1, pulls | i32(this.members, label));
    }
  }

  /** Adds to the state in which these blocks are one and the pull is gone. */
  private emit(joined: number, factor: number): void {
    const { block, renamed, key, others } = this;
    this.budget.steps--;
    renamed.fill(-1, 0, this.blocks);
    let names = 0;
    let one = -1;
    let word = 0;
    let shift = 0;
    let bits = 0;
    for (const at of others) {
      const label = i32(block, at);
      const inOne = ((joined >> label) & 1) === 1;
      let name = inOne ? one : i32(renamed, label);
      if (name < 0) {
        name = names++;
        if (inOne) one = name;
        else renamed[label] = name;
      }
      bits |= name << shift;
      shift += LABEL_BITS;
      if (shift === LABEL_BITS * LABELS_A_WORD) {
        key[word++] = bits;
        bits = shift = 0;
      }
    }
    key[word] = bits;
    this.next.add(key, this.states.values, this.from, factor);
  }
}

function wordsFor(waiting: number): number {
  return Math.floor(waiting / LABELS_A_WORD) + 1;
}
