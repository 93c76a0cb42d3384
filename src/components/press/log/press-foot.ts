import { html, nothing } from 'lit';
import { minutesText } from '../../../engine/base/words.ts';
import type { RetimedPlan } from '../../../engine/log/now/retimed.ts';
import { minutesLate } from '../../../engine/log/ticks/late.ts';
import { nextAtBed, tickKey } from '../../../engine/log/ticks/ticks.ts';
import { visitNow } from '../../../engine/log/visit-now.ts';
import { uncapital } from '../../../engine/words/language.ts';
import type { MadePlan } from '../../output/made-plan.ts';
import type { LogKeeper } from '../../ui/log/log-keeper.ts';
import { say } from '../../words/en/press/log.ts';
import { say as nextWords } from '../../words/en/press/next.ts';
import { plannedAndNow } from '../../words/now-words.ts';
import { listed, setUpTags } from '../../words/plan-words.ts';
import { localTime } from './local-time.ts';

/** How far the visit is behind its order: '25 min late', 'on time'; '' while nobody can know. */
function lateWords(minutes: number | null): string {
  if (minutes === null) return '';
  if (Math.abs(minutes) < 5) return say.onTime;
  return minutes > 0 ? say.late(minutesText(minutes)) : say.ahead(minutesText(-minutes));
}

/** Where the set-up stands, how late it is and what comes next: always in one place, so that no tile moves for it. */
export function pressFoot(
  { plan }: MadePlan,
  {
    index,
    ticks,
    done,
    log,
    now,
    go,
    leave,
    planning,
  }: {
    index: number;
    ticks: ReadonlySet<string>;
    done: ReadonlySet<number>;
    log: LogKeeper;
    /** The order on the clock of what was ticked. */
    now: RetimedPlan | null;
    go: (index: number) => void;
    /** Leaves the press for its sheets when nothing is left to pull. */
    leave: () => void;
    /** Whether what is left is planned anew meanwhile. */
    planning: boolean;
  },
) {
  const card = plan.cards[index];
  const all = done.size === plan.cards.length;
  const next = nextAtBed(plan, ticks, index);
  const after = all ? undefined : plan.cards[next];
  const time = plan.times[next];
  const when = time === undefined ? '' : (now === null ? say.planned : '') + uncapital(plannedAndNow(plan, now, next, 'within'));
  // A spoiled sheet has left: it is neither pulled nor waited for.
  const spoiled = new Set(log.sheets.filter((sheet) => sheet.spoiled).map(({ number }) => number));
  const there = card?.sheets.filter((sheet) => !spoiled.has(sheet)) ?? [];
  const pulled = there.filter((sheet) => card !== undefined && ticks.has(tickKey(card.number, sheet))).length;
  const late = lateWords(minutesLate(plan, ticks, visitNow(log, Date.now(), localTime), plan.times[index]?.bed));
  const stands = all ? say.allSetUpsAre : done.has(index) ? say.setUpIsDone(card?.number ?? '') : say.ofPulled(pulled, there.length);
  const elsewhere = time !== undefined && time.bed !== plan.times[index]?.bed;
  const to = after === undefined ? say.toSheets : elsewhere ? say.toSetUpAtBed(after.number, time.bed + 1) : say.toSetUp(after.number);
  return html`<footer>
    <p class="stands" role="status">${stands}</p>
    <p class="late" role="status">${planning ? nextWords.planningWhatIsLeft : late}</p>
    ${
      after === undefined
        ? nothing
        : html`<p class="next">
          <span class="soft">${say.next}</span> ${say.inKey(html`<b>${after.screen.key} ${after.screen.name}</b>`, after.ink.key)}<span class="soft when"
            >${setUpTags(plan, next).length === 0 ? '' : `, ${listed(setUpTags(plan, next))}`}${time === undefined ? '' : `, ${when}`}</span
          >
        </p>`
    }
    <button class=${done.has(index) ? 'main' : ''} @click=${() => (after === undefined ? leave() : go(next))}>${to}</button>
  </footer>`;
}
