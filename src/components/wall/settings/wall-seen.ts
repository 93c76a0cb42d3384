import { html, LitElement, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { SeenRun } from '../../../engine/explore/search/seen.ts';
import type { AppStore } from '../../app-store.ts';
import { controls } from '../../ui/controls-style.ts';

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
        ${prints.toLocaleString('en')} prints of ${seen.length} ${seen.length === 1 ? 'wall' : 'walls'} were seen. A wall of another name shows others.
      </p>
      <button class="quiet" @click=${() => this.store.setSeen([])}>Forget what was seen</button>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'wall-seen': WallSeen;
  }
}
