import { css, html, LitElement, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { controls } from '../controls-style.ts';

/**
 * A part of a page that is shut until it is wanted.
 * @fires toggle Event: it was opened or shut, as `open` tells
 */
@customElement('ps-fold')
export class Fold extends LitElement {
  static override styles = [
    controls,
    css`
      :host {
        display: block;
      }
      :host([ruled]) {
        border-top: 1px solid var(--line);
      }
      summary {
        display: flex;
        align-items: center;
        gap: var(--space-5);
        min-height: var(--fold-height, 36px);
        padding: var(--fold-pad, 0);
        cursor: pointer;
        list-style: none;
      }
      :host([ruled]) summary {
        min-height: var(--touch);
      }
      summary::-webkit-details-marker {
        display: none;
      }
      summary::before {
        content: '';
        flex: none;
        width: 7px;
        height: 7px;
        border: solid var(--ink-soft);
        border-width: 0 1.5px 1.5px 0;
        transform: rotate(-45deg);
      }
      details[open] > summary::before {
        transform: rotate(45deg) translate(-1px, -1px);
      }
      .label {
        font-weight: 650;
      }
      :host([quiet]) .label {
        font-weight: inherit;
      }
      .note {
        min-width: 0;
        overflow: hidden;
        color: var(--ink-soft);
        font-size: var(--type-small);
        text-overflow: ellipsis;
        white-space: nowrap;
      }
      :host([ruled]) .note,
      :host([quiet]) .note {
        margin-left: auto;
      }
      .note[data-strong] {
        color: var(--ink);
        font-weight: 600;
      }
      @media (pointer: coarse) {
        summary {
          min-height: var(--touch);
        }
      }
    `,
  ];

  /** What is inside, in a word or two. */
  @property() label = '';
  /** What of it is to be known while it is shut. */
  @property() note = '';
  /** Whether the note tells of something that was set. */
  @property({ type: Boolean }) strong = false;
  @property({ type: Boolean, reflect: true }) open = false;
  /** A part of a column, with a line above it. */
  @property({ type: Boolean, reflect: true }) ruled = false;
  /** One of many small ones, in the weight of the text around it. */
  @property({ type: Boolean, reflect: true }) quiet = false;

  private onToggle(event: Event): void {
    const { open } = event.target as HTMLDetailsElement;
    if (open === this.open) return;
    this.open = open;
    this.dispatchEvent(new Event('toggle'));
  }

  override render() {
    return html`<details .open=${this.open} @toggle=${this.onToggle}>
      <summary>
        <span class="label">${this.label}</span>
        ${this.note === '' ? nothing : html`<span class="note" ?data-strong=${this.strong}>${this.note}</span>`}
      </summary>
      <slot></slot>
    </details>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'ps-fold': Fold;
  }
}
