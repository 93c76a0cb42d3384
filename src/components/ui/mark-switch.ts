import { html } from 'lit';
import type { AppStore } from '../app-store.ts';
import { say } from '../words/en/ui/room.ts';

/** The switch by which pictures and the chart of inks hatch what the screen cannot show. */
export function markSwitch(store: AppStore) {
  return html`<label title=${say.hatchedWherePrintIs}>
    <input type="checkbox" role="switch" .checked=${store.marked} @change=${(event: Event) => store.setMarked((event.target as HTMLInputElement).checked)} />
    ${say.hatchWhatThisScreen}
  </label>`;
}
