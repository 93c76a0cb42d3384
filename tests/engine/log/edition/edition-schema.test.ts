import { describe, expect, it } from 'vitest';
import { MOST_SHEETS } from '../../../../src/engine/base/limits.ts';
import { editionSchema } from '../../../../src/engine/log/edition/edition-schema.ts';
import { newEdition } from '../../../../src/engine/log/edition/edition.ts';
import { recipeOf } from '../../../../src/engine/recipe/write.ts';
import { smallProject } from '../../../helpers/small-project.ts';

const { bench, drawer } = smallProject();
const edition = {
  ...newEdition(recipeOf(bench, drawer, { id: 'a', title: 'Ebb' })),
  marks: [{ sheet: 3, mark: '1/30' }],
  fates: [{ screen: 's1', fate: 'kept', by: 'R', when: '2026' }],
};
const reads = (change: object): boolean => editionSchema.safeParse({ ...edition, ...change }).success;
const counts = (change: object): boolean => reads({ counts: { ...edition.counts, ...change } });

describe('editionSchema', () => {
  it('should read an edition as it was kept, with all that it says', () => {
    expect(editionSchema.parse(edition)).toEqual(edition);
  });

  it('should read counts that a visit can hold and no others', () => {
    expect([0, MOST_SHEETS].map((ap) => counts({ ap }))).toEqual([true, true]);
    expect([-1, MOST_SHEETS + 1, 1.5].map((ap) => counts({ ap }))).toEqual([false, false, false]);
    expect([1, MOST_SHEETS, 0, MOST_SHEETS + 1].map((impressions) => counts({ impressions }))).toEqual([true, true, false, false]);
  });

  it('should refuse words, marks and names that no hand wrote', () => {
    expect(reads({ recipe: '' })).toBe(false);
    expect(reads({ recipe: 'x'.repeat(201) })).toBe(false);
    expect(reads({ words: { ...edition.words, artist: 'x'.repeat(1000) } })).toBe(true);
    expect(reads({ words: { ...edition.words, artist: 'x'.repeat(1001) } })).toBe(false);
    expect([1, 100_000, 0, 100_001].map((sheet) => reads({ marks: [{ sheet, mark: '' }] }))).toEqual([true, true, false, false]);
    expect([40, 41].map((length) => reads({ marks: [{ sheet: 1, mark: 'x'.repeat(length) }] }))).toEqual([true, false]);
    expect(
      [MOST_SHEETS, MOST_SHEETS + 1].map((length) => reads({ marks: Array.from({ length }, () => ({ sheet: 1, mark: '' })) })),
    ).toEqual([true, false]);
    expect([200, 201].map((length) => reads({ fates: Array.from({ length }, () => edition.fates[0]) }))).toEqual([true, false]);
    expect(reads({ marks: [{}] })).toBe(false);
    expect(reads({ fates: [{}] })).toBe(false);
  });
});
