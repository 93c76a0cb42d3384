import { html, LitElement, nothing } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import { numberText, type TypedNumber, typedNumber } from '../../../engine/base/typed-number.ts';
import { roundTo } from '../../../engine/base/units.ts';
import { say } from '../../words/en/ui/kit.ts';
import { controls } from '../controls-style.ts';
import { decimalSign, lengthUnit, onLengthUnit, setLengthUnit } from '../length-unit.ts';
import { fieldStyle } from './field-style.ts';
import './problem.ts';
import { numberFieldStyle } from './number-field-style.ts';

const MM_PER_INCH = 25.4;
/** A thousandth of an inch is a quarter of the grid that offsets lie on. */
const INCH_DECIMALS = 3;

/** What a number field gives when its number was changed to one that it may hold. */
export type NumberPick = CustomEvent<number>;

/**
 * A labelled number with its unit. A number beyond its limits, or none, is refused in a sentence. It is
 * typed with a comma or a point; a length in mm may be typed in inches, and the unit beside it says so and
 * changes it for the whole app. `value`, `min`, `max`, `step` and what is picked stay mm.
 *
 * When it is `live`, it gives numbers while they are typed or stepped, on the grid of `step`, and
 * puts back what is no number within the limits when it is left. Arrow keys step, with Shift by
 * `bigStep`.
 * @fires pick CustomEvent<number>
 */
@customElement('ps-number')
export class NumberField extends LitElement {
  static override styles = [controls, fieldStyle, numberFieldStyle];

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

  private stopUnit: (() => void) | null = null;

  override connectedCallback(): void {
    super.connectedCallback();
    this.stopUnit = onLengthUnit(() => {
      this.complaint = '';
      this.requestUpdate();
      if (this.hasUpdated) this.putBack();
    });
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.stopUnit?.();
  }

  private get inInches(): boolean {
    return this.unit === 'mm' && lengthUnit() === 'in';
  }

  private get shownUnit(): string {
    return this.inInches ? 'in' : this.unit;
  }

  private shown(value: number): number {
    return this.inInches ? roundTo(value / MM_PER_INCH, INCH_DECIMALS) : roundTo(value, this.decimals);
  }

  /** A step of the unit shown, in that of `value`. */
  private stepOf(step: number): number {
    return this.inInches ? Math.max(0.01, Math.round((step / MM_PER_INCH) * 20) / 20) * MM_PER_INCH : step;
  }

  private onGrid(value: number): number {
    const decimals = Math.max(0, -Math.floor(Math.log10(this.step) + 1e-9));
    return Number((Math.round(value / this.step) * this.step).toFixed(decimals)) + 0;
  }

  private allows(value: number): boolean {
    return value >= this.min && value <= this.max && (!this.whole || this.inInches || Number.isInteger(value));
  }

  private give(value: number): void {
    const now = this.live ? this.value : roundTo(this.value, this.decimals);
    if (value !== now) this.dispatchEvent(new CustomEvent<number>('pick', { detail: value }));
  }

  private stepTo(value: number): void {
    this.typed = null;
    this.complaint = '';
    this.give(this.onGrid(Math.min(this.max, Math.max(this.min, value))));
  }

  /** What stands in the field, in the unit of `value`; or why it is no number. */
  private read(): TypedNumber {
    const typed = typedNumber(this.input.value, decimalSign());
    if (typed.value === null || !this.inInches) return typed;
    // The value in other digits stays the value.
    const same = typed.value === this.shown(this.value);
    return { ...typed, value: same ? this.value : roundTo(typed.value * MM_PER_INCH, INCH_DECIMALS) };
  }

  private onInput(): void {
    const { value } = this.read();
    if (!this.live || value === null || !this.allows(value)) return;
    this.typed = this.onGrid(value);
    this.give(this.typed);
  }

  private onChange(): void {
    if (this.live) return this.putBack();
    const { value, problem } = this.read();
    this.complaint = value === null ? problem : this.allows(value) ? '' : this.limits();
    if (value !== null && this.complaint === '') this.give(value);
  }

  private putBack(): void {
    this.typed = null;
    this.write();
  }

  private onKey(event: KeyboardEvent): void {
    const up = event.key === 'ArrowUp';
    if ((!up && event.key !== 'ArrowDown') || event.altKey || event.ctrlKey || event.metaKey) return;
    event.preventDefault();
    const by = this.stepOf(event.shiftKey && this.live ? this.bigStep : this.step);
    const from = this.live ? this.value : (this.read().value ?? this.value);
    this.stepTo(from + (up ? by : -by));
  }

  private write(): void {
    const text = numberText(this.shown(this.value), decimalSign());
    if (this.input.value !== text) this.input.value = text;
  }

  private limits(): string {
    const low = Number.isFinite(this.min);
    const high = Number.isFinite(this.max);
    const number = this.whole ? say.wholeNumber : say.aNumber;
    const [min, max] = [this.min, this.max].map((limit) => numberText(this.shown(limit), decimalSign()));
    if (low && high) return say.giveTo(this.whole ? say.from(number) : '', min ?? '', max ?? '');
    if (low) return say.giveOrMore(this.whole ? `${number}, ` : '', min ?? '');
    return high ? say.giveOrLess(this.whole ? `${number}, ` : '', max ?? '') : say.give(number);
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
    const step = () => this.stepTo(this.value + by * this.stepOf(this.step));
    return html`<button type="button" aria-label=${this.stepNames[by < 0 ? 0 : 1]} aria-disabled=${atEnd} @click=${step}>${by < 0 ? '−' : '+'}</button>`;
  }

  private unitSign() {
    if (this.unit !== 'mm') return this.unit === '' ? nothing : html`<span class="soft">${this.unit}</span>`;
    const other = this.inInches ? 'mm' : 'in';
    const words = say.lengthsAreInInches(this.inInches);
    return html`<button type="button" class="unit" title=${words} aria-label=${words} @click=${() => setLengthUnit(other)}>${this.shownUnit}</button>`;
  }

  override render() {
    const limit = (value: number) => (Number.isFinite(value) ? this.shown(value) : nothing);
    return html`
      <label for="number" class=${this.labelHidden ? 'visually-hidden' : ''}>${this.label}</label>
      <div class="field ${this.stepNames === null ? '' : 'steps'}">
        ${this.stepButton(-1)}
        <input
          id="number"
          type="text"
          role="spinbutton"
          autocomplete="off"
          inputmode=${this.min < 0 ? nothing : this.whole ? 'numeric' : 'decimal'}
          aria-valuemin=${limit(this.min)}
          aria-valuemax=${limit(this.max)}
          aria-valuenow=${this.shown(this.value)}
          ?disabled=${this.disabled}
          aria-label=${this.unit === '' ? this.label : `${this.label}, ${this.shownUnit}`}
          aria-invalid=${this.complaint === '' ? nothing : 'true'}
          @input=${this.onInput}
          @change=${this.onChange}
          @blur=${() => this.live && this.putBack()}
          @keydown=${this.onKey}
        />
        ${this.stepButton(1)}${this.unitSign()}
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
