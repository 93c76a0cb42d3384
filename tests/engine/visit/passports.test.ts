import { describe, expect, it } from 'vitest';
import { recipeOf } from '../../../src/engine/recipe/write.ts';
import { passportsOf } from '../../../src/engine/visit/passports.ts';
import { planVisit, type PressPlan } from '../../../src/engine/visit/visit.ts';
import { smallProject } from '../../helpers/small-project.ts';

const { bench, drawer, press } = smallProject();
const first = recipeOf(bench, drawer, { id: 'a', title: 'First' });
const turned = recipeOf([...bench].reverse(), drawer, { id: 'b', title: 'Turned' });

describe('passportsOf', () => {
  it('should hold every sheet once, with all the set-ups that it goes through', () => {
    let last: PressPlan | null = null;
    for (const step of planVisit(
      {
        runs: [
          { recipe: first, sheets: 5 },
          { recipe: turned, sheets: 2 },
        ],
        minDeltaE: 1,
        press,
        seed: 'x',
      },
      100,
    ))
      last = step;
    const plan = last!;
    const all = passportsOf(plan);
    expect(all.flatMap(({ sheets }) => sheets).sort((a, b) => a - b)).toEqual([1, 2, 3, 4, 5, 6, 7]);
    for (const { sheets, setUps } of all) {
      for (const [at, card] of plan.cards.entries()) {
        for (const sheet of sheets) expect(card.sheets.includes(sheet)).toBe(setUps.includes(at));
      }
    }
  });

  it('should part sheets by recipe and by way, and keep one that nothing prints on', () => {
    const cards = [{ sheets: [1, 2, 3] }, { sheets: [1, 3] }];
    const sheets = [0, 0, 1, 1].map((recipe, i) => ({ number: i + 1, recipe }));
    expect(passportsOf({ cards, sheets } as unknown as PressPlan)).toEqual([
      { recipe: 0, sheets: [1], setUps: [0, 1] },
      { recipe: 0, sheets: [2], setUps: [0] },
      { recipe: 1, sheets: [3], setUps: [0, 1] },
      { recipe: 1, sheets: [4], setUps: [] },
    ]);
  });
});
