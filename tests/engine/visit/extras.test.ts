import { describe, expect, it } from 'vitest';
import { recipeOf } from '../../../src/engine/recipe/write.ts';
import { workMinutes } from '../../../src/engine/visit/visit-times.ts';
import { type PressPlan, planVisit, type VisitInput } from '../../../src/engine/visit/visit.ts';
import { pullOf, smallProject } from '../../helpers/small-project.ts';

const { drawer, bench, press } = smallProject();
const first = recipeOf(bench, drawer, { id: 'a', title: 'First' });
const one = recipeOf([pullOf('x', 's1', 'rust')], drawer, { id: 'o', title: 'One' });
const figures = { ...press, mountMinutes: 0, washUpMinutes: 0, mixMinutes: 0, lunchMinutes: 0 };

function planned(change: Partial<VisitInput>): PressPlan {
  return [...planVisit({ runs: [], minDeltaE: 1, press: figures, seed: 'x', ...change }, 20)].at(-1)!;
}

function printMinutes({ parts }: PressPlan): number {
  return parts.filter(({ kind }) => kind === 'print').reduce((sum, { fromMinute, toMinute }) => sum + toMinute - fromMinute, 0);
}

describe('overs and proofs', () => {
  it('should be sheets with numbers, behind those that are wanted', () => {
    const { sheets, cards } = planned({
      runs: [
        { recipe: first, sheets: 3, overs: 1, proofs: 1 },
        { recipe: one, sheets: 2, overs: 1 },
      ],
    });
    expect(sheets.map(({ number, recipe, use }) => [number, recipe, use ?? 'good'])).toEqual([
      [6, 0, 'proof'],
      [1, 0, 'good'],
      [2, 0, 'good'],
      [3, 0, 'good'],
      [7, 0, 'over'],
      [4, 1, 'good'],
      [5, 1, 'good'],
      [8, 1, 'over'],
    ]);
    // Each of the first recipe's five goes through all of its set-ups.
    for (const number of [1, 2, 3, 6, 7]) expect(cards.filter((card) => card.sheets.includes(number))).toHaveLength(3);
  });

  it('should take the time, ink and rack places of any other sheet', () => {
    const bare = planned({ runs: [{ recipe: one, sheets: 10 }] });
    const with5 = planned({ runs: [{ recipe: one, sheets: 10, overs: 3, proofs: 2 }] });
    // 40 pulls an hour: a minute and a half for each.
    expect(printMinutes(bare)).toBeCloseTo(15, 6);
    expect(printMinutes(with5)).toBeCloseTo(22.5, 6);
    expect(with5.racksNeeded - bare.racksNeeded).toBe(5);
    const grams = ({ inks: [ink] }: PressPlan): number => ink!.printedG + ink!.proofsG;
    expect(grams(with5) / grams(bare)).toBeCloseTo(1.5, 9);
  });

  it('should try each set-up once on the test sheet of a run of unique prints', () => {
    const runs = [{ recipe: first, sheets: 1 }];
    const [bare, tested] = [planned({ runs }), planned({ runs, testSheet: true })];
    expect(tested.cards).toHaveLength(bare.cards.length);
    expect(printMinutes(tested) - printMinutes(bare)).toBeCloseTo(1.5 * bare.cards.length, 6);
    // One more pull of each kind: as much ink again.
    for (const [i, need] of tested.inks.entries()) expect(need.printedG + need.proofsG).toBeCloseTo(2 * bare.inks[i]!.printedG, 9);
  });
});

describe('time at the press', () => {
  it('should count the last wash-up and no lunch', () => {
    // 240 sheets at one a minute; mix 10, mount 15 and wash up 15, over a lunch of 30 at 13:00.
    const clock = { ...press, pullsPerHour: 60, mixMinutes: 10, lunchStartMinute: 13 * 60, lunchMinutes: 30, dayStartMinute: 9 * 60 + 30 };
    const plan = planned({ runs: [{ recipe: one, sheets: 240 }], press: clock });
    expect(plan.times[0]!.endMinute).toBe(10 + 15 + 240 + 30);
    expect(workMinutes(plan)).toBeCloseTo(10 + 15 + 240 + 15, 6);
  });
});
