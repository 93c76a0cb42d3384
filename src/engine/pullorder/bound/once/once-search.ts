import { entryAt, i32 } from '../../../base/at.ts';
import type { Meter, Order } from '../../model.ts';
import { CircleSearch } from './circle-search.ts';
import { partOf, type Precedence, precedenceOf } from './precedence.ts';

/**
 * The most letters that can all come once each.
 *
 * If they do, they stand in one order in the word, and on no sheet a pull of one precedes a pull of
 * an earlier one; so going from letter to letter by what precedes what on some sheet never leads
 * back: each circle of letters has one that comes twice. Circles lie within the strongly connected
 * parts of that graph, which are searched each on its own (`CircleSearch`).
 */
export class OnceSearch {
  readonly #parts: CircleSearch[] = [];
  #others = 0;

  /** @param letters different ones */
  constructor(orders: readonly Order[], letters: readonly number[], meter: Meter) {
    const graph = precedenceOf(orders, letters, meter);
    for (const places of connectedParts(graph)) {
      if (places.length === 1) this.#others++;
      else this.#parts.push(new CircleSearch(partOf(graph, places), meter));
      meter.units += (places.length * places.length) >> 3;
    }
  }

  /** No more of the letters come once each. */
  get most(): number {
    return this.#parts.reduce((sum, part) => sum + part.most, this.#others);
  }

  /** Lowers `most` bit by bit, in all parts by turns. */
  *work(): Generator<void, void> {
    let open = this.#parts.map((part) => part.work());
    while (open.length > 0) {
      const left: typeof open = [];
      for (const steps of open) {
        if (steps.next().done) continue;
        left.push(steps);
        yield;
      }
      open = left;
    }
  }
}

/**
 * Places of letters in parts, such that each letter of a part leads to each other one and back.
 * Source: Kosaraju's two walks (Cormen, Leiserson, Rivest and Stein, Introduction to Algorithms, 3rd edition, 22.5).
 */
function connectedParts({ letters, words, after, before }: Precedence): number[][] {
  const left = new Int32Array(words);
  const all = (): void => {
    for (let l = 0; l < letters; l++) left[l >> 5] = i32(left, l >> 5) | (1 << (l & 31));
  };
  all();
  const done: number[] = [];
  for (let l = 0; l < letters; l++) walk(l, { rows: after, words, left, done });
  all();
  const parts: number[][] = [];
  for (let i = done.length - 1; i >= 0; i--) {
    const part: number[] = [];
    walk(entryAt(done, i), { rows: before, words, left, done: part });
    if (part.length > 0) parts.push(part.sort((a, b) => a - b));
  }
  return parts;
}

/** Walks from a letter to all that are left, depth first, and notes each when it has nowhere to go on to. */
function walk(start: number, { rows, words, left, done }: { rows: Int32Array; words: number; left: Int32Array; done: number[] }): void {
  if (((i32(left, start >> 5) >> (start & 31)) & 1) === 0) return;
  const path = [start];
  left[start >> 5] = i32(left, start >> 5) & ~(1 << (start & 31));
  while (path.length > 0) {
    const from = entryAt(path, path.length - 1) * words;
    let word = 0;
    while (word < words && (i32(rows, from + word) & i32(left, word)) === 0) word++;
    if (word === words) {
      done.push(entryAt(path, path.length - 1));
      path.pop();
      continue;
    }
    const bits = i32(rows, from + word) & i32(left, word);
    left[word] = i32(left, word) & ~(bits & -bits);
    path.push(word * 32 + 31 - Math.clz32(bits & -bits));
  }
}
