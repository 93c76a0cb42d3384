import { describe, expect, it } from 'vitest';
import { faultyVisit } from './faulty-visit.ts';

// A short form of `npm run visits`, which goes over 200 seeds.
describe('a whole visit with spoiled sheets, late hours and wrong inks', () => {
  it('should be planned anew never worse than going on, never unsound, and lose no ink', () => {
    const visits = ['1', '2', '3', '4', '5'].map(faultyVisit);
    expect(visits.flatMap(({ seed, wrong }) => wrong.map((each) => `${seed}: ${each}`))).toEqual([]);
    const sum = (of: (visit: (typeof visits)[number]) => number): number => visits.reduce((all, visit) => all + of(visit), 0);
    // The check looks at something: rests were planned, some better, and faults of each kind came about.
    expect(sum(({ replans }) => replans)).toBeGreaterThan(5);
    expect(sum(({ faults }) => faults.otherwise)).toBeGreaterThan(0);
    expect(sum(({ faults }) => faults.replaced)).toBeGreaterThan(0);
    expect(sum(({ faults }) => faults.lateHours)).toBeGreaterThan(0);
  }, 240_000);
});
