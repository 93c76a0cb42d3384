import { describe, expect, it } from 'vitest';
import { randomFrom } from '../../../../src/engine/base/random.ts';
import { masksOf } from '../../../../src/engine/pullorder/bound/capped/set-masks.ts';
import { askedOfThree, shortestOfThree } from '../../../../src/engine/pullorder/bound/capped/three-needs.ts';
import { NearSets } from '../../../../src/engine/pullorder/bound/near/near-sets.ts';
import { NearWords } from '../../../../src/engine/pullorder/bound/near/near-words.ts';
import type { SetOrder } from '../../../../src/engine/pullorder/bound/sets/set-order.ts';
import { knownLeast } from '../known-least.ts';
import { randomOrders } from '../random-orders.ts';
import { smallProblem } from '../small-problem.ts';

/** Length of a shortest word for the orders on a set of letters, by trying all words level by level. */
function shortest(orders: readonly SetOrder[], set: number): number {
  let level = [orders.map(({ present }) => present & set)];
  const seen = new Set<string>();
  for (let length = 0; ; length++) {
    const next: typeof level = [];
    for (const left of level) {
      if (left.every((bits) => bits === 0)) return length;
      for (let l = 0; l < 31; l++) {
        if (!((set >> l) & 1)) continue;
        const rest = left.map((bits, c) => ((orders[c]!.preds[l]! & bits) === 0 ? bits & ~(1 << l) : bits));
        const key = rest.join();
        if (!seen.has(key)) next.push(rest);
        seen.add(key);
      }
    }
    level = next;
  }
}

describe('NearWords', () => {
  it('should find how long a shortest word is, as trying all words does, and never more when cut short', () => {
    let above = 0;
    for (let i = 0; i < 60; i++) {
      const random = randomFrom(`near ${i}`);
      const letters = 3 + random.int(3);
      const orders = randomOrders(`near orders ${i}`, letters, 14);
      const all = 2 ** letters - 1;
      const present = orders.reduce((bits, order) => bits | order.present, 0);
      const words = new NearWords(orders, letters, { units: 0 });
      const plain = words.leastOf(present);
      const truth = shortest(orders, present);
      for (const units of [0, 20, 200]) {
        words.prove(present, units);
        expect(words.leastOf(present), `case ${i}`).toBeLessThanOrEqual(truth);
      }
      expect(words.prove(present, 1e9)).toBe(true);
      expect(words.leastOf(present), `case ${i}`).toBe(truth);
      // What it took on the way holds for all sets, and smaller ones are found afterwards too.
      for (let any = 1; any <= all; any += 1 + random.int(9)) {
        const set = any & present;
        if (set === 0) continue;
        const own = shortest(orders, set);
        expect(words.leastOf(set), `case ${i}, set ${set}`).toBeLessThanOrEqual(own);
        words.prove(set, 1e9);
        expect(words.leastOf(set), `case ${i}, set ${set}`).toBe(own);
      }
      if (truth > plain) above++;
    }
    expect(above).toBeGreaterThan(30);
  });
});

describe('shortestOfThree', () => {
  it('should tell how long a shortest word is and how many there are, as trying all words does', () => {
    const lengths = new Set<number>();
    for (let i = 0; i < 80; i++) {
      const orders = randomOrders(`three ${i}`, 3, 12);
      if (orders.reduce((bits, { present }) => bits | present, 0) !== 7) continue;
      const least = shortest(orders, 7);
      const { before, whole } = masksOf(orders, 7);
      const finishes = (code: number): boolean => {
        let left = orders.map(({ present }) => present);
        for (let rest = code, t = 0; t < least; t++, rest = Math.floor(rest / 3)) {
          const l = rest % 3;
          left = left.map((bits, c) => ((orders[c]!.preds[l]! & bits) === 0 ? bits & ~(1 << l) : bits));
        }
        return left.every((bits) => bits === 0);
      };
      const words = [...Array(3 ** least).keys()].filter(finishes).length;
      expect(shortestOfThree(askedOfThree({ letters: whole.length, before }, 0, 1, 2), 7), `case ${i}`).toEqual({ least, words });
      lengths.add(least);
    }
    expect(lengths.size).toBeGreaterThan(2);
  });
});

describe('NearSets', () => {
  it('should never rise above the fewest set-ups and mounts that the brute force finds, and mostly reach them', () => {
    let reached = 0;
    for (let i = 0; i < 50; i++) {
      const random = randomFrom(`near sets ${i}`);
      for (const [model, least] of knownLeast(smallProblem(random))) {
        const meter = { units: 0 };
        const letters = [...new Set(model.orders.flatMap((order) => order.letters))];
        if (letters.length === 0) continue;
        const cut = random.int(2) === 0 ? letters.length : 1 + random.int(letters.length);
        const notes: number[] = [];
        const split = (): number[][] => [letters.slice(0, cut), letters.slice(cut)].filter((part) => part.length > 0);
        const near = new NearSets(model, { split, note: (_, own) => void notes.push(own) }, meter);
        let steps = 0;
        for (const work = near.work(); steps < 100; steps++) {
          work.next();
          expect(near.best, `case ${i}`).toBeLessThanOrEqual(least);
        }
        expect(Math.max(0, ...notes)).toBeLessThanOrEqual(least);
        if (near.best === least) reached++;
      }
    }
    expect(reached).toBeGreaterThan(50);
  });
});
