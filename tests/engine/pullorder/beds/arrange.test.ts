import { describe, expect, it } from 'vitest';
import { randomFrom } from '../../../../src/engine/base/random.ts';
import { arrangeSetUps, type Arrangement } from '../../../../src/engine/pullorder/beds/arrange.ts';
import { planPulls } from '../../../../src/engine/pullorder/planner.ts';
import { changesOnBeds, endOf } from '../../../../src/engine/pullorder/timeline/beds.ts';
import { compareCosts } from '../../../../src/engine/pullorder/timeline/dispatch.ts';
import type { TimelineInput } from '../../../../src/engine/pullorder/timeline/start-state.ts';
import { timelineOf } from '../../../../src/engine/pullorder/timeline/timeline.ts';
import type { PlanSheet, SetUp } from '../../../../src/engine/pullorder/types.ts';
import facts from '../../../published/pullorder/job-shop.json';
import { soonestOnBeds } from './brute-beds.ts';

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

/** Pulls that are not printed once, by a set-up of their kind, after all that must lie under them. */
function orderFaults({ problem }: TimelineInput, setUps: readonly SetUp[]): string[] {
  return problem.sheets.flatMap(({ pulls, overlaps }, s) => {
    const at = pulls.map((pull, p) => {
      const all = setUps.flatMap((each, i) => (each.pulls.some(([a, b]) => a === s && b === p) ? [i] : []));
      const [one] = all;
      const { screen, ink, offset } = setUps[one!]!;
      return all.length === 1 && screen === pull.screen && ink === pull.ink && offset === (pull.offset ?? '') ? one! : NaN;
    });
    return [
      ...at.flatMap((i, p) => (Number.isNaN(i) ? [`${s} ${p}`] : [])),
      ...overlaps.filter(([a, b]) => !(at[a]! < at[b]!)).map(String),
    ];
  });
}

function arrange(input: TimelineInput, setUps: SetUp[], enough = 0, budgetMs = 40): Arrangement {
  const search = arrangeSetUps(input, setUps, { seed: 's', enough, budgetMs });
  for (let next = search.next(); ; next = search.next()) if (next.done) return next.value;
}

function smallVisit(seed: string): TimelineInput {
  const random = randomFrom(`small ${seed}`);
  const [sheets, pulls, screens] = [2 + random.int(2), 2 + random.int(2), 2 + random.int(3)];
  const touching: [number, number][][] = [];
  const made = sheetsOf(seed, sheets, pulls, screens).map((sheet): PlanSheet => {
    touching.push(sheet.overlaps.map(([a, b]) => [a, b]));
    // Some of what touches may change places; the same pull twice may not be printed wet in wet.
    const alike = ([a, b]: readonly [number, number]): boolean => JSON.stringify(sheet.pulls[a]) === JSON.stringify(sheet.pulls[b]);
    return { ...sheet, overlaps: sheet.overlaps.filter((pair) => alike(pair) || random.chance(3, 4)) };
  });
  return {
    problem: { sheets: made },
    touching,
    times: { ...times, pullsPerHour: 30 },
    dryMinutesByInk: { x: random.int(60), y: 20 + random.int(100), z: 5 },
    visit: { days: 1, hoursPerDay: 24, beds: 2 },
  };
}

describe('arrangeSetUps', () => {
  it('should find the soonest end over every grouping, order and bed of small visits', () => {
    let apart = 0;
    for (let i = 0; i < 15; i++) {
      const input = smallVisit(`${i}`);
      const { setUps } = planPulls(input.problem, { budgetMs: 1, seed: i });
      const found = arrange(input, setUps, 0, 30);
      const end = endOf(timelineOf(input)(found.setUps, found.beds).timeline);
      expect(Math.round(end * 10), `visit ${i}`).toBe(Math.round(soonestOnBeds(input) * 10));
      expect(orderFaults(input, found.setUps), `visit ${i}`).toEqual([]);
      if (found.setUps.length > setUps.length) apart++;
    }
    // Where every set-up stays whole, sheets are never printed apart to end sooner.
    expect(apart).toBeGreaterThan(0);
  });

  it('should lay a job shop out in its shortest time, machines as screens and jobs as sheets', () => {
    // Fisher and Thompson's 6 × 6, as tests/published/pullorder/job-shop.json has it: shortest 55.
    const sheets = facts.jobs.map((job): PlanSheet => ({
      pulls: job.map(([machine, minutes]) => ({ screen: `${machine}`, ink: 'x', strokes: minutes! })),
      overlaps: job.slice(1).map((_, step) => [step, step + 1]),
    }));
    const input: TimelineInput = {
      problem: { sheets },
      times: { pullsPerHour: 60, strokeMinutes: 1, mountMinutes: 0, washUpMinutes: 0, registerMinutes: 0, mixMinutes: 0 },
      dryMinutesByInk: { x: 0 },
      visit: { days: 1, hoursPerDay: 24, beds: 6 },
    };
    const { setUps } = planPulls(input.problem, { budgetMs: 5, seed: 1 });
    const found = arrange(input, setUps, facts.shortest, 1000);
    expect(endOf(timelineOf(input)(found.setUps, found.beds).timeline)).toBe(facts.shortest);
    expect(orderFaults(input, found.setUps)).toEqual([]);
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
      expect(orderFaults(input, found.setUps)).toEqual([]);
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
    expect(orderFaults(input, next.value.setUps)).toEqual([]);
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
    expect(changesOnBeds(setUps, [0, 0, 0], [setUp('a', 'x')])).toEqual({ mounts: 0, inkChanges: 0, registerMoves: 0 });
    const there = [null, setUp('a', 'x')];
    expect(changesOnBeds(setUps, [1, 1, 1], there).mounts).toBe(0);
    expect(changesOnBeds(setUps, [0, 0, 0], there).mounts, 'it is on the other bed').toBe(1);
  });
});
