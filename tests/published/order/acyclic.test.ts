import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { countOrderClasses } from '../../../src/engine/order/count/count.ts';
import { orderClasses } from '../../../src/engine/order/enumerate.ts';
import { bipartite, bruteForceCount, complete, cycle, randomTree } from '../../engine/order/graphs.ts';

interface Table {
  source: string;
  rows: { graph: string; pulls: number; edges: [number, number][]; count: string }[];
}
const table = JSON.parse(readFileSync(new URL('./acyclic.json', import.meta.url), 'utf8')) as Table;

/** How many classes the enumeration gives, each once. */
function enumerated(pulls: number, edges: readonly [number, number][]): number {
  const orders = [...orderClasses(pulls, edges)].map((order) => {
    const place = order.map((_, pull) => order.indexOf(pull));
    return edges.map(([a, b]) => (place[a]! < place[b]! ? '<' : '>')).join('');
  });
  expect(new Set(orders).size).toBe(orders.length);
  return orders.length;
}

describe('countOrderClasses against published counts', () => {
  for (const { graph, pulls, edges, count } of table.rows) {
    it(`should count ${count} for ${graph}`, () => {
      expect(countOrderClasses(pulls, edges)).toBe(BigInt(count));
      expect(enumerated(pulls, edges)).toBe(Number(count));
      if (edges.length <= 12) expect(bruteForceCount(pulls, edges)).toBe(Number(count));
    });
  }

  // Stanley (1973): a complete graph has n! acyclic orientations.
  it('should count n! when every pull overlaps every other', () => {
    let factorial = 1n;
    for (let n = 1; n <= 80; n++) {
      factorial *= BigInt(n);
      if (n <= 12 || n % 20 === 0) expect(countOrderClasses(n, complete(n))).toBe(factorial);
      if (n <= 7) expect(enumerated(n, complete(n))).toBe(Number(factorial));
    }
  });

  // Stanley (1973): a tree on n has 2^(n − 1).
  it('should count 2^(n−1) for trees', () => {
    for (const n of [1, 2, 7, 12, 30, 80]) {
      expect(countOrderClasses(n, randomTree(n, `tree ${n}`))).toBe(2n ** BigInt(n - 1));
      if (n <= 12) expect(enumerated(n, randomTree(n, `tree ${n}`))).toBe(2 ** (n - 1));
    }
  });

  // Stanley (1973): a cycle C_n has 2^n − 2.
  it('should count 2^n − 2 for cycles', () => {
    for (const n of [3, 4, 5, 12, 17, 80]) {
      expect(countOrderClasses(n, cycle(n))).toBe(2n ** BigInt(n) - 2n);
      if (n <= 12) expect(enumerated(n, cycle(n))).toBe(2 ** n - 2);
    }
  });

  // OEIS A048163, from memory; by Stirling numbers of the second kind, Σ (k! S(n + 1, k + 1))².
  it('should count 2, 14, 230, 6902 for n bars crossing n bars', () => {
    [2, 14, 230, 6902].forEach((count, i) => {
      const n = i + 1;
      const bars = bipartite(n, n);
      expect(countOrderClasses(2 * n, bars)).toBe(BigInt(count));
      expect(enumerated(2 * n, bars)).toBe(count);
    });
  });
});
