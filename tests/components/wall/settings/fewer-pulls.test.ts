import { describe, expect, it } from 'vitest';
import { fewerPulls } from '../../../../src/components/wall/settings/fewer-pulls.ts';

describe('fewerPulls', () => {
  it('should offer a stack of 73 pulls prints of about that size, never a handful', () => {
    expect(fewerPulls(73, { leaveOut: 2 })).toEqual({ least: 71, from: 37, to: 55, change: { maxPulls: 55, leaveOut: 36 } });
  });

  it('should offer what fits every stack: fewer than now, and no less than half', () => {
    for (let pulls = 1; pulls <= 200; pulls++) {
      const offer = fewerPulls(pulls, { leaveOut: 2 });
      if (pulls <= 18) expect(offer).toBeNull();
      else {
        expect(offer!.from).toBeLessThan(offer!.least);
        expect(offer!.from * 2).toBeGreaterThanOrEqual(pulls);
        expect(offer!.from).toBeLessThan(offer!.to);
        expect(offer!.to).toBeLessThan(pulls);
        expect(pulls - offer!.change.leaveOut).toBe(offer!.from);
        expect(offer!.change.maxPulls).toBe(offer!.to);
      }
    }
  });

  it('should offer nothing where fewer may be left already or the number is settled', () => {
    expect(fewerPulls(73, { leaveOut: 60 })).toBeNull();
    expect(fewerPulls(73, { leaveOut: 0, maxPulls: 40 })).toBeNull();
  });
});
