import { html, nothing } from 'lit';
import { entryAt } from '../../../engine/base/at.ts';
import { asTried, testRecipe, type TestSheet } from '../../../engine/log/test-sheet.ts';
import type { Happening } from '../../../engine/log/types.ts';
import type { Recipe } from '../../../engine/recipe/types.ts';
import { say } from '../../words/en/ui/log.ts';
import '../kit/fold.ts';
import { pullInWords } from '../../words/log-words.ts';
import { printImage } from '../print/print-image.ts';
import type { StatePictures } from '../print/state-pictures.ts';

/** By the visit's recipes: a picture goes by its recipe, so there is one. */
const recipes = new WeakMap<readonly Recipe[], Recipe>();

function recipeFor(all: readonly Recipe[]): Recipe {
  const known = recipes.get(all) ?? testRecipe(all);
  recipes.set(all, known);
  return known;
}

/** The test sheet among the sheets of a visit: what was tried on it, and where it lies. */
export function testEntry(
  { test, of }: { test: TestSheet; /** The recipes that the visit began with. */ of: readonly Recipe[] },
  pictures: StatePictures,
  add: (happenings: Happening[]) => void,
) {
  const { number, tried, torn, triedBefore, box } = test;
  const recipe = recipeFor(of);
  const pulls = tried.map(({ event, recipe: r, pull }) => asTried(r, pull, `${pull.id}~${event.id}`));
  return html`<li aria-label=${say.testSheet(number)}>
    ${printImage(pictures.of(recipe, pulls), say.testSheetAsPulled(number), recipe.paper.widthMm / recipe.paper.heightMm)}
    <p class="head"><span class="number">${number}</span></p>
    <p class="small title">${say.testSheet2}</p>
    <p class="soft small">${say.setUpsTried(tried.length, torn.length === 0 ? '' : say.freshOneTornAfter(torn.length === 1 ? say.oneWas : say.were(torn.length), triedBefore.length))}</p>
    <label class="small"
      >${say.liesIn}
      <input
        type="text"
        maxlength="200"
        aria-label=${say.whereTestSheetLies(number)}
        placeholder=${say.boxOrDrawer}
        .value=${box}
        @change=${(event: Event) => add([{ kind: 'placed', sheet: number, box: (event.target as HTMLInputElement).value.trim() }])}
    /></label>
    ${
      tried.length === 0
        ? nothing
        : html`<ps-fold quiet class="small" label=${say.whatHappened}>
          <ol>
            ${tried.map(
              ({ event, recipe: r, pull }) => html`<li style="display: list-item">
                ${say.triedAsOnSheet(pullInWords(pull, entryAt(of, r)), event.of)}
                <button class="quiet" @click=${() => add([{ kind: 'undone', sheet: number, event: event.id }])}>${say.undo}</button>
              </li>`,
            )}
          </ol>
        </ps-fold>`
    }
  </li>`;
}
