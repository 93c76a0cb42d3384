import { html, LitElement } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { Project } from '../../../engine/project/types.ts';
import { engineFor } from '../../../workers/client/client.ts';
import type { AppStore } from '../../app-store.ts';
import { controls } from '../../ui/controls-style.ts';
import { closeStackHost } from '../../ui/layout-style.ts';
import { widenedDeltaE } from '../../ui/widening.ts';
import { Work } from '../../ui/work.ts';
import { say } from '../../words/en/wall/settings.ts';

/** Widens what counts as the same by what prints of the stack are expected to miss by, when asked to. */
@customElement('wall-widen')
export class WallWiden extends LitElement {
  static override styles = [controls, closeStackHost];

  @property({ attribute: false }) store!: AppStore;
  @property({ attribute: false }) project!: Project;
  private readonly looking = new Work<{ mean: number }>(this, {
    found: (error) => {
      const { minDeltaE } = this.project.explore;
      this.store.dispatch({ kind: 'set-explore', change: { minDeltaE: widenedDeltaE(minDeltaE, error), unwidenedDeltaE: minDeltaE } });
    },
    failed: (sentence) => this.store.tell(sentence),
  });

  private set(on: boolean): void {
    const { bench, drawer: studio, explore } = this.project;
    if (on) void this.looking.start(() => engineFor('picture').printError({ studio, pulls: bench }));
    else
      this.store.dispatch({
        kind: 'set-explore',
        change: { minDeltaE: explore.unwidenedDeltaE ?? explore.minDeltaE, unwidenedDeltaE: undefined },
      });
  }

  override render() {
    const { bench, explore } = this.project;
    const from = explore.unwidenedDeltaE;
    return html`<label>
        <input
          type="checkbox"
          role="switch"
          ?disabled=${bench.length === 0 || this.looking.running}
          .checked=${from !== undefined}
          @change=${(event: Event) => this.set((event.target as HTMLInputElement).checked)}
        />
        ${say.widenItByWhat}
      </label>
      <p class="soft small">
        ${from === undefined ? say.offWhatInksAre : say.widenedFromDeltaEBy(from)}
      </p>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'wall-widen': WallWiden;
  }
}
