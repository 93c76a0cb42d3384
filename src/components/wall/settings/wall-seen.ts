import { html, LitElement, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { SeenRun } from '../../../engine/explore/search/seen.ts';
import { numberLocale } from '../../../engine/words/language.ts';
import type { AppStore } from '../../app-store.ts';
import { controls } from '../../ui/controls-style.ts';
import { say } from '../../words/en/wall/settings.ts';

/** What this project's walls have shown already, and how to forget it. */
@customElement('wall-seen')
export class WallSeen extends LitElement {
  static override styles = [controls];

  @property({ attribute: false }) store!: AppStore;
  @property({ attribute: false }) seen: readonly SeenRun[] = [];

  override render() {
    const { seen } = this;
    if (seen.length === 0) return nothing;
    const prints = seen.reduce((sum, run) => sum + run.prints.length, 0);
    return html`<p class="soft small">
        ${say.printsOfWallsWere(prints.toLocaleString(numberLocale()), seen.length)}
      </p>
      <button class="quiet" @click=${() => this.store.setSeen([])}>${say.forgetWhatWasSeen}</button>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'wall-seen': WallSeen;
  }
}
