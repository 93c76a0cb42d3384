import type { Draft } from 'immer';
import type { TasteChoice } from '../../explore/taste/choices.ts';
import { printInks } from '../../ink/mix/mix.ts';
import type { Recipe } from '../../recipe/types.ts';
import { say } from '../../words/en/project/commands.ts';
import { adoptRecipe } from '../adopt.ts';
import type { Project } from '../types.ts';
import { find, removeById, requireFew, requireFree } from './checks.ts';
import { setBench } from './open.ts';
import { fieldsOf, type RulesOf } from './rule.ts';
import { teach } from './wall.ts';

/** What can be done to the recipes that are kept. */
export type ChestCommand =
  /** With what keeping it says of one's taste. */
  | { kind: 'keep-recipe'; recipe: Recipe; taught?: readonly TasteChoice[] }
  | { kind: 'change-recipe'; recipe: string; title?: string; note?: string }
  | { kind: 'remove-recipe'; recipe: string }
  | { kind: 'open-recipe'; recipe: string };

/**
 * Puts a recipe into the chest.
 * @throws EngineError 'command.double' when its id is taken, 'command.pulls' when its stack is too long
 */
export function keepRecipe(draft: Draft<Project>, recipe: Recipe): void {
  requireFree(draft.recipes, recipe, 'recipe');
  requireFew(recipe.pulls.length);
  draft.recipes.push(recipe as Draft<Recipe>);
}

/**
 * Takes a recipe out of the chest, with what was planned and said of it.
 * @throws EngineError 'command.unknown' when it is not there
 */
export function removeRecipe(draft: Draft<Project>, recipe: string): void {
  removeById(draft.recipes, recipe, 'recipe');
  draft.visit = draft.visit.filter((run) => run.recipe !== recipe);
  if (draft.editions !== undefined) draft.editions = draft.editions.filter((edition) => edition.recipe !== recipe);
}

/** How it is done. */
export const CHEST_RULES: RulesOf<ChestCommand> = {
  'keep-recipe': {
    label: say.keepRecipe,
    change(draft, { recipe, taught = [] }) {
      keepRecipe(draft, recipe);
      teach(draft, taught);
    },
  },
  'change-recipe': {
    label: say.describeRecipe,
    mergeKey: (command) => `${command.kind}:${command.recipe}:${fieldsOf(command)}`,
    change(draft, { recipe: id, title, note }) {
      const recipe = find(draft.recipes, id, 'recipe');
      if (title !== undefined) recipe.title = title;
      if (note !== undefined) recipe.note = note;
    },
  },
  'remove-recipe': {
    label: say.removeRecipe,
    change: (draft, { recipe }) => removeRecipe(draft, recipe),
  },
  'open-recipe': {
    label: say.openRecipe,
    change(draft, { recipe: id }) {
      const recipe = find(draft.recipes, id, 'recipe');
      setBench(draft, adoptRecipe(draft.drawer, recipe), { kind: 'recipe', title: recipe.title, recipe: id });
      draft.explore.palette = printInks(draft.drawer.inks).map((ink) => ink.id);
    },
  },
};
