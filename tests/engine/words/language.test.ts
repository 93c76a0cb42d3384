import { afterEach, describe, expect, it } from 'vitest';
import {
  counted,
  dayLocale,
  fixed,
  language,
  lowered,
  parts,
  plural,
  speak,
  speakIn,
  uncapital,
} from '../../../src/engine/words/language.ts';

afterEach(() => speakIn('en', new Map()));

describe('words', () => {
  it('should be English until another language is chosen, and then those that are translated', () => {
    const english = { find: 'Find', of: (found: number) => `of ${found}` };
    const before = speak('test/before', english);
    expect(before.find).toBe('Find');
    speakIn('de', new Map(['test/before', 'test/after'].map((name) => [name, { find: 'Suchen' }])));
    expect(language()).toBe('de');
    // Words that a worker already holds change with it; what is not translated stays English.
    expect([before.find, before.of(2)]).toEqual(['Suchen', 'of 2']);
    expect(speak('test/after', english).find).toBe('Suchen');
    expect(english.find).toBe('Find');
    speakIn('en', new Map());
    expect(before.find).toBe('Find');
  });
});

describe('numbers', () => {
  it('should go with the form that CLDR 44 names for them: one for 1 alone, other for 0, 1.5 and 2', () => {
    const forms = { one: 'print', other: 'prints' };
    for (const spoken of ['en', 'de'] as const) {
      speakIn(spoken, new Map());
      expect([0, 1, 1.5, 2].map((count) => plural(count, forms))).toEqual(['prints', 'print', 'prints', 'prints']);
    }
  });

  it('should be written as the language writes them', () => {
    expect([counted(1200, { one: 'print', other: 'prints' }), fixed(8.25, 1), dayLocale()]).toEqual(['1,200 prints', '8.3', 'en-GB']);
    speakIn('de', new Map());
    expect([counted(1200, { one: 'Druck', other: 'Drucke' }), fixed(8.25, 1), dayLocale()]).toEqual(['1.200 Drucke', '8,3', 'de']);
  });
});

describe('sentences', () => {
  it('should write fractions that they are given as the language does', () => {
    const english = { apart: (mm: number) => `${mm} mm`, of: ({ mm, name }: { mm: number; name: string }) => `${name}: ${mm} mm` };
    speakIn('de', new Map([['test/sentence', english]]));
    const say = speak('test/sentence', english);
    expect([say.apart(0.25), say.apart(2000), say.of({ mm: 1.5, name: 'v1.5' })]).toEqual(['0,25 mm', '2000 mm', 'v1.5: 1,5 mm']);
    speakIn('en', new Map());
    expect(say.apart(0.25)).toBe('0.25 mm');
  });
});

describe('phrases', () => {
  it('should keep the capitals of nouns where a language has them', () => {
    expect([uncapital('Planned on Monday'), lowered('Off balance')]).toEqual(['planned on Monday', 'off balance']);
    speakIn('de', new Map());
    expect([uncapital('Druck 3'), lowered('Deckung')]).toEqual(['Druck 3', 'Deckung']);
  });

  it('should hold values that are no text at their place', () => {
    const bold = { bold: 3 };
    expect(parts`All ${bold} hang`).toEqual(['All ', bold, ' hang']);
    expect(parts`${bold}${1}`).toEqual(['', bold, '', 1, '']);
  });
});
