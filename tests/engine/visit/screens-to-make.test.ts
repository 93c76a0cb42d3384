import { describe, expect, it } from 'vitest';
import type { Recipe } from '../../../src/engine/recipe/types.ts';
import { recipeOf } from '../../../src/engine/recipe/write.ts';
import { screensToMake } from '../../../src/engine/visit/screens-to-make.ts';
import { planVisit, type PressPlan } from '../../../src/engine/visit/visit.ts';
import { smallProject } from '../../helpers/small-project.ts';

const { bench, drawer, press } = smallProject();
const first = recipeOf(bench, drawer, { id: 'a', title: 'First' });

function planned(recipes: readonly Recipe[]): PressPlan {
  let last: PressPlan | null = null;
  for (const step of planVisit({ runs: recipes.map((recipe) => ({ recipe, sheets: 2 })), minDeltaE: 1, press, seed: 'x' }, 100))
    last = step;
  return last!;
}

/** A recipe on a sheet of its own size. */
function onPaper(recipe: Recipe, id: string, widthMm: number, heightMm: number): Recipe {
  return { ...recipe, id, title: id, paper: { ...recipe.paper, widthMm, heightMm } };
}

describe('screensToMake', () => {
  it('should count each frame once, with film as large as its sheet', () => {
    const turned = recipeOf([...bench].reverse(), drawer, { id: 'b', title: 'Turned' });
    const plan = planned([first, turned]);
    const { screens, filmM2 } = screensToMake(plan, [first, turned]);
    const { widthMm, heightMm } = first.paper;
    expect(screens.map(({ screen }) => screen.key).sort()).toEqual(['1', '2', '3']);
    expect(screens.reduce((sum, { mounts }) => sum + mounts, 0)).toBe(plan.mounts);
    expect(screens.map((screen) => screen.first)).toEqual(screens.map((screen) => screen.first).sort((a, b) => a - b));
    expect(filmM2).toBeCloseTo((3 * widthMm * heightMm) / 1e6, 9);
    // What is made takes no film.
    const left = screensToMake(plan, [first, turned], (key) => key === '2');
    expect(left.screens).toEqual(screens);
    expect(left.filmM2).toBeCloseTo((2 * widthMm * heightMm) / 1e6, 9);
  });

  it('should cover the sheets of every recipe that a frame prints, whichever comes first', () => {
    // By hand: two frames print 420 × 400 and 300 × 594 mm, so their film is 420 × 594 mm = 0.24948 m²;
    // one prints the wide sheet alone, 420 × 400 mm = 0.168 m².
    const wide = onPaper(first, 'wide', 420, 400);
    const high = onPaper(recipeOf(bench.slice(0, 2), drawer, { id: 'h', title: 'h' }), 'high', 300, 594);
    for (const recipes of [
      [wide, high],
      [high, wide],
    ]) {
      const { screens, filmM2 } = screensToMake(planned(recipes), recipes);
      const areas = new Map(screens.map(({ screen, areaM2 }) => [screen.key, areaM2]));
      expect(areas.get('1')).toBeCloseTo(0.24948, 9);
      expect(areas.get('2')).toBeCloseTo(0.24948, 9);
      expect(areas.get('3')).toBeCloseTo(0.168, 9);
      expect(filmM2).toBeCloseTo(0.66696, 9);
    }
  });
});
