import { i32 } from '../../../base/at.ts';
import type { Meter } from '../../model.ts';
import { ClashCover } from './clash-cover.ts';
import { partOf, type Precedence } from './precedence.ts';

/** Branchings for one letter at first; four times as many at each further pass. */
const FIRST_NODES = 100;
/** Numbers that the lists of a search may take, so that memory stays small; larger graphs are held down by their classes alone. */
const MOST_NUMBERS = 4_000_000;

/**
 * The most letters among which going from letter to letter by what precedes what on some sheet never
 * leads back.
 *
 * Searched letter by letter from the last: with one letter more the largest such set grows by 1 at
 * most (Östergård 2002, A fast algorithm for the maximum clique problem, from memory), and whether it
 * does is searched by branching, held down by classes of letters that clash pairwise (as Tomita and
 * Seki 2003 colour a graph, from memory). A search that is given up counts as one that grew, so that
 * the number is never too small.
 */
export class CircleSearch {
  /** No set has more letters. */
  most: number;
  readonly #graph: Precedence;
  readonly #cover: ClashCover;
  readonly #meter: Meter;
  /** By letter: the most among the letters from it on. */
  readonly #mostFrom: Int32Array;
  /** By depth: letters that may still be taken, and how they are covered. */
  readonly #open: Int32Array;
  readonly #listed: Int32Array;
  readonly #classes: Int32Array;
  /** By depth, then by chosen letter: all that comes after it by way of chosen ones. */
  readonly #reached: Int32Array;
  readonly #chosen: Int32Array;
  readonly #searched: boolean;
  #nodes = 0;
  #maxNodes = 0;

  constructor(given: Precedence, meter: Meter) {
    const { letters: n, words } = given;
    const order = new Int32Array(n);
    const classes = new Int32Array(n);
    const all = new Int32Array(words);
    for (let l = 0; l < n; l++) all[l >> 5] = i32(all, l >> 5) | (1 << (l & 31));
    new ClashCover(given).cover({ set: all, from: 0 }, { order, classes, to: 0 });
    // Numbered anew class by class, so that the sets searched first are covered by few classes.
    this.#graph = partOf(given, order);
    this.#cover = new ClashCover(this.#graph);
    this.#meter = meter;
    this.#mostFrom = new Int32Array(n + 1);
    for (let i = n - 1; i >= 0; i--)
      this.#mostFrom[i] = i32(this.#mostFrom, i + 1) + (i === n - 1 || classes[i] !== classes[i + 1] ? 1 : 0);
    this.most = i32(this.#mostFrom, 0);
    const room = this.most + 2;
    this.#searched = room * (room * words + 2 * n) <= MOST_NUMBERS;
    const depths = this.#searched ? room : 0;
    this.#open = new Int32Array(depths * words);
    this.#listed = new Int32Array(depths * n);
    this.#classes = new Int32Array(depths * n);
    this.#reached = new Int32Array(depths * depths * words);
    this.#chosen = new Int32Array(depths);
  }

  /** Lowers `most` bit by bit, until it is exact; a pause after each letter. */
  *work(): Generator<void, void> {
    const n = this.#graph.letters;
    const mostFrom = this.#mostFrom;
    for (let nodes = FIRST_NODES, exact = !this.#searched; !exact; nodes *= 4) {
      exact = true;
      for (let i = n - 1; i >= 0; i--) {
        const without = i32(mostFrom, i + 1);
        // Known from the classes or from a pass before.
        if (i32(mostFrom, i) <= without) continue;
        this.#nodes = 0;
        this.#maxNodes = nodes;
        const grows = this.#grows(i, without + 1);
        if (grows === false) this.#lower(i, without);
        else mostFrom[i] = without + 1;
        if (grows === null) exact = false;
        this.#meter.units += this.#nodes;
        this.most = i32(mostFrom, 0);
        yield;
      }
    }
  }

  /** Notes what letters from a place on come to, and what that says of longer lists. */
  #lower(place: number, most: number): void {
    const mostFrom = this.#mostFrom;
    mostFrom[place] = most;
    for (let i = place - 1; i >= 0 && i32(mostFrom, i) > i32(mostFrom, i + 1) + 1; i--) mostFrom[i] = i32(mostFrom, i + 1) + 1;
  }

  /** Whether so many letters from a place on can come once, that at the place among them; null when given up. */
  #grows(place: number, wanted: number): boolean | null {
    const { words, letters } = this.#graph;
    for (let w = 0; w < words; w++) this.#open[w] = 0;
    for (let l = place + 1; l < letters; l++) this.#open[l >> 5] = i32(this.#open, l >> 5) | (1 << (l & 31));
    return this.#take(0, place, wanted);
  }

  /** Takes a letter to those chosen so far and goes on with what may still be taken. */
  #take(depth: number, letter: number, wanted: number): boolean | null {
    if (depth + 1 >= wanted) return true;
    if (++this.#nodes > this.#maxNodes) return null;
    this.#chosen[depth] = letter;
    this.#reach(depth, letter);
    const { words, letters } = this.#graph;
    const at = (depth + 1) * words;
    const list = (depth + 1) * letters;
    const count = this.#cover.cover({ set: this.#open, from: at }, { order: this.#listed, classes: this.#classes, to: list });
    this.#meter.units += (count * words) >> 5;
    let answer: boolean | null = false;
    for (let i = count - 1; i >= 0; i--) {
      // What is left is covered by too few classes.
      if (depth + 1 + i32(this.#classes, list + i) < wanted) break;
      const next = i32(this.#listed, list + i);
      const found = this.#take(depth + 1, next, wanted);
      if (found) return true;
      if (found === null) answer = null;
      if (this.#nodes > this.#maxNodes) return null;
      this.#open[at + (next >> 5)] = i32(this.#open, at + (next >> 5)) & ~(1 << (next & 31));
    }
    return answer;
  }

  /** What comes after each chosen letter, with the new one; what would close a circle may not be taken any more. */
  #reach(depth: number, letter: number): void {
    const { words, after, before } = this.#graph;
    const reached = this.#reached;
    const depths = this.#chosen.length;
    const own = (depth * depths + depth) * words;
    for (let w = 0; w < words; w++) reached[own + w] = i32(after, letter * words + w);
    const row = (i: number): number => (depth * depths + i) * words;
    for (let i = 0; i < depth; i++) {
      const from = ((depth - 1) * depths + i) * words;
      const chosen = i32(this.#chosen, i);
      const follows = (i32(after, letter * words + (chosen >> 5)) >> (chosen & 31)) & 1;
      for (let w = 0; w < words; w++) {
        reached[row(i) + w] = i32(reached, from + w);
        if (follows) reached[own + w] = i32(reached, own + w) | i32(reached, from + w);
      }
    }
    const at = depth * words;
    const next = at + words;
    for (let w = 0; w < words; w++) this.#open[next + w] = i32(this.#open, at + w);
    this.#open[next + (letter >> 5)] = i32(this.#open, next + (letter >> 5)) & ~(1 << (letter & 31));
    for (let i = 0; i <= depth; i++) {
      const chosen = i32(this.#chosen, i);
      const leads = i < depth && (i32(reached, row(i) + (letter >> 5)) >> (letter & 31)) & 1;
      for (let w = 0; w < words; w++) {
        if (leads) reached[row(i) + w] = i32(reached, row(i) + w) | i32(reached, own + w);
        this.#open[next + w] = i32(this.#open, next + w) & ~(i32(reached, row(i) + w) & i32(before, chosen * words + w));
      }
    }
  }
}
