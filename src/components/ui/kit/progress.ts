import { css, html, LitElement, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { say } from '../../words/en/ui/kit.ts';
import { controls } from '../controls-style.ts';
import { rowHost } from '../layout-style.ts';

/**
 * Work that goes on: how far it is, and the button that ends it.
 * @fires stop Event: the button was pressed
 */
@customElement('ps-progress')
export class Progress extends LitElement {
  static override styles = [
    controls,
    rowHost,
    css`
      :host {
        gap: var(--space-4) var(--space-6);
      }
      progress {
        flex: 0 1 160px;
        min-width: 80px;
        accent-color: var(--accent);
      }
      span {
        color: var(--ink-soft);
      }
    `,
  ];

  /** What is done, for those who hear the page. */
  @property() label = '';
  /** How far it is, of `most`; null when nobody knows. */
  @property({ type: Number }) value: number | null = null;
  @property({ type: Number }) most = 1;
  /** How far it is, in words; '' shows none. */
  @property() words = '';
  /** What the button is called; '' for work that nobody can end. */
  @property() stop = say.stop;

  override render() {
    return html`${
      this.stop === '' ? nothing : html`<button type="button" @click=${() => this.dispatchEvent(new Event('stop'))}>${this.stop}</button>`
    }
      <progress aria-label=${this.label} max=${this.most} value=${this.value ?? nothing}></progress>
      <span role="status">${this.words}</span>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'ps-progress': Progress;
  }
}
