import { html, nothing } from 'lit';
import { entryAt } from '../../../engine/base/at.ts';
import { rangesText } from '../../../engine/base/words.ts';
import { tickGroups } from '../../../engine/log/ticks/ticks.ts';
import type { CardState } from '../../../engine/visit/set-up-cards.ts';
import '../../ui/kit/ink-chip.ts';
import type { MadePlan } from '../../output/made-plan.ts';
import { counted } from '../../ui/words.ts';
import { dryWords, waitWords } from '../../words/drying-words.ts';
import { mixWords } from '../../words/mix-words.ts';
import { instructionWords, OFFSET_NOTE, offsetWords } from '../../words/offset-words.ts';
import { capital, recipeLetter, setUpTags, timeWords } from '../../words/plan-words.ts';
import { offsetDiagram } from './offset-diagram.ts';
import { stencilPath } from './stencil-path.ts';

/** Draws a recipe's sheet with some pulls on it. */
export type DrawSheet = (recipe: number, pulls: CardState['after']) => unknown;

/** With more states than this, each takes one line with its pictures beside it. */
const MOST_STATES_BELOW = 3;

/** The card of a set-up on paper: how to pull, which sheets to take, what they look like before and after. */
export function pullSheetCard(made: MadePlan, index: number, draw: DrawSheet) {
  const { plan } = made;
  const card = entryAt(plan.cards, index);
  const many = card.states.length > MOST_STATES_BELOW;
  const pair = ({ recipe, before, after }: CardState) => html`<div class="pair">${draw(recipe, before)}${draw(recipe, after)}</div>`;
  return html`<article class="card ${many ? 'many' : card.states.length > 1 ? 'several' : ''}">
    <header>
      <span class="at">Set-up ${card.number}</span>
      <span class="screen">${card.screen.key} ${card.screen.name}</span>
      <span class="tags">${setUpTags(plan, index).join(', ')}</span>
    </header>
    ${howPart(made, index)}
    <div class="take">
      ${card.states.map(
        (state) => html`<div>
          ${many ? pair(state) : nothing}
          <div>
            <p>
              <b>${recipeLetter(state.recipe)} ${plan.recipes[state.recipe]?.title}</b>${
                state.prints.length > 1 ? `, ${state.prints.length} pulls each` : ''
              }
            </p>
            <ul class="sheets">
              ${tickGroups(state.sheets).map((group) => html`<li><span class="box"></span>${rangesText(group)}</li>`)}
            </ul>
          </div>
        </div>`,
      )}
    </div>
    ${
      many
        ? nothing
        : html`<div class="states">
          ${card.states.map(
            (state) => html`<figure>
              ${pair(state)}
              <figcaption>${recipeLetter(state.recipe)}: now and then</figcaption>
            </figure>`,
          )}
        </div>`
    }
  </article>`;
}

/** Ink, offset, strokes, mesh and times of a set-up, with the wait before it. */
function howPart({ plan, recipes }: MadePlan, index: number) {
  const card = entryAt(plan.cards, index);
  const time = plan.times[index];
  const mix = mixWords(card);
  return html`${time !== undefined && time.waitMinutes >= 1 ? html`<p class="wait">${capital(waitWords(plan, index))}.</p>` : nothing}
    <div class="how">
      ${offsetDiagram(card, entryAt(recipes, card.states[0]?.recipe ?? 0).paper, stencilPath(card, recipes))}
      <div>
        <p class="ink"><ps-ink-chip .ink=${card.ink.ink}></ps-ink-chip>${card.ink.key}</p>
        ${mix === null ? nothing : html`<p>${mix}</p>`}
        <p><b>${offsetWords(card)}</b>, ${card.strokes > 1 ? html`<b>${counted(card.strokes, 'stroke')}</b>` : '1 stroke'}</p>
        ${offsetWords(card) === 'no offset' ? nothing : html`<p class="soft small">${OFFSET_NOTE}</p>`}
        ${instructionWords(card).map((words) => html`<p><b>${words}</b></p>`)}
        <p>Mesh ${card.screen.mesh.threadsPerCm}/cm, thread ${card.screen.mesh.threadUm} µm</p>
        ${time === undefined ? nothing : html`<p>${timeWords(plan, time)}</p>`}
        <p>${dryWords(plan, index)}</p>
      </div>
    </div>`;
}
