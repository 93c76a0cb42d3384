import { html, nothing } from 'lit';
import { nextAtBeds } from '../../../engine/log/ticks/ticks.ts';
import type { PressPlan } from '../../../engine/visit/visit.ts';
import { say } from '../../words/en/press/log.ts';

/** What each bed goes on with, where there are several: a printer finds the own bed with one touch. */
export function pressBeds(plan: PressPlan, { index, ticks, go }: { index: number; ticks: ReadonlySet<string>; go(index: number): void }) {
  const nexts = nextAtBeds(plan, ticks);
  if (nexts.length < 2) return nothing;
  const here = plan.times[index]?.bed;
  return html`<div class="beds" role="group" aria-label=${say.beds}>
    ${nexts.map((next, bed) => {
      const card = plan.cards[next];
      const words = card === undefined ? say.bedIsDone(bed + 1) : say.bedSetUp(bed + 1, card.number);
      return html`<button aria-pressed=${bed === here} ?disabled=${card === undefined} @click=${() => go(next)}>${words}</button>`;
    })}
  </div>`;
}
