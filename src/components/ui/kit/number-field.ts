import { css, html, LitElement, nothing } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import { roundTo } from '../../../engine/base/units.ts';
import { controls } from '../controls-style.ts';
import { fieldStyle } from './field-style.ts';
import './problem.ts';

/** What a number field gives when its number was changed to one that it may hold. */
export type NumberPick = CustomEvent<number>;

/**
 * A labelled number with its unit. A number beyond its limits is refused in a sentence.
 *
 * When it is `live`, it gives numbers while they are typed or stepped, on the grid of `step`, and
 * puts back what is no number within the limits when it is left. Arrow keys step, with Shift by
 * `bigStep`.
 * @fires pick CustomEvent<number>
 */
@customElement('ps-number')
export class NumberField extends LitElement {
  static override styles = [
    controls,
    fieldStyle,
    css`
      label {
        margin-bottom: var(--space-2);
        font-size: var(--type-small);
        color: var(--ink-soft);
      }
      .field {
        display: flex;
        align-items: center;
        gap: var(--space-3);
        width: 100%;
      }
      input[type='number'] {
        width: var(--number-width, 5.2em);
        padding-inline: var(--number-pad, 8px);
        min-width: 0;
        flex: 0 1 auto;
      }
      ps-problem {
        margin-top: var(--space-2);
      }
      .steps {
        gap: 0;
      }
      .steps input[type='number'] {
        appearance: textfield;
        width: 3em;
        margin: 0 -1px;
        border-radius: 0;
        text-align: center;
      }
      .steps input::-webkit-inner-spin-button {
        appearance: none;
        margin: 0;
      }
      .steps button {
        min-width: 36px;
        padding: 0;
        font-size: var(--type-lead);
        line-height: 1;
      }
      .steps button:first-child {
        border-radius: var(--radius) 0 0 var(--radius);
      }
      .steps button:last-of-type {
        border-radius: 0 var(--radius) var(--radius) 0;
      }
      [aria-disabled='true'] {
        color: var(--ink-soft);
        cursor: default;
      }
      @media (pointer: coarse) {
        .steps button {
          min-width: var(--touch);
        }
      }
    `,
  ];

  @property() label = '';
  /** Whether the label is only heard, where the place says what the number is. */
  @property({ type: Boolean, attribute: 'label-hidden' }) labelHidden = false;
  @property() unit = '';
  @property({ type: Number }) value = 0;
  @property({ type: Number }) min = -Infinity;
  @property({ type: Number }) max = Infinity;
  @property({ type: Number }) step = 1;
  @property({ type: Number }) bigStep = 1;
  /** Decimals shown; the value itself is not rounded. */
  @property({ type: Number }) decimals = 1;
  /** Whether only whole numbers count. */
  @property({ type: Boolean }) whole = false;
  @property({ type: Boolean }) disabled = false;
  @property({ type: Boolean }) live = false;
  /** What the − and + buttons are called, `['Fewer strokes', 'More strokes']`; none when left out. */
  @property({ attribute: false }) stepNames: readonly [string, string] | null = null;
  @state() private complaint = '';
  @query('input') private input!: HTMLInputElement;
  /** The value that is being typed; its text is left alone. */
  private typed: number | null = null;

  private onGrid(value: number): number {
    const decimals = Math.max(0, -Math.floor(Math.log10(this.step) + 1e-9));
    return Number((Math.round(value / this.step) * this.step).toFixed(decimals)) + 0;
  }

  private allows(value: number): boolean {
    return value >= this.min && value <= this.max && (!this.whole || Number.isInteger(value));
  }

  private give(value: number): void {
    const now = this.live ? this.value : roundTo(this.value, this.decimals);
    if (value !== now) this.dispatchEvent(new CustomEvent<number>('pick', { detail: value }));
  }

  private stepTo(value: number): void {
    this.typed = null;
    this.give(this.onGrid(Math.min(this.max, Math.max(this.min, value))));
  }

  private onInput(): void {
    const value = this.input.valueAsNumber;
    if (!this.live || !this.allows(value)) return;
    this.typed = this.onGrid(value);
    this.give(this.typed);
  }

  private onChange(): void {
    const value = this.input.valueAsNumber;
    if (this.live) return this.onLeave();
    this.complaint = this.allows(value) ? '' : this.limits();
    if (this.complaint === '') this.give(value);
  }

  private onLeave(): void {
    if (!this.live) return;
    this.typed = null;
    this.write();
  }

  private onKey(event: KeyboardEvent): void {
    const up = event.key === 'ArrowUp';
    if (!this.live || (!up && event.key !== 'ArrowDown') || event.altKey || event.ctrlKey || event.metaKey) return;
    event.preventDefault();
    const by = event.shiftKey ? this.bigStep : this.step;
    this.stepTo(this.value + (up ? by : -by));
  }

  private write(): void {
    const text = String(roundTo(this.value, this.decimals));
    if (this.input.value !== text) this.input.value = text;
  }

  private limits(): string {
    const low = Number.isFinite(this.min);
    const high = Number.isFinite(this.max);
    const number = this.whole ? 'a whole number' : 'a number';
    if (low && high) return `Give ${this.whole ? `${number} from ` : ''}${this.min} to ${this.max}.`;
    if (low) return `Give ${this.whole ? `${number}, ` : ''}${this.min} or more.`;
    return high ? `Give ${this.whole ? `${number}, ` : ''}${this.max} or less.` : `Give ${number}.`;
  }

  protected override willUpdate(changed: Map<string, unknown>): void {
    if (changed.has('value')) this.complaint = '';
  }

  /**
   * What is being typed stays while the page is drawn anew around it, while it is complained of, and
   * while it is the value in other digits.
   */
  protected override updated(changed: Map<string, unknown>): void {
    if (!changed.has('value') && !changed.has('decimals')) return;
    if (this.complaint !== '' || (this.typed !== null && this.typed === this.value)) return;
    this.typed = null;
    this.write();
  }

  private stepButton(by: -1 | 1) {
    if (this.stepNames === null) return nothing;
    const atEnd = by < 0 ? this.value <= this.min : this.value >= this.max;
    const step = () => this.stepTo(this.value + by * this.step);
    return html`<button type="button" aria-label=${this.stepNames[by < 0 ? 0 : 1]} aria-disabled=${atEnd} @click=${step}>${by < 0 ? '−' : '+'}</button>`;
  }

  override render() {
    const limit = (value: number) => (Number.isFinite(value) ? value : nothing);
    return html`
      <label for="number" class=${this.labelHidden ? 'visually-hidden' : ''}>${this.label}</label>
      <div class="field ${this.stepNames === null ? '' : 'steps'}">
        ${this.stepButton(-1)}
        <input
          id="number"
          type="number"
          inputmode=${this.min < 0 ? nothing : this.whole ? 'numeric' : 'decimal'}
          min=${limit(this.min)}
          max=${limit(this.max)}
          step=${this.step}
          ?disabled=${this.disabled}
          aria-label=${this.unit === '' ? this.label : `${this.label}, ${this.unit}`}
          aria-invalid=${this.complaint === '' ? nothing : 'true'}
          @input=${this.onInput}
          @change=${this.onChange}
          @blur=${this.onLeave}
          @keydown=${this.onKey}
        />
        ${this.stepButton(1)}${this.unit === '' ? nothing : html`<span class="soft">${this.unit}</span>`}
      </div>
      ${this.complaint === '' ? nothing : html`<ps-problem>${this.complaint}</ps-problem>`}
    `;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'ps-number': NumberField;
  }
}
