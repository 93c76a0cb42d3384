import { describe, expect, it } from 'vitest';
import { askedNotes, firstSentence } from '../../../src/components/wall/prepare/prepare-words.ts';
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
