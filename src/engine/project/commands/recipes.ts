import { EngineError } from '../../base/error.ts';
import { MOST_LABELS, MOST_SIGNS_OF_LABEL } from '../../recipe/types.ts';
import { say } from '../../words/en/project/commands.ts';
import { find } from './checks.ts';
import { removeRecipe } from './chest.ts';
import type { RulesOf } from './rule.ts';

/** What can be done to several recipes together. */
export type RecipesCommand =
  /** Gives them a label, or takes it from them. */
  | { kind: 'label-recipes'; recipes: readonly string[]; label: string; on: boolean }
  | { kind: 'remove-recipes'; recipes: readonly string[] };

/** How it is done. */
export const RECIPES_RULES: RulesOf<RecipesCommand> = {
  'label-recipes': {
    label: say.labelRecipes,
    change(draft, { recipes, label: typed, on }) {
      const label = typed.trim();
      if (label === '' || label.length > MOST_SIGNS_OF_LABEL) {
        throw new EngineError('command.label', say.labelHas1To(MOST_SIGNS_OF_LABEL));
      }
      for (const id of recipes) {
        const recipe = find(draft.recipes, id, 'recipe');
        const others = (recipe.labels ?? []).filter((one) => one !== label);
        if (on && others.length >= MOST_LABELS) {
          throw new EngineError('command.label', say.hasLabelsAlreadyTake(recipe.title, MOST_LABELS));
        }
        const labels = on ? [...others, label] : others;
        if (labels.length === 0) delete recipe.labels;
        else recipe.labels = labels;
      }
    },
  },
  'remove-recipes': {
    label: say.removeRecipes,
    change(draft, { recipes }) {
      for (const id of recipes) removeRecipe(draft, id);
    },
  },
};
