import { describe, expect, it } from 'vitest';
import { lateProblems, rackProblems } from '../../../../src/engine/pullorder/timeline/problems.ts';
import type { SetUpTime } from '../../../../src/engine/pullorder/types.ts';

function time(setUp: number, change: Partial<SetUpTime>): SetUpTime {
  return {
    setUp,
    day: 1,
    bed: 0,
    startMinute: 0,
    firstPullMinute: 0,
    endMinute: 0,
    waitMinutes: 0,
    waitFor: [],
    rackWaitMinutes: 0,
    wetSheets: 0,
    fits: true,
    ...change,
  };
}

const all = (count: number, change: Partial<SetUpTime>): SetUpTime[] => Array.from({ length: count }, (_, i) => time(i, change));

describe('rackProblems', () => {
  it('should join set-ups that follow each other, and write hours', () => {
    // By hand: 23 × 125 min = 2875 min = 47 h 55 min.
    const [problem] = rackProblems(all(23, { rackWaitMinutes: 125 }), 1);
    expect(problem!.message).toBe(
      'The racks hold 1 wet sheet, too few for set-ups 1–23: the press waits 47 h 55 min for sheets that can be stacked; find more places or print fewer sheets.',
    );
    expect(problem!.where).toBe('set-up 1');
  });

  it('should leave out the set-ups that do not wait, in whatever order the beds print them', () => {
    const held = [5, 1, 0, 2].map((setUp) => time(setUp, { rackWaitMinutes: 10 }));
    expect(rackProblems([...held, time(3, { rackWaitMinutes: 0.5 })], 6)[0]!.message).toContain(
      '6 wet sheets, too few for set-ups 1–3, 6: the press waits 40 min',
    );
    expect(rackProblems([time(1, { rackWaitMinutes: 60 })], 6)[0]!.message).toContain('too few for set-up 2: the press waits 1 h for');
    expect(rackProblems(all(3, {}), 6)).toEqual([]);
  });
});

describe('lateProblems', () => {
  it('should name what lies beyond the last day, joined', () => {
    const times = [time(0, {}), ...[1, 2, 3, 5].map((setUp) => time(setUp, { day: 3 }))];
    expect(lateProblems(times, 3, { days: 2, hoursPerDay: 6 })[0]!.message).toContain(
      'needs 3 days of 6 h and the visit has 2: set-ups 2–4, 6 do not fit',
    );
    expect(lateProblems(times, 3, { days: 3, hoursPerDay: 6 })).toEqual([]);
  });
});
