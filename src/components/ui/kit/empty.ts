import { css, html, LitElement } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { controls } from '../controls-style.ts';
import { stackHost } from '../layout-style.ts';

/** What stands where there is nothing yet: what belongs there, and in the slot `actions` how it comes. */
@customElement('ps-empty')
export class Empty extends LitElement {
  static override styles = [
    controls,
    stackHost,
    css`
      :host {
        gap: var(--space-5);
        max-width: 48ch;
        padding: var(--space-10) 0;
      }
      :host([centred]) {
        justify-items: center;
        align-content: center;
        margin-inline: auto;
        text-align: center;
      }
      .text {
        color: var(--ink-soft);
        overflow-wrap: anywhere;
      }
      .row {
        margin-top: var(--space-2);
      }
      :host([centred]) .row {
        justify-content: center;
      }
    `,
  ];

  @property() heading = '';
  @property({ type: Boolean, reflect: true }) centred = false;

  override render() {
    return html`<slot name="picture"></slot>
      <h2 ?hidden=${this.heading === ''}>${this.heading}</h2>
      <div class="text"><slot></slot></div>
      <div class="row"><slot name="actions"></slot></div>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'ps-empty': Empty;
  }
}
