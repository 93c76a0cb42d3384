import { css, html, LitElement, nothing } from 'lit';
import { customElement, property, query } from 'lit/decorators.js';
import { controls } from '../../ui/controls-style.ts';

/**
 * A labelled number that the picture follows while it is typed or stepped. What is no number
 * within the limits changes nothing and is put back when the field is left.
 * Arrow keys step by `step`, with Shift by `bigStep`.
 * @fires value CustomEvent<number>: the new value, on the grid of `step`
 */
@customElement('bench-nudge-field')
export class NudgeField extends LitElement {
  static override styles = [
    controls,
    css`
      :host {
        display: inline-block;
      }
      label {
        display: block;
        margin-bottom: var(--space-2);
        font-size: var(--type-small);
        color: var(--ink-soft);
      }
      .field {
        display: flex;
        align-items: center;
      }
      .unit {
        padding-left: var(--space-3);
        color: var(--ink-soft);
        font-size: var(--type-small);
      }
      input[type='number'] {
        appearance: textfield;
        width: 5.2em;
      }
      input::-webkit-inner-spin-button,
      input::-webkit-outer-spin-button {
        appearance: none;
        margin: 0;
      }
      button {
        min-width: 36px;
        padding: 0;
        font-size: var(--type-lead);
        line-height: 1;
      }
      .steps input[type='number'] {
        width: 3em;
        margin: 0 -1px;
        border-radius: 0;
        text-align: center;
      }
      .steps button:first-child {
        border-radius: var(--radius) 0 0 var(--radius);
      }
      .steps button:last-child {
        border-radius: 0 var(--radius) var(--radius) 0;
      }
      [aria-disabled='true'] {
        color: var(--ink-soft);
        cursor: default;
      }
      @media (pointer: coarse) {
        button {
          min-width: var(--touch);
        }
      }
    `,
  ];

  @property() label = '';
  @property() unit = '';
  @property({ type: Number }) value = 0;
  @property({ type: Number }) min = -Infinity;
  @property({ type: Number }) max = Infinity;
  @property({ type: Number }) step = 1;
  @property({ type: Number }) bigStep = 1;
  /** What the − and + buttons are called, `['Fewer strokes', 'More strokes']`; none when left out. */
  @property({ attribute: false }) stepNames: readonly [string, string] | null = null;
  @query('input') private input!: HTMLInputElement;
  /** The value the user is in the middle of typing; its text is left alone. */
  private typed: number | null = null;

  private onGrid(value: number): number {
    const decimals = Math.max(0, -Math.floor(Math.log10(this.step) + 1e-9));
    return Number((Math.round(value / this.step) * this.step).toFixed(decimals)) + 0;
  }

  private give(value: number): void {
    const next = this.onGrid(Math.min(this.max, Math.max(this.min, value)));
    if (next !== this.value) this.dispatchEvent(new CustomEvent<number>('value', { detail: next }));
  }

  private onInput(): void {
    const value = this.input.valueAsNumber;
    if (!(value >= this.min && value <= this.max)) return;
    this.typed = this.onGrid(value);
    this.give(value);
  }

  private onLeave(): void {
    this.typed = null;
    this.write();
  }

  private onKey(event: KeyboardEvent): void {
    const up = event.key === 'ArrowUp';
    if ((!up && event.key !== 'ArrowDown') || event.altKey || event.ctrlKey || event.metaKey) return;
    event.preventDefault();
    this.typed = null;
    const step = event.shiftKey ? this.bigStep : this.step;
    this.give(this.value + (up ? step : -step));
  }

  private write(): void {
    const text = String(this.value);
    if (this.input.value !== text) this.input.value = text;
  }

  override updated(): void {
    if (this.typed === this.value) return;
    this.typed = null;
    this.write();
  }

  private stepButton(by: -1 | 1) {
    if (this.stepNames === null) return nothing;
    const atEnd = by < 0 ? this.value <= this.min : this.value >= this.max;
    return html`<button type="button" aria-label=${this.stepNames[by < 0 ? 0 : 1]} aria-disabled=${atEnd} @click=${() => this.give(this.value + by * this.step)}>
      ${by < 0 ? '−' : '+'}
    </button>`;
  }

  override render() {
    const limit = (value: number) => (Number.isFinite(value) ? value : nothing);
    return html`<label for="number">${this.label}</label>
      <div class="field ${this.stepNames === null ? '' : 'steps'}">
        ${this.stepButton(-1)}
        <input
          id="number"
          type="number"
          inputmode=${this.min < 0 ? 'text' : 'decimal'}
          min=${limit(this.min)}
          max=${limit(this.max)}
          step=${this.step}
          @input=${this.onInput}
          @change=${this.onLeave}
          @blur=${this.onLeave}
          @keydown=${this.onKey}
        />
        ${this.unit === '' ? nothing : html`<span class="unit">${this.unit}</span>`} ${this.stepButton(1)}
      </div>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-nudge-field': NudgeField;
  }
}
