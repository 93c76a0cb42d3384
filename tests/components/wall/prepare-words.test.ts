import { describe, expect, it } from 'vitest';
import { askedNotes, costSentence, firstSentence } from '../../../src/components/wall/prepare/prepare-words.ts';
import { costOf } from '../../../src/engine/explore/prepare/budget.ts';
import type { WantedPrint } from '../../../src/engine/explore/prepare/prepare.ts';
import { smallProject } from '../../helpers/small-project.ts';

const print = (weight: number, screens: string[]): WantedPrint => ({ name: 'No. 1', screens, inks: [], weight });

describe('askedNotes', () => {
  const { screens } = smallProject().drawer;
  const [first, second] = screens as [(typeof screens)[number], (typeof screens)[number]];
  const none = { made: [], toMake: [] };

  it('should say that all prints of a wall count alike, and only then', () => {
    expect(askedNotes([print(1, [first.id]), print(1, [second.id])], 2, none)).toEqual([
      'All 2 prints are chosen and count alike; select or pin some to say which matter most.',
    ]);
    expect(askedNotes([print(2, [first.id]), print(1, [second.id])], 2, none)).toEqual([]);
    expect(askedNotes([print(1, [first.id]), print(1, [second.id])], 3, none)).toEqual([]);
  });

  it('should name screens that no chosen print needs, made or to make', () => {
    const prints = [print(1, [first.id])];
    expect(askedNotes(prints, 9, { made: [first], toMake: [second] })).toEqual([
      `No print that is chosen needs screen ${second.number}, on the prep list.`,
    ]);
    expect(askedNotes(prints, 9, { made: [second], toMake: [] })).toEqual([
      `No print that is chosen needs screen ${second.number}, made already.`,
    ]);
    expect(askedNotes([], 9, { made: [second], toMake: [] })).toEqual([]);
  });
});

describe('firstSentence', () => {
  const steps = [0, 0, 0, 2, 5].map((printed, count) => ({ count, screens: [], inks: [], printed, bound: printed }));

  it('should tell with how many the first print comes, as long as none does', () => {
    expect(firstSentence(steps, 1)).toBe('The first comes with 3.');
    expect(firstSentence(steps, 3)).toBe('');
    expect(firstSentence(steps.slice(0, 3), 1)).toBe('');
  });
});

describe('costSentence', () => {
  const films = new Map([['s', 0.35]]);
  const step = (screens: number, inks: number) => ({ screens: Array<string>(screens).fill('s'), inks: Array<string>(inks).fill('i') });

  it('should say what a choice takes of film, money and hours, as far as that is known', () => {
    const budget = { moneyEach: 35, hoursEach: 1.5, inkMoneyEach: 12 };
    // Eight films of 0.35 m²; 8 × 35 + 2 × 12. Nothing was said of how long an ink takes.
    expect(costSentence(costOf(budget, films, step(8, 0)))).toBe('That takes 2.80 m² of film, 280 of money and 12 hours of work.');
    expect(costSentence(costOf(budget, films, step(8, 2)))).toBe('That takes 2.80 m² of film and 304 of money.');
    // Film by its price beside what a screen costs, or by itself: 8 × (35 + 0.35 × 20), 8 × 0.35 × 20.
    expect(costSentence(costOf({ ...budget, filmMoneyM2: 20 }, films, step(8, 0)))).toContain('336 of money');
    expect(costSentence(costOf({ filmMoneyM2: 20 }, films, step(8, 0)))).toBe('That takes 2.80 m² of film and 56 of money.');
    expect(costSentence(costOf({}, films, step(1, 0)))).toBe('That takes 0.35 m² of film.');
    expect(costSentence(costOf({}, films, step(0, 0)))).toBe('');
  });
});
