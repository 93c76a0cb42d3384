import { describe, expect, it } from 'vitest';
import { randomFrom } from '../../../../src/engine/base/random.ts';
import { BoundSearch } from '../../../../src/engine/pullorder/bound/bound.ts';
import { OnceSearch } from '../../../../src/engine/pullorder/bound/once/once-search.ts';
import type { Order } from '../../../../src/engine/pullorder/model.ts';

/** Sheets of some letters each, pulled one over the other as drawn by lot; relations are closed. */
function randomSheets(seed: string, letters: number, sheets: number): Order[] {
  const random = randomFrom(seed);
  return Array.from({ length: sheets }, () => {
    const own = random.shuffle([...Array(letters).keys()]).filter(() => random.chance(5, 10));
    const preds: number[][] = [];
    own.forEach((_, p) => {
      const before = new Set<number>();
      for (let q = 0; q < p; q++) {
        if (random.chance(4, 10)) for (const b of [q, ...preds[q]!]) before.add(b);
      }
      preds.push([...before].sort((a, b) => a - b));
    });
    return { letters: own, preds };
  });
}

/** Whether letters can be put one after another so that no sheet is against it, by taking away what nothing precedes. */
function hasNoCircle(orders: readonly Order[], letters: Set<number>): boolean {
  const left = new Set(letters);
  const precedes = (a: number, b: number): boolean =>
    orders.some(({ letters: own, preds }) => preds.some((before, p) => own[p] === b && before.some((q) => own[q] === a)));
  for (let taken = true; taken;) {
    taken = false;
    for (const l of left) if (![...left].some((other) => other !== l && precedes(other, l))) taken = left.delete(l);
  }
  return left.size === 0;
}

describe('OnceSearch', () => {
  it('should find the most letters without a circle, as trying all sets of letters does', () => {
    const found = new Set<number>();
    for (let i = 0; i < 60; i++) {
      const n = 4 + (i % 5);
      const orders = randomSheets(`once ${i}`, n, 2 + (i % 4));
      const sets = Array.from({ length: 2 ** n }, (_, bits) => new Set([...Array(n).keys()].filter((l) => (bits >> l) & 1)));
      const most = Math.max(...sets.filter((set) => hasNoCircle(orders, set)).map((set) => set.size));
      const search = new OnceSearch(orders, [...Array(n).keys()], { units: 0 });
      const steps = search.work();
      expect(search.most).toBeGreaterThanOrEqual(most);
      while (!steps.next().done) expect(search.most).toBeGreaterThanOrEqual(most);
      expect(search.most, `case ${i}`).toBe(most);
      found.add(most);
    }
    expect(found.size).toBeGreaterThan(3);
  });

  it('should tell of circles longer than two letters, over more than 32 letters', () => {
    // Each three of 40 letters go round: no two clash, and of each three one comes twice.
    const orders = Array.from({ length: 39 }, (_, i): Order => {
      const third = i - (i % 3);
      return { letters: [i, third + ((i + 1) % 3)], preds: [[], [0]] };
    });
    const search = new OnceSearch(orders, [...Array(40).keys()], { units: 0 });
    for (const steps = search.work(); !steps.next().done;);
    expect(search.most).toBe(27);
  });

  it('should tell by clashes alone where letters are too many to be searched', () => {
    // 500 pairs that clash, each pair before the next and the last before the first: one part of 1,000 letters.
    const pairs = Array.from({ length: 1000 }, (_, i): Order => ({ letters: i % 2 ? [i, i - 1] : [i, i + 1], preds: [[], [0]] }));
    const links = Array.from({ length: 500 }, (_, i): Order => ({ letters: [2 * i, (2 * i + 2) % 1000], preds: [[], [0]] }));
    const search = new OnceSearch([...pairs, ...links], [...Array(1000).keys()], { units: 0 });
    expect(search.work().next().done).toBe(true);
    expect(search.most).toBe(500);
  });

  it('should bound sheets of very many screens by more than each screen once', () => {
    // 120 screens in sixty pairs, of which each is pulled both ways: 180 mounts, and no fewer.
    const orders = Array.from({ length: 120 }, (_, i): Order => ({ letters: i % 2 ? [i, i - 1] : [i, i + 1], preds: [[], [0]] }));
    const search = new BoundSearch({ letterCount: 120, cascade: true, orders, kinds: null }, randomFrom('pairs'), { units: 0 });
    search.run(2_000_000);
    expect(search.best).toBe(180);
  });
});
