import { describe, expect, it } from 'vitest';
import { randomFrom } from '../../../../src/engine/base/random.ts';
import { planPulls } from '../../../../src/engine/pullorder/planner.ts';
import { arrangeSetUps, type Arrangement, changesOnBeds, endOf } from '../../../../src/engine/pullorder/timeline/beds.ts';
import { compareCosts } from '../../../../src/engine/pullorder/timeline/dispatch.ts';
import type { TimelineInput } from '../../../../src/engine/pullorder/timeline/start-state.ts';
import { timelineOf } from '../../../../src/engine/pullorder/timeline/timeline.ts';
import type { PlanSheet, SetUp } from '../../../../src/engine/pullorder/types.ts';

const times = { pullsPerHour: 60, mountMinutes: 10, washUpMinutes: 12, registerMinutes: 5, mixMinutes: 4 };

function sheetsOf(seed: string, count: number, pulls: number, screens: number): PlanSheet[] {
  const random = randomFrom(seed);
  return Array.from({ length: count }, () => {
    const own = Array.from({ length: pulls }, () => {
      const screen = random.int(screens);
      return { screen: `S${screen}`, ink: ['x', 'y', 'z'][screen % 3]!, offset: random.pick(['', '', '1']) };
    });
    const overlaps: [number, number][] = [];
    for (let b = 1; b < pulls; b++) for (let a = 0; a < b; a++) if (random.chance(1, 2)) overlaps.push([a, b]);
    return { pulls: own, overlaps };
  });
}

function inputOf(seed: string, beds: number, count: number, pulls: number, screens: number): TimelineInput {
  const random = randomFrom(`input ${seed}`);
  const hoursPerDay = 2 + random.int(6);
  return {
    problem: { sheets: sheetsOf(seed, count, pulls, screens) },
    times,
    dryMinutesByInk: { x: random.int(60), y: 20 + random.int(200), z: 5 },
    visit: { days: 20, hoursPerDay, beds, ...(random.chance(1, 2) ? { lunch: { fromMinute: 60, minutes: 30 } } : {}) },
  };
}

function arrange(input: TimelineInput, setUps: SetUp[], enough = 0): Arrangement {
  const search = arrangeSetUps(input, setUps, { seed: 's', enough, budgetMs: 1000 });
  for (let next = search.next(); ; next = search.next()) if (next.done) return next.value;
}

/** Every order that keeps touching films in the order of the plan, on every choice of beds, by plain recursion. */
function bestOfAll(input: TimelineInput, setUps: readonly SetUp[], beds: number): number {
  const lay = timelineOf(input);
  const rankOf = (s: number, p: number): number => setUps.findIndex((setUp) => setUp.pulls.some(([a, b]) => a === s && b === p));
  const waits = setUps.map(() => new Set<number>());
  input.problem.sheets.forEach((sheet, s) => {
    for (const [a, b] of sheet.overlaps) {
      const [first, second] = [rankOf(s, a), rankOf(s, b)].sort((x, y) => x - y);
      if (first !== second) waits[second!]!.add(first!);
    }
  });
  let best = Infinity;
  const go = (order: number[], at: number[]): void => {
    if (order.length === setUps.length) {
      best = Math.min(
        best,
        endOf(
          lay(
            order.map((i) => setUps[i]!),
            at,
          ).timeline,
        ),
      );
      return;
    }
    for (let i = 0; i < setUps.length; i++) {
      if (order.includes(i) || [...waits[i]!].some((other) => !order.includes(other))) continue;
      for (let bed = 0; bed < beds; bed++) go([...order, i], [...at, bed]);
    }
  };
  go([], []);
  return best;
}

describe('arrangeSetUps', () => {
  it('should find the soonest end of all on small visits with two beds', () => {
    let tried = 0;
    for (let i = 0; i < 12; i++) {
      const input = inputOf(`small ${i}`, 2, 2, 3, 3);
      const { setUps } = planPulls(input.problem, { budgetMs: 3, seed: i });
      if (setUps.length > 5) continue;
      const { setUps: order, beds } = arrange(input, setUps);
      const end = endOf(timelineOf(input)(order, beds).timeline);
      expect(Math.round(end * 10)).toBe(Math.round(bestOfAll(input, setUps, 2) * 10));
      tried++;
    }
    expect(tried).toBeGreaterThan(6);
  });

  it('should never end later than taking the plan as it is, and keep what touches in order', () => {
    let sooner = 0;
    for (let i = 0; i < 4; i++) {
      const input = inputOf(`large ${i}`, 2, 6, 7, 6);
      const { setUps } = planPulls(input.problem, { budgetMs: 5, seed: i });
      const found = arrange(input, setUps);
      const plain = endOf(timelineOf(input)(setUps).timeline);
      const end = endOf(timelineOf(input)(found.setUps, found.beds).timeline);
      expect(end).toBeLessThanOrEqual(plain + 0.1);
      if (end < plain - 1) sooner++;
      const texts = (list: readonly SetUp[]): string[] => list.map((setUp) => JSON.stringify(setUp)).sort();
      expect(texts(found.setUps)).toEqual(texts(setUps));
      const rank = (list: readonly SetUp[], s: number, p: number): number =>
        list.findIndex((u) => u.pulls.some(([a, b]) => a === s && b === p));
      input.problem.sheets.forEach((sheet, s) => {
        for (const [a, b] of sheet.overlaps) expect(rank(found.setUps, s, a)).toBeLessThan(rank(found.setUps, s, b));
      });
    }
    expect(sooner).toBeGreaterThan(1);
  });

  it('should wait less on one bed without a mount, ink change or change of offset more', () => {
    let sooner = 0;
    for (let i = 0; i < 4; i++) {
      const input = inputOf(`one ${i}`, 1, 4, 6, 5);
      const plan = planPulls(input.problem, { budgetMs: 5, seed: i });
      const found = arrange(input, plan.setUps);
      const [before, after] = [plan, found].map((of) => [of.mounts, of.inkChanges, of.registerMoves]);
      expect(compareCosts(after!, before!)).toBeLessThanOrEqual(0);
      const one = endOf(timelineOf(input)(plan.setUps).timeline);
      const other = endOf(timelineOf(input)(found.setUps, found.beds).timeline);
      if (String(before) === String(after)) expect(other).toBeLessThanOrEqual(one + 0.1);
      if (other < one - 1) sooner++;
    }
    expect(sooner).toBeGreaterThan(0);
  });

  it('should take what it has when no work is left', () => {
    const input = inputOf('late', 2, 5, 6, 5);
    const { setUps } = planPulls(input.problem, { budgetMs: 5, seed: 1 });
    const search = arrangeSetUps(input, setUps, { seed: 's', enough: 0, budgetMs: 0 });
    let steps = 0;
    let next = search.next();
    for (; !next.done; next = search.next()) steps++;
    expect(steps).toBeLessThan(10);
    expect(next.value.setUps).toHaveLength(setUps.length);
  });

  it('should give the same arrangement again', () => {
    const input = inputOf('same', 2, 5, 6, 5);
    const { setUps } = planPulls(input.problem, { budgetMs: 5, seed: 1 });
    expect(arrange(input, setUps)).toEqual(arrange(input, setUps));
  });
});

describe('timelineOf', () => {
  it('should wash a frame that goes to the other bed outside lunch', () => {
    const sheets = Array.from({ length: 16 }, (_, s): PlanSheet => ({
      pulls: [{ screen: 'a', ink: 'x', offset: s < 15 ? '' : '1' }],
      overlaps: [],
    }));
    const visit = { days: 1, hoursPerDay: 8, beds: 2, lunch: { fromMinute: 30, minutes: 30 } };
    const input: TimelineInput = { problem: { sheets }, times, dryMinutesByInk: { x: 0 }, visit, start: { mixed: ['x'] } };
    const frame = { screen: 'a', ink: 'x' };
    const setUps: SetUp[] = [
      { ...frame, offset: '', pulls: sheets.slice(1).map((_, s) => [s, 0]) },
      { ...frame, offset: '1', pulls: [[15, 0]] },
    ];
    // By hand: mount 10 and 15 pulls to 25; of the wash 5 before lunch and 7 after it; mount 10 from 67.
    expect(timelineOf(input)(setUps, [0, 1]).timeline.times[1]!.firstPullMinute).toBe(77);
  });
});

describe('changesOnBeds', () => {
  const setUp = (screen: string, ink: string): SetUp => ({ screen, ink, offset: '', pulls: [] });

  it('should count each bed by itself', () => {
    const setUps = [setUp('a', 'x'), setUp('b', 'y'), setUp('a', 'x'), setUp('b', 'x')];
    expect(changesOnBeds(setUps, [0, 1, 0, 1])).toEqual({ mounts: 2, inkChanges: 3, registerMoves: 0 });
    expect(changesOnBeds(setUps, [0, 0, 0, 0])).toEqual({ mounts: 4, inkChanges: 3, registerMoves: 0 });
  });

  it('should mount a frame again that came back from the other bed, and not the one that is there', () => {
    const setUps = [setUp('a', 'x'), setUp('a', 'x'), setUp('a', 'x')];
    expect(changesOnBeds(setUps, [0, 1, 0]).mounts).toBe(3);
    expect(changesOnBeds(setUps, [0, 0, 0], setUp('a', 'x'))).toEqual({ mounts: 0, inkChanges: 0, registerMoves: 0 });
  });
});
