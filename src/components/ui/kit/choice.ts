import { css, html, LitElement } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { controls } from '../controls-style.ts';
import type { Option } from './select.ts';

/**
 * A few things side by side, of which one is chosen.
 * @fires pick CustomEvent<string>: the value chosen
 */
@customElement('ps-choice')
export class Choice extends LitElement {
  static override styles = [
    controls,
    css`
      :host {
        display: block;
      }
      div {
        display: flex;
        flex-wrap: wrap;
      }
      button {
        margin-left: -1px;
        border-radius: 0;
      }
      button:first-child {
        margin-left: 0;
        border-radius: var(--radius) 0 0 var(--radius);
      }
      button:last-child {
        border-radius: 0 var(--radius) var(--radius) 0;
      }
      button[aria-pressed='true'] {
        z-index: 1;
      }
    `,
  ];

  /** What is chosen, for those who hear the page. */
  @property() label = '';
  @property() value = '';
  @property({ attribute: false }) options: readonly Option[] = [];

  private pick(value: string): void {
    if (value !== this.value) this.dispatchEvent(new CustomEvent<string>('pick', { detail: value }));
  }

  override render() {
    return html`<div role="group" aria-label=${this.label}>
      ${this.options.map(
        ({ value, label, title, disabled }) => html`<button
          type="button"
          title=${title ?? ''}
          aria-pressed=${value === this.value}
          ?disabled=${disabled === true}
          @click=${() => this.pick(value)}
        >
          ${label}
        </button>`,
      )}
    </div>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'ps-choice': Choice;
  }
}
