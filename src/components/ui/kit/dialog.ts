import { css, html, LitElement, nothing } from 'lit';
import { customElement, property, query } from 'lit/decorators.js';
import { controls } from '../controls-style.ts';

/**
 * A dialog over everything: its name, what is put into it, and its close button. Escape closes it.
 * @fires close Event
 */
@customElement('ps-dialog')
export class Dialog extends LitElement {
  static override styles = [
    controls,
    css`
      :host {
        display: contents;
      }
      dialog {
        width: min(var(--dialog-width, 560px), calc(100vw - 24px));
        max-height: calc(100dvh - 24px);
        padding: var(--space-8);
        border: 1px solid var(--line);
        border-radius: var(--radius);
        background: var(--table);
        color: var(--ink);
        box-shadow: var(--shadow);
      }
      dialog::backdrop {
        background: var(--backdrop);
      }
      header {
        display: flex;
        align-items: start;
        justify-content: space-between;
        gap: var(--space-7);
        margin-bottom: var(--space-7);
      }
      .close {
        flex: none;
        margin: calc(-1 * var(--space-2)) calc(-1 * var(--space-4)) 0 0;
      }
    `,
  ];

  /** What it is called. */
  @property() heading = '';
  /** Whether it has a close button beside its name; without, a button in it must close it. */
  @property({ type: Boolean }) closable = false;
  @query('dialog') private dialog!: HTMLDialogElement;

  get open(): boolean {
    return this.hasUpdated && this.dialog.open;
  }

  /** Opens it, over everything else. */
  showModal(): void {
    if (!this.hasUpdated) this.performUpdate();
    this.dialog.showModal();
  }

  close(): void {
    this.dialog.close();
  }

  override render() {
    return html`<dialog aria-label=${this.heading} @close=${() => this.dispatchEvent(new Event('close'))}>
      <header>
        <h2>${this.heading} <slot name="beside"></slot></h2>
        ${this.closable ? html`<button type="button" class="quiet close" aria-label="Close" @click=${this.close}>✕</button>` : nothing}
      </header>
      <slot></slot>
    </dialog>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'ps-dialog': Dialog;
  }
}
