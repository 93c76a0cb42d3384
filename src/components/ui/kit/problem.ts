import { css, html, LitElement } from 'lit';
import { customElement } from 'lit/decorators.js';

/** A sentence that says what cannot be and how to mend it; read out when it comes. */
@customElement('ps-problem')
export class Problem extends LitElement {
  static override styles = css`
    :host {
      display: block;
      color: var(--accent);
      font-size: var(--type-small);
      overflow-wrap: anywhere;
    }
    :host([hidden]) {
      display: none;
    }
  `;

  override connectedCallback(): void {
    super.connectedCallback();
    this.setAttribute('role', 'alert');
  }

  override render() {
    return html`<slot></slot>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'ps-problem': Problem;
  }
}
