import { describe, expect, it } from 'vitest';
import { besideWords, neighboursOf } from '../../../../src/components/wall/print/why-words.ts';
import { apartFrom } from '../../../../src/engine/explore/look/apart.ts';
import type { VariantMeasures } from '../../../../src/engine/explore/measure/variant-measures.ts';

const PLAIN: VariantMeasures = {
  coverage: 50,
  colours: 20,
  mainColour: 40,
  overprintColour: 10,
  darkest: 20,
  lightest: 95,
  contrast: 75,
  edgeContrast: 0.4,
  imbalance: 10,
  pulls: 8,
  screens: 8,
  inks: 6,
  setUps: 8,
};
const like = (change: Partial<VariantMeasures>): VariantMeasures => ({ ...PLAIN, ...change });

describe('what sets a print apart', () => {
  const wall = [like({ inks: 3, coverage: 48 }), like({}), like({ coverage: 52 }), like({ inks: 7 }), like({ pulls: 9 })];

  it('should be the measures by which it differs most from its neighbours, against the spread of the wall', () => {
    const apart = apartFrom(wall[0]!, [wall[1]!, wall[2]!], wall);
    // Inks spread by 1.36 (3, 6, 6, 7, 6): 3 less is 2.2 of it; covered spreads by 1.26: 3 less is 2.4 of it. By hand.
    expect(apart.map(({ measure, value, usual }) => [measure.key, value, usual])).toEqual([
      ['coverage', 48, 51],
      ['inks', 3, 6],
    ]);
    expect(besideWords({ index: 0, measures: wall, sequence: [1, 0, 2, 3, 4], columns: 5 })).toBe(
      'Beside its neighbours: less of the sheet covered (48, they 51 %), fewer inks (3, they 6).',
    );
  });

  it('should say so when it measures like them, and nothing where it has none', () => {
    const alike = [like({}), like({}), like({})];
    expect(besideWords({ index: 1, measures: alike, sequence: [0, 1, 2], columns: 3 })).toBe('Measures much like its neighbours.');
    expect(besideWords({ index: 1, measures: alike, sequence: [1], columns: 3 })).toBe('');
    expect(besideWords({ index: 1, measures: [alike[0], undefined], sequence: [0, 1], columns: 3 })).toBe('');
  });
});

describe('neighboursOf', () => {
  it('should be those left, right, above and below, as far as they hang', () => {
    const sequence = [10, 11, 12, 13, 14, 15, 16];
    expect(neighboursOf(sequence, 3, 14)).toEqual([13, 15, 11]);
    expect(neighboursOf(sequence, 3, 10)).toEqual([11, 13]);
    expect(neighboursOf(sequence, 3, 12)).toEqual([11, 15]);
    expect(neighboursOf(sequence, 3, 99)).toEqual([]);
  });
});
