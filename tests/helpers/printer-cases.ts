import { randomFrom } from '../../src/engine/base/random.ts';
import { demoInks } from '../../src/engine/ink/demo/demo-inks.ts';
import { DEMO_PAPER } from '../../src/engine/ink/demo/demo-paper.ts';
import type { Recipe } from '../../src/engine/recipe/types.ts';
import { recipeOf } from '../../src/engine/recipe/write.ts';
import type { Pull } from '../../src/engine/stack/types.ts';
import type { Studio } from '../../src/engine/studio/studio.ts';
import { usualExtras } from '../../src/engine/visit/paper-needs.ts';
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
export function rectangles(screens: number, seed: string): Studio {
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

/** A stack of which every recipe of a job is a change; invented. */
function jobRecipes(job: 'A' | 'B'): Recipe[] {
  const drawer = rectangles(20, job);
  const random = randomFrom(`job ${job}`);
  const base = Array.from({ length: 20 }, (_, p) => pullOf(`p${p + 1}`, `s${p + 1}`, random.pick(INKS.slice(0, 4))));
  return Array.from({ length: job === 'A' ? 6 : 30 }, (_, r) => {
    const stack = base.map((pull): Pull => ({
      ...pull,
      ink: random.int(3) === 0 ? random.pick(INKS.slice(0, 4)) : pull.ink,
      dxMm: random.int(job === 'A' ? 9 : 6) === 0 ? 1 + random.int(2) : 0,
      strokes: random.int(8) === 0 ? 2 : 1,
    }));
    // Some neighbours change places, as in prints that come from one wall.
    for (let at = 1; at < stack.length; at++) if (random.int(2) === 0) [stack[at - 1], stack[at]] = [stack[at]!, stack[at - 1]!];
    return recipeOf(stack, drawer, { id: `r${r + 1}`, title: `Print ${r + 1}` });
  });
}

/** Job A, 6 recipes × 5 sheets × 20 pulls, and job B, 30 unique sheets × 20 pulls, with what is printed beside them; invented. */
export function jobVisit(job: 'A' | 'B', press: VisitFigures = CASE_PRESS): VisitInput {
  const sheets = job === 'A' ? 5 : 1;
  return {
    runs: jobRecipes(job).map((recipe) => ({ recipe, sheets, ...usualExtras(sheets, press) })),
    minDeltaE: 1,
    press,
    seed: job,
    testSheet: job === 'B',
  };
}
