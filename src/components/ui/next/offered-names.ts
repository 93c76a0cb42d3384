import { css, html, LitElement, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { Pull } from '../../../engine/stack/types.ts';
import type { Studio } from '../../../engine/studio/studio.ts';
import { engineFor } from '../../../workers/client/client.ts';
import { say } from '../../words/en/ui/next.ts';
import { controls } from '../controls-style.ts';
import { Work } from '../work.ts';

/** A print that a name is wanted for. */
export interface Unnamed {
  studio: Studio;
  pulls: readonly Pull[];
}

/**
 * Names from what is seen of a print, to be taken.
 * @fires take CustomEvent<string>
 */
@customElement('ps-offered-names')
export class OfferedNames extends LitElement {
  static override styles = [
    controls,
    css`
      :host {
        display: block;
      }
      :host([hidden]) {
        display: none;
      }
      .row {
        flex-wrap: wrap;
      }
    `,
  ];

  /** Null for none yet. */
  @property({ attribute: false }) of: Unnamed | null = null;

  private readonly names = new Work<string[]>(this);

  protected override willUpdate(changed: Map<PropertyKey, unknown>): void {
    const { of } = this;
    if (changed.has('of') && of !== null) void this.names.start(() => engineFor('picture').offeredNames(of));
  }

  override render() {
    const { found, failure } = this.names;
    if (failure !== '') return html`<p class="refusal small" role="alert">${failure}</p>`;
    if (found === null || found.length === 0) return nothing;
    return html`<div class="row" role="group" aria-label=${say.namesFromWhatIs}>
      ${found.map((name) => html`<button type="button" @click=${() => this.dispatchEvent(new CustomEvent<string>('take', { detail: name }))}>${name}</button>`)}
    </div>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'ps-offered-names': OfferedNames;
  }
}
