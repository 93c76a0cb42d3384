import { describe, expect, it } from 'vitest';
import { randomFrom } from '../../../../src/engine/base/random.ts';
import { masksOf } from '../../../../src/engine/pullorder/bound/capped/set-masks.ts';
import { askedOfThree, shortestOfThree } from '../../../../src/engine/pullorder/bound/capped/three-needs.ts';
import { NearWords } from '../../../../src/engine/pullorder/bound/near/near-words.ts';
import { randomOrders } from '../random-orders.ts';
import { shortest } from '../shortest.ts';

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
