import { describe, expect, it } from 'vitest';
import { randomFrom } from '../../../../src/engine/base/random.ts';
import { BoundSearch } from '../../../../src/engine/pullorder/bound/bound.ts';
import { SubsetSums } from '../../../../src/engine/pullorder/bound/subset-sums.ts';
import { compile } from '../../../../src/engine/pullorder/model.ts';
import { automataOf } from '../../../../src/engine/pullorder/search/beam.ts';
import { exact } from '../../../../src/engine/pullorder/search/exact.ts';
import { inTwoBlocks, knownLeast } from '../known-least.ts';
import { smallProblem } from '../small-problem.ts';

const worked = (steps: Generator<void, void>): void => [...steps].forEach(() => {});

function summed(counts: number[], rows: { letters: number[]; least: number }[]): number {
  const sums = new SubsetSums([...counts.keys()], counts, { units: 0 });
  for (const { letters, least } of rows) sums.note(letters, least);
  worked(sums.sum());
  return sums.total;
}

describe('SubsetSums', () => {
  it('should never rise above the least whole total found by counting up, and mostly reach it', () => {
    let reached = 0;
    for (let i = 0; i < 300; i++) {
      const random = randomFrom(`sums ${i}`);
      const counts = Array.from({ length: 2 + random.int(3) }, () => random.int(3));
      const rows = Array.from({ length: random.int(7) }, () => ({
        letters: random.shuffle([...counts.keys()]).slice(0, 1 + random.int(counts.length)),
        least: random.int(8),
      }));
      let truth = Infinity;
      for (let code = 0; code < 9 ** counts.length; code++) {
        const choice = counts.map((_, l) => Math.floor(code / 9 ** l) % 9);
        if (choice.some((n, l) => n < counts[l]!)) continue;
        if (rows.some(({ letters, least }) => letters.reduce((sum, l) => sum + choice[l]!, 0) < least)) continue;
        truth = Math.min(
          truth,
          choice.reduce((a, b) => a + b, 0),
        );
      }
      const least = summed(counts, rows);
      expect(least, `case ${i}`).toBeLessThanOrEqual(truth);
      if (least === truth) reached++;
    }
    expect(reached).toBeGreaterThan(240);
  });

  it('should round at every size, where fractions show seven thirds a letter', () => {
    // Three letters in all six orders need 7 (Newey 1973, from memory): at most two of any letters come but twice.
    for (const n of [3, 5, 9, 14]) {
      const places = [...Array(n).keys()];
      const rows = places.flatMap((a) =>
        places.slice(0, a).flatMap((b) => places.slice(0, b).map((c) => ({ letters: [a, b, c], least: 7 }))),
      );
      expect(summed(new Array<number>(n).fill(1), rows)).toBe(3 * n - 2);
    }
  });
});

describe('SumBlocks', () => {
  it('should never rise above the fewest set-ups and mounts that the brute force finds', () => {
    let reached = 0;
    for (let i = 0; i < 300; i++) {
      const random = randomFrom(`blocks ${i}`);
      const problem = smallProblem(random);
      for (const [model, least] of knownLeast(problem)) {
        const blocks = inTwoBlocks(model, random);
        for (let t = 0; t < 3; t++) worked(blocks.raise());
        expect(blocks.total, `case ${i}`).toBeLessThanOrEqual(least);
        if (blocks.total === least) reached++;
      }
    }
    expect(reached).toBeGreaterThan(400);
  });

  it('should keep the bound of more than a few sheets below a fewest number of mounts', () => {
    let sum = 0;
    let gap = 0;
    for (let i = 0; i < 40; i++) {
      const random = randomFrom(`many ${i}`);
      const screens = 5 + random.int(2);
      const sheets = Array.from({ length: 7 + random.int(3) }, () => {
        const order = random.shuffle([...Array(screens).keys()]).slice(0, 4);
        if (random.chance(1, 4)) order.push(order[random.int(3)]!);
        const overlaps = order.flatMap((_, b) =>
          order.slice(0, b).flatMap((_, a): [number, number][] => (random.chance(7, 10) ? [[a, b]] : [])),
        );
        return { pulls: order.map((s) => ({ screen: `S${s}`, ink: 'i' })), overlaps };
      });
      const { screenModel } = compile({ sheets });
      const meter = { units: 0 };
      const truth = exact(screenModel, automataOf(screenModel, meter), { below: Infinity, before: -1, after: -1, maxNodes: 1e6, meter });
      expect(truth.finished).toBe(true);
      const search = new BoundSearch(screenModel, randomFrom(`${i}`), { units: 0 });
      for (let slice = 0; slice < 20; slice++) {
        const more = search.run(20_000);
        expect(search.best, `case ${i}`).toBeLessThanOrEqual(truth.lower);
        if (!more) break;
      }
      sum += truth.lower;
      gap += truth.lower - search.best;
    }
    expect(gap).toBeLessThan(0.05 * sum);
  });
});
