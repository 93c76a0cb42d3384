import { describe, expect, it } from 'vitest';
import { localTime } from '../../../../src/components/press/log/local-time.ts';
import type { LogEvent } from '../../../../src/engine/log/types.ts';
import { visitNow } from '../../../../src/engine/log/visit-now.ts';

const event = (...at: [number, number, number, number, number?]): LogEvent => ({
  id: at.join(),
  atMs: new Date(at[0], at[1], at[2], at[3], at[4] ?? 0).getTime(),
  device: 'd',
  sheet: 1,
  kind: 'pulled',
  pulls: ['p1'],
});

const log = (events: LogEvent[], begun = event(2030, 4, 17, 9)) => ({ head: { begunMs: begun.atMs }, events });

describe('visitNow', () => {
  it('should count the days on which something was logged, and today', () => {
    const now = new Date(2030, 4, 20, 14, 5).getTime();
    expect(visitNow(log([]), now, localTime)).toEqual({ atMs: now, day: 1, minuteOfDay: 845 });
    // A visit may pause over days: Friday and Monday are its days one and two.
    const events = [event(2030, 4, 17, 10), event(2030, 4, 17, 15), event(2030, 4, 20, 9)];
    expect(visitNow(log(events), now, localTime).day).toBe(2);
    expect(visitNow(log(events.slice(0, 2)), now, localTime).day).toBe(2);
    // What another device logged after this moment, or a clock that was set wrong, is no day of it yet.
    expect(visitNow(log([...events, event(2030, 4, 21, 9), event(2030, 4, 20, 14, 6)]), now, localTime).day).toBe(2);
    // Nor is what a clock that was set wrong put before it began, unless that is minutes on its first day.
    expect(visitNow(log([event(2030, 4, 14, 10), ...events]), now, localTime).day).toBe(2);
    expect(visitNow(log([event(2030, 4, 17, 8, 55)]), now, localTime).day).toBe(2);
  });
});
