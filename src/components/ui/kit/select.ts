import { css, html, LitElement } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { controls } from '../controls-style.ts';
import { fieldStyle } from './field-style.ts';

/** One thing to choose. */
export interface Option<Value extends string = string> {
  readonly value: Value;
  readonly label: string;
  /** Why one would choose it, shown on pointing. */
  readonly title?: string;
  readonly disabled?: boolean;
}

/** Things to choose that belong together, under a heading. */
export interface OptionGroup {
  readonly label: string;
  readonly options: readonly Option[];
}

/**
 * A labelled list to choose one of.
 * @fires pick CustomEvent<string>: the value chosen
 */
@customElement('ps-select')
export class Select extends LitElement {
  static override styles = [
    controls,
    fieldStyle,
    css`
      select {
        max-width: 100%;
      }
    `,
  ];

  @property() label = '';
  @property() value = '';
  @property({ attribute: false }) options: readonly (Option | OptionGroup)[] = [];
  @property({ type: Boolean }) disabled = false;

  private option({ value, label, title, disabled }: Option) {
    return html`<option value=${value} title=${title ?? ''} ?disabled=${disabled === true} .selected=${value === this.value}>${label}</option>`;
  }

  override render() {
    return html`<label>
      <span class="label">${this.label}</span>
      <select
        aria-label=${this.label}
        ?disabled=${this.disabled}
        @change=${(event: Event) => this.dispatchEvent(new CustomEvent<string>('pick', { detail: (event.target as HTMLSelectElement).value }))}
      >
        ${this.options.map((entry) =>
          'options' in entry
            ? html`<optgroup label=${entry.label}>${entry.options.map((option) => this.option(option))}</optgroup>`
            : this.option(entry),
        )}
      </select>
    </label>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'ps-select': Select;
  }
}
