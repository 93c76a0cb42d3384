import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { countOrderClasses } from '../../../src/engine/order/count.ts';
import { orderClasses } from '../../../src/engine/order/enumerate.ts';
import { bruteForceCount, complete, cycle, randomTree } from '../../engine/order/graphs.ts';

interface Table {
  source: string;
  rows: { graph: string; pulls: number; edges: [number, number][]; count: string }[];
}
const table = JSON.parse(
  readFileSync(new URL('./acyclic.json', import.meta.url), 'utf8'),
) as Table;

describe('countOrderClasses against published counts', () => {
  for (const { graph, pulls, edges, count } of table.rows) {
    it(`should count ${count} for ${graph}`, () => {
      expect(countOrderClasses(pulls, edges)).toBe(BigInt(count));
      expect([...orderClasses(pulls, edges)].length).toBe(Number(count));
      if (edges.length <= 12) expect(bruteForceCount(pulls, edges)).toBe(Number(count));
    });
  }

  // Stanley (1973): a complete graph has n! acyclic orientations.
  it('should count n! when every pull overlaps every other', () => {
    let factorial = 1n;
    for (let n = 1; n <= 80; n++) {
      factorial *= BigInt(n);
      if (n <= 12 || n % 20 === 0) expect(countOrderClasses(n, complete(n))).toBe(factorial);
    }
  });

  // Stanley (1973): a tree on n has 2^(n − 1).
  it('should count 2^(n−1) for trees', () => {
    for (const n of [1, 2, 7, 30, 80]) {
      expect(countOrderClasses(n, randomTree(n, `tree ${n}`))).toBe(2n ** BigInt(n - 1));
    }
  });

  // Stanley (1973): a cycle C_n has 2^n − 2.
  it('should count 2^n − 2 for cycles', () => {
    for (const n of [3, 4, 5, 17, 80]) {
      expect(countOrderClasses(n, cycle(n))).toBe(2n ** BigInt(n) - 2n);
    }
  });
});
