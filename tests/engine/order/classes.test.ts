import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { randomFrom } from '../../../src/engine/base/random.ts';
import { canonicalOrder } from '../../../src/engine/order/canonical.ts';
import { countOrderClasses } from '../../../src/engine/order/count/count.ts';
import { orderClasses } from '../../../src/engine/order/enumerate.ts';
import { graphOf } from '../../../src/engine/order/graph.ts';
import { drawOrder, sampleOrder } from '../../../src/engine/order/sample.ts';
import { walkOrientation } from '../../../src/engine/order/walk.ts';
import { bipartite, boxGraph, complete, cycle, grid, orientationKey, type Pairs, randomGraph } from './graphs.ts';

describe('orderClasses', () => {
  it('should give each class once, as many as are counted', () => {
    for (let i = 0; i < 30; i++) {
      const n = 1 + (i % 8);
      const pairs = randomGraph(n, 15 + (i % 6) * 10, `classes ${i}`);
      const keys = new Set<string>();
      let given = 0;
      for (const order of orderClasses(n, pairs)) {
        given++;
        expect([...order].sort((a, b) => a - b)).toEqual(Array.from({ length: n }, (_, v) => v));
        keys.add(orientationKey(order, pairs));
      }
      expect(given).toBe(Number(countOrderClasses(n, pairs)));
      expect(keys.size).toBe(given);
    }
  });

  it('should start with the order as numbered and be lazy', () => {
    const first = orderClasses(60, complete(60)).next().value;
    expect(first).toEqual(Array.from({ length: 60 }, (_, v) => v));
  });

  it('should give canonical orders', () => {
    const pairs = grid(3, 3);
    const { neighbours } = graphOf(9, pairs);
    for (const order of orderClasses(9, pairs)) {
      expect(canonicalOrder(order, neighbours)).toEqual(order);
    }
  });
});

describe('canonicalOrder', () => {
  const cases = fc
    .record({ n: fc.integer({ min: 2, max: 10 }), share: fc.integer({ min: 5, max: 95 }), seed: fc.string() })
    .map(({ n, share, seed }) => {
      const order = randomFrom(`order ${seed}`).shuffle(Array.from({ length: n }, (_, v) => v));
      return { n, pairs: randomGraph(n, share, seed), order };
    });

  it('should not change under free swaps of neighbours', () => {
    fc.assert(
      fc.property(cases, fc.array(fc.nat(), { maxLength: 30 }), ({ n, pairs, order }, swaps) => {
        const { neighbours } = graphOf(n, pairs);
        const moved = [...order];
        for (const swap of swaps) {
          const i = swap % (n - 1);
          if (neighbours[moved[i]!]!.includes(moved[i + 1]!)) continue;
          [moved[i], moved[i + 1]] = [moved[i + 1]!, moved[i]!];
        }
        expect(canonicalOrder(moved, neighbours)).toEqual(canonicalOrder(order, neighbours));
      }),
      { seed: 1 },
    );
  });

  it('should differ as soon as one overlap is the other way round', () => {
    fc.assert(
      fc.property(cases, ({ n, pairs, order }) => {
        const { neighbours } = graphOf(n, pairs);
        const other = [...order].reverse();
        const same = orientationKey(order, pairs) === orientationKey(other, pairs);
        const equal = String(canonicalOrder(order, neighbours)) === String(canonicalOrder(other, neighbours));
        expect(equal).toBe(same);
      }),
      { seed: 2 },
    );
  });
});

/** Pearson's chi-square of equal shares. */
function chiSquare(counts: ReadonlyMap<string, number>, classes: number, draws: number): number {
  const wanted = draws / classes;
  let sum = (classes - counts.size) * wanted;
  for (const count of counts.values()) sum += (count - wanted) ** 2 / wanted;
  return sum;
}

/** Upper 0.1 % point of chi-square by Wilson and Hilferty (1931); z(0.999) = 3.0902. */
function limit(freedom: number): number {
  const c = 2 / (9 * freedom);
  return freedom * (1 - c + 3.0902 * Math.sqrt(c)) ** 3;
}

describe('sampleOrder', () => {
  const graphs: [string, number, Pairs][] = [
    [
      'a triangle with a tail (chordal)',
      4,
      [
        [0, 1],
        [1, 2],
        [0, 2],
        [2, 3],
      ],
    ],
    [
      'a star',
      5,
      [
        [0, 1],
        [0, 2],
        [0, 3],
        [0, 4],
      ],
    ],
    ['a cycle of 6', 6, cycle(6)],
    ['K3,3', 6, bipartite(3, 3)],
    [
      'two cycles at one pull',
      7,
      [
        [0, 1],
        [1, 2],
        [2, 3],
        [3, 0],
        [3, 4],
        [4, 5],
        [5, 6],
        [6, 3],
      ],
    ],
    [
      'rings glued along a triangle',
      8,
      [
        [0, 1],
        [1, 2],
        [0, 2],
        [0, 3],
        [3, 4],
        [4, 1],
        [4, 7],
        [7, 2],
        [0, 5],
        [5, 6],
        [6, 2],
      ],
    ],
    [
      'a cycle of 4 with a roof',
      5,
      [
        [0, 1],
        [1, 2],
        [2, 3],
        [3, 0],
        [0, 4],
        [1, 4],
      ],
    ],
  ];
  it.each(graphs)('should be uniform over the classes of %s', (_, n, pairs) => {
    const classes = Number(countOrderClasses(n, pairs));
    const draws = classes * 40;
    const counts = new Map<string, number>();
    for (let i = 0; i < draws; i++) {
      const key = orientationKey(sampleOrder(n, pairs, `chi ${i}`), pairs);
      counts.set(key, (counts.get(key) ?? 0) + 1);
    }
    expect(chiSquare(counts, classes, draws)).toBeLessThan(limit(classes - 1));
  });

  it('should draw a valid order of a large tangle, the same for the same seed', () => {
    const pairs = boxGraph(40, 0.4, 'tangle');
    const once = sampleOrder(40, pairs, 'a');
    expect(sampleOrder(40, pairs, 'a')).toEqual(once);
    expect(sampleOrder(40, pairs, 'b')).not.toEqual(once);
    expect([...once].sort((a, b) => a - b)).toEqual(Array.from({ length: 40 }, (_, v) => v));
    expect(canonicalOrder(once, graphOf(40, pairs).neighbours)).toEqual(once);
  });
});

describe('walkOrientation', () => {
  it('should come to uniform over the classes that keep a fixed pair', () => {
    const pairs = cycle(5);
    const graph = graphOf(5, pairs);
    // 2 before 0 does not overlap, so it fixes no edge but rules some classes out.
    const fixed: Pairs = [[2, 0]];
    const allowed = new Set<string>();
    for (const order of permutations(5)) {
      if (order.indexOf(2) < order.indexOf(0)) allowed.add(orientationKey(order, pairs));
    }
    const draws = allowed.size * 60;
    const counts = new Map<string, number>();
    for (let i = 0; i < draws; i++) {
      const order = walkOrientation(graph, { fixed, start: [2, 1, 0, 3, 4], steps: 200 }, randomFrom(`walk ${i}`));
      expect(order.indexOf(2)).toBeLessThan(order.indexOf(0));
      const key = orientationKey(order, pairs);
      counts.set(key, (counts.get(key) ?? 0) + 1);
    }
    expect([...counts.keys()].every((key) => allowed.has(key))).toBe(true);
    expect(chiSquare(counts, allowed.size, draws)).toBeLessThan(limit(allowed.size - 1));
  });
});

function permutations(n: number): number[][] {
  if (n === 0) return [[]];
  return permutations(n - 1).flatMap((rest) => Array.from({ length: n }, (_, i) => [...rest.slice(0, i), n - 1, ...rest.slice(i)]));
}

/** The steps that a wall gives the walk in parts too large for the exact way. */
const WALL_STEPS = 6;

/** Parts that no clique cuts, small enough to know all their classes. */
const PARTS: [string, number, Pairs][] = [
  ['a cycle of 6', 6, cycle(6)],
  ['K3,3', 6, bipartite(3, 3)],
  [
    'a cycle of 4 with a roof',
    5,
    [
      [0, 1],
      [1, 2],
      [2, 3],
      [3, 0],
      [0, 4],
      [1, 4],
    ],
  ],
  ['an octahedron', 6, complete(6).filter(([a, b]) => a + b !== 5)],
  ['a grid of 3 by 3', 9, grid(3, 3)],
];

/**
 * How likely each class is after so many steps of the walk, worked out class by class from its
 * definition and not drawn: from the class of a random order, an overlap is turned with probability one half
 * unless that closes a circle.
 */
function spreadAfter(n: number, pairs: Pairs, steps: number): Map<string, number> {
  let now = new Map<string, number>();
  let orders = 0;
  for (const order of permutations(n)) {
    const key = orientationKey(order, pairs);
    now.set(key, (now.get(key) ?? 0) + 1);
    orders++;
  }
  for (const [key, count] of now) now.set(key, count / orders);
  // Every class has an order, so a turned class that none has closes a circle.
  const classes = new Set(now.keys());
  for (let step = 0; step < steps; step++) {
    const next = new Map<string, number>();
    for (const [key, share] of now) {
      let stays = share;
      pairs.forEach((_, i) => {
        const turned = `${key.slice(0, i)}${key[i] === '<' ? '>' : '<'}${key.slice(i + 1)}`;
        if (!classes.has(turned)) return;
        const goes = share / (2 * pairs.length);
        stays -= goes;
        next.set(turned, (next.get(turned) ?? 0) + goes);
      });
      next.set(key, (next.get(key) ?? 0) + stays);
    }
    now = next;
  }
  return now;
}

describe('the walk by itself, with the steps of a wall', () => {
  it.each(PARTS)('should be uniform over the classes of %s as far as a chi-square test sees', (_, n, pairs) => {
    const classes = Number(countOrderClasses(n, pairs));
    const graph = graphOf(n, pairs);
    // At least 5 in each class, as Cochran (1954) asks.
    const draws = classes * (classes > 1000 ? 10 : 40);
    const counts = new Map<string, number>();
    for (let i = 0; i < draws; i++) {
      const order = drawOrder(graph, randomFrom(`forced ${i}`), { exactPulls: 0, walkSteps: (m) => WALL_STEPS * m });
      const key = orientationKey(order, pairs);
      counts.set(key, (counts.get(key) ?? 0) + 1);
    }
    expect(chiSquare(counts, classes, draws)).toBeLessThan(limit(classes - 1));
  });

  it.each(PARTS)('should be near uniform in total variation over the classes of %s', (_, n, pairs) => {
    const shares = spreadAfter(n, pairs, WALL_STEPS * pairs.length);
    const even = 1 / Number(countOrderClasses(n, pairs));
    let away = 0;
    for (const share of shares.values()) away += Math.abs(share - even) / 2;
    // Found: at most 0.6 % (the octahedron), 0.01 % on the grid.
    expect(away).toBeLessThan(0.01);
  });
});
