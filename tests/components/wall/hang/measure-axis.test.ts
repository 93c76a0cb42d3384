import { describe, expect, it } from 'vitest';
import { measureText, placeAlong, roundValues } from '../../../../src/components/wall/hang/measure-axis.ts';

const WORDS = { key: 'colours', label: 'Colours', unit: '', digits: 0, range: [1, 100] } as const;

describe('placeAlong', () => {
  it('should place values in proportion, ticks at round values', () => {
    const { places, axis } = placeAlong(Float32Array.of(10, 20, 15, Number.NaN), WORDS, false);
    expect([...places.subarray(0, 3)]).toEqual([0, 1, 0.5]);
    expect(places[3]).toBeNaN();
    expect(axis.ticks.map(({ label }) => label)).toEqual(['10', '12', '14', '16', '18', '20']);
    expect(axis.ticks[1]!.at).toBeCloseTo(0.2, 6);
  });

  it('should place ranks evenly, with equals in the middle of their ranks', () => {
    // Mid-ranks as for Spearman's coefficient: values 1, 7, 7, 90 rank 1, 2.5, 2.5, 4.
    const { places } = placeAlong(Float32Array.of(90, 7, 1, 7), WORDS, true);
    expect([...places]).toEqual([1, 0.5, 0, 0.5]);
  });

  it('should put prints that are all alike in the middle', () => {
    expect([...placeAlong(Float32Array.of(4, 4), WORDS, true).places]).toEqual([0.5, 0.5]);
    expect([...placeAlong(Float32Array.of(4, 4), WORDS, false).places]).toEqual([0.5, 0.5]);
  });
});

describe('roundValues', () => {
  it('should step by 1, 2 or 5 and never by less than a digit that means something', () => {
    expect(roundValues(0, 1, 2)).toEqual([0, 0.2, 0.4, 0.6, 0.8, 1]);
    expect(roundValues(3, 5, 0)).toEqual([3, 4, 5]);
    expect(roundValues(-7, 108, 0)).toEqual([0, 50, 100]);
  });
});

describe('measureText', () => {
  it('should write the digits and the unit', () => {
    expect(measureText(12.345, { digits: 1, unit: '%' })).toBe('12.3 %');
    expect(measureText(1234, { digits: 0, unit: '' })).toBe('1,234');
  });
});
