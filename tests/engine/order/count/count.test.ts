import { describe, expect, it } from 'vitest';
import { atomsOf } from '../../../../src/engine/order/atoms.ts';
import { boundClasses, countOrderClasses } from '../../../../src/engine/order/count/count.ts';
import type { Range } from '../../../../src/engine/order/count/part.ts';
import { graphOf } from '../../../../src/engine/order/graph.ts';
import { bipartite, boxGraph, bruteForceCount, complete, grid, type Pairs, randomGraph } from '../graphs.ts';

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

function range(pulls: number, pairs: Pairs, effort: { colourSteps: number; contractionSteps: number }): Range {
  const steps = boundClasses(graphOf(pulls, pairs), { ...effort });
  for (;;) {
    const step = steps.next();
    if (step.done === true) return step.value;
  }
}

/** So many complete bipartite graphs of two and two in a ring. */
function cycleOfCrosses(n: number): Pairs {
  return Array.from({ length: n }, (_, i): Pairs => {
    const [from, to] = [i * 4, ((i + 1) % n) * 4];
    return [...bipartite(2, 2).map(([a, b]): [number, number] => [from + a, from + b]), [from + 3, to]];
  }).flat();
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
      expect.objectContaining({
        code: 'order.too-many',
        message: expect.stringMatching(/^70 pulls .* there are between 10\^\d+ and 10\^\d+;/),
        details: expect.objectContaining({ least: expect.stringMatching(/^\d+$/), most: expect.stringMatching(/^\d+$/) }),
      }),
    );
  });

  // Every way to count must agree: the two exact ones, and the bounds where neither may work.
  it('should count alike by colour classes and by contraction, between the bounds', () => {
    const ways = [
      { colourSteps: 2_000_000, contractionSteps: 0 },
      { colourSteps: 0, contractionSteps: 2_000_000 },
      { colourSteps: 0, contractionSteps: 0 },
    ];
    const graphs: [number, Pairs][] = [
      [49, grid(7, 7)],
      [14, bipartite(7, 7)],
      [40, boxGraph(40, 0.3, 'ways')],
      [20, cycleOfCrosses(5)],
    ];
    for (let i = 0; i < 12; i++) graphs.push([12 + i, randomGraph(12 + i, 20 + (i % 3) * 10, `ways ${i}`)]);
    let apart = 0;
    for (const [pulls, pairs] of graphs) {
      const [colours, contracted, bounds] = ways.map((effort) => range(pulls, pairs, effort)) as [Range, Range, Range];
      expect(colours.least).toBe(colours.most);
      expect(contracted).toEqual(colours);
      expect(bounds.least <= colours.least && colours.least <= bounds.most).toBe(true);
      if (bounds.least < bounds.most) apart++;
    }
    expect(apart).toBeGreaterThan(8);
  });

  it('should bound random graphs of 40 pulls at density 0.3, and 600 pulls in a tangle', () => {
    const { least, most } = range(40, randomGraph(40, 30, 'r'), { colourSteps: 0, contractionSteps: 0 });
    // A core of it that can be counted, and every order of 40.
    expect(least > 10n ** 30n && least < most).toBe(true);
    expect(String(most).length).toBeLessThan(42);
    const tangle = range(600, randomGraph(600, 3, 'tangle'), { colourSteps: 0, contractionSteps: 0 });
    expect(tangle.least > 1n && tangle.least < tangle.most).toBe(true);
  });

  it('should let a stop be heard while it counts', () => {
    const steps = boundClasses(graphOf(100, grid(10, 10)), { colourSteps: 0, contractionSteps: 5_000_000 });
    let breaths = 0;
    while (steps.next().done !== true) breaths++;
    expect(breaths).toBeGreaterThan(50);
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
