import { html, nothing } from 'lit';
import { rangesText } from '../../../engine/base/words.ts';
import { say } from '../../words/en/press/next.ts';
import type { PressVisit } from '../press-visit.ts';

/** Numbers of sheets that go on in another way than an order says, as after an undo or on another device. */
function strayed({ made, log }: PressVisit): number[] {
  if (made === null) return [];
  const planned = new Map(made.plan.sheets.map(({ number, recipe }) => [number, recipe]));
  return log.sheets
    .filter(({ number, recipe, done, spoiled }) => {
      const left = (log.recipes[recipe]?.pulls.length ?? 0) > done.length;
      return !spoiled && left && planned.get(number) !== recipe;
    })
    .map(({ number }) => number)
    .sort((a, b) => a - b);
}

/** Says which sheets the order leaves out, with what mends it. */
export function strayedLine(visit: PressVisit) {
  const numbers = visit.run.running || visit.log.events.length === 0 ? [] : strayed(visit);
  if (numbers.length === 0) return nothing;
  const sheets = say.sheets(numbers.length, rangesText(numbers));
  return html`<p class="stale">
    ${say.goOnInAnother(sheets, numbers.length)}
    <button @click=${() => visit.findRest()}>${say.planRest}</button>
  </p>`;
}
