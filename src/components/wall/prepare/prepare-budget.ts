import { html, nothing } from 'lit';
import { live } from 'lit/directives/live.js';
import { numberText } from '../../../engine/base/typed-number.ts';
import { filmOfSheet, type PrepareBudget, type PrepareBy } from '../../../engine/explore/prepare/prepare.ts';
import type { Paper } from '../../../engine/ink/types.ts';
import { fixed } from '../../../engine/words/language.ts';
import { decimalSign } from '../../ui/length-unit.ts';
import { typedIn } from '../../ui/typed-input.ts';
import { say } from '../../words/en/wall/prepare.ts';

function amount(label: string, unit: string, value: number | undefined, set: (value: number | undefined) => void) {
  return html`<label class="amount"><span>${label}</span>
    <input type="text" inputmode="decimal" placeholder=${say.any} .value=${live(value === undefined ? '' : numberText(value, decimalSign()))} @change=${(
      event: Event,
    ) => {
      const typed = typedIn(event.target as HTMLInputElement);
      set(Number.isFinite(typed) && typed >= 0 ? typed : undefined);
    }} />
    <span class="soft">${unit}</span></label>`;
}

/** What may be spent; the film, the money and the hours are those of screens, so they are asked only for these. */
export function budgetFields(budget: PrepareBudget, { by, paper }: { by: PrepareBy; paper: Paper }, set: (budget: PrepareBudget) => void) {
  const field = (name: keyof PrepareBudget, label: string, unit = '') =>
    amount(label, unit, budget[name], (value) => set({ ...budget, [name]: value }));
  return html`<fieldset>
    <legend>${say.atMost}</legend>
    ${field('screens', by === 'screens' ? say.newScreens : say.newOnes)}
    ${
      by === 'screens'
        ? html`${field('filmM2', say.filmPositives, 'm²')} ${field('money', say.money)} ${field('hours', say.work, say.hours)}
          ${field('moneyEach', say.screenCosts)} ${field('hoursEach', say.andTakes, say.hours)}
          ${budget.money !== undefined && !budget.moneyEach ? html`<p class="small">${say.moneyCountsOnce}</p>` : nothing}
          ${budget.hours !== undefined && !budget.hoursEach ? html`<p class="small">${say.hoursCountOnce}</p>` : nothing}
          <p class="soft small">${say.filmPositiveIsAs(fixed(filmOfSheet(paper), 2))}</p>`
        : nothing
    }
  </fieldset>`;
}
