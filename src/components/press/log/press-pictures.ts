import { html, nothing } from 'lit';
import type { SheetAsPulled } from '../../../engine/log/as-pulled.ts';
import { nextState } from '../../../engine/log/ticks/next-state.ts';
import type { Recipe } from '../../../engine/recipe/types.ts';
import type { Pull } from '../../../engine/stack/types.ts';
import type { PressPlan } from '../../../engine/visit/visit.ts';
import { uncapital } from '../../../engine/words/language.ts';
import { printImage } from '../../ui/print/print-image.ts';
import type { StatePictures } from '../../ui/print/state-pictures.ts';
import { say } from '../../words/en/press/log.ts';
import { stateWords } from '../../words/log-words.ts';

/** A sheet as it must look now, and as it will look after the next pull on it. */
export function pressPictures(
  plan: Pick<PressPlan, 'cards'>,
  { sheet, recipe, index }: { sheet: SheetAsPulled; recipe: Recipe; /** Of the set-up at hand. */ index: number },
  pictures: StatePictures,
) {
  const next = nextState(plan, sheet, recipe, index);
  const shape = recipe.paper.widthMm / recipe.paper.heightMm;
  const figure = (pulls: readonly Pull[], name: string, words: string) => html`<figure>
    ${printImage(pictures.of(recipe, pulls), name, shape)}
    <figcaption aria-live="polite">${words}</figcaption>
  </figure>`;
  const then = next?.setUp === plan.cards[index]?.number ? say.afterThisSetUp : say.afterSetUp(next?.setUp ?? '');
  return html`<div class="pair">
    ${figure(sheet.pulls, say.sheetAsItMust(sheet.number), stateWords(sheet, recipe))}
    ${next === null ? nothing : figure(next.pulls, say.sheet(sheet.number, uncapital(then)), `${then}.`)}
  </div>`;
}
