import { html, nothing } from 'lit';
import { labelsOf, type RecipeSort, type RecipeView } from '../../../engine/recipe/chest/sorted-recipes.ts';
import type { Recipe } from '../../../engine/recipe/types.ts';
import '../../ui/kit/select.ts';
import { say } from '../../words/en/chest/shelf.ts';

/** How the recipes are shown. */
export type ShelfLook = 'large' | 'small' | 'tree';

const SORTS: readonly (readonly [RecipeSort, string])[] = [
  ['oldest', say.oldestFirst],
  ['newest', say.newestFirst],
  ['title', say.byTitle],
  ['fewest pulls', say.fewestPullsFirst],
  ['most pulls', say.mostPullsFirst],
  ['fewest inks', say.fewestInksFirst],
];
const LOOKS: readonly (readonly [ShelfLook, string])[] = [
  ['large', say.large],
  ['small', say.small],
  ['tree', say.asTheyCameOf],
];

interface ShelfTools {
  recipes: readonly Recipe[];
  shown: number;
  view: RecipeView;
  look: ShelfLook;
  selecting: boolean;
  setView(change: Partial<RecipeView>): void;
  setLook(look: ShelfLook): void;
  setSelecting(on: boolean): void;
}

/** Search, sort, labels and size of what hangs in the Chest. */
export function shelfTools({ recipes, shown, view, look, selecting, setView, setLook, setSelecting }: ShelfTools) {
  const labels = labelsOf(recipes);
  return html`<div class="row shelf" role="group" aria-label=${say.whichRecipesAndHow}>
    <input
      type="search"
      aria-label=${say.findRecipe}
      placeholder=${say.titleNoteLabelInk}
      .value=${view.words}
      @input=${(event: Event) => setView({ words: (event.target as HTMLInputElement).value })}
    />
    <select aria-label=${say.sort} @change=${(event: Event) => setView({ sort: (event.target as HTMLSelectElement).value as RecipeSort })}>
      ${SORTS.map(([value, words]) => html`<option value=${value} ?selected=${value === view.sort}>${words}</option>`)}
    </select>
    ${
      labels.length === 0
        ? nothing
        : html`<select aria-label=${say.label} @change=${(event: Event) => setView({ label: (event.target as HTMLSelectElement).value })}>
          <option value="" ?selected=${view.label === ''}>${say.anyLabel}</option>
          ${labels.map((label) => html`<option value=${label} ?selected=${label === view.label}>${label}</option>`)}
        </select>`
    }
    <span class="row looks" role="group" aria-label=${say.shown}>
      ${LOOKS.map(([value, words]) => html`<button aria-pressed=${look === value} @click=${() => setLook(value)}>${words}</button>`)}
    </span>
    <button aria-pressed=${selecting} @click=${() => setSelecting(!selecting)}>${say.selectSeveral}</button>
    ${shown === recipes.length ? nothing : html`<span class="soft small" role="status">${say.of(shown, recipes.length)}</span>`}
  </div>`;
}
