import { describe, expect, it } from 'vitest';
import { randomFrom } from '../../../../src/engine/base/random.ts';
import { planPulls } from '../../../../src/engine/pullorder/planner.ts';
import type { LaidOut, TimelineInput } from '../../../../src/engine/pullorder/timeline/start-state.ts';
import { timelineOf } from '../../../../src/engine/pullorder/timeline/timeline.ts';
import type { PlanProblem, PressTimes, PullPlan, VisitDays } from '../../../../src/engine/pullorder/types.ts';

const times = { pullsPerHour: 60, mountMinutes: 10, washUpMinutes: 20, registerMinutes: 5 };
const dry = { x: 30, y: 45 };
const lone = (pulls: { screen: string; ink: string; offset?: string }[], overlaps: [number, number][]): PlanProblem => ({
  sheets: [{ pulls, overlaps }],
});
const oneEach = (problem: PlanProblem) => ({
  setUps: problem.sheets[0]!.pulls.map((pull, p) => ({ ...pull, offset: pull.offset ?? '', pulls: [[0, p] as [number, number]] })),
});

function layOut(
  problem: PlanProblem,
  { setUps }: Pick<PullPlan, 'setUps'>,
  pressTimes: PressTimes,
  dryMinutesByInk: Record<string, number>,
  visit: VisitDays,
  touching?: TimelineInput['touching'],
  stackMinutesByInk?: Record<string, number>,
): LaidOut {
  return timelineOf({ problem, times: pressTimes, dryMinutesByInk, visit, touching, stackMinutesByInk })(setUps);
}

describe('timelineOf', () => {
  it('should count mounts, wash-ups, changes of offset and drying by the clock', () => {
    const problem = lone(
      [
        { screen: 'a', ink: 'x' },
        { screen: 'b', ink: 'y' },
        { screen: 'b', ink: 'y', offset: '1' },
      ],
      [[0, 1]],
    );
    const { timeline, problems } = layOut(problem, oneEach(problem), times, dry, { days: 1, hoursPerDay: 8 });
    // By hand: mount 10, pull 1 → 11, dry at 41. Wash 20, mount 10 → 41, no wait, pull → 42. Move 5, pull → 48.
    expect(problems).toEqual([]);
    expect(timeline.times.map((t) => [t.startMinute, t.firstPullMinute, t.endMinute, t.waitMinutes])).toEqual([
      [0, 10, 11, 0],
      [11, 41, 42, 0],
      [42, 47, 48, 0],
    ]);
    const slow = layOut(problem, oneEach(problem), times, { ...dry, x: 50 }, { days: 1, hoursPerDay: 8 }).timeline;
    expect(slow.times[1]!.waitMinutes).toBe(20);
    expect(slow.waitMinutes).toBe(20);
    expect(slow.racksNeeded).toBe(1);
  });

  it('should make pulls that may change places dry all the same', () => {
    const problem = lone(
      [
        { screen: 'a', ink: 'x' },
        { screen: 'b', ink: 'x' },
      ],
      [],
    );
    const free = layOut(problem, oneEach(problem), times, { x: 90 }, { days: 1, hoursPerDay: 8 });
    const touch = layOut(problem, oneEach(problem), times, { x: 90 }, { days: 1, hoursPerDay: 8 }, [[[0, 1]]]);
    expect(free.timeline.waitMinutes).toBe(0);
    expect(touch.timeline.waitMinutes).toBe(60);
  });

  it('should let the night dry, mount anew in the morning and name what does not fit', () => {
    const problem = lone(
      [
        { screen: 'a', ink: 'x' },
        { screen: 'a', ink: 'x' },
      ],
      [[0, 1]],
    );
    const { timeline, problems } = layOut(problem, oneEach(problem), times, { x: 300 }, { days: 1, hoursPerDay: 2 });
    expect(timeline.times[1]).toMatchObject({ day: 2, startMinute: 0, firstPullMinute: 10, waitMinutes: 0, fits: false });
    expect(problems).toHaveLength(1);
    expect(problems[0]!.message).toContain('needs 2 days of 2 h and the visit has 1: set-up 2 does not fit');
  });

  it('should say when a set-up is longer than a day', () => {
    const sheets = Array.from({ length: 100 }, () => ({ pulls: [{ screen: 'a', ink: 'x' }], overlaps: [] }));
    const plan = planPulls({ sheets }, { budgetMs: 5, seed: 1 });
    const { problems } = layOut({ sheets }, plan, times, dry, { days: 1, hoursPerDay: 1 });
    expect(problems.map((p) => p.code)).toEqual(['visit.long-set-up']);
  });

  it('should never print on a wet film nor run two set-ups at once', () => {
    for (let i = 0; i < 60; i++) {
      const random = randomFrom(`timeline ${i}`);
      const sheets = Array.from({ length: 5 }, () => {
        const pulls = Array.from({ length: 6 }, () => ({ screen: `S${random.int(4)}`, ink: random.pick(['x', 'y']) }));
        const overlaps: [number, number][] = [];
        for (let b = 1; b < 6; b++) for (let a = 0; a < b; a++) if (random.chance(1, 2)) overlaps.push([a, b]);
        return { pulls, overlaps };
      });
      const plan = planPulls({ sheets }, { budgetMs: 3, seed: i });
      const long = { x: 10 + random.int(400), y: 10 + random.int(90) };
      const { timeline } = layOut({ sheets }, plan, times, long, { days: 9, hoursPerDay: 3 });
      const at = (t: (typeof timeline.times)[number], minute: number) => (t.day - 1) * 1440 + minute;
      timeline.times.forEach((t, k) => {
        const before = timeline.times[k - 1];
        if (before) expect(at(t, t.startMinute)).toBeGreaterThanOrEqual(at(before, before.endMinute));
        if (t.fits) expect(t.endMinute).toBeLessThanOrEqual(180 - times.washUpMinutes);
        // The press is busy exactly while it pulls or waits between pulls.
        const busy = plan.setUps[k]!.pulls.length;
        expect(t.endMinute - t.firstPullMinute).toBeGreaterThanOrEqual(busy - 1e-9);
      });
      sheets.forEach((sheet, s) => {
        const when = sheet.pulls.map((_, p) => plan.setUps.findIndex((u) => u.pulls.some(([a, b]) => a === s && b === p)));
        for (const [a, b] of sheet.overlaps) {
          const first = timeline.times[when[a]!]!;
          const second = timeline.times[when[b]!]!;
          const wait = long[sheet.pulls[a]!.ink as 'x' | 'y'];
          expect(at(second, second.endMinute)).toBeGreaterThanOrEqual(at(first, first.firstPullMinute) + 2 + wait - 1e-9);
        }
      });
    }
  });

  it('should mix a new ink once and let lunch pass between pulls', () => {
    const problem = lone(
      [
        { screen: 'a', ink: 'x' },
        { screen: 'b', ink: 'x' },
      ],
      [],
    );
    const { timeline } = layOut(problem, oneEach(problem), { ...times, mixMinutes: 8 }, dry, {
      days: 1,
      hoursPerDay: 8,
      lunch: { fromMinute: 30, minutes: 40 },
    });
    // By hand: mix 8, mount 10, pull → 19. Wash 20 from 19 is 11 before lunch, lunch to 70, 9 after → 79; mount 10, pull → 90.
    expect(timeline.times.map((t) => [t.firstPullMinute, t.endMinute])).toEqual([
      [18, 19],
      [89, 90],
    ]);
    expect(timeline.parts.map((part) => [part.kind, part.fromMinute, part.toMinute])).toEqual([
      ['mix', 0, 8],
      ['mount', 8, 18],
      ['print', 18, 19],
      ['wash', 19, 79],
      ['mount', 79, 89],
      ['print', 89, 90],
      ['wash', 90, 110],
    ]);
  });

  it('should keep within the racks and say what they cost', () => {
    const sheets = Array.from({ length: 4 }, () => ({ pulls: [{ screen: 'a', ink: 'x' }], overlaps: [] }));
    const setUps = [{ screen: 'a', ink: 'x', offset: '', pulls: sheets.map((_, s): [number, number] => [s, 0]) }];
    const visit = { days: 1, hoursPerDay: 8, rackPlaces: 2 };
    const { timeline, problems } = layOut({ sheets }, { setUps }, times, dry, visit, undefined, { x: 60 });
    // By hand: mount 10, pulls end at 11 and 12; the racks free at 71 and 72: pulls end at 72 and 73.
    expect(timeline.times[0]).toMatchObject({ endMinute: 73, waitMinutes: 59, rackWaitMinutes: 59, wetSheets: 2 });
    expect(problems.map((p) => p.code)).toEqual(['visit.racks']);
    expect(problems[0]!.message).toContain('hold 2 wet sheets, too few for set-up 1: the press waits 59 min');
  });

  it('should name the ink that is waited for', () => {
    const problem = lone(
      [
        { screen: 'a', ink: 'x' },
        { screen: 'b', ink: 'y' },
      ],
      [[0, 1]],
    );
    const { timeline } = layOut(problem, oneEach(problem), times, { x: 50, y: 0 }, { days: 1, hoursPerDay: 8 });
    expect(timeline.times[1]).toMatchObject({ waitMinutes: 20, waitFor: ['x'], rackWaitMinutes: 0 });
  });

  it('should share the work between two beds, no bed, sheet or screen in two places at once', () => {
    for (let i = 0; i < 40; i++) {
      const random = randomFrom(`beds ${i}`);
      const sheets = Array.from({ length: 5 }, () => {
        const pulls = Array.from({ length: 6 }, () => ({ screen: `S${random.int(5)}`, ink: random.pick(['x', 'y']) }));
        const overlaps: [number, number][] = [];
        for (let b = 1; b < 6; b++) for (let a = 0; a < b; a++) if (random.chance(1, 2)) overlaps.push([a, b]);
        return { pulls, overlaps };
      });
      const plan = planPulls({ sheets }, { budgetMs: 3, seed: i });
      const days = { days: 9, hoursPerDay: 3, lunch: { fromMinute: 90, minutes: 30 } };
      const { timeline } = layOut({ sheets }, plan, times, dry, { ...days, beds: 2 });
      const at = (part: (typeof timeline.parts)[number], minute: number) => (part.day - 1) * 1440 + minute;
      for (const bed of [0, 1]) {
        const own = timeline.parts.filter((part) => part.bed === bed);
        own.forEach((part, k) => {
          if (k > 0) expect(at(part, part.fromMinute)).toBeGreaterThanOrEqual(at(own[k - 1]!, own[k - 1]!.toMinute) - 1e-9);
          if (part.kind === 'print') expect(part.fromMinute < 90 && part.fromMinute + 1 > 90 + 1e-9).toBe(false);
        });
      }
      const span = (k: number): [number, number] => {
        const t = timeline.times[k]!;
        return [(t.day - 1) * 1440 + t.startMinute, (t.day - 1) * 1440 + t.endMinute];
      };
      plan.setUps.forEach((one, a) =>
        plan.setUps.forEach((other, b) => {
          if (a < b && one.screen === other.screen) expect(span(b)[0]).toBeGreaterThanOrEqual(span(a)[1] - 1e-9);
        }),
      );
      sheets.forEach((sheet, s) => {
        const when = sheet.pulls.map((_, p) => plan.setUps.findIndex((u) => u.pulls.some(([a, b]) => a === s && b === p)));
        for (const [a, b] of sheet.overlaps) {
          const first = timeline.times[when[a]!]!;
          const wait = dry[sheet.pulls[a]!.ink as 'x' | 'y'];
          expect(span(when[b]!)[1]).toBeGreaterThanOrEqual((first.day - 1) * 1440 + first.firstPullMinute + 2 + wait - 1e-9);
        }
      });
    }
  });

  it('should refuse figures that are none', () => {
    const problem = lone([{ screen: 'a', ink: 'x' }], []);
    const run =
      (change: object, visit = { days: 1, hoursPerDay: 8 }) =>
      () =>
        layOut(problem, oneEach(problem), { ...times, ...change }, dry, visit);
    expect(run({ pullsPerHour: 0 })).toThrow('pulls per hour is 0');
    expect(run({ mountMinutes: Number.NaN })).toThrow('mount time is NaN');
    expect(run({}, { days: 1, hoursPerDay: 0 })).toThrow('length of a day is 0');
    expect(() => layOut(problem, oneEach(problem), times, {}, { days: 1, hoursPerDay: 8 })).toThrow('Ink x has no drying time');
  });
});
