import { css, html, LitElement, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { live } from 'lit/directives/live.js';
import { roundTo } from '../../engine/base/units.ts';
import { labFromSrgbHex, srgbHexFromLab } from '../../engine/colour/screen-colour.ts';
import type { Lab } from '../../engine/colour/lab.ts';
import '../ui/number-field.ts';
import type { NumberPick } from '../ui/number-field.ts';
import { controls } from '../ui/styles.ts';

/** A printed colour: picked on the screen, or typed as L, a, b (D50/2°). Sends `pick` with a Lab. */
@customElement('colour-field')
export class ColourField extends LitElement {
  static override styles = [
    controls,
    css`
      :host {
        display: block;
      }
      fieldset {
        display: grid;
        grid-template-columns: 64px repeat(3, minmax(0, 1fr));
        gap: 4px 10px;
        align-items: end;
        margin: 0;
        padding: 0;
        border: 0;
        min-width: 0;
      }
      legend {
        padding: 0 0 4px;
        font-weight: 600;
      }
      input[type='color'] {
        width: 64px;
        height: 36px;
        padding: 0;
        border: 1px solid var(--line);
        border-radius: 3px;
        background: none;
        cursor: pointer;
      }
      input[type='color']::-webkit-color-swatch-wrapper {
        padding: 0;
      }
      input[type='color']::-webkit-color-swatch {
        border: 0;
        border-radius: 2px;
      }
      .pick {
        display: grid;
        gap: 3px;
        font-size: 13px;
        color: var(--ink-soft);
      }
      .problem {
        margin-top: 6px;
        font-size: 13px;
        color: var(--accent);
      }
      @media (pointer: coarse) {
        input[type='color'] {
          height: var(--touch);
        }
      }
    `,
  ];

  @property() label = '';
  @property({ attribute: false }) lab: Lab = [0, 0, 0];
  /** What is wrong with this colour, in a sentence. */
  @property() problem = '';

  private pick(lab: Lab): void {
    this.dispatchEvent(new CustomEvent<Lab>('pick', { detail: lab }));
  }

  private onHex(event: Event): void {
    const hex = (event.target as HTMLInputElement).value;
    if (hex === srgbHexFromLab(this.lab)) return;
    const [l, a, b] = labFromSrgbHex(hex);
    this.pick([roundTo(l, 2), roundTo(a, 2), roundTo(b, 2)]);
  }

  private onPart(part: 0 | 1 | 2, value: number): void {
    const lab: Lab = [...this.lab];
    lab[part] = value;
    this.pick(lab);
  }

  override render() {
    const [l, a, b] = this.lab;
    return html`
      <fieldset aria-describedby=${this.problem === '' ? nothing : 'problem'}>
        <legend>${this.label}</legend>
        <label class="pick">
          Screen
          <input type="color" aria-label="${this.label}: colour on screen" .value=${live(srgbHexFromLab(this.lab))} @change=${this.onHex} />
        </label>
        <ps-number label="L" min="0" max="100" step="0.1" .value=${l} @pick=${(event: NumberPick) => this.onPart(0, event.detail)}></ps-number>
        <ps-number label="a" min="-128" max="128" step="0.1" .value=${a} @pick=${(event: NumberPick) => this.onPart(1, event.detail)}></ps-number>
        <ps-number label="b" min="-128" max="128" step="0.1" .value=${b} @pick=${(event: NumberPick) => this.onPart(2, event.detail)}></ps-number>
      </fieldset>
      ${this.problem === '' ? nothing : html`<p class="problem" id="problem" role="alert">${this.problem}</p>`}
    `;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'colour-field': ColourField;
  }
}
