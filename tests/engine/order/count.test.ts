import { describe, expect, it } from 'vitest';
import { atomsOf } from '../../../src/engine/order/atoms.ts';
import { countOrderClasses } from '../../../src/engine/order/count.ts';
import { graphOf } from '../../../src/engine/order/graph.ts';
import { bipartite, boxGraph, bruteForceCount, complete, grid, type Pairs, randomGraph } from './graphs.ts';

/** Deletion and contraction, straight from Stanley (1973): a(G) = a(G − e) + a(G / e). */
function byDeletionContraction(pairs: Pairs): bigint {
  if (pairs.length === 0) return 1n;
  const [a, b] = pairs[0]!;
  const rest = pairs.slice(1);
  const merged = new Map<string, [number, number]>();
  for (const [p, q] of rest) {
    const [x, y] = [p === b ? a : p, q === b ? a : q];
    merged.set(`${Math.min(x, y)},${Math.max(x, y)}`, [x, y]);
  }
  return byDeletionContraction(rest) + byDeletionContraction([...merged.values()]);
}

describe('countOrderClasses', () => {
  it('should equal brute force over all orientations on random graphs', () => {
    for (let i = 0; i < 40; i++) {
      const n = 2 + (i % 5);
      const pairs = randomGraph(n, 20 + (i % 8) * 10, `brute ${i}`);
      expect(countOrderClasses(n, pairs), `graph ${i}`).toBe(BigInt(bruteForceCount(n, pairs)));
    }
  });

  it('should equal deletion and contraction on random graphs of 9 pulls', () => {
    for (let i = 0; i < 20; i++) {
      const pairs = randomGraph(9, 25 + i, `dc ${i}`).slice(0, 17);
      expect(countOrderClasses(9, pairs), `graph ${i}`).toBe(byDeletionContraction(pairs));
    }
  });

  // Kaneko's poly-Bernoulli numbers count acyclic orientations of K_{m,n}
  // (Cameron, Glass and Schumacher 2014): B_n^(−k) = Σ (j!)² S(n+1, j+1) S(k+1, j+1).
  it('should equal the poly-Bernoulli numbers for two groups of pulls that all cross', () => {
    const stirling = (n: number, k: number): bigint =>
      n === k ? 1n : k < 1 || k > n ? 0n : stirling(n - 1, k - 1) + BigInt(k) * stirling(n - 1, k);
    for (const [m, n] of [
      [2, 2],
      [3, 3],
      [4, 6],
      [9, 9],
    ] as const) {
      let sum = 0n;
      let factorial = 1n;
      for (let j = 0; j <= Math.min(m, n); j++) {
        if (j > 0) factorial *= BigInt(j);
        sum += factorial * factorial * stirling(m + 1, j + 1) * stirling(n + 1, j + 1);
      }
      expect(countOrderClasses(m + n, bipartite(m, n))).toBe(sum);
    }
  });

  it('should not depend on the numbering of the pulls', () => {
    const pairs = boxGraph(24, 0.35, 'numbering');
    const turned = pairs.map(([a, b]): [number, number] => [(b * 7 + 3) % 24, (a * 7 + 3) % 24]);
    expect(countOrderClasses(24, turned)).toBe(countOrderClasses(24, pairs));
  });

  it('should count 80 boxes thrown on a sheet', () => {
    const pairs = boxGraph(80, 0.2, 'eighty');
    const one = countOrderClasses(80, pairs);
    // One more pull across a single other doubles the orders.
    expect(countOrderClasses(81, [...pairs, [3, 80]])).toBe(one * 2n);
    expect(one > 10n ** 20n).toBe(true);
  });

  it('should multiply over unconnected parts', () => {
    const a = grid(3, 4);
    const b = bipartite(3, 4).map(([p, q]): [number, number] => [p + 12, q + 12]);
    expect(countOrderClasses(19, [...a, ...b])).toBe(countOrderClasses(12, a) * countOrderClasses(7, bipartite(3, 4)));
  });

  it('should count a pair once however often and whichever way round it is named', () => {
    expect(
      countOrderClasses(3, [
        [0, 1],
        [1, 0],
        [0, 1],
        [2, 1],
      ]),
    ).toBe(4n);
  });

  it('should give up with a sentence rather than hang', () => {
    expect(() => countOrderClasses(70, randomGraph(70, 40, 'tangle'))).toThrow(
      expect.objectContaining({ code: 'order.too-many', message: expect.stringContaining('70 pulls') }),
    );
  });

  it.each([
    ['order.pulls', -1, []],
    ['order.pulls', 2.5, []],
    ['order.pulls', NaN, []],
    ['order.range', 3, [[0, 3]]],
    ['order.range', 3, [[-1, 2]]],
    ['order.range', 3, [[0.5, 2]]],
    ['order.range', 3, [[0]]],
    ['order.range', 3, [null]],
    ['order.overlaps', 3, null],
    ['order.loop', 3, [[1, 1]]],
  ] as unknown as [string, number, Pairs][])('should refuse with %s for %d pulls and %j', (code, pulls, pairs) => {
    expect(() => countOrderClasses(pulls, pairs)).toThrow(expect.objectContaining({ code }));
  });
});

describe('atomsOf', () => {
  it('should cut along cliques so that every overlap is in a part', () => {
    for (let i = 0; i < 20; i++) {
      const pairs = boxGraph(20, 0.3, `atoms ${i}`);
      const atoms = atomsOf(graphOf(20, pairs));
      const within = (pulls: number[]): number => pairs.filter(([p, q]) => pulls.includes(p) && pulls.includes(q)).length;
      const inParts = atoms.reduce((sum, { pulls }) => sum + within(pulls), 0);
      const onCuts = atoms.reduce((sum, { clique: { length: k } }) => sum + (k * (k - 1)) / 2, 0);
      expect(inParts - onCuts).toBe(pairs.length);
    }
  });

  it('should leave a complete graph whole', () => {
    expect(atomsOf(graphOf(6, complete(6))).length).toBe(1);
  });
});
