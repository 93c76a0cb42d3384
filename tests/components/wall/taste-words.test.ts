import { describe, expect, it } from 'vitest';
import { learntSentence } from '../../../src/components/wall/taste/taste-words.ts';
import type { Learnt } from '../../../src/engine/explore/taste/taste-of-wall.ts';
import { TRAITS } from '../../../src/engine/explore/taste/traits.ts';

const LITTLE: Learnt = { choices: 4, claims: [], foretold: null, against: null };

describe('learntSentence', () => {
  it('should say how to begin where nothing was chosen', () => {
    expect(learntSentence({ ...LITTLE, choices: 0 }, 0)).toMatch(/^Nothing is chosen yet\./u);
  });

  it('should say that likes alone are nothing to tell from', () => {
    expect(learntSentence({ ...LITTLE, choices: 0 }, 3)).toBe(
      '3 choices, but only of prints that you like and none that you passed over: nothing to tell them from. Compare two prints.',
    );
  });

  it('should not say so of what was taught since it was learnt', () => {
    expect(learntSentence({ ...LITTLE, choices: 0 }, 1, true)).toBe(
      '1 choice so far; press Arrange again, and the wall hangs by what you chose.',
    );
  });

  it('should claim nothing that is not clear', () => {
    expect(learntSentence(LITTLE, 4)).toBe('4 choices so far: too little to tell what you choose by.');
  });

  it('should say what is clear, from how many choices, and how well the order did on those left out', () => {
    const claims: Learnt['claims'] = [
      { trait: 'light', way: 'more', chance: 0.001, sure: true },
      { trait: 'mainColour', way: 'more', chance: 0.01, sure: true },
      { trait: 'overprintColour', way: 'less', chance: 0.02, sure: true },
    ];
    expect(learntSentence({ ...LITTLE, choices: 31, claims, foretold: { right: 24, of: 31, standing: 'clear' } }, 31)).toBe(
      'From 31 choices, you choose lighter on the whole, a larger main colour, fewer overprint colours. Tried on 31 of them, left out while it learnt, it put 24 right; a coin gets 15.5.',
    );
  });

  it('should say that nothing is learnt where a coin does as well, and what may be luck', () => {
    const told = (right: number, standing: 'nothing' | 'luck', claims: Learnt['claims'] = []) =>
      learntSentence({ ...LITTLE, choices: 30, claims, foretold: { right, of: 22, standing } }, 30);
    const perhaps = { trait: 'inks', way: 'less', chance: 0.071, sure: false } as const;
    expect(told(10, 'nothing', [perhaps])).toBe(
      '30 choices so far. Tried on 22 of them, left out while it learnt, it put 10 right; a coin gets 11. It has not learnt anything yet.',
    );
    expect(told(10, 'nothing', [{ trait: 'light', way: 'more', chance: 0.001, sure: true }, perhaps])).toBe(
      'From 30 choices, you choose lighter on the whole. Tried on 22 of them, left out while it learnt, it put 10 right; a coin gets 11. Its order is no better than chance yet.',
    );
    expect(told(13, 'luck')).toMatch(/it put 13 right; a coin gets 11\. That may still be luck\.$/u);
  });

  it('should say what is not sure as a perhaps, with how often chance looks so', () => {
    const perhaps = { trait: 'inks', way: 'less', chance: 0.071, sure: false } as const;
    expect(learntSentence({ ...LITTLE, choices: 12, claims: [perhaps] }, 12)).toBe(
      'From 12 choices, perhaps fewer inks; choices made by chance look as clear in 8 of 100 cases.',
    );
    const claims: Learnt['claims'] = [{ trait: 'light', way: 'more', chance: 0.001, sure: true }, perhaps];
    expect(learntSentence({ ...LITTLE, choices: 31, claims }, 31)).toBe(
      'From 31 choices, you choose lighter on the whole. Perhaps also fewer inks; choices made by chance look as clear in 8 of 100 cases.',
    );
  });

  it('should not call many choices too little where nothing in them is clear', () => {
    expect(learntSentence({ ...LITTLE, choices: 40 }, 40)).toBe(
      '40 choices so far, and nothing that they may go by is clearer than chance makes it.',
    );
  });

  it('should name two prints that were each chosen over the other', () => {
    expect(learntSentence({ ...LITTLE, choices: 2, against: ['no. 3 of wall “a”', 'no. 8 of wall “a”'] }, 2)).toBe(
      'You chose no. 3 of wall “a” over no. 8 of wall “a”, and the other way round; the two answers cancel out. 2 choices so far: too little to tell what you choose by.',
    );
  });

  it('should have words for every trait, both ways and between', () => {
    // A trait without words would be called the same in all three.
    const said = (trait: (typeof TRAITS)[number], way: 'more' | 'less' | 'middle') =>
      learntSentence({ ...LITTLE, claims: [{ trait, way, chance: 0.001, sure: true }] }, 4);
    for (const trait of TRAITS) expect(new Set([said(trait, 'more'), said(trait, 'less'), said(trait, 'middle')]).size, trait).toBe(3);
  });
});
