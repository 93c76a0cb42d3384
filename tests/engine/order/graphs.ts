import { randomFrom } from '../../../src/engine/base/random.ts';

export type Pairs = [number, number][];

export function complete(n: number): Pairs {
  const pairs: Pairs = [];
  for (let a = 0; a < n; a++) for (let b = a + 1; b < n; b++) pairs.push([a, b]);
  return pairs;
}

export function cycle(n: number): Pairs {
  return Array.from({ length: n }, (_, i): [number, number] => [i, (i + 1) % n]);
}

export function bipartite(m: number, n: number): Pairs {
  const pairs: Pairs = [];
  for (let a = 0; a < m; a++) for (let b = 0; b < n; b++) pairs.push([a, m + b]);
  return pairs;
}

export function grid(w: number, h: number): Pairs {
  const pairs: Pairs = [];
  for (let y = 0; y < h; y++) {
    for (let x = 0; x < w; x++) {
      if (x + 1 < w) pairs.push([y * w + x, y * w + x + 1]);
      if (y + 1 < h) pairs.push([y * w + x, y * w + x + w]);
    }
  }
  return pairs;
}

export function randomTree(n: number, seed: string): Pairs {
  const random = randomFrom(seed);
  return Array.from({ length: n - 1 }, (_, i): [number, number] => [random.int(i + 1), i + 1]);
}

/** Each pair with probability `share` / 100. */
export function randomGraph(n: number, share: number, seed: string): Pairs {
  const random = randomFrom(seed);
  return complete(n).filter(() => random.chance(share, 100));
}

/** Overlap graph of boxes thrown on a unit sheet, a likeness of shapes on paper. */
export function boxGraph(n: number, size: number, seed: string): Pairs {
  const random = randomFrom(seed);
  const unit = (): number => random.int(1000) / 1000;
  const boxes = Array.from({ length: n }, () => [unit(), unit(), size * (0.5 + unit()), size * (0.5 + unit())]);
  return complete(n).filter(
    ([a, b]) =>
      Math.abs(boxes[a]![0]! - boxes[b]![0]!) < (boxes[a]![2]! + boxes[b]![2]!) / 2 &&
      Math.abs(boxes[a]![1]! - boxes[b]![1]!) < (boxes[a]![3]! + boxes[b]![3]!) / 2,
  );
}

/** All orientations tried one by one: 2^edges, each tested by taking sources away. */
export function bruteForceCount(n: number, pairs: Pairs): number {
  let count = 0;
  for (let bits = 0; bits < 2 ** pairs.length; bits++) {
    const arcs = pairs.map(([a, b], i): [number, number] => ((bits >> i) & 1 ? [b, a] : [a, b]));
    let left = new Set(Array.from({ length: n }, (_, i) => i));
    for (;;) {
      const free = [...left].filter((v) => !arcs.some(([low, high]) => high === v && left.has(low)));
      if (free.length === 0) break;
      left = new Set([...left].filter((v) => !free.includes(v)));
    }
    if (left.size === 0) count++;
  }
  return count;
}

/** Names a class by the direction of each of its overlaps. */
export function orientationKey(order: readonly number[], pairs: Pairs): string {
  return pairs.map(([a, b]) => (order.indexOf(a) < order.indexOf(b) ? '>' : '<')).join('');
}
