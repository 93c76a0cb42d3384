import { css, html, LitElement, nothing } from 'lit';
import { customElement, property, query } from 'lit/decorators.js';
import { say } from '../../words/en/ui/next.ts';
import { controls } from '../controls-style.ts';
import { type NextChoice, type NextSheet, rehearse, type WhatNext } from './what-next.ts';

/** So long after a button came to stand, the room itself has done what it had to. */
const SETTLED_MS = 1000;

/** Once is enough, whatever sheet it is for. */
let rehearsed = false;
const earnest = new AbortController();

/**
 * A button that opens what to pull next on a sheet.
 * @fires take CustomEvent<NextChoice>
 */
@customElement('ps-next')
export class NextButton extends LitElement {
  static override styles = [
    controls,
    css`
      :host {
        display: inline-block;
      }
    `,
  ];

  /** Gives the sheet when it is asked for. */
  @property({ attribute: false }) sheetOf!: () => NextSheet | null;
  @property() label = say.whatNext;
  /** What it asks about, where the label alone does not say so. */
  @property() of = '';
  @property({ type: Boolean }) disabled = false;
  /** Among others without a frame. */
  @property({ type: Boolean }) quiet = false;
  private waiting: ReturnType<typeof setTimeout> | undefined;
  @query('ps-what-next') private dialog!: WhatNext;

  override connectedCallback(): void {
    super.connectedCallback();
    if (!rehearsed) this.waiting = setTimeout(() => this.rehearse(), SETTLED_MS);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    clearTimeout(this.waiting);
  }

  private rehearse(): void {
    const sheet = rehearsed || this.disabled ? null : this.sheetOf();
    if (sheet === null) return;
    rehearsed = true;
    void rehearse(sheet, earnest.signal);
  }

  private open(): void {
    rehearsed = true;
    earnest.abort();
    const sheet = this.sheetOf();
    if (sheet !== null) this.dialog.show(sheet);
  }

  private onTake({ detail }: CustomEvent<NextChoice>): void {
    this.dialog.close();
    this.dispatchEvent(new CustomEvent<NextChoice>('take', { detail }));
  }

  override render() {
    return html`<button class=${this.quiet ? 'quiet' : nothing} ?disabled=${this.disabled} aria-label=${this.of === '' || this.label.includes(this.of) ? nothing : say.for(this.label, this.of)} @click=${this.open}>${this.label}</button>
      <ps-what-next @take=${this.onTake}></ps-what-next>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'ps-next': NextButton;
  }
}
