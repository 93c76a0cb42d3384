import { html, nothing } from 'lit';
import { exchangedTest, tickedTest, triedIn } from '../../../engine/log/test-sheet.ts';
import type { SetUpCard } from '../../../engine/visit/set-up-cards.ts';
import type { LogKeeper } from '../../ui/log/log-keeper.ts';
import { say } from '../../words/en/press/log.ts';
import { momentText } from '../../words/log-words.ts';
import { testName } from '../../words/supply-words.ts';

/** The test sheet to tick before the others, and to exchange where it is torn; nothing where the visit has none. */
export function testTile(card: SetUpCard, log: LogKeeper) {
  const { test, recipes } = log;
  if (card.test === undefined || test === null) return nothing;
  const tried = triedIn(card, test, recipes);
  const on = tried !== null;
  const { torn, tried: here } = test;
  return html`<div class="test-row"><button
    class="test"
    role="checkbox"
    aria-checked=${on ? 'true' : 'false'}
    @click=${() => void log.add(tickedTest(card, test, recipes, !on))}
  >
    <b>${testName(test)}</b>
    <span>${on ? say.triedAt(momentText(tried.atMs)) : say.tryPullOfSheet(card.test.sheet)}</span>
    <span class="mark" aria-hidden="true">${on ? '✓' : ''}</span>
  </button>
  ${
    torn.length > 0 && here.length === 0
      ? html`<button class="torn" @click=${() => void log.add(exchangedTest(test, false))}>${say.notTornAfterAll}</button>`
      : html`<button class="torn" @click=${() => void log.add(exchangedTest(test, true))}>${say.tornTakeFreshOne}</button>`
  }</div>`;
}
