import { css, html, LitElement } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { DifferentPlace } from '../../../engine/order/groups/where-different.ts';
import type { Pull } from '../../../engine/stack/types.ts';
import { controls } from '../../ui/controls-style.ts';
import '../../ui/kit/choice.ts';
import { say } from '../../words/en/lesson/board.ts';
import { placeWords } from './lesson-words.ts';

/** How two prints are compared: the one or the other by hand, one after the other, or what differs outlined. */
export type CompareLook = 'where' | 'blink' | 'other';

/**
 * Says what is compared with what, and where they differ.
 * @fires look CustomEvent<CompareLook>
 * @fires compare-end Event
 */
@customElement('ps-compare-bar')
export class CompareBar extends LitElement {
  static override styles = [
    controls,
    css`
      :host {
        display: grid;
        gap: var(--space-4);
        padding: var(--space-5) var(--space-6);
        background: var(--table);
        box-shadow: var(--edge-line);
      }
      .head {
        display: flex;
        flex-wrap: wrap;
        align-items: center;
        gap: var(--space-4) var(--space-6);
      }
      .head b {
        flex: 1 1 8em;
      }
      ps-choice {
        flex-basis: 100%;
      }
      ul {
        margin: 0;
        padding: 0;
        list-style: none;
        font-size: var(--type-small);
      }
    `,
  ];

  /** Counted from 0. */
  @property({ type: Number }) picture = 0;
  @property({ type: Number }) other = 0;
  @property({ attribute: false }) look: CompareLook = 'where';
  /** null while they are worked out. */
  @property({ attribute: false }) places: readonly DifferentPlace[] | null = null;
  /** In the order of the lesson, which their numbers tell. */
  @property({ attribute: false }) pulls: readonly Pull[] = [];

  override render() {
    const { places } = this;
    const lines = places?.slice(0, 4).map((place) => placeWords(place, this.pulls)) ?? [];
    return html`<div class="head">
        <b>${say.pictureAndPicture(this.picture + 1, this.other + 1)}</b>
        <button class="quiet" aria-label=${say.stopComparing} @click=${() => this.dispatchEvent(new Event('compare-end'))}>✕</button>
        <ps-choice
          label=${say.howToCompare}
          .options=${[
            { value: 'where', label: say.whereTheyDiffer },
            { value: 'blink', label: say.blink },
            { value: 'other', label: say.picture(this.other + 1) },
          ]}
          .value=${this.look}
          @pick=${(event: CustomEvent<string>) => this.dispatchEvent(new CustomEvent<string>('look', { detail: event.detail }))}
        ></ps-choice>
      </div>
      <div role="status">
        ${
          places === null
            ? html`<p class="soft small">${say.comparing}</p>`
            : places.length === 0
              ? html`<p class="small">${say.theyLookSame}</p>`
              : html`<ul>
                ${lines.map((line) => html`<li>${line}</li>`)}
              </ul>`
        }
      </div>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'ps-compare-bar': CompareBar;
  }
}
