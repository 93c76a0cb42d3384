import { describe, expect, it } from 'vitest';
import { copyIsDue, NO_COPY } from '../../../../src/components/keep/copies/copy-due.ts';

const HOUR = 3_600_000;
const worked = { ...NO_COPY, changedMs: 0, changes: 60 };

describe('a word on copies outside the browser', () => {
  it('should wait for work that is worth one and for some hours', () => {
    expect(copyIsDue(worked, 8 * HOUR)).toBe(true);
    expect(copyIsDue(worked, 8 * HOUR - 1)).toBe(false);
    expect(copyIsDue({ ...worked, changes: 59 }, 99 * HOUR)).toBe(false);
    expect(copyIsDue(NO_COPY, 99 * HOUR)).toBe(false);
  });

  it('should come no more than once a day, also where the clock was set back', () => {
    const told = { ...worked, toldMs: 10 * HOUR };
    expect(copyIsDue(told, 33 * HOUR)).toBe(false);
    expect(copyIsDue(told, 34 * HOUR)).toBe(true);
    expect(copyIsDue({ ...worked, changedMs: 100 * HOUR, toldMs: 100 * HOUR }, 10 * HOUR)).toBe(true);
  });
});
