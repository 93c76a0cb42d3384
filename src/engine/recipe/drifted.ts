import { f64 } from '../base/at.ts';
import { deltaE2000Values } from '../colour/delta-e.ts';
import { reread } from '../ink/characterise/reread.ts';
import type { Surface } from '../ink/film/saunderson.ts';
import type { Ink } from '../ink/types.ts';
import { cellLab } from '../stack/appearance.ts';
import { buildCellMap } from '../stack/cell-map.ts';
import { stackLayers } from '../stack/layers.ts';
import { placedSpans } from '../stack/screen-spans.ts';
import type { Recipe } from './types.ts';
import { studioOfRecipe } from './write.ts';

/** Rows of the sheet that are looked at. */
const ROWS = 300;

/** What an ink of today makes of a recipe. */
export interface DriftedRecipe {
  recipe: Recipe;
  /** ΔE00 between the recipe's own ink and that of today: mean over the area under the ink, and the most of a square millimetre or more. */
  mean: number;
  most: number;
}

/**
 * Recipes predicted again with an ink as it is today; their other inks stay as they were.
 * @param ink of today, by its id the ink of the recipes; curves found through `surface`
 * @returns those that pull it, in the order given
 * @throws EngineError as stackLayers and placedSpans
 */
export function driftedRecipes(recipes: readonly Recipe[], ink: Ink, surface?: Surface): DriftedRecipe[] {
  return recipes
    .filter(({ pulls }) => pulls.some((pull) => pull.ink === ink.id))
    .map((recipe) => ({ recipe, ...driftOf(recipe, ink, surface) }));
}

function driftOf(recipe: Recipe, ink: Ink, surface: Surface | undefined): Omit<DriftedRecipe, 'recipe'> {
  const then = studioOfRecipe(recipe);
  const now = { ...then, inks: then.inks.map((own) => (own.id === ink.id ? reread(ink, surface, recipe.surface) : own)) };
  const { widthMm, heightMm, reflectance } = recipe.paper;
  const grid = { widthMm, heightMm, rows: ROWS };
  const stack = { pulls: recipe.pulls };
  const map = buildCellMap(placedSpans(stack, then, grid), grid);
  const before = cellLab(map, stackLayers(stack, then), reflectance);
  const after = cellLab(map, stackLayers(stack, now), reflectance);
  const under = recipe.pulls.flatMap((pull, bit) => (pull.ink === ink.id ? [bit] : []));
  let area = 0;
  let sum = 0;
  let most = 0;
  for (let cell = 1; cell < map.cells; cell++) {
    const covered = under.some((bit) => (((map.cover[cell * map.words + (bit >> 5)] ?? 0) >>> (bit & 31)) & 1) === 1);
    const mm2 = f64(map.areaMm2, cell);
    if (!covered || mm2 <= 0) continue;
    const [i, j, k] = [cell * 3, cell * 3 + 1, cell * 3 + 2];
    const deltaE = deltaE2000Values(f64(before, i), f64(before, j), f64(before, k), f64(after, i), f64(after, j), f64(after, k));
    area += mm2;
    sum += mm2 * deltaE;
    if (mm2 >= 1) most = Math.max(most, deltaE);
  }
  return { mean: area > 0 ? sum / area : 0, most };
}
