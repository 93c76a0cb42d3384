import { css, html, LitElement, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { labSwatch } from '../../../engine/ink/film/lab-swatch.ts';
import { controls } from '../../ui/controls-style.ts';
import { labWords } from '../../ui/words.ts';
import { withinWords } from '../../words/error-words.ts';
import { placePullsWords } from '../bench-words.ts';
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
      .words {
        display: grid;
        gap: var(--space-1);
        overflow-wrap: anywhere;
      }
    `,
  ];

  @property({ attribute: false }) read!: PlaceRead;
  @property({ type: Boolean }) relative = true;

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
      <button class="quiet" @click=${() => this.dispatchEvent(new CustomEvent('close'))}>Close</button>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-place-card': PlaceCard;
  }
}
