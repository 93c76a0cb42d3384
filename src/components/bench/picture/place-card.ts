import { css, html, LitElement, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { labSwatch } from '../../../engine/ink/film/lab-swatch.ts';
import { controls } from '../../ui/controls-style.ts';
import { labWords } from '../../ui/words.ts';
import { withinWords } from '../../words/error-words.ts';
import { inkNameOf, placePullsWords } from '../bench-words.ts';
import type { PlaceRead } from './place-reader.ts';

/**
 * What was read at a place of the picture.
 * @fires close: it is not wanted any more
 */
@customElement('bench-place-card')
export class PlaceCard extends LitElement {
  static override styles = [
    controls,
    css`
      :host {
        display: grid;
        grid-template-columns: 44px minmax(0, 1fr) auto;
        gap: var(--space-5);
        align-items: start;
        padding: var(--space-4) var(--space-4) var(--space-4) var(--space-5);
        background: var(--sheet);
        box-shadow: var(--shadow-low);
        font-size: var(--type-small);
      }
      .swatch {
        height: 44px;
        box-shadow: var(--edge);
      }
      ol {
        display: flex;
        flex-wrap: wrap;
        grid-column: 1 / -1;
        gap: var(--space-2) var(--space-5);
        max-height: 7.5em;
        margin: 0;
        padding: 0;
        overflow-y: auto;
        list-style: none;
      }
      li {
        display: flex;
        align-items: center;
        gap: var(--space-3);
      }
      i {
        width: 18px;
        height: 18px;
        box-shadow: var(--edge);
      }
      .words {
        display: grid;
        gap: var(--space-1);
        overflow-wrap: anywhere;
      }
    `,
  ];

  @property({ attribute: false }) read!: PlaceRead;
  @property({ type: Boolean }) relative = true;

  /** The colour of the place from bare paper on, pull by pull. */
  private peeled() {
    const { reading, of } = this.read;
    const [pulls, studio] = of;
    const white = this.relative ? studio.paper.reflectance : undefined;
    return html`<ol aria-label="The place from bare paper on, pull by pull">
      ${reading.after.map((lab, i) => {
        const at = reading.pulls[i - 1];
        return html`<li><i style="background:${labSwatch(lab, white).hex}"></i>${at === undefined ? 'paper' : `after ${at + 1} ${inkNameOf(pulls[at], studio)}`}</li>`;
      })}
    </ol>`;
  }

  override render() {
    const { reading, of } = this.read;
    const [pulls, studio] = of;
    const swatch = labSwatch(reading.lab, this.relative ? studio.paper.reflectance : undefined);
    const [l, a, b] = labWords(reading.lab);
    return html`<span class="swatch" style="background:${swatch.hex}"></span>
      <div class="words" role="status">
        <strong>${placePullsWords(reading.pulls, pulls, studio)}</strong>
        <span>L ${l}, a ${a}, b ${b}${reading.pulls.length === 0 ? '' : `, ${withinWords(reading.expectedDeltaE)}`}</span>
        ${swatch.inGamut ? nothing : html`<span class="soft">more colourful in print than this screen can show</span>`}
      </div>
      <button class="quiet" @click=${() => this.dispatchEvent(new CustomEvent('close'))}>Close</button>
      ${reading.pulls.length < 2 ? nothing : this.peeled()}`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-place-card': PlaceCard;
  }
}
