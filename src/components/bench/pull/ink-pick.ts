import { html } from 'lit';
import { printInks } from '../../../engine/ink/mix/mix.ts';
import type { Ink } from '../../../engine/ink/types.ts';
import '../../ui/kit/ink-chip.ts';
import { say } from '../../words/en/bench/pull.ts';

/** The inks that a pull can be in; the one that it is in, though it may have become a stock ink since. */
export function inksToPull(inks: readonly Ink[], own: string | null): readonly Ink[] {
  const printed = printInks(inks);
  return own === null || printed.some(({ id }) => id === own) ? printed : inks.filter((ink) => ink.stock !== true || ink.id === own);
}

/** Cards of inks of which one is chosen; wants `pickStyle` and `pullPanelStyle`. @param own id; null where pulls are in several */
export function inkPick(inks: readonly Ink[], own: string | null, choose: (ink: string) => void) {
  return html`<fieldset role="radiogroup">
    <legend>${say.inkOverWhiteAnd}</legend>
    <div class="inks">
      ${inksToPull(inks, own).map(
        (ink) => html`<label class="ink pick">
          <input type="radio" name="ink" .checked=${ink.id === own} aria-label=${ink.name} @change=${() => choose(ink.id)} />
          <ps-ink-chip .ink=${ink}></ps-ink-chip><span>${ink.name}</span>
        </label>`,
      )}
    </div>
  </fieldset>`;
}
