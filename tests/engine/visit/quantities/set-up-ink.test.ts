import { describe, expect, it } from 'vitest';
import { bucketsOf } from '../../../../src/engine/visit/quantities/buckets.ts';
import { setUpInk } from '../../../../src/engine/visit/quantities/set-up-ink.ts';
import { planVisit, type PressPlan, type VisitInput } from '../../../../src/engine/visit/visit.ts';
import { inventedVisit } from '../../../helpers/printer-cases.ts';

function planned(input: VisitInput): PressPlan {
  let last: PressPlan | null = null;
  for (const step of planVisit(input, 50)) last = step;
  return last!;
}

describe('setUpInk', () => {
  it('should come, over the set-ups of an ink, to what the visit counts for sheets and proofs', () => {
    const invented = inventedVisit({ recipes: 3, sheets: 4, pulls: 8, screens: 5, seed: 'grams', odd: 3 });
    const input = { ...invented, runs: invented.runs.map((run) => ({ ...run, overs: 1, proofs: 1 })) };
    const plan = planned(input);
    const bySetUp = setUpInk(
      plan,
      input.runs.map(({ recipe }) => recipe),
      input.press,
    );
    expect(bySetUp).toHaveLength(plan.cards.length);
    for (const need of plan.inks) {
      const own = bySetUp.filter((_, at) => plan.cards[at]!.ink.key === need.key);
      expect(own.reduce((sum, { grams }) => sum + grams, 0)).toBeCloseTo(need.printedG + need.proofsG, 9);
      expect(own.reduce((sum, { areaM2 }) => sum + areaM2, 0)).toBeCloseTo(need.areaM2, 9);
    }
  });

  it('should fill buckets that together hold what there is to mix, lost each time one is changed', () => {
    const input = inventedVisit({ recipes: 3, sheets: 4, pulls: 8, screens: 5, seed: 'grams', odd: 3 });
    for (const beds of [1, 2]) {
      const press = { ...input.press, beds, safety: 0.1 };
      const plan = planned({ ...input, press });
      const buckets = bucketsOf(
        plan,
        input.runs.map(({ recipe }) => recipe),
        press,
      );
      expect(buckets).toHaveLength(plan.inkChanges);
      expect(buckets.flatMap(({ setUps }) => setUps.map(({ at }) => at)).sort((a, b) => a - b)).toEqual(plan.cards.map((_, at) => at));
      for (const need of plan.inks) {
        const own = buckets.filter(({ ink }) => ink === need.key);
        expect(own.reduce((sum, { lossG }) => sum + lossG, 0)).toBeCloseTo(need.lossG, 9);
        expect(own.reduce((sum, { totalG }) => sum + totalG, 0)).toBeCloseTo(need.grams, 9);
      }
    }
  });

  it('should give the test sheet of a visit one pull a set-up', () => {
    const input = { ...inventedVisit({ recipes: 1, sheets: 1, pulls: 3, screens: 3, seed: 'one' }), testSheet: true };
    const plan = planned(input);
    const recipes = input.runs.map(({ recipe }) => recipe);
    const without = setUpInk({ ...plan, testSheet: false }, recipes, input.press);
    // One sheet and one test: twice as much.
    for (const [at, { grams }] of setUpInk(plan, recipes, input.press).entries()) expect(grams).toBeCloseTo(2 * without[at]!.grams, 9);
  });
});
