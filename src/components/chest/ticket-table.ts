import { html, nothing } from 'lit';
import type { Recipe } from '../../engine/recipe/types.ts';
import { isMirrored } from '../../engine/shapes/place/mirrored.ts';
import { screenGlyph } from '../ui/print/screen-outline.ts';
import '../ui/kit/ink-chip.ts';
import { TURNED_OVER } from '../words/film-words.ts';
import { noOffset, recipeOffsetWords } from '../words/offset-words.ts';
import { recipeStudio } from './recipe-pictures.ts';

/** The pulls of a recipe as tickets, first down first. */
export function ticketTable(recipe: Recipe) {
  const studio = recipeStudio(recipe);
  return html`<table>
    <caption class="visually-hidden">How ${recipe.title} is built, first down first</caption>
    <thead>
      <tr>
        <th scope="col">Pull</th>
        <th scope="col" colspan="2">Screen</th>
        <th scope="col">Ink</th>
        <th scope="col">Offset</th>
        <th scope="col" class="count">Strokes</th>
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
