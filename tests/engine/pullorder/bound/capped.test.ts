import { describe, expect, it } from 'vitest';
import { randomFrom } from '../../../../src/engine/base/random.ts';
import { CapCuts } from '../../../../src/engine/pullorder/bound/capped/cap-cuts.ts';
import { CappedSearch } from '../../../../src/engine/pullorder/bound/capped/capped-search.ts';
import { SetCounts } from '../../../../src/engine/pullorder/bound/capped/set-counts.ts';
import { CoverRows } from '../../../../src/engine/pullorder/bound/cover-rows.ts';
import type { SetOrder } from '../../../../src/engine/pullorder/bound/sets/set-order.ts';
import { SubsetSums } from '../../../../src/engine/pullorder/bound/subset-sums.ts';
import { SumBlocks } from '../../../../src/engine/pullorder/bound/sum-blocks.ts';
import { compile } from '../../../../src/engine/pullorder/model.ts';
import { automataOf } from '../../../../src/engine/pullorder/search/beam.ts';
import { exact } from '../../../../src/engine/pullorder/search/exact.ts';
import type { PlanProblem } from '../../../../src/engine/pullorder/types.ts';
import { inTwoBlocks, knownLeast } from '../known-least.ts';
import { randomOrders } from '../random-orders.ts';
import { smallProblem } from '../small-problem.ts';

const long = process.env['LONG'] ? 10 : 1;
const worked = (steps: Generator<void, unknown>): void => {
  while (!steps.next().done);
};

/** Whether a word does, by trying all words letter by letter. */
function someWord(orders: readonly SetOrder[], left: readonly number[], times: readonly number[], seen: Set<string>): boolean {
  if (left.every((bits) => bits === 0)) return true;
  const key = `${left.join()} ${times.join()}`;
  if (seen.has(key)) return false;
  seen.add(key);
  return times.some((own, l) => {
    if (own === 0) return false;
    const rest = left.map((bits, c) => ((orders[c]!.preds[l]! & bits) === 0 ? bits & ~(1 << l) : bits));
    return someWord(
      orders,
      rest,
      times.map((n, m) => (m === l ? n - 1 : n)),
      seen,
    );
  });
}

describe('CappedSearch', () => {
  it('should find whether some word has each letter so many times only, as trying all words does', () => {
    const meter = { units: 0 };
    const counts = new SetCounts(4, meter);
    const answers = { true: 0, false: 0 };
    for (let i = 0; i < 150 * long; i++) {
      const random = randomFrom(`times ${i}`);
      const letters = 2 + random.int(4);
      const orders = randomOrders(`orders ${i}`, letters, 8);
      const most = 1 + random.int(3);
      const times = Array.from({ length: letters }, () => Math.max(1, most - random.int(2)));
      const truth = someWord(
        orders,
        orders.map(({ present }) => present),
        times,
        new Set(),
      );
      // With sets of four from the first step on, and with sets of three only as far as it goes.
      for (const onThrees of [0, 1e9]) {
        const search = new CappedSearch(orders, 2 ** letters - 1, counts, meter);
        expect(search.fits(times, 1e9, onThrees), `case ${i}`).toBe(truth);
        expect([truth, null]).toContain(search.fits(times, 5, onThrees));
      }
      answers[`${truth}`]++;
    }
    expect(answers.true).toBeGreaterThan(35 * long);
    expect(answers.false).toBeGreaterThan(35 * long);
  });
});

describe('CappedSearch of more sheets than it looks at', () => {
  it('should rule out no times that some word has, and leave open what it cannot tell', () => {
    const counts = new SetCounts(4, { units: 0 });
    const answers = { false: 0, null: 0 };
    for (let i = 0; i < 40; i++) {
      // Three letters three times each do for whatever is asked of three.
      const letters = i % 2 ? 4 : 3;
      const orders = Array.from({ length: 12 }, (_, t) => randomOrders(`many ${i} ${t}`, letters, 8)).flat();
      if (orders.length <= 32) continue;
      const times = new Array<number>(letters).fill(i % 2 ? 2 : 3);
      const found = new CappedSearch(orders, 2 ** letters - 1, counts, { units: 0 }).fits(times, 1e9);
      expect(found).not.toBe(true);
      const left = orders.map(({ present }) => present);
      if (found === false) expect(someWord(orders, left, times, new Set()), `case ${i}`).toBe(false);
      answers[`${found as false | null}`]++;
    }
    expect(Math.min(answers.false, answers.null)).toBeGreaterThan(3);
  });
});

describe('SubsetSums', () => {
  it('should never rise above the least whole total with sets that do not fit, and mostly reach it', () => {
    let reached = 0;
    for (let i = 0; i < 300; i++) {
      const random = randomFrom(`caps ${i}`);
      const counts = Array.from({ length: 3 + random.int(3) }, () => 1 + random.int(2));
      const letters = [...counts.keys()];
      const misfits = Array.from({ length: random.int(7) }, () => ({
        set: random.shuffle(letters).slice(0, 2 + random.int(2)),
        cap: 1 + random.int(3),
      }));
      let truth = Infinity;
      for (let code = 0; code < 5 ** counts.length; code++) {
        const choice = letters.map((l) => Math.floor(code / 5 ** l) % 5);
        if (choice.some((n, l) => n < counts[l]!) || misfits.some(({ set, cap }) => set.every((l) => choice[l]! <= cap))) continue;
        truth = Math.min(
          truth,
          choice.reduce((a, b) => a + b, 0),
        );
      }
      const sums = new SubsetSums(letters, counts, { units: 0 });
      for (const { set, cap } of misfits)
        sums.noteCap(
          set.reduce((bits, l) => bits | (1 << l), 0),
          cap,
        );
      worked(sums.sum());
      expect(sums.total, `case ${i}`).toBeLessThanOrEqual(truth);
      if (sums.total === truth) reached++;
    }
    expect(reached).toBeGreaterThan(200);
  });
});

/** Sheets that go through four of five screens, sometimes through one twice. */
function clashing(seed: string): PlanProblem {
  const random = randomFrom(seed);
  return {
    sheets: Array.from({ length: 4 + random.int(4) }, () => {
      const order = random.shuffle([0, 1, 2, 3, 4]).slice(0, 4);
      if (random.chance(1, 4)) order.push(order[random.int(3)]!);
      const overlaps = order.flatMap((_, b) =>
        order.slice(0, b).flatMap((_, a): [number, number][] => (random.chance(8, 10) ? [[a, b]] : [])),
      );
      return { pulls: order.map((s) => ({ screen: `S${s}`, ink: 'i' })), overlaps };
    }),
  };
}

describe('CapCuts', () => {
  it('should never rise above the fewest set-ups and mounts, stopped at any time, and mostly rise', () => {
    let raised = 0;
    for (let i = 0; i < 80 * long; i++) {
      const { kindModel, screenModel } = compile(clashing(`cuts ${i}`));
      for (const model of [{ ...kindModel, kinds: null }, screenModel]) {
        const meter = { units: 0 };
        const truth = exact(model, automataOf(model, meter), { below: Infinity, before: -1, after: -1, maxNodes: 1e6, meter });
        const rows = new CoverRows(model, meter);
        const blocks = new SumBlocks([rows.letters], rows);
        // What pairs and triples show is left for the cuts to find in every second case.
        if (i % 2 === 0) worked(blocks.raise());
        else for (const block of blocks.blocks) worked(block.sum());
        const before = blocks.total;
        const cuts = new CapCuts(model, blocks.blocks, meter).work();
        do expect(blocks.total, `case ${i}`).toBeLessThanOrEqual(truth.lower);
        while (!cuts.next().done);
        expect(blocks.total, `case ${i}`).toBeLessThanOrEqual(truth.lower);
        if (blocks.total > before) raised++;
      }
    }
    expect(raised).toBeGreaterThan(60 * long);
  });

  it('should never rise above what the brute force finds, with letters in two blocks', () => {
    for (let i = 0; i < 100 * long; i++) {
      const random = randomFrom(`split ${i}`);
      const problem = smallProblem(random);
      for (const [model, least] of knownLeast(problem)) {
        const blocks = inTwoBlocks(model, random);
        for (const block of blocks.blocks) worked(block.sum());
        worked(new CapCuts(model, blocks.blocks, { units: 0 }).work());
        expect(blocks.total, `case ${i}`).toBeLessThanOrEqual(least);
      }
    }
  });
});
