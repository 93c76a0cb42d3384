import { html, nothing } from 'lit';
import { entryAt } from '../../../engine/base/at.ts';
import type { RetimedPlan } from '../../../engine/log/now/retimed.ts';
import { settingFor } from '../../../engine/log/settings.ts';
import type { SetUpCard } from '../../../engine/visit/set-up-cards.ts';
import { capital } from '../../../engine/words/language.ts';
import '../../ui/kit/ink-chip.ts';
import type { MadePlan } from '../../output/made-plan.ts';
import { offsetDiagram } from '../../ui/print/offset-diagram.ts';
import { stencilPath } from '../../ui/print/stencil-path.ts';
import { waitWords } from '../../words/drying-words.ts';
import { edgeNotes } from '../../words/edge-notes.ts';
import { dayOf } from '../../words/edition-words.ts';
import { say } from '../../words/en/press/log.ts';
import { mixWords } from '../../words/mix-words.ts';
import { plannedAndNow } from '../../words/now-words.ts';
import { instructionWords, offsetNotes, offsetWords } from '../../words/offset-words.ts';
import { listed, setUpTags } from '../../words/plan-words.ts';
import { lastTimeWords } from '../../words/setting-words.ts';
import { screenMade } from '../plan/screen-made.ts';

/** What is done before the first sheet of a set-up: screen, ink, offset and when, to be read from afar. */
export function pressFrame(
  made: MadePlan,
  card: SetUpCard,
  {
    now,
    note,
  }: { /** The order on the clock of what was ticked. */ now: RetimedPlan | null; /** Notes how the screen stands. */ note(): void },
) {
  const { plan, recipes, settings = [] } = made;
  const noted = settingFor(settings, card);
  const index = plan.cards.indexOf(card);
  const tags = setUpTags(plan, index);
  const time = plan.times[index];
  const mix = mixWords(card);
  const clocked = now ?? plan;
  const wait = (clocked.times[index]?.waitMinutes ?? 0) >= 1 ? say.withA(waitWords(clocked, index, false)) : '';
  return html`<div class="frame">
    <p class="screen">${card.screen.key} ${card.screen.name}</p>
    ${screenMade(made, card)}
    <p class="ink"><ps-ink-chip .ink=${card.ink.ink}></ps-ink-chip>${card.ink.key}</p>
    <p class="strokes">${say.strokes(card.strokes, tags.length === 0 ? '' : `, ${listed(tags)}`)}</p>
    <p class="offset">${capital(offsetWords(card))}</p>
    ${[...offsetNotes(card), ...edgeNotes(card, recipes)].map((words) => html`<p class="soft small">${words}</p>`)}
    ${instructionWords(card).map((words) => html`<p><b>${words}</b></p>`)}
    ${mix === null ? nothing : html`<p>${mix}</p>`}
    <p>${say.meshCmThreadM(card.screen.mesh.threadsPerCm, card.screen.mesh.threadUm)}</p>
    ${time === undefined ? nothing : html`<p>${plannedAndNow(plan, now, index)}${wait}</p>`}
    ${noted === null ? nothing : html`<p class="noted">${lastTimeWords(noted, dayOf(noted.atMs))}</p>`}
    <button class="note" @click=${note}>${say.snapOffSqueegeeInk}</button>
    ${offsetDiagram(card, entryAt(recipes, card.states[0]?.recipe ?? 0).paper, stencilPath(card, recipes))}
  </div>`;
}
