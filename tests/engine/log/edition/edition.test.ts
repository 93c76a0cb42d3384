import { describe, expect, it } from 'vitest';
import { checkEdition, type EditionCounts, editionFacts, editionMarks, newEdition } from '../../../../src/engine/log/edition/edition.ts';
import { recipeOf } from '../../../../src/engine/recipe/write.ts';
import { smallProject } from '../../../helpers/small-project.ts';

const counts: EditionCounts = { impressions: 30, ap: 3, pp: 2, hc: 1, bat: true, variable: false };

describe('editionMarks', () => {
  it('should number impressions and each class of proof by itself', () => {
    const marks = editionMarks(counts);
    expect(marks).toHaveLength(37);
    expect([marks[0], marks[29], marks[30], marks[31], marks[33], marks[34], marks[36]]).toEqual([
      '1/30',
      '30/30',
      'BAT',
      'AP 1/3',
      'AP 3/3',
      'PP 1/2',
      'HC 1/1',
    ]);
    expect(editionMarks({ ...counts, variable: true })[4]).toBe('EV 5/30');
    expect(new Set(marks).size).toBe(marks.length);
  });
});

describe('checkEdition', () => {
  it('should warn outside 5 to 20 % of artist’s proofs, a range that glossaries of the trade give', () => {
    expect(checkEdition(counts)).toEqual([]);
    expect(checkEdition({ ...counts, ap: 6 })).toEqual([]);
    expect(checkEdition({ ...counts, ap: 7 }).map((problem) => problem.code)).toEqual(['edition.ap']);
    expect(checkEdition({ ...counts, ap: 1 }).map((problem) => problem.code)).toEqual(['edition.ap']);
  });
  it('should refuse what cannot be', () => {
    for (const wrong of [{ impressions: 0 }, { ap: 1.5 }, { pp: -1 }, { hc: Number.NaN }]) {
      expect(checkEdition({ ...counts, ...wrong }).map((problem) => problem.code)).toEqual(['edition.count']);
    }
    expect(checkEdition({ ...counts, impressions: 495, ap: 30 })[0]!.code).toBe('edition.sheets');
  });
});

describe('newEdition', () => {
  it('should offer exactly the sheets that there are, with proofs as glossaries of the trade have them', () => {
    const recipe = { id: 'a', title: 'A' };
    for (let sheets = 1; sheets <= 500; sheets++) {
      const { counts } = newEdition(recipe, sheets);
      expect(editionMarks(counts)).toHaveLength(sheets);
      expect(checkEdition(counts)).toEqual([]);
    }
    expect(editionMarks(newEdition(recipe, 4).counts)).toEqual(['1/4', '2/4', '3/4', '4/4']);
    expect(newEdition(recipe, 24).counts).toEqual(newEdition(recipe).counts);
  });
});

describe('editionFacts', () => {
  it('should tell the sequence as the recipe stacks it', () => {
    const { bench, drawer } = smallProject();
    const inks = drawer.inks.map((ink) => (ink.id === 'rust' ? { ...ink, mix: [{ ink: 'tar', parts: 2 }] } : ink));
    const facts = editionFacts(recipeOf(bench, { ...drawer, inks }, { id: 'a', title: 'A' }));
    expect(facts.sequence.map((pull) => pull.screen)).toEqual([1, 2, 3]);
    expect(facts.inks).toHaveLength(3);
    expect(facts.inks.find((ink) => ink.mix.length > 0)!.mix[0]).toEqual({
      name: drawer.inks.find((ink) => ink.id === 'tar')!.name,
      parts: 2,
    });
  });
});
