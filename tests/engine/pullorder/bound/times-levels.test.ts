import { describe, expect, it } from 'vitest';
import { randomFrom } from '../../../../src/engine/base/random.ts';
import { RefutedSets } from '../../../../src/engine/pullorder/bound/capped/refuted-sets.ts';
import { TimesLevels } from '../../../../src/engine/pullorder/bound/capped/times-levels.ts';
import { CoverRows } from '../../../../src/engine/pullorder/bound/cover-rows.ts';
import { OnceSearch } from '../../../../src/engine/pullorder/bound/once/once-search.ts';
import { compile, type Model } from '../../../../src/engine/pullorder/model.ts';
import { automataOf } from '../../../../src/engine/pullorder/search/beam.ts';
import { exact } from '../../../../src/engine/pullorder/search/exact.ts';
import { knownLeast } from '../known-least.ts';
import { smallProblem } from '../small-problem.ts';

/** Levels over letters in up to two blocks, on top of what circles show of first and second times; at each step. */
function* stacked(model: Model, middle: number): Generator<number, void> {
  const meter = { units: 0 };
  const rows = new CoverRows(model, meter);
  const { letters } = rows;
  const single = letters.filter((l) => rows.sumOf([l]) === 1);
  const once = new OnceSearch(model.orders, single, meter);
  for (const steps = once.work(); !steps.next().done;);
  const counts = Array.from({ length: model.letterCount }, (_, l) => rows.sumOf([l]));
  const split = [letters.slice(0, middle), letters.slice(middle)];
  const levels = new TimesLevels(model, { split, counts, needOf: (three) => rows.few(three) }, meter);
  const below = 2 * letters.length - once.most;
  yield below + levels.beyondTwo;
  for (const steps = levels.work(); !steps.next().done && meter.units < 3e6;) yield below + levels.beyondTwo;
}

describe('RefutedSets', () => {
  it('should give a set of a size that holds none which was ruled out, as long as trying all finds one', () => {
    const answers = { some: 0, none: 0 };
    for (let i = 0; i < 200; i++) {
      const random = randomFrom(`refuted ${i}`);
      const letters = 1 + random.int(8);
      const table = new RefutedSets(letters);
      const ruledOut: number[] = [];
      for (let size = letters; size > 0; size--) {
        for (;;) {
          const set = table.next(size);
          const open = [...Array(2 ** letters).keys()].filter(
            (bits) =>
              [...Array(letters).keys()].filter((l) => (bits >> l) & 1).length === size && !ruledOut.some((out) => (out & ~bits) === 0),
          );
          if (set < 0) expect(open).toEqual([]);
          else expect(open).toContain(set);
          answers[set < 0 ? 'none' : 'some']++;
          if (set < 0) break;
          // Some part of it, as a search would show.
          let part = set;
          for (let l = 0; l < letters; l++) if (random.chance(1, 3) && (part & ~(1 << l)) !== 0) part &= ~(1 << l);
          table.note(part);
          ruledOut.push(part);
        }
      }
    }
    expect(answers.some).toBeGreaterThan(400);
    expect(answers.none).toBeGreaterThan(400);
  });
});

describe('TimesLevels', () => {
  it('should never rise above the fewest set-ups and mounts that the brute force finds, stopped at any time', () => {
    for (let i = 0; i < 100; i++) {
      const random = randomFrom(`levels ${i}`);
      for (const [model, least] of knownLeast(smallProblem(random)))
        for (const bound of stacked(model, random.int(4))) expect(bound, `case ${i}`).toBeLessThanOrEqual(least);
    }
  });

  it('should never rise above the fewest mounts of shuffled sheets, and mostly rise', () => {
    let risen = 0;
    let sum = 0;
    let short = 0;
    for (let i = 0; i < 40; i++) {
      const random = randomFrom(`shuffled ${i}`);
      const screens = 5 + random.int(2);
      const sheets = Array.from({ length: 6 + random.int(4) }, () => {
        const order = random.shuffle([...Array(screens).keys()]).slice(0, 5);
        if (random.chance(1, 4)) order.push(order[random.int(3)]!);
        const overlaps = order.flatMap((_, b) =>
          order.slice(0, b).flatMap((_, a): [number, number][] => (random.chance(9, 10) ? [[a, b]] : [])),
        );
        return { pulls: order.map((s) => ({ screen: `S${s}`, ink: 'i' })), overlaps };
      });
      const { screenModel } = compile({ sheets });
      const meter = { units: 0 };
      const truth = exact(screenModel, automataOf(screenModel, meter), { below: Infinity, before: -1, after: -1, maxNodes: 1e6, meter });
      const bounds = [...stacked(screenModel, i % 3 === 0 ? 3 : screens)];
      expect(Math.max(...bounds), `case ${i}`).toBeLessThanOrEqual(truth.lower);
      if (bounds.at(-1)! > bounds[0]!) risen++;
      sum += truth.lower;
      short += truth.lower - bounds.at(-1)!;
    }
    expect(risen).toBeGreaterThan(20);
    expect(short).toBeLessThan(0.2 * sum);
  });
});
