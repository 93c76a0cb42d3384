import { entryAt, num } from '../../base/at.ts';
import type { Graph } from '../graph.ts';
import { greedyOrder } from './narrow-order.ts';

/** Names of sets are letters of a state's text. */
const MOST_SETS = 0xffff;
/** Shuts nobody out, so it is like any colour not yet used. */
const NOBODY = -1;
const SHUT_OUT = -2;
/** States between two looks up from the work. */
const STATES_A_BREATH = 2_000;

/**
 * Number of acyclic orientations of a graph, as |P(−1)| of its chromatic polynomial P, summed
 * pull by pull along an order with a narrow frontier. A colour class matters only by the later
 * pulls it shuts out, so a state is the sorted list of these sets; with q = −1 colours, a pull
 * may join a class that does not shut it out, or take one of the q − classes others.
 * Good where many pulls are alike: what they shut out counts, not which of them it is.
 * @param graph connected or not
 * @param budget steps left, counted down across calls
 * @yields now and then
 * @returns null when the budget is used up
 * Source: Stanley (1973), Acyclic orientations of graphs, Discrete Mathematics 5, 171–178.
 */
export function* countByColourClasses(graph: Graph, budget: { steps: number }): Generator<void, bigint | null> {
  const counting = new ColourClasses(graph, budget);
  for (const pull of greedyOrder(graph)) if (!(yield* counting.colour(pull))) return null;
  const value = counting.states.get('') ?? 0n;
  return value < 0n ? -value : value;
}

class ColourClasses {
  /** By the sets that its classes shut out, as letters in order. */
  states = new Map<string, bigint>([['', 1n]]);
  private next = new Map<string, bigint>();
  private readonly neighbours: bigint[];
  private readonly budget: { steps: number };
  /** Pulls not yet coloured, as bits. */
  private later: bigint;
  private shutOut: bigint[] = [];
  private nextShutOut: bigint[] = [];
  private readonly names = new Map<bigint, number>();
  /** What each set becomes by the pull being coloured, when it does not join the class and when it does. */
  private kept: number[] = [];
  private joined: number[] = [];

  constructor(graph: Graph, budget: { steps: number }) {
    this.budget = budget;
    this.neighbours = graph.neighbours.map((list) => list.reduce((bits, other) => bits | (1n << BigInt(other)), 0n));
    this.later = (1n << BigInt(graph.pulls)) - 1n;
  }

  /** False when the budget is used up. */
  *colour(pull: number): Generator<void, boolean> {
    const bit = 1n << BigInt(pull);
    const { later } = this;
    this.later = later & ~bit;
    const own = entryAt(this.neighbours, pull) & this.later;
    this.nextShutOut = [];
    this.names.clear();
    const ownName = this.name(own);
    this.kept = this.shutOut.map((set) => this.name(set & this.later));
    this.joined = this.shutOut.map((set) => ((set & bit) === 0n ? this.name((set | own) & this.later) : SHUT_OUT));
    if (this.nextShutOut.length > MOST_SETS) return false;
    this.next = new Map();
    let done = 0;
    for (const [key, value] of this.states) {
      if (value !== 0n && !this.spread(key, value, ownName)) return false;
      if (++done % STATES_A_BREATH === 0) yield;
    }
    this.states = this.next;
    this.shutOut = this.nextShutOut;
    return true;
  }

  private name(set: bigint): number {
    if (set === 0n) return NOBODY;
    let name = this.names.get(set);
    if (name === undefined) {
      name = this.nextShutOut.length;
      this.names.set(set, name);
      this.nextShutOut.push(set);
    }
    return name;
  }

  /** The pull in every class of a state that lets it in, and in one of its own. */
  private spread(key: string, value: bigint, ownName: number): boolean {
    const classes = Array.from(key, (_, i) => key.charCodeAt(i));
    if (!this.add(classes, -1, ownName, value * BigInt(-1 - classes.length))) return false;
    for (let i = 0; i < classes.length;) {
      let end = i + 1;
      while (end < classes.length && classes[end] === classes[i]) end++;
      const name = num(this.joined, num(classes, i));
      if (name !== SHUT_OUT && !this.add(classes, i, name, value * BigInt(end - i))) return false;
      i = end;
    }
    return true;
  }

  private add(classes: readonly number[], without: number, extra: number, value: bigint): boolean {
    const list: number[] = [];
    for (let i = 0; i < classes.length; i++) {
      const name = num(this.kept, num(classes, i));
      if (i !== without && name !== NOBODY) list.push(name);
    }
    if (extra !== NOBODY) list.push(extra);
    const key = String.fromCharCode(...list.sort((a, b) => a - b));
    this.next.set(key, (this.next.get(key) ?? 0n) + value);
    return --this.budget.steps >= 0;
  }
}
