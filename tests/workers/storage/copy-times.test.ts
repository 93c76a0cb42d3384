import { describe, expect, it } from 'vitest';
import { COPY_EVERY_MS, copiesToKeep } from '../../../src/workers/storage/copy-times.ts';

const HOUR = 3_600_000;
const DAY = 24 * HOUR;
const START = Date.UTC(2030, 0, 1, 9);

describe('copies', () => {
  it('should be at most five, and reach back minutes, an hour, a day and longer, through weeks of work', () => {
    let times: number[] = [];
    for (let day = 0; day < 40; day++) {
      for (let at = START + day * DAY; at < START + day * DAY + 8 * HOUR; at += COPY_EVERY_MS) {
        times = copiesToKeep([...times, at], at);
        expect(times.length).toBeLessThanOrEqual(5);
        const ages = times.map((time) => at - time);
        expect(Math.min(...ages)).toBe(0);
        const worked = at - (START + day * DAY);
        // After an hour at work one copy is of the hour before; from the third day on, of yesterday and of before.
        if (worked >= 2 * HOUR) expect(ages.some((age) => age > HOUR && age <= DAY)).toBe(true);
        if (day >= 2) expect(ages.some((age) => age > DAY)).toBe(true);
        if (day >= 16) expect(ages.some((age) => age > 7 * DAY)).toBe(true);
      }
    }
  });

  it('should keep the newest whatever the clock says', () => {
    expect(copiesToKeep([START + DAY, START], START)).toContain(START + DAY);
    expect(copiesToKeep([], START)).toEqual([]);
  });
});
