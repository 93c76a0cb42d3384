import { EngineError } from '../base/error.ts';
import { printingOf } from '../ink/film/printing.ts';
import type { Pull } from '../stack/types.ts';
import type { Studio } from '../studio/studio.ts';
import { say } from '../words/en/recipe/recipe.ts';
import { cutLineage, type PrintLineage } from './lineage.ts';
import { RECIPE_FORMAT, RECIPE_VERSION, type Recipe } from './types.ts';

/** What a recipe carries beside its stack. */
export interface RecipeHead {
  id: string;
  title: string;
  note?: string;
  seed?: string;
  index?: number;
  parent?: string;
  lineage?: PrintLineage;
}

function named<T extends { id: string }>(all: readonly T[], wanted: ReadonlySet<string>, list: string): T[] {
  const found = all.filter((entry) => wanted.has(entry.id));
  if (found.length < wanted.size) {
    const missing = [...wanted].find((id) => !all.some((entry) => entry.id === id));
    throw new EngineError('recipe.missing', say.stackNamesWhichIs(missing ?? '', list));
  }
  return found;
}

/**
 * Makes a self-contained recipe of a stack: with the shapes, screens, inks and paper that it uses, and
 * the stock inks that its inks are mixed from.
 * @param pulls first down first, at least one
 * @throws EngineError 'recipe.missing' when a pull names what the studio lacks, 'recipe.empty' without pulls
 */
export function recipeOf(pulls: readonly Pull[], studio: Studio, head: RecipeHead): Recipe {
  if (pulls.length === 0) throw new EngineError('recipe.empty', say.recipeNeedsAtLeast);
  const screens = named(studio.screens, new Set(pulls.map((pull) => pull.screen)), 'screens');
  const printed = named(studio.inks, new Set(pulls.map((pull) => pull.ink)), 'inks');
  const inks = named(studio.inks, new Set(printed.flatMap((ink) => [ink.id, ...(ink.mix ?? []).map((part) => part.ink)])), 'inks');
  const shapes = named(studio.shapes, new Set(screens.flatMap((screen) => screen.placed.map((placed) => placed.shape))), 'shapes');
  return structuredCloneJson({
    format: RECIPE_FORMAT,
    version: RECIPE_VERSION,
    id: head.id,
    title: head.title,
    note: head.note ?? '',
    seed: head.seed ?? '',
    index: head.index ?? -1,
    ...(head.parent === undefined ? {} : { parent: head.parent }),
    ...(head.lineage === undefined ? {} : { lineage: cutLineage(head.lineage) }),
    paper: studio.paper,
    strokeGain: studio.strokeGain,
    ...printingOf(studio),
    shapes,
    screens,
    inks,
    pulls: [...pulls],
  });
}

/** A recipe must not share parts with the studio: later edits there would reach into it. */
function structuredCloneJson(recipe: Recipe): Recipe {
  return JSON.parse(JSON.stringify(recipe)) as Recipe;
}

/** The text of a recipe file. */
export function writeRecipe(recipe: Recipe): string {
  return `${JSON.stringify(recipe, null, 1)}\n`;
}

/** The studio that a recipe carries, to print or draw it from. */
export function studioOfRecipe(recipe: Recipe): Studio {
  return {
    shapes: recipe.shapes,
    screens: recipe.screens,
    inks: recipe.inks,
    paper: recipe.paper,
    strokeGain: recipe.strokeGain,
    ...printingOf(recipe),
  };
}
