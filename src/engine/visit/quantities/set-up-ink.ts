import { defined, entryAt, num } from '../../base/at.ts';
import { meshVolumeCm3PerM2 } from '../../ink/film/mesh.ts';
import type { Recipe } from '../../recipe/types.ts';
import { pullAreas } from '../ink-needs.ts';
import type { SetUpCard } from '../set-up-cards.ts';
import { type VisitFigures, wholeFigures } from '../visit-figures.ts';
import type { PressPlan } from '../visit.ts';
import { inkGrams } from './ink.ts';
import type { InkRun } from './types.ts';

/** What one set-up prints. */
export interface SetUpInk {
  /** Printed on all of its sheets, m². */
  areaM2: number;
  /** Wet ink that goes on them, g: what stays in screen and bucket, and the margin of safety, are counted once a bucket. */
  grams: number;
}

/**
 * Wet ink by set-up, proofs and overs too, as `visitInks` has it by ink: over all set-ups of an ink it
 * comes to what that counts as printed, and for proofs.
 * @param recipes by the index that the cards' states use
 * @returns one for each card
 * @throws EngineError 'quantities.bad-number', 'ink.bad-mesh' with a sentence
 */
export function setUpInk(plan: Pick<PressPlan, 'cards' | 'testSheet'>, recipes: readonly Recipe[], given: VisitFigures): SetUpInk[] {
  const { transfer } = wholeFigures(given);
  return plan.cards.map(({ ink, states, test }) => {
    const sum = { areaM2: 0, grams: 0 };
    for (const [s, { recipe: r, prints, sheets }] of states.entries()) {
      const recipe = entryAt(recipes, r);
      const areas = pullAreas(recipe);
      const runs = prints.map((at, p): InkRun => {
        const pull = entryAt(recipe.pulls, at);
        const screen = defined(recipe.screens.find(({ id }) => id === pull.screen));
        return {
          ink: ink.key,
          areaMm2: num(areas, at),
          sheets: sheets.length,
          proofs: plan.testSheet === true && isTested(test, { recipe: r, at, sheets }, s === 0 && p === 0) ? 1 : 0,
          strokes: pull.strokes,
          volumeCm3PerM2: meshVolumeCm3PerM2(screen.mesh),
        };
      });
      const densityGPerCm3 = { [ink.key]: ink.ink.densityGPerCm3 };
      for (const need of inkGrams(runs, { transfer, lossMl: 0, strokeGain: recipe.strokeGain, densityGPerCm3 })) {
        sum.areaM2 += need.areaM2;
        sum.grams += need.totalG;
      }
    }
    return sum;
  });
}

/** Whether the pull of some sheets is the one that is tried on the test sheet; orders kept from before do not say which: the first. */
function isTested(
  test: SetUpCard['test'],
  { recipe, at, sheets }: { recipe: number; at: number; sheets: readonly number[] },
  first: boolean,
): boolean {
  return test === undefined ? first : test.recipe === recipe && test.at === at && sheets.includes(test.sheet);
}
