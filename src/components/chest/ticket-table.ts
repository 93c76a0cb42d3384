import { html, nothing } from 'lit';
import type { Recipe } from '../../engine/recipe/types.ts';
import { isMirrored } from '../../engine/shapes/place/mirrored.ts';
import { screenGlyph } from '../ui/print/screen-outline.ts';
import '../ui/kit/ink-chip.ts';
import { say } from '../words/en/chest/room.ts';
import { TURNED_OVER } from '../words/film-words.ts';
import { noOffset, recipeOffsetWords } from '../words/offset-words.ts';
import { recipeStudio } from './recipe-pictures.ts';

/** The pulls of a recipe as tickets, first down first. */
export function ticketTable(recipe: Recipe) {
  const studio = recipeStudio(recipe);
  return html`<table>
    <caption class="visually-hidden">${say.howIsBuiltFirst(recipe.title)}</caption>
    <thead>
      <tr>
        <th scope="col">${say.pull}</th>
        <th scope="col" colspan="2">${say.screen2}</th>
        <th scope="col">${say.ink}</th>
        <th scope="col">${say.offset}</th>
        <th scope="col" class="count">${say.strokes}</th>
      </tr>
    </thead>
    <tbody>
      ${recipe.pulls.map((pull, i) => {
        const screen = recipe.screens.find((entry) => entry.id === pull.screen);
        const ink = recipe.inks.find((entry) => entry.id === pull.ink);
        return html`<tr>
          <td class="soft">${i + 1}</td>
          <td class="glyph-cell">${screenGlyph(screen, studio)}</td>
          <td><strong>${screen?.number ?? '?'}</strong> ${screen?.name ?? pull.screen}${screen !== undefined && isMirrored(screen) ? html` <span class="soft">(${TURNED_OVER})</span>` : nothing}</td>
          <td><span class="ink"><ps-ink-chip .ink=${ink}></ps-ink-chip>${ink?.name ?? pull.ink}</span></td>
          <td class=${recipeOffsetWords(pull) === noOffset() ? 'soft' : ''}>${recipeOffsetWords(pull)}</td>
          <td class="count">${pull.strokes}</td>
        </tr>`;
      })}
    </tbody>
  </table>`;
}
