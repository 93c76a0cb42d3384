import { css, html, LitElement, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { live } from 'lit/directives/live.js';
import { roundTo } from '../../engine/base/units.ts';
import { controls } from './controls-style.ts';

/** What a number field gives when its number was changed to one that it may hold. */
export type NumberPick = CustomEvent<number>;

/** A labelled number with its unit. Sends `pick` with the number; tells its limits when they are passed. */
@customElement('ps-number')
export class NumberField extends LitElement {
  static override styles = [
    controls,
    css`
      :host {
        display: block;
      }
      label {
        display: grid;
        gap: var(--space-2);
        justify-items: start;
      }
      .label {
        font-size: var(--type-small);
        color: var(--ink-soft);
      }
      .field {
        display: flex;
        align-items: baseline;
        gap: var(--space-3);
        width: 100%;
      }
      input[type='number'] {
        width: var(--number-width, 5.2em);
        padding-inline: var(--number-pad, 8px);
        min-width: 0;
        flex: 0 1 auto;
      }
      .complaint {
        margin-top: var(--space-2);
        font-size: var(--type-small);
        color: var(--accent);
      }
    `,
  ];

  @property() label = '';
  @property() unit = '';
  @property({ type: Number }) value = 0;
  @property({ type: Number }) min = -Infinity;
  @property({ type: Number }) max = Infinity;
  @property({ type: Number }) step = 1;
  /** Decimals shown; the value itself is not rounded. */
  @property({ type: Number }) decimals = 1;
  @state() private complaint = '';
  /** What was typed and cannot be taken. */
  private typed = '';

  private onChange(event: Event): void {
    const input = event.target as HTMLInputElement;
    const value = input.valueAsNumber;
    if (!(value >= this.min && value <= this.max)) {
      this.typed = input.value;
      this.complaint = this.limits();
      return;
    }
    this.complaint = '';
    if (value !== roundTo(this.value, this.decimals)) this.dispatchEvent(new CustomEvent<number>('pick', { detail: value }));
  }

  private limits(): string {
    const low = Number.isFinite(this.min);
    const high = Number.isFinite(this.max);
    if (low && high) return `Give ${this.min} to ${this.max}.`;
    if (low) return `Give ${this.min} or more.`;
    return high ? `Give ${this.max} or less.` : 'Give a number.';
  }

  protected override willUpdate(changed: Map<string, unknown>): void {
    if (changed.has('value')) this.complaint = '';
  }

  override render() {
    const shown = String(roundTo(this.value, this.decimals));
    return html`
      <label>
        <span class="label">${this.label}</span>
        <span class="field">
          <input
            type="number"
            inputmode=${this.min >= 0 ? 'decimal' : nothing}
            .value=${live(this.complaint === '' ? shown : this.typed)}
            min=${Number.isFinite(this.min) ? this.min : nothing}
            max=${Number.isFinite(this.max) ? this.max : nothing}
            step=${this.step}
            aria-label=${this.unit === '' ? this.label : `${this.label}, ${this.unit}`}
            aria-invalid=${this.complaint === '' ? nothing : 'true'}
            @change=${this.onChange}
          />
          ${this.unit === '' ? nothing : html`<span class="soft">${this.unit}</span>`}
        </span>
      </label>
      ${this.complaint === '' ? nothing : html`<p class="complaint" role="alert">${this.complaint}</p>`}
    `;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'ps-number': NumberField;
  }
}
