import { html } from 'lit';
import type { MadePlan } from '../../output/made-plan.ts';
import { wideTable } from '../../ui/kit/wide-table.ts';
import { CAUTIONS, CAUTIONS_DEFER } from '../../words/cautions.ts';
import { say } from '../../words/en/press/plan.ts';
import { GRAMS_NOTE, leftBehindWords, OVERS_NOTE, TEST_SHEET_NOTE } from '../../words/supply-words.ts';
import { inkTable, paperTable, screenTable, stockTable } from './supplies.ts';

/** Ink, paper and screens that the visit takes, and what to mind before it starts. */
export function haveReady(made: MadePlan) {
  return html`<section class="supply">
      <div>
        <h2>${say.ink}</h2>
        ${wideTable(say.ink, inkTable(made.plan))}
        ${wideTable(say.stockInks, stockTable(made.plan))}
        <p class="soft small">${leftBehindWords(made.plan, made.input.press)}</p>
        <p class="soft small">${GRAMS_NOTE}</p>
        <h2 class="next">${say.paper}</h2>
        ${wideTable(say.paper, paperTable(made))}
        <p class="soft small">${made.plan.testSheet === true ? TEST_SHEET_NOTE : OVERS_NOTE}</p>
      </div>
      <div>
        <h2>${say.screens}</h2>
        ${wideTable(say.screens, screenTable(made))}
      </div>
    </section>
    <section class="safe">
      <h2>${say.beforeYouStart}</h2>
      <ul>
        ${CAUTIONS.map((caution) => html`<li>${caution}</li>`)}
      </ul>
      <p><b>${CAUTIONS_DEFER}</b></p>
    </section>`;
}
