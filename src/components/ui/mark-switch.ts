import { html } from 'lit';
import type { AppStore } from '../app-store.ts';

/** The switch by which pictures and the chart of inks hatch what the screen cannot show. */
export function markSwitch(store: AppStore) {
  return html`<label title="Hatched where the print is more colourful than this screen can show; there the screen keeps hue and lightness and loses colourfulness.">
    <input type="checkbox" role="switch" .checked=${store.marked} @change=${(event: Event) => store.setMarked((event.target as HTMLInputElement).checked)} />
    Hatch what this screen cannot show
  </label>`;
}
