import { html } from 'lit';
import { live } from 'lit/directives/live.js';
import { SETTINGS } from '../../../engine/explore/settings/setting-table.ts';
import type { AppStore } from '../../app-store.ts';

/** Whether the wall keeps to screens at hand. */
export function atHandTick(store: AppStore) {
  const keep = (event: Event): void => {
    const { checked } = event.target as HTMLInputElement;
    store.dispatch({ kind: 'set-explore', change: { onlyAtHand: checked || undefined } });
  };
  return html`<label class="tick"><input type="checkbox" .checked=${live(store.project.explore.onlyAtHand === true)} @change=${keep} /> ${SETTINGS.onlyAtHand.label}</label>`;
}
