import { describe, expect, it } from 'vitest';
import { randomFrom } from '../../../../src/engine/base/random.ts';
import { LetterGroups } from '../../../../src/engine/pullorder/bound/letter-groups.ts';
import { FourNeeds } from '../../../../src/engine/pullorder/bound/sets/four-needs.ts';
import { LetterSets } from '../../../../src/engine/pullorder/bound/sets/letter-sets.ts';
import { smallOrders } from '../../../../src/engine/pullorder/bound/sets/small-orders.ts';
import { compile } from '../../../../src/engine/pullorder/model.ts';
import { automataOf } from '../../../../src/engine/pullorder/search/beam.ts';
import { exact } from '../../../../src/engine/pullorder/search/exact.ts';
import type { PlanProblem } from '../../../../src/engine/pullorder/types.ts';
import { bruteForce } from '../brute-force.ts';

/** Every sheet goes through each screen at most once, so that sets of letters are solved exactly. */
function onceProblem(seed: string, screens: number, sheets: number, density: number): PlanProblem {
  const random = randomFrom(seed);
  return {
    sheets: Array.from({ length: sheets }, () => {
      const pulls = random.shuffle(Array.from({ length: screens }, (_, i) => ({ screen: `S${i}`, ink: `I${i}` })));
      const overlaps: [number, number][] = [];
      for (let b = 1; b < screens; b++) for (let a = 0; a < b; a++) if (random.chance(density, 10)) overlaps.push([a, b]);
      return { pulls, overlaps };
    }),
  };
}

/** The sheets with the pulls on some screens only; what lies between two of them still orders them. */
function struckDown(problem: PlanProblem, screens: ReadonlySet<string>): PlanProblem {
  return {
    sheets: problem.sheets.map(({ pulls, overlaps }) => {
      const before = pulls.map(() => new Set<number>());
      for (let b = 0; b < pulls.length; b++) {
        for (const [a, to] of overlaps) if (to === b) [a, ...before[a]!].forEach((x) => before[b]!.add(x));
      }
      const kept = pulls.flatMap((p, i) => (screens.has(p.screen) ? [i] : []));
      return {
        pulls: kept.map((i) => pulls[i]!),
        overlaps: kept.flatMap((b, j) => kept.flatMap((a, i): [number, number][] => (before[b]!.has(a) ? [[i, j]] : []))),
      };
    }),
  };
}

describe('smallOrders', () => {
  it('should number all partial orders on labelled letters', () => {
    // Labelled partial orders: 1, 1, 3, 19, 219 (OEIS A001035, from memory), summed over all sets of letters.
    expect([1, 2, 3, 4].map((k) => smallOrders(k).count)).toEqual([2, 6, 32, 318]);
  });
});

describe('LetterSets', () => {
  it('should give the fewest set-ups of small sets as the brute force counts them', () => {
    for (let i = 0; i < 300; i++) {
      const random = randomFrom(`sets ${i}`);
      const size = 1 + random.int(6);
      const sheets = size > 4 ? 3 : 1 + random.int(5);
      const problem = onceProblem(`sets ${i}`, 6, sheets, 3 + random.int(8));
      const { screenModel, names } = compile(problem);
      const letters = random.shuffle(Array.from({ length: 6 }, (_, l) => l)).slice(0, size);
      // One ink a screen, so kinds and screens are numbered alike.
      const part = struckDown(problem, new Set(letters.map((l) => names[l]!.screen)));
      const truth = bruteForce(part).setUps;
      const sets = new LetterSets(screenModel, { units: 0 });
      expect(sets.least(letters, 1e6), `case ${i}`).toEqual({ least: truth, finished: true });
      for (const nodes of [1, 5, 20]) expect(sets.least(letters, nodes).least, `case ${i}, ${nodes}`).toBeLessThanOrEqual(truth);
    }
  });

  it('should need 3, 7 and 12 set-ups for all orders of 2, 3 and 4 letters', () => {
    // Shortest words with all permutations as subsequences (Newey 1973, from memory); 5 letters need 19.
    const all = (n: number): number[][] =>
      n === 0 ? [[]] : all(n - 1).flatMap((w) => Array.from({ length: n }, (_, i) => [...w.slice(0, i), n - 1, ...w.slice(i)]));
    for (const [n, shortest] of [
      [2, 3],
      [3, 7],
      [4, 12],
    ] as const) {
      const sheets = all(n).map((order) => ({
        pulls: order.map((l) => ({ screen: `${l}`, ink: 'i' })),
        overlaps: order.flatMap((_, b) => order.slice(0, b).map((_, a): [number, number] => [a, b])),
      }));
      const { screenModel } = compile({ sheets });
      expect(new LetterSets(screenModel, { units: 0 }).least([...Array(n).keys()], 1e5).least).toBe(shortest);
    }
  });
});

describe('SetSearch', () => {
  it('should give of seven and eight screens what A* on whole sheets gives, and less only when cut short', () => {
    let cut = 0;
    for (let i = 0; i < 12; i++) {
      const { screenModel } = compile(onceProblem(`seven ${i}`, 7 + (i % 2), 4 + (i % 3), 5 + (i % 4)));
      const meter = { units: 0 };
      const truth = exact(screenModel, automataOf(screenModel, meter), { below: Infinity, before: -1, after: -1, maxNodes: 1e6, meter });
      const sets = new LetterSets(screenModel, { units: 0 });
      const letters = [...Array(screenModel.letterCount).keys()];
      expect(sets.least(letters, 1e6), `case ${i}`).toEqual({ least: truth.lower, finished: true });
      for (const states of [1, 3, 10]) {
        const { least, finished } = sets.least(letters, states);
        expect(least).toBeLessThanOrEqual(truth.lower);
        if (!finished) cut++;
      }
    }
    expect(cut).toBeGreaterThan(12);
  });
});

describe('FourNeeds', () => {
  it('should tell how much sets of orders need, and what shortest words begin with, as trying letter by letter does', () => {
    const { count, next, words } = smallOrders(4);
    const needs = new FourNeeds({ units: 0 });
    const random = randomFrom('fours');
    const tried = new Map<string, number>();
    const tryAll = (ids: number[]): number => {
      const left = [...new Set(ids)].filter((id) => id > 0).sort((a, b) => a - b);
      if (left.length === 0) return 0;
      const key = left.join();
      if (!tried.has(key)) {
        // Letters that find no work lead nowhere.
        const ways = [0, 1, 2, 3].map((l) => left.map((id) => next[id * 4 + l]!)).filter((to) => to.some((id, j) => id !== left[j]));
        tried.set(key, 1 + Math.min(...ways.map(tryAll)));
      }
      return tried.get(key)!;
    };
    for (let i = 0; i < 120; i++) {
      const ids = Array.from({ length: 1 + random.int(6) }, () => random.int(count));
      const set = new Int32Array(words);
      for (const id of ids) set[id >> 5]! |= 1 << (id & 31);
      const least = tryAll(ids);
      const begin = [0, 1, 2, 3].filter((l) => least > 0 && tryAll(ids.map((id) => next[id * 4 + l]!)) === least - 1);
      const packed = (least << 4) | begin.reduce((bits, l) => bits | (1 << l), 0);
      if (i % 2) expect(needs.either(set, least) >> 4).toBe(least);
      else if (least > 0) expect(needs.either(set, least - 1) >> 4).toBe(least);
      expect(needs.of(set, 0), `case ${i}`).toBe(packed);
    }
  });
});

describe('LetterGroups', () => {
  it('should split into even groups that hold each letter once', () => {
    const letters = [3, 5, 8, 9, 11, 12, 20];
    const groups = new LetterGroups(letters, randomFrom('groups'), { units: 0 });
    letters.forEach((_, i) => letters.slice(0, i).forEach((_, j) => groups.setPair(i, j, i % 2 === j % 2 ? 3 : 2)));
    for (const size of [1, 2, 3, 4, 7, 9]) {
      const split = groups.split(size);
      expect(split.flat().sort((a, b) => a - b)).toEqual(letters);
      const sizes = split.map((g) => g.length);
      expect(Math.max(...sizes)).toBeLessThanOrEqual(size);
      expect(Math.max(...sizes) - Math.min(...sizes)).toBeLessThanOrEqual(1);
    }
  });

  it('should put together letters that need more together, and offer those not given enough', () => {
    const letters = [0, 1, 2, 3, 4, 5, 6, 7];
    const groups = new LetterGroups(letters, randomFrom('clash'), { units: 0 });
    letters.forEach((i) => letters.slice(0, i).forEach((j) => groups.setPair(i, j, i < 4 === j < 4 ? 3 : 2)));
    expect(
      groups
        .split(4)
        .map((g) => g.sort((a, b) => a - b))
        .sort((a, b) => a[0]! - b[0]!),
    ).toEqual([
      [0, 1, 2, 3],
      [4, 5, 6, 7],
    ]);
    const given = [2, 2, 2, 2, 1, 1, 1, 1];
    expect(groups.wanting(4, given, 1).sort((a, b) => a - b)).toEqual([4, 5, 6, 7]);
  });
});
