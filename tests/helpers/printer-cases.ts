import { randomFrom } from '../../src/engine/base/random.ts';
import { demoInks } from '../../src/engine/ink/demo/demo-inks.ts';
import { DEMO_PAPER } from '../../src/engine/ink/demo/demo-paper.ts';
import type { Recipe } from '../../src/engine/recipe/types.ts';
import { recipeOf } from '../../src/engine/recipe/write.ts';
import type { Pull } from '../../src/engine/stack/types.ts';
import type { Studio } from '../../src/engine/studio/studio.ts';
import type { VisitFigures } from '../../src/engine/visit/visit-figures.ts';
import type { VisitInput } from '../../src/engine/visit/visit.ts';
import { pullOf, rectangle, screenAt } from './small-project.ts';

/** What an invented visit is made of. */
interface CaseSize {
  recipes: number;
  sheets: number;
  pulls: number;
  screens: number;
  seed: string;
  /** One pull in so many lies off its place, or takes two strokes; 0 = none. */
  odd?: number;
}

const INKS = ['rust', 'weed', 'foam', 'tar', 'shoal', 'dusk'];

/** A drawer of rectangles that overlap here and there; invented. */
function rectangles(screens: number, seed: string): Studio {
  const random = randomFrom(`rectangles ${seed}`);
  const shapes = [rectangle('wide', 220, 90), rectangle('tall', 90, 240), rectangle('small', 110, 110)];
  const placed = Array.from({ length: screens }, (_, i) =>
    screenAt(`s${i + 1}`, i + 1, random.pick(['wide', 'tall', 'small']), 90 + random.int(380), 100 + random.int(560)),
  );
  return { shapes, screens: placed, inks: demoInks(), paper: DEMO_PAPER, strokeGain: 0.4 };
}

/** Invented recipes that share one drawer, the same for the same size and seed. */
function inventedRecipes({ recipes, pulls, screens, seed, odd = 0 }: CaseSize): Recipe[] {
  const drawer = rectangles(screens, seed);
  const random = randomFrom(`recipes ${seed}`);
  return Array.from({ length: recipes }, (_, r) => {
    const stack = Array.from({ length: pulls }, (_each, p): Pull => {
      const off = odd > 0 && random.int(odd) === 0;
      const far = off ? random.int(7) / 10 - 0.3 : 0;
      return pullOf(`p${p + 1}`, `s${1 + random.int(screens)}`, random.pick(INKS), {
        dxMm: Math.round(10 * far) / 10,
        strokes: odd > 0 && random.int(odd) === 0 ? 2 : 1,
      });
    });
    return recipeOf(stack, drawer, { id: `r${r + 1}`, title: `Print ${r + 1}` });
  });
}

/** Figures of a studio with one bed; common practice, no source. */
export const CASE_PRESS: VisitFigures = {
  pullsPerHour: 40,
  mountMinutes: 15,
  washUpMinutes: 15,
  registerMinutes: 5,
  days: 3,
  hoursPerDay: 7,
  transfer: 0.8,
  lossMl: 100,
  overs: 0.12,
};

/** A visit of invented recipes, as many sheets of each. */
export function inventedVisit(size: CaseSize, press: VisitFigures = CASE_PRESS): VisitInput {
  return { runs: inventedRecipes(size).map((recipe) => ({ recipe, sheets: size.sheets })), minDeltaE: 1, press, seed: size.seed };
}
