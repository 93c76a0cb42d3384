import { describe, expect, it } from 'vitest';
import { randomFrom, type Random } from '../../../../src/engine/base/random.ts';
import { planPulls } from '../../../../src/engine/pullorder/planner.ts';
import { endOf } from '../../../../src/engine/pullorder/timeline/beds.ts';
import { earliestEnd } from '../../../../src/engine/pullorder/timeline/earliest-end.ts';
import type { TimelineInput, TimelineStart } from '../../../../src/engine/pullorder/timeline/start-state.ts';
import { timelineOf } from '../../../../src/engine/pullorder/timeline/timeline.ts';
import type { PlanPull, PlanSheet, SetUp, VisitDays } from '../../../../src/engine/pullorder/types.ts';
import { bruteForce } from '../brute-force.ts';

const times = { pullsPerHour: 60, mountMinutes: 10, washUpMinutes: 12, registerMinutes: 5, mixMinutes: 4 };

function inputOf(sheets: PlanSheet[], visit: Omit<VisitDays, 'days'>, start?: TimelineStart): TimelineInput {
  return { problem: { sheets }, times, dryMinutesByInk: { x: 0, y: 0 }, visit: { days: 9, ...visit }, start };
}

function loose(count: number, pull: PlanPull): PlanSheet[] {
  return Array.from({ length: count }, () => ({ pulls: [pull], overlaps: [] }));
}

/**
 * The soonest end of all plans, none of whose set-ups runs past its day: every kind whose turn has
 * come is tried at every step on every bed, with every choice of its sheets when `allSubsets` is set.
 */
function soonestEnd(input: TimelineInput, allSubsets: boolean): number {
  const lay = timelineOf(input);
  const { sheets } = input.problem;
  const left = new Set(sheets.flatMap((sheet, s) => sheet.pulls.map((_, p) => `${s}.${p}`)));
  let best = Infinity;
  const go = (setUps: SetUp[], beds: number[]): void => {
    if (left.size === 0) {
      const { timeline, problems } = lay(setUps, beds);
      if (problems.every(({ code }) => code !== 'visit.long-set-up')) best = Math.min(best, endOf(timeline));
      return;
    }
    const kinds = new Map<string, [number, number][]>();
    for (const [s, sheet] of sheets.entries()) {
      for (const [p, { screen, ink, offset = '' }] of sheet.pulls.entries()) {
        if (!left.has(`${s}.${p}`) || sheet.overlaps.some(([a, b]) => b === p && left.has(`${s}.${a}`))) continue;
        const kind = JSON.stringify({ screen, ink, offset });
        kinds.set(kind, [...(kinds.get(kind) ?? []), [s, p]]);
      }
    }
    for (const [kind, ready] of kinds) {
      const all = 2 ** ready.length - 1;
      for (let choice = allSubsets ? 1 : all; choice <= all; choice++) {
        const pulls = ready.filter((_, i) => (choice >> i) & 1);
        for (const [s, p] of pulls) left.delete(`${s}.${p}`);
        for (let bed = 0; bed < (input.visit.beds ?? 1); bed++) go([...setUps, { ...JSON.parse(kind), pulls }], [...beds, bed]);
        for (const [s, p] of pulls) left.add(`${s}.${p}`);
      }
    }
  };
  go([], []);
  return best;
}

function tinyVisit(random: Random): TimelineInput {
  const beds = 1 + random.int(2);
  const [screens, inks, count] = [1 + random.int(3), 1 + random.int(3), 1 + random.int(2)];
  const most = beds === 2 ? 2 : count === 1 ? 5 : 3;
  const sheets = Array.from({ length: count }, (): PlanSheet => {
    const pulls = Array.from({ length: 1 + random.int(most) }, () => ({
      screen: `S${random.int(screens)}`,
      ink: `I${random.int(inks)}`,
      offset: random.pick(['', '', '1']),
      strokes: random.pick([1, 1, 3]),
    }));
    return {
      pulls,
      overlaps: pulls.flatMap((_, b) => pulls.slice(0, b).flatMap((_, a): [number, number][] => (random.chance(1, 2) ? [[a, b]] : []))),
    };
  });
  const start: TimelineStart = {
    minute: random.int(80),
    ...(random.chance(1, 2)
      ? { onPress: [0, 1].map((bed) => (random.chance(1, 3) ? null : { screen: `S${bed}`, ink: `I${random.int(inks)}`, offset: '' })) }
      : {}),
    ...(random.chance(1, 3) ? { mixed: ['I0'] } : {}),
  };
  return {
    problem: { sheets },
    times: {
      pullsPerHour: random.pick([60, 10, 4]),
      mountMinutes: random.int(16),
      washUpMinutes: random.int(16),
      registerMinutes: random.int(8),
      mixMinutes: random.int(8),
      strokeMinutes: random.int(3),
      testPulls: random.pick([0, 0, 1]),
    },
    dryMinutesByInk: { I0: random.int(60), I1: random.int(300), I2: 0 },
    visit: {
      days: 30,
      hoursPerDay: random.pick([1, 1.5, 4]),
      beds,
      ...(random.chance(1, 3) ? { lunch: { fromMinute: 20 + random.int(40), minutes: 30 } } : {}),
      ...(random.chance(1, 4) ? { rackPlaces: 1 } : {}),
    },
    start: random.chance(1, 2) ? start : undefined,
  };
}

describe('earliestEnd', () => {
  it('should be the end itself where nothing can be saved', () => {
    // By hand: mix 4, mount 10, five pulls, wash 12.
    const input = inputOf(loose(5, { screen: 'a', ink: 'x' }), { hoursPerDay: 8 });
    expect(earliestEnd(input, 1).minute).toBe(31);
    expect(soonestEnd(input, false)).toBe(31);
  });

  it('should see a chain of films that a night must dry', () => {
    const sheets: PlanSheet[] = [
      {
        pulls: [
          { screen: 'a', ink: 'x' },
          { screen: 'b', ink: 'x' },
        ],
        overlaps: [[0, 1]],
      },
    ];
    const input = { ...inputOf(sheets, { hoursPerDay: 4 }), dryMinutesByInk: { x: 300 } };
    // By hand: dry at 315, past the day's 240; next morning mount 10, pull 1, wash 12.
    expect(earliestEnd(input, 2).minute).toBe(1440 + 23);
    expect(soonestEnd(input, false)).toBe(1440 + 23);
  });

  it('should let the wash between two inks of a frame be the one at the end of a day', () => {
    const sheets = [...loose(38, { screen: 'a', ink: 'x' }), ...loose(30, { screen: 'a', ink: 'y' })];
    const input = inputOf(sheets, { hoursPerDay: 1 }, { mixed: ['x', 'y'] });
    // By hand: the first day mount 10, 38 pulls, wash 12; the second mount 10, 30 pulls, wash 12.
    expect(earliestEnd(input, 1).minute).toBe(1440 + 52);
    expect(soonestEnd(input, false)).toBe(1440 + 52);
  });

  it('should not count a mount for what is left of a day that is too short for one', () => {
    const input = inputOf(loose(1, { screen: 'a', ink: 'x' }), { hoursPerDay: 1 }, { minute: 50, mixed: ['x'] });
    // By hand: next morning mount 10, pull 1, wash 12.
    expect(earliestEnd(input, 1).minute).toBe(1440 + 23);
    expect(soonestEnd(input, false)).toBe(1440 + 23);
  });

  it('should not count a change of offset for a frame that is mounted anew at its other offset', () => {
    const pulls = [
      { screen: 'a', ink: 'x' },
      { screen: 'b', ink: 'x' },
      { screen: 'a', ink: 'x', offset: '1' },
    ];
    const input = inputOf(
      [
        {
          pulls,
          overlaps: [
            [0, 1],
            [1, 2],
          ],
        },
      ],
      { hoursPerDay: 8 },
      { mixed: ['x'] },
    );
    // By hand, three times: mount 10, pull 1, wash 12.
    expect(earliestEnd(input, 3).minute).toBe(69);
    expect(soonestEnd(input, false)).toBe(69);
  });

  it('should never be later than the soonest end of all plans of tiny visits', () => {
    let reached = 0;
    for (let i = 0; i < 600; i++) {
      const input = tinyVisit(randomFrom(`tiny ${i}`));
      const pulls = input.problem.sheets.reduce((n, sheet) => n + sheet.pulls.length, 0);
      const end = soonestEnd(input, pulls <= 3);
      const bound = earliestEnd(input, bruteForce(input.problem).mounts).minute;
      expect(bound, `case ${i}: ${JSON.stringify(input)}`).toBeLessThanOrEqual(end + 1e-6);
      if (bound > end - 1e-6) reached++;
    }
    // A bound of nothing would never be later either.
    expect(reached).toBeGreaterThan(140);
  });

  it('should never be later than an arrangement that exists of larger ones', () => {
    let looked = 0;
    for (let i = 0; i < 60; i++) {
      const random = randomFrom(`larger ${i}`);
      const { problem: _, ...visit } = tinyVisit(random);
      const sheets = Array.from({ length: 2 + random.int(5) }, () => tinyVisit(random).problem.sheets[0]!);
      const input = { ...visit, problem: { sheets } };
      const plan = planPulls(input.problem, { budgetMs: 2, seed: i });
      const { timeline, problems } = timelineOf(input)(plan.setUps);
      if (problems.some(({ code }) => code === 'visit.long-set-up')) continue;
      expect(earliestEnd(input, plan.bound.mounts).minute).toBeLessThanOrEqual(endOf(timeline) + 1e-6);
      looked++;
    }
    expect(looked).toBeGreaterThan(30);
  });
});
