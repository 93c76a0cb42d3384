import { randomFrom } from '../../src/engine/base/random.ts';
import { recipeOf } from '../../src/engine/recipe/write.ts';
import type { Pull } from '../../src/engine/stack/types.ts';
import { usualExtras } from '../../src/engine/visit/paper-needs.ts';
import type { VisitInput } from '../../src/engine/visit/visit.ts';
import { CASE_PRESS, rectangles } from './printer-cases.ts';
import { pullOf } from './small-project.ts';

const INKS = ['rust', 'weed', 'foam', 'tar', 'shoal', 'dusk'];

/**
 * 30 unique prints of 20 pulls through 20 screens, each screen in up to six inks, at three offsets and
 * with one or two strokes, for which a plan needs about 200 set-ups; invented.
 */
export function hardVisit(): VisitInput {
  const seed = 'hard';
  const drawer = rectangles(20, seed);
  const random = randomFrom(seed);
  const base = Array.from({ length: 20 }, (_, p) => pullOf(`p${p + 1}`, `s${p + 1}`, random.pick(INKS)));
  const runs = Array.from({ length: 30 }, (_, r) => {
    const stack = base.map((pull): Pull => ({
      ...pull,
      ink: random.int(3) === 0 ? random.pick(INKS) : pull.ink,
      dxMm: random.int(4) === 0 ? 1 + random.int(2) : 0,
      strokes: random.int(4) === 0 ? 2 : 1,
    }));
    // Some neighbours change places, as in prints that come from one wall.
    for (let at = 1; at < stack.length; at++) if (random.int(2) === 0) [stack[at - 1], stack[at]] = [stack[at]!, stack[at - 1]!];
    const recipe = recipeOf(stack, drawer, { id: `r${r + 1}`, title: `Print ${r + 1}` });
    return { recipe, sheets: 1, ...usualExtras(1, CASE_PRESS) };
  });
  return { runs, minDeltaE: 1, press: CASE_PRESS, seed, testSheet: true };
}
