import { html, nothing } from 'lit';
import { entryAt } from '../../../engine/base/at.ts';
import { asTried, testRecipe, type TestSheet } from '../../../engine/log/test-sheet.ts';
import type { Happening } from '../../../engine/log/types.ts';
import type { Recipe } from '../../../engine/recipe/types.ts';
import { pullInWords } from '../../words/log-words.ts';
import '../kit/fold.ts';
import { printImage } from '../print/print-image.ts';
import type { StatePictures } from '../print/state-pictures.ts';
import { counted } from '../words.ts';

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
  return html`<li aria-label="Test sheet ${number}">
    ${printImage(pictures.of(recipe, pulls), `Test sheet ${number} as pulled`, recipe.paper.widthMm / recipe.paper.heightMm)}
    <p class="head"><span class="number">${number}</span></p>
    <p class="small title">Test sheet</p>
    <p class="soft small">${counted(tried.length, 'set-up')} tried${torn.length === 0 ? '' : `; a fresh one, ${torn.length === 1 ? 'one was' : `${torn.length} were`} torn after ${counted(triedBefore.length, 'set-up')}`}</p>
    <label class="small"
      >Lies in
      <input
        type="text"
        maxlength="200"
        aria-label="Where test sheet ${number} lies"
        placeholder="box or drawer"
        .value=${box}
        @change=${(event: Event) => add([{ kind: 'placed', sheet: number, box: (event.target as HTMLInputElement).value.trim() }])}
    /></label>
    ${
      tried.length === 0
        ? nothing
        : html`<ps-fold quiet class="small" label="What happened">
          <ol>
            ${tried.map(
              ({ event, recipe: r, pull }) => html`<li style="display: list-item">
                Tried ${pullInWords(pull, entryAt(of, r))} as on sheet ${event.of}
                <button class="quiet" @click=${() => add([{ kind: 'undone', sheet: number, event: event.id }])}>Undo</button>
              </li>`,
            )}
          </ol>
        </ps-fold>`
    }
  </li>`;
}
