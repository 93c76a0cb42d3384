import { html, nothing } from 'lit';
import type { Problem } from '../../../engine/base/error.ts';
import type { RestPlan } from '../../../engine/log/rest.ts';
import '../../ui/kit/fold.ts';
import { say } from '../../words/en/press/plan.ts';
import {
  beforeWords,
  beginWords,
  boundWords,
  endWords,
  freeSwapWords,
  isProven,
  needsWords,
  planHeadline,
} from '../../words/plan-words.ts';

/** Further warnings are folded. */
const PROBLEMS_SHOWN = 2;

function problemList(problems: readonly Problem[]) {
  const shown = problems.slice(0, PROBLEMS_SHOWN);
  const rest = problems.slice(PROBLEMS_SHOWN);
  return html`${shown.map((problem) => html`<p class="warn">${problem.message}</p>`)}
  ${
    rest.length === 0
      ? nothing
      : html`<ps-fold quiet label=${say.moreSuchWarnings(rest.length)}>
        ${rest.map((problem) => html`<p>${problem.message}</p>`)}
      </ps-fold>`
  }`;
}

/** How an order is looked for. */
interface Search {
  /** Whether a better order is still looked for: what may yet change is left out. */
  running: boolean;
  /** Whether the search was ended by hand. */
  stopped: boolean;
  /** Goes on from the best order so far. */
  longer(): void;
}

/**
 * What a pull order costs, how near that is to the fewest there can be, and what stands in its way.
 */
export function planHead(plan: RestPlan, { running, stopped, longer }: Search) {
  return html`<h2 id="order">${say.pullOrder}</h2>
    <p class="headline" role="status">${planHeadline(plan)}</p>
    <p class="soft small">${say.setUpIsOne}</p>
    <p>${boundWords(plan)}</p>
    ${running ? nothing : [beginWords(plan), endWords(plan)].map((words) => (words === '' ? nothing : html`<p>${words}</p>`))}
    <p>${running ? html`<span class="soft">${say.lookingForBetterOrder}</span>` : `${freeSwapWords(plan)} ${needsWords(plan)}`}</p>
    <p class="soft small">${say.freeSwapIsTwo}</p>
    ${running || beforeWords(plan) === '' ? nothing : html`<p>${beforeWords(plan)}</p>`}
    ${running || isProven(plan) ? nothing : html`<p class="soft">${say.searchWasStoppedLonger(stopped)} <button @click=${longer}>${say.searchLonger}</button></p>`}
    ${running ? nothing : problemList(plan.problems)}`;
}
