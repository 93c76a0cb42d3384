import { f64 } from '../base/at.ts';
import { deltaE2000 } from '../colour/delta-e.ts';
import type { Lab } from '../ink/types.ts';
import type { Recipe } from '../recipe/types.ts';
import { studioOfRecipe } from '../recipe/write.ts';
import { cellLab } from '../stack/appearance.ts';
import { buildCellMap } from '../stack/cell-map.ts';
import { stackLayers } from '../stack/layers.ts';
import { placedSpans } from '../stack/screen-spans.ts';
import type { Pull } from '../stack/types.ts';
import { say } from '../words/en/visit/visit.ts';

/** Rows that a sheet is compared in: fine enough to rank choices by. */
const ROWS = 120;

/**
 * How far a print moves when pulls are left out: the mean ΔE00 over the sheet.
 * @returns for each list of kept pulls its mean ΔE00 against the whole recipe; no pulls = bare paper
 */
export function changeOfLeavingOut(recipe: Recipe, kept: readonly (readonly Pull[])[]): number[] {
  const studio = studioOfRecipe(recipe);
  const { widthMm, heightMm, reflectance } = recipe.paper;
  const grid = { widthMm, heightMm, rows: ROWS };
  const whole = { pulls: recipe.pulls };
  const map = buildCellMap(placedSpans(whole, studio, grid), grid);
  const labOf = (pulls: readonly Pull[]): Float64Array => cellLab(map, stackLayers({ pulls }, studio, whole), reflectance);
  const before = labOf(recipe.pulls);
  return kept.map((pulls) => {
    const after = labOf(pulls);
    let sum = 0;
    for (let cell = 0; cell < map.cells; cell++) {
      sum += f64(map.areaMm2, cell) * deltaE2000(at(before, cell), at(after, cell));
    }
    return sum / (widthMm * heightMm);
  });
}

function at(labs: Float64Array, cell: number): Lab {
  return [f64(labs, cell * 3), f64(labs, cell * 3 + 1), f64(labs, cell * 3 + 2)];
}

/**
 * A recipe without the pulls of some of its screens, as a recipe of its own.
 * @param id of the new recipe
 */
export function recipeWithout(recipe: Recipe, gone: readonly string[], id: string): Recipe {
  const left = recipe.screens.filter((screen) => gone.includes(screen.id)).map(({ number }) => number);
  const names = left.length < 2 ? `${left[0]}` : say.and(left.slice(0, -1).join(', '), left.at(-1) ?? '');
  const pulls = recipe.pulls.filter((pull) => !gone.includes(pull.screen));
  const screens = recipe.screens.filter((each) => pulls.some((pull) => pull.screen === each.id));
  const printed = recipe.inks.filter((ink) => pulls.some((pull) => pull.ink === ink.id));
  const inks = new Set(printed.flatMap((ink) => [ink.id, ...(ink.mix ?? []).map((part) => part.ink)]));
  const shapes = new Set(screens.flatMap((each) => each.placed.map((placed) => placed.shape)));
  return {
    ...recipe,
    id,
    title: say.without(recipe.title, names),
    seed: '',
    index: -1,
    pulls,
    screens,
    inks: recipe.inks.filter((ink) => inks.has(ink.id)),
    shapes: recipe.shapes.filter((shape) => shapes.has(shape.id)),
  };
}
