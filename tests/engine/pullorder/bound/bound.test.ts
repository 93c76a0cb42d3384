import { describe, expect, it } from 'vitest';
import { randomFrom } from '../../../../src/engine/base/random.ts';
import { BoundSearch } from '../../../../src/engine/pullorder/bound/bound.ts';
import { coverBound } from '../../../../src/engine/pullorder/bound/cover.ts';
import { compile, unpackCost, wordCost } from '../../../../src/engine/pullorder/model.ts';
import { automataOf } from '../../../../src/engine/pullorder/search/beam.ts';
import { exact } from '../../../../src/engine/pullorder/search/exact.ts';
import { Improver } from '../../../../src/engine/pullorder/search/improve.ts';
import { bruteForce } from '../brute-force.ts';
import { smallProblem } from '../small-problem.ts';

const whole = { below: Infinity, before: -1, after: -1, maxNodes: 1e5 };

describe('BoundSearch', () => {
  it('should never rise above the fewest set-ups and mounts', () => {
    let reached = 0;
    for (let i = 0; i < 300; i++) {
      const problem = smallProblem(randomFrom(`bound ${i}`));
      const truth = bruteForce(problem);
      const { kindModel, screenModel } = compile(problem);
      const setUps = new BoundSearch(kindModel, randomFrom('a'), { units: 0 });
      const mounts = new BoundSearch(screenModel, randomFrom('a'), { units: 0 });
      setUps.run(60_000);
      mounts.run(60_000);
      expect(setUps.best, `case ${i}`).toBeLessThanOrEqual(truth.setUps);
      expect(mounts.best, `case ${i}`).toBeLessThanOrEqual(truth.mounts);
      if (setUps.best === truth.setUps && mounts.best === truth.mounts) reached++;
    }
    // A bound of nothing would be sound too.
    expect(reached).toBeGreaterThan(270);
  });

  it('should never rise above the fewest on more screens, some of them twice a sheet, stopped at any time', () => {
    let reached = 0;
    for (let i = 0; i < 100; i++) {
      const random = randomFrom(`wide ${i}`);
      const screens = 5 + random.int(2);
      const sheets = Array.from({ length: 2 + random.int(2) }, () => {
        const order = random.shuffle(Array.from({ length: screens }, (_, s) => s)).slice(0, 5);
        if (random.chance(1, 3)) order.push(order[random.int(3)]!);
        const pulls = order.map((s) => ({ screen: `S${s}`, ink: `I${random.int(2)}` }));
        const overlaps = pulls.flatMap((_, b) =>
          pulls.slice(0, b).flatMap((_, a): [number, number][] => (random.chance(7, 10) ? [[a, b]] : [])),
        );
        return { pulls, overlaps };
      });
      const truth = bruteForce({ sheets });
      const { kindModel, screenModel } = compile({ sheets });
      for (const [model, least] of [
        [kindModel, truth.setUps],
        [screenModel, truth.mounts],
      ] as const) {
        const search = new BoundSearch(model, randomFrom(`${i}`), { units: 0 });
        for (let slice = 0; slice < 40; slice++) {
          const more = search.run(4000);
          expect(search.best, `case ${i}`).toBeLessThanOrEqual(least);
          if (!more) break;
        }
        if (search.best === least) reached++;
      }
    }
    expect(reached).toBeGreaterThan(165);
  });

  it('should hold when every search in it is cut short', () => {
    for (let i = 0; i < 200; i++) {
      const problem = smallProblem(randomFrom(`short ${i}`));
      const { screenModel, kindModel } = compile(problem);
      const truth = bruteForce(problem);
      for (const maxNodes of [1, 3, 9]) {
        const options = { ...whole, maxNodes, meter: { units: 0 } };
        expect(exact(screenModel, automataOf(screenModel, { units: 0 }), options).lower).toBeLessThanOrEqual(truth.mounts);
        expect(unpackCost(exact(kindModel, automataOf(kindModel, { units: 0 }), options).lower).mounts).toBeLessThanOrEqual(truth.mounts);
      }
    }
  });
});

describe('exact', () => {
  it('should find the same cost with and without pattern sums, and as the brute force', () => {
    for (let i = 0; i < 300; i++) {
      const random = randomFrom(`exact ${i}`);
      const problem = smallProblem(random);
      const { kindModel, screenModel } = compile(problem);
      const truth = bruteForce(problem);
      const letters = random.shuffle(Array.from({ length: screenModel.letterCount }, (_, l) => l));
      const groups = [letters.slice(0, 2), letters.slice(2)];
      for (const model of [kindModel, screenModel]) {
        const plain = exact(model, automataOf(model, { units: 0 }), { ...whole, meter: { units: 0 } });
        const sharp = exact(model, automataOf(model, { units: 0 }), { ...whole, groups, meter: { units: 0 } });
        expect(sharp.lower, `case ${i}`).toBe(plain.lower);
      }
      const { lower, word } = exact(kindModel, automataOf(kindModel, { units: 0 }), { ...whole, groups, meter: { units: 0 } });
      expect(wordCost(kindModel, word!)).toBe(lower);
      const cost = unpackCost(lower);
      expect([cost.mounts, cost.inkChanges, cost.registerMoves, cost.setUps]).toEqual(truth.best);
    }
  });
});

describe('coverBound', () => {
  it('should equal the least total found by counting up', () => {
    for (let i = 0; i < 200; i++) {
      const random = randomFrom(`cover ${i}`);
      const counts = Array.from({ length: 2 + random.int(3) }, () => random.int(3));
      const rows = Array.from({ length: random.int(5) }, () => ({
        letters: random.shuffle([...counts.keys()]).slice(0, 1 + random.int(counts.length)),
        least: random.int(8),
      }));
      // All choices of up to 8 a letter, one after another.
      let least = Infinity;
      for (let code = 0; code < 9 ** counts.length; code++) {
        const choice = counts.map((_, l) => Math.floor(code / 9 ** l) % 9);
        const holds =
          choice.every((n, l) => n >= counts[l]!) && rows.every((row) => row.letters.reduce((sum, l) => sum + choice[l]!, 0) >= row.least);
        if (holds)
          least = Math.min(
            least,
            choice.reduce((a, b) => a + b, 0),
          );
      }
      expect(coverBound(counts, rows, { from: 0, maxNodes: 1e5, meter: { units: 0 } }), `case ${i}`).toBe(least);
      expect(coverBound(counts, rows, { from: 0, maxNodes: 2, meter: { units: 0 } })).toBeLessThanOrEqual(least);
    }
  });
});

describe('Improver', () => {
  it('should keep a word whole and its cost true while it betters it', () => {
    for (let i = 0; i < 30; i++) {
      const random = randomFrom(`improve ${i}`);
      const problem = { sheets: Array.from({ length: 6 }, () => smallProblem(random).sheets[0]!) };
      const { kindModel } = compile(problem);
      // The plainest whole word: each order by itself, one after another.
      const word = kindModel.orders.flatMap((order) => order.letters);
      const improver = new Improver(kindModel, word, random, { units: 0 });
      improver.run(300_000);
      expect(improver.cost).toBe(wordCost(kindModel, improver.word));
      expect(improver.cost).toBeLessThanOrEqual(wordCost(kindModel, word));
      automataOf(kindModel, { units: 0 }).forEach((automaton) => {
        const end = improver.word.reduce((state, letter) => automaton.step(state, letter), 0);
        expect(automaton.chain[end]).toBe(0);
      });
    }
  });
});
