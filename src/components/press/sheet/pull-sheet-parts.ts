import { html, nothing } from 'lit';
import { entryAt } from '../../../engine/base/at.ts';
import { rangesText } from '../../../engine/base/words.ts';
import { passportsOf } from '../../../engine/visit/passports.ts';
import type { MadePlan } from '../../output/made-plan.ts';
import { counted } from '../../ui/words.ts';
import { waitWords } from '../../words/drying-words.ts';
import { howWords } from '../../words/offset-words.ts';
import { recipeLetter, setUpTags, wallClock } from '../../words/plan-words.ts';

/** The set-ups of each day by the clock, with a box to tick. */
export function dayTables({ plan }: MadePlan) {
  const beds = plan.parts.reduce((most, part) => Math.max(most, part.bed + 1), 1);
  const days = Array.from({ length: plan.daysNeeded * beds }, (_, i) => ({ day: Math.floor(i / beds) + 1, bed: i % beds }));
  return days.map(({ day, bed }) => {
    const rows = plan.times.flatMap((time, at) => (time.day === day && time.bed === bed ? [at] : []));
    if (rows.length === 0) return nothing;
    return html`<table class="day">
      <caption>Day ${day}${beds > 1 ? `, bed ${bed + 1}` : ''}</caption>
      ${rows.map((at) => {
        const card = entryAt(plan.cards, at);
        const time = entryAt(plan.times, at);
        return html`${time.waitMinutes >= 1 ? html`<tr><td></td><td colspan="6" class="small">${waitWords(plan, at, false)}</td></tr>` : nothing}<tr>
          <td><span class="box"></span></td>
          <td class="clock">${wallClock(plan, time.startMinute)}</td>
          <td><b>${card.number}</b></td>
          <td><b>${card.screen.key} ${card.screen.name}</b></td>
          <td>${card.ink.key}</td>
          <td>${counted(card.sheets.length, 'sheet')}</td>
          <td class="small">${setUpTags(plan, at).join(', ')}</td>
        </tr>`;
      })}
    </table>`;
  });
}

/** For each kind of sheet its whole stack, first down first. @param image draws a recipe's finished print */
export function passportList(made: MadePlan, image: (recipe: number) => unknown) {
  return passportsOf(made.plan).map(
    ({ recipe, sheets, setUps }) => html`<article class="passport">
      ${image(recipe)}
      <div>
        <h3>${recipeLetter(recipe)} ${made.plan.recipes[recipe]?.title}</h3>
        <p>${sheets.length === 1 ? 'Sheet' : 'Sheets'} ${rangesText(sheets)}, each ${counted(setUps.length, 'set-up')}</p>
        <table>
          ${setUps.map((at) => {
            const card = entryAt(made.plan.cards, at);
            return html`<tr>
              <td><span class="box"></span></td>
              <td><b>${card.number}</b></td>
              <td><b>${card.screen.key} ${card.screen.name}</b></td>
              <td>${howWords(card, sheets)}</td>
            </tr>`;
          })}
        </table>
      </div>
    </article>`,
  );
}
