import { describe, expect, it } from 'vitest';
import { visitNow } from '../../../../src/components/press/log/visit-now.ts';
import { beginWords, needsWords } from '../../../../src/components/words/plan-words.ts';
import type { RestPlan } from '../../../../src/engine/log/rest.ts';
import type { LogEvent } from '../../../../src/engine/log/types.ts';

const event = (...at: [number, number, number, number]): LogEvent => ({
  id: at.join(),
  atMs: new Date(...at).getTime(),
  device: 'd',
  sheet: 1,
  kind: 'pulled',
  pulls: ['p1'],
});

describe('visitNow', () => {
  it('should count the days on which something was logged, and today', () => {
    const now = new Date(2030, 4, 20, 14, 5).getTime();
    expect(visitNow([], now)).toEqual({ atMs: now, day: 1, minuteOfDay: 845 });
    // A visit may pause over days: Friday and Monday are its days one and two.
    const events = [event(2030, 4, 17, 10), event(2030, 4, 17, 15), event(2030, 4, 20, 9)];
    expect(visitNow(events, now).day).toBe(2);
    expect(visitNow(events.slice(0, 2), now).day).toBe(2);
  });
});

describe('the words of what is left', () => {
  const plan = (begins: RestPlan['begins']): RestPlan =>
    ({ clock: { startMinute: 570, workMinutes: 420, lunch: null }, daysNeeded: 3, racksNeeded: 4, begins }) as unknown as RestPlan;
  it('should say from when, what is wet and what stays', () => {
    expect(beginWords(plan({ day: 2, minute: 275, wetSheets: 4, stays: '7' }))).toBe(
      'From day 2, 14:05 on: 4 sheets are still wet; screen 7 stays on the press.',
    );
    expect(beginWords(plan({ day: 2, minute: 0, wetSheets: 0, stays: null }))).toBe('From day 2, 9:30 on: everything is dry.');
    expect(needsWords(plan({ day: 2, minute: 0, wetSheets: 0, stays: null }))).toBe('Done on day 3, and a rack for 4 wet sheets.');
  });
});
