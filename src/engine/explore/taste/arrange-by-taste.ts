import { f64, i32, num } from '../../base/at.ts';

/** Prints that are chosen one by one; those after them hang by score alone. */
const MOST_CHOSEN = 600;
/** Steps of an OKLab difference of 1. */
const STEPS = 256;
/** How much a print counts less that hangs beside one just like it, against 1,000 for the whole range of scores. */
export const ALIKE_COSTS = 1000;

/** How a taste is to arrange prints. */
export interface TasteOrder {
  /** From −100, what is never chosen first, to 100, what is chosen first; at 0 only the spread counts. */
  towards: number;
  /** How many of a hundred places are for prints that the taste is unsure about. */
  unsure: number;
}

/** Prints as they are arranged, one number or point a print. */
export interface TastePoints {
  /** Whole numbers. */
  scores: Int32Array;
  doubts: Int32Array;
  /** Points × dimensions, OKLab. */
  points: ArrayLike<number>;
  dimensions: number;
}

/**
 * Arranges prints from best to worst without hanging the same twice over: the next is the one whose rank by score,
 * less what it has too much in common with those before it, is highest. Prints count as too alike when they lie
 * closer than prints of the wall usually lie. Whole numbers throughout.
 * @returns numbers of all prints
 * Source: maximal marginal relevance, J. Carbonell and J. Goldstein, SIGIR 1998, 335–336.
 */
export function arrangeByTaste(prints: TastePoints, { towards, unsure }: TasteOrder): number[] {
  const { scores, doubts } = prints;
  const count = scores.length;
  const liked = ranksOf(scores).map((rank) => Math.round((rank * towards) / 100));
  const doubted = ranksOf(doubts);
  const whole = wholePoints(prints);
  const far = usualSquare(whole, count);
  const nearest = new Int32Array(count).fill(far);
  const left = new Set(Array.from({ length: count }, (_, index) => index));
  const order: number[] = [];
  while (left.size > 0 && order.length < MOST_CHOSEN) {
    const open = isOpen(order.length, unsure);
    const next = bestOf(left, open ? doubted : liked, (index) => apart(i32(nearest, index), far));
    left.delete(next);
    order.push(next);
    for (const index of left) nearest[index] = Math.min(i32(nearest, index), squareBetween(whole, index, next, i32(nearest, index)));
  }
  return [...order, ...[...left].sort((a, b) => num(liked, b) - num(liked, a) || a - b)];
}

/**
 * Whether a place is for a print that the taste is unsure about: such places lie evenly among the others.
 * @param place from 0
 */
export function isOpen(place: number, unsure: number): boolean {
  return Math.floor(((place + 1) * unsure) / 100) > Math.floor((place * unsure) / 100);
}

function bestOf(left: ReadonlySet<number>, worth: readonly number[], apartness: (index: number) => number): number {
  let best = -1;
  let most = -Infinity;
  for (const index of left) {
    const value = num(worth, index) + apartness(index);
    if (value <= most) continue;
    most = value;
    best = index;
  }
  return best;
}

/** 0 for a print just like one that hangs, ALIKE_COSTS for one that is as far as prints usually are. */
function apart(square: number, far: number): number {
  return far === 0 ? 0 : Math.round(ALIKE_COSTS * Math.sqrt(square / far));
}

/** 0 to 1,000 by their order; equal values share the middle of their ranks. */
export function ranksOf(values: Int32Array): number[] {
  const sorted = Int32Array.from(values).sort();
  const last = Math.max(1, values.length - 1);
  const ranks = new Map<number, number>();
  for (let from = 0; from < sorted.length;) {
    let to = from;
    while (to + 1 < sorted.length && sorted[to + 1] === sorted[from]) to++;
    ranks.set(i32(sorted, from), Math.round((500 * (from + to)) / last));
    from = to + 1;
  }
  return Array.from(values, (value) => ranks.get(value) ?? 0);
}

interface WholePoints {
  steps: Int16Array;
  dimensions: number;
}

function wholePoints({ points, dimensions, scores }: TastePoints): WholePoints {
  const steps = Int16Array.from({ length: scores.length * dimensions }, (_, i) => Math.round(num(points, i) * STEPS));
  return { steps, dimensions };
}

/** Square of the distance in steps; once it is `enough`, it need not be finished. */
function squareBetween({ steps, dimensions }: WholePoints, a: number, b: number, enough: number): number {
  let sum = 0;
  for (let i = 0; i < dimensions && sum < enough; i++) sum += (num(steps, a * dimensions + i) - num(steps, b * dimensions + i)) ** 2;
  return sum;
}

/** Prints from which the usual distance is taken. */
const MOST_USUAL = 60;

/** The median of the squares of the distances between prints taken evenly from all. */
function usualSquare(points: WholePoints, count: number): number {
  const step = Math.max(1, Math.floor(count / MOST_USUAL));
  const squares: number[] = [];
  for (let a = 0; a < count; a += step) for (let b = 0; b < a; b += step) squares.push(squareBetween(points, a, b, Infinity));
  const sorted = Float64Array.from(squares).sort();
  return sorted.length === 0 ? 0 : f64(sorted, sorted.length >> 1);
}
