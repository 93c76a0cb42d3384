import { describe, expect, it } from 'vitest';
import { bitCount } from '../../../../src/engine/base/bits.ts';
import { randomFrom } from '../../../../src/engine/base/random.ts';
import { masksOf } from '../../../../src/engine/pullorder/bound/capped/set-masks.ts';
import { PinnedSet } from '../../../../src/engine/pullorder/bound/pinned/pinned-set.ts';
import { PinnedSets } from '../../../../src/engine/pullorder/bound/pinned/pinned-sets.ts';
import { WordPoints } from '../../../../src/engine/pullorder/bound/pinned/word-points.ts';
import type { SetOrder } from '../../../../src/engine/pullorder/bound/sets/set-order.ts';
import { compile, type Model } from '../../../../src/engine/pullorder/model.ts';
import { planPulls } from '../../../../src/engine/pullorder/planner.ts';
import { knownLeast } from '../known-least.ts';
import { randomOrders } from '../random-orders.ts';
import { shortest } from '../shortest.ts';
import { smallProblem } from '../small-problem.ts';

/** Orders with closed relations as a model. */
function modelOf(orders: readonly SetOrder[], letterCount: number): Model {
  return {
    letterCount,
    cascade: false,
    kinds: null,
    orders: orders.map(({ present, preds }) => {
      const letters = [...Array(letterCount).keys()].filter((l) => (present >> l) & 1);
      letters.sort((a, b) => bitCount(preds[a]!) - bitCount(preds[b]!));
      return { letters, preds: letters.map((l) => letters.flatMap((a, q) => ((preds[l]! >> a) & 1 ? [q] : []))) };
    }),
  };
}

/** Letters in cores, each in one, at random. */
function cores(letters: readonly number[], seed: string): number[][] {
  const random = randomFrom(seed);
  const own: number[][] = Array.from({ length: 1 + random.int(3) }, () => []);
  letters.forEach((l) => own[random.int(own.length)]!.push(l));
  return own.filter((core) => core.length > 0);
}

describe('WordPoints', () => {
  it('should tell how often a letter must be put in at least, as all ways to put it in do', () => {
    const found = new Set<number>();
    for (let i = 0; i < 100; i++) {
      const random = randomFrom(`points ${i}`);
      const orders = randomOrders(`points orders ${i}`, 4, 6);
      if (orders.reduce((bits, { present }) => bits | present, 0) !== 15) continue;
      const finishes = (word: readonly number[], set: number): boolean => {
        let left = orders.map(({ present }) => present & set);
        for (const l of word) left = left.map((bits, c) => ((orders[c]!.preds[l]! & bits) === 0 ? bits & ~(1 << l) : bits));
        return left.every((bits) => bits === 0);
      };
      const word: number[] = [];
      while (!finishes(word, 7)) word.push(random.int(3));
      if (word.length > 9) continue;
      const points = new WordPoints(masksOf(orders, 15));
      points.read(Uint8Array.from(word), 0, word.length, Int32Array.of(0, 1, 2));
      let fewest = word.length + 1;
      for (let gaps = 1; gaps < 2 ** (word.length + 1); gaps++) {
        const put = [...word, -1].flatMap((l, g) => [...((gaps >> g) & 1 ? [3] : []), ...(l < 0 ? [] : [l])]);
        if (finishes(put, 15)) fewest = Math.min(fewest, put.length - word.length);
      }
      expect(points.of(3), `case ${i}`).toBe(fewest);
      found.add(fewest);
    }
    expect(found.size).toBeGreaterThan(2);
  });
});

describe('PinnedSet', () => {
  it('should find how long a shortest word is, as trying all words does, and never more on the way', () => {
    let above = 0;
    for (let i = 0; i < 210; i++) {
      const size = 3 + (i % 3);
      const orders = randomOrders(`pinned ${i}`, size, 14);
      const present = orders.reduce((bits, order) => bits | order.present, 0);
      const letters = [...Array(size).keys()].filter((l) => (present >> l) & 1);
      const truth = shortest(orders, present);
      const set = new PinnedSet(modelOf(orders, size), cores(letters, `cores ${i}`), { units: 0 });
      let first = 0;
      for (const _ of set.work(1 + (i % 2))) {
        first ||= set.least;
        expect(set.least, `case ${i}`).toBeLessThanOrEqual(truth);
      }
      expect(set.ended).toBe(true);
      expect(set.least, `case ${i}`).toBe(truth);
      if (first < truth) above++;
    }
    expect(above).toBeGreaterThan(50);
  });
});

describe('PinnedSets', () => {
  it('should never rise above the fewest set-ups and mounts that the brute force finds, and mostly reach them', () => {
    let reached = 0;
    for (let i = 0; i < 40; i++) {
      for (const [model, least] of knownLeast(smallProblem(randomFrom(`pinned sets ${i}`)))) {
        const letters = [...new Set(model.orders.flatMap((order) => order.letters))];
        if (letters.length === 0) continue;
        const sets = new PinnedSets(model, { letters, split: (_, own) => cores(own, `split ${i}`), least: () => 0 }, { units: 0 });
        for (const _ of sets.work()) expect(sets.best, `case ${i}`).toBeLessThanOrEqual(least);
        if (sets.best === least) reached++;
      }
    }
    expect(reached).toBeGreaterThan(50);
  });

  it('should stay below all words that are found where no brute force reaches, in sets that add up', () => {
    const random = randomFrom('pinned many');
    const all = [...Array(40).keys()];
    const sheets = Array.from({ length: 12 }, () => {
      const screens = random.shuffle(all).slice(0, 16);
      const overlaps = screens.flatMap((_, b) =>
        screens.slice(0, b).flatMap((__, a): [number, number][] => (random.chance(2, 5) ? [[a, b]] : [])),
      );
      return { pulls: screens.map((s) => ({ screen: `S${s}`, ink: 'I' })), overlaps };
    });
    const { screenModel } = compile({ sheets });
    const split = (size: number, own: readonly number[]): number[][] =>
      Array.from({ length: Math.ceil(own.length / size) }, (_, g) => own.filter((__, i) => i % Math.ceil(own.length / size) === g));
    const meter = { units: 0 };
    const sets = new PinnedSets(screenModel, { letters: all, split, least: () => 0 }, meter);
    for (const steps = sets.work(); meter.units < 300_000 && !steps.next().done;);
    expect(sets.best).toBeGreaterThan(44);
    expect(sets.best).toBeLessThanOrEqual(planPulls({ sheets }, { budgetMs: 30, seed: 1 }).mounts);
  });
});
