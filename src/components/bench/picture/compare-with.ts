import { html } from 'lit';
import type { Recipe } from '../../../engine/recipe/types.ts';
import type { Pull } from '../../../engine/stack/types.ts';
import type { Studio } from '../../../engine/studio/studio.ts';
import { recipeStudio } from '../../ui/print/recipe-studio.ts';
import { say } from '../../words/en/bench/picture.ts';

/** Chosen to compare with: nothing, the stack as it was opened, or a recipe by its id. */
export const NONE = '';
export const AS_OPENED = 'opened';

/** A stack beside the one on the Bench, on the paper and in the inks of its own drawer. */
export interface OtherStack {
  name: string;
  pulls: readonly Pull[];
  drawer: Studio;
}

/** The stack to compare with; null when none is chosen or its recipe is gone. */
export function otherStack(chosen: string, opened: Pick<OtherStack, 'pulls' | 'drawer'>, recipes: readonly Recipe[]): OtherStack | null {
  if (chosen === AS_OPENED) return { name: say.asItWasOpened, pulls: opened.pulls, drawer: opened.drawer };
  const recipe = recipes.find((entry) => entry.id === chosen);
  return recipe === undefined ? null : { name: recipe.title, pulls: recipe.pulls, drawer: recipeStudio(recipe) };
}

/** Where it is chosen. */
export function compareChoice(chosen: string, recipes: readonly Recipe[], choose: (chosen: string) => void) {
  return html`<label class="wide">
    ${say.compareWith}
    <select .value=${chosen} @change=${(event: Event) => choose((event.target as HTMLSelectElement).value)}>
      <option value=${NONE} ?selected=${chosen === NONE}>${say.nothing}</option>
      <option value=${AS_OPENED} ?selected=${chosen === AS_OPENED}>${say.stackAsItWas}</option>
      ${recipes.map((recipe) => html`<option value=${recipe.id} ?selected=${chosen === recipe.id}>${recipe.title}</option>`)}
    </select>
  </label>`;
}
