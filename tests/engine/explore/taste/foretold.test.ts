import { describe, expect, it } from 'vitest';
import { randomFrom, type Random } from '../../../../src/engine/base/random.ts';
import { choicesOnWall, type TasteChoice } from '../../../../src/engine/explore/taste/choices.ts';
import { foretold } from '../../../../src/engine/explore/taste/foretold.ts';
import { TRAITS } from '../../../../src/engine/explore/taste/traits.ts';
import { all, answers, known, prints, share, standard, worths } from './simulated-choices.ts';

/** Prints that are marked on the wall: those that are worth most on that day, each over what hangs beside it. */
function marks(worth: readonly number[], random: Random, count: number): TasteChoice[] {
  const today = worth.map((each) => each - Math.log(-Math.log(share(random))));
  const chosen = all.toSorted((a, b) => today[b]! - today[a]!).slice(0, count);
  return choicesOnWall({ way: 'selected', chosen, all: new Set(chosen), sequence: all, print: (index) => known[index] });
}

const indifferent = prints.map(() => 0);
const light = worths(standard.map((row) => row[TRAITS.indexOf('light')]!));

describe('how many choices are foretold', () => {
  it('should be about half, and seldom called more than luck, where prints are marked by chance', () => {
    let [right, of, clear] = [0, 0, 0];
    for (let run = 0; run < 12; run++) {
      const found = foretold(marks(indifferent, randomFrom(`chance ${run}`), 20), prints)!;
      right += found.right;
      of += found.of;
      if (found.standing === 'clear') clear++;
    }
    // 240 tosses: half, give or take three standard deviations of some 1.3 times a coin's.
    expect(Math.abs(right / of - 0.5)).toBeLessThan(0.12);
    expect(clear).toBeLessThanOrEqual(2);
  });

  it('should be clearly more where they are marked by a taste', () => {
    const standings = [0, 1, 2, 3].map((run) => foretold(marks(light, randomFrom(`light ${run}`), 20), prints)!.standing);
    expect(standings.filter((standing) => standing === 'clear').length).toBeGreaterThanOrEqual(3);
    expect(standings).not.toContain('nothing');
  });

  it('should not count pairs that were asked because they were open, and need ten others', () => {
    const some = answers(light, all, randomFrom('asked'), 24);
    const asked = some.map((choice, i): TasteChoice => (i < 14 ? { ...choice, open: true } : choice));
    expect(foretold(some, prints)!.of).toBe(24);
    expect(foretold(asked, prints)!.of).toBe(10);
    expect(foretold(asked.slice(0, -1), prints)).toBe(null);
  });

  it('should say that nothing is learnt where each answer is taken back by another', () => {
    const some = answers(light, all, randomFrom('both ways'), 8);
    const back = some.map((choice): TasteChoice => ({ way: 'compared', chosen: choice.over[0]!, over: [choice.chosen] }));
    expect(foretold([...some, ...back], prints)!.standing).toBe('nothing');
  });
});
