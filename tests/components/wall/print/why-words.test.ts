import { describe, expect, it } from 'vitest';
import { besideWords, neighboursOf } from '../../../../src/components/wall/print/why-words.ts';
import { SKETCH_LENGTH } from '../../../../src/engine/explore/look/sketch.ts';
import type { VariantMeasures } from '../../../../src/engine/explore/measure/variant-measures.ts';
import { apartFrom } from '../../../../src/engine/explore/taste/apart.ts';
import type { TasteFacts } from '../../../../src/engine/explore/taste/traits.ts';

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
/** A sketch of one lightness. */
const grey = (light: number): Float32Array => Float32Array.from({ length: SKETCH_LENGTH }, (_, i) => (i % 3 === 0 ? light : 0));
const like = (change: Partial<VariantMeasures>, light = 0.5): TasteFacts => ({ measures: { ...PLAIN, ...change }, sketch: grey(light) });
const factsOf = (list: readonly TasteFacts[]) => ({
  measures: list.map(({ measures }) => measures),
  sketch: (index: number) => list[index]?.sketch as Float32Array | undefined,
});

describe('what sets a print apart', () => {
  const wall = [like({ inks: 3, coverage: 48 }), like({}), like({ coverage: 52 }), like({ inks: 7, coverage: 48 }), like({ pulls: 9 })];

  it('should be the measures by which it differs most from its neighbours, against the spread of the wall', () => {
    const apart = apartFrom(wall[0]!, [wall[1]!, wall[2]!], wall);
    // Inks spread by 1.36 (3, 6, 6, 7, 6): 3 less is 2.2 of it; covered spreads by 1.50: 3 less is 2.0 of it. By hand.
    expect(apart).toEqual([
      { trait: 'inks', value: 3, usual: 6 },
      { trait: 'coverage', value: 48, usual: 51 },
    ]);
    expect(besideWords({ index: 0, facts: factsOf(wall), sequence: [1, 0, 2, 3, 4], columns: 5 })).toBe(
      'Beside its neighbours: fewer inks (3, they 6), less of the sheet covered (48, they 51 %).',
    );
  });

  it('should be what one sees before what one counts, and nothing twice', () => {
    // More pulls are more screens and set-ups here: two and a half of their spread each, but counted.
    const seen = [
      like({ pulls: 14, screens: 14, setUps: 14 }, 0.2),
      like({}, 0.5),
      like({}, 0.5),
      like({ pulls: 9, screens: 9, setUps: 9 }, 0.6),
    ];
    const apart = apartFrom(seen[0]!, [seen[1]!, seen[2]!], seen);
    expect(apart[0]).toMatchObject({ trait: 'light' });
    expect(apart.filter(({ trait }) => ['pulls', 'screens', 'setUps'].includes(trait)).length).toBeLessThanOrEqual(1);
    expect(besideWords({ index: 0, facts: factsOf(seen), sequence: [1, 0, 2, 3], columns: 4 })).toMatch(
      /^Beside its neighbours: darker[,.]/u,
    );
  });

  it('should say so when it measures like them, and nothing where it has none', () => {
    const alike = factsOf([like({}), like({}), like({})]);
    expect(besideWords({ index: 1, facts: alike, sequence: [0, 1, 2], columns: 3 })).toBe('Measures much like its neighbours.');
    expect(besideWords({ index: 1, facts: alike, sequence: [1], columns: 3 })).toBe('');
    expect(besideWords({ index: 1, facts: factsOf([like({})]), sequence: [0, 1], columns: 3 })).toBe('');
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
