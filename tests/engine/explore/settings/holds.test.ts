/* oxlint-disable unicorn/no-thenable -- a hold's `then` is a pull's id, nothing that is called */
import { describe, expect, it } from 'vitest';
import { randomFrom } from '../../../../src/engine/base/random.ts';
import { arrange } from '../../../../src/engine/explore/search/arrange.ts';
import { drawHeldOrder } from '../../../../src/engine/explore/search/draw-order.ts';
import { checkHolds } from '../../../../src/engine/explore/settings/check-holds.ts';
import type { Hold } from '../../../../src/engine/explore/types.ts';
import { orientationKey, type Pairs, randomGraph } from '../../order/graphs.ts';

const PULLS = ['a', 'b', 'c', 'd', 'e'].map((id) => ({ id }));

function permutations(n: number): number[][] {
  if (n === 0) return [[]];
  return permutations(n - 1).flatMap((rest) => Array.from({ length: n }, (_, i) => [...rest.slice(0, i), n - 1, ...rest.slice(i)]));
}

function keeps(order: readonly number[], arcs: Pairs, slots: readonly number[]): boolean {
  return (
    arcs.every(([low, high]) => order.indexOf(low) < order.indexOf(high)) && slots.every((slot, pull) => slot < 0 || order[slot] === pull)
  );
}

describe('checkHolds', () => {
  it.each([
    [
      [
        { kind: 'first', pull: 'a' },
        { kind: 'first', pull: 'c' },
      ],
      /^Pull 1 stays first, but pull 3 stays first; take one of the two/,
    ],
    [
      [
        { kind: 'last', pull: 'a' },
        { kind: 'last', pull: 'b' },
      ],
      /Pull 1 .*stays last, but pull 2 .*stays last/,
    ],
    [
      [
        { kind: 'first', pull: 'b' },
        { kind: 'last', pull: 'b' },
      ],
      /Pull 2 stays first, but pull 2 stays last/,
    ],
    [
      [
        { kind: 'out', pull: 'b' },
        { kind: 'first', pull: 'b' },
      ],
      /Pull 2 is never there, but pull 2 stays first/,
    ],
    [
      [
        { kind: 'place', pull: 'b' },
        { kind: 'first', pull: 'b' },
      ],
      /in its place \(number 2 down\), but pull 2 stays first/,
    ],
    [
      [
        { kind: 'place', pull: 'a' },
        { kind: 'first', pull: 'b' },
      ],
      /Pull 1 .*place.*but pull 2 stays first/,
    ],
    [
      [
        { kind: 'before', pull: 'c', other: 'a' },
        { kind: 'first', pull: 'a' },
      ],
      /Pull 3 stays under pull 1, but pull 1 stays first/,
    ],
    [
      [
        { kind: 'before', pull: 'e', other: 'd' },
        { kind: 'last', pull: 'e' },
      ],
      /Pull 5 stays under pull 4, but pull 5 stays last/,
    ],
    [
      [
        { kind: 'before', pull: 'c', other: 'b' },
        { kind: 'before', pull: 'b', other: 'c' },
      ],
      /Pull 3 stays under pull 2, but pull 2 stays under pull 3/,
    ],
    [[{ kind: 'before', pull: 'c', other: 'c' }], /Pull 3 stays under pull 3, which no order can keep/],
    [[{ kind: 'first', pull: 'z' }], /entry 1, names the pull 'z', which is not in the stack/],
    [
      [
        { kind: 'before', pull: 'a', other: 'c' },
        { kind: 'before', pull: 'c', other: 'e' },
        { kind: 'before', pull: 'e', other: 'a' },
      ],
      /round in a circle: pull 1 under pull 3 under pull 5 under pull 1/,
    ],
    [
      [
        { kind: 'before', pull: 'c', other: 'b' },
        { kind: 'before', pull: 'd', other: 'b' },
        { kind: 'place', pull: 'b' },
      ],
      /Pull 2 stays in its place \(number 2 down\), which no order can keep together with what must stay before it/,
    ],
  ] as [Hold[], RegExp][])('should name what contradicts in %j', (holds, sentence) => {
    const problems = checkHolds(PULLS, holds);
    expect(problems.length).toBe(1);
    expect(problems[0]!.message).toMatch(sentence);
  });

  it('should let holds stand that some order keeps', () => {
    const holds: Hold[] = [
      { kind: 'out', pull: 'a' },
      { kind: 'ink', pull: 'a' },
      { kind: 'first', pull: 'e' },
      { kind: 'last', pull: 'b' },
      { kind: 'before', pull: 'd', other: 'c' },
      { kind: 'before', pull: 'a', other: 'c' },
      { kind: 'first', pull: 'e' },
    ];
    expect(checkHolds(PULLS, holds)).toEqual([]);
    expect(
      checkHolds(PULLS, [
        { kind: 'place', pull: 'e' },
        { kind: 'last', pull: 'e' },
      ]),
    ).toEqual([]);
    expect(checkHolds([], [])).toEqual([]);
  });
});

describe('arrange', () => {
  it('should find an order exactly when one of all orders keeps the holds', () => {
    const random = randomFrom('arrange');
    let admitted = 0;
    const orders = permutations(5);
    for (let i = 0; i < 400; i++) {
      const arcs: Pairs = randomGraph(5, 25, `arcs ${i}`).map(([a, b]) => (random.int(2) ? [a, b] : [b, a]));
      const slots = [-1, -1, -1, -1, -1].map(() => (random.chance(1, 4) ? random.int(5) : -1));
      const order = arrange(5, { arcs, slots }, [0, 1, 2, 3, 4]);
      const some = orders.some((each) => keeps(each, arcs, slots));
      expect(order !== null, `case ${i}`).toBe(some);
      if (order !== null) {
        admitted++;
        expect(keeps(order, arcs, slots)).toBe(true);
      }
    }
    expect(admitted).toBeGreaterThan(50);
    expect(admitted).toBeLessThan(350);
  });

  it('should stay with the ranks where nothing else decides', () => {
    const slots = [-1, -1, -1, -1];
    expect(arrange(4, { arcs: [], slots }, [2, 0, 3, 1])).toEqual([1, 3, 0, 2]);
    expect(arrange(4, { arcs: [[2, 0]], slots }, [0, 1, 2, 3])).toEqual([1, 2, 0, 3]);
  });
});

describe('drawHeldOrder', () => {
  it('should reach all and only the classes that the holds admit, evenly', () => {
    const n = 5;
    const pairs = randomGraph(n, 70, 'held');
    const edges = pairs.map(([a, b]) => ({ a, b }));
    const slots = [-1, -1, 0, -1, -1];
    const arcs: Pairs = [[4, 1]];
    const admitted = new Set(
      permutations(n)
        .filter((order) => keeps(order, arcs, slots))
        .map((order) => orientationKey(order, pairs)),
    );
    const counts = new Map<string, number>();
    const draws = admitted.size * 100;
    for (let i = 0; i < draws; i++) {
      const order = drawHeldOrder(edges, { arcs, slots }, [0, 1, 2, 3, 4], randomFrom(`held ${i}`))!;
      expect(keeps(order, arcs, slots)).toBe(true);
      const key = orientationKey(order, pairs);
      counts.set(key, (counts.get(key) ?? 0) + 1);
    }
    expect([...counts.keys()].sort()).toEqual([...admitted].sort());
    // Chi-square, upper 0.1 % point by Wilson and Hilferty (1931).
    const freedom = admitted.size - 1;
    const c = 2 / (9 * freedom);
    let chi = 0;
    for (const count of counts.values()) chi += (count - 100) ** 2 / 100;
    expect(chi).toBeLessThan(freedom * (1 - c + 3.0902 * Math.sqrt(c)) ** 3);
  });
});
