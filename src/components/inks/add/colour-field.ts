import { css, html, LitElement, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { live } from 'lit/directives/live.js';
import { hexOfText } from '../../../engine/colour/hex-text.ts';
import { type Lab, roundedLab } from '../../../engine/colour/lab.ts';
import '../../ui/kit/number-field.ts';
import { labOfSwatch, labSwatch } from '../../../engine/ink/film/lab-swatch.ts';
import { controls } from '../../ui/controls-style.ts';
import type { NumberPick } from '../../ui/kit/number-field.ts';
import { unlessTyped } from '../../ui/typed/unless-typed.ts';
import { say } from '../../words/en/inks/add.ts';
import { markStyles, OUTSIDE_WORDS } from '../overprint/marked-swatch.ts';

/** A printed colour: picked on the screen, or typed as hex or as L, a, b (D50/2°). Sends `pick` with a Lab. */
@customElement('colour-field')
export class ColourField extends LitElement {
  static override styles = [
    controls,
    markStyles,
    css`
      :host {
        display: block;
        container-type: inline-size;
      }
      fieldset {
        display: grid;
        grid-template-columns: 40px 80px repeat(3, minmax(0, 1fr));
        gap: var(--space-2) var(--space-3);
        --number-width: 100%;
        --number-pad: 5px;
        align-items: end;
      }
      @container (max-width: 330px) {
        fieldset {
          grid-template-columns: 40px repeat(2, minmax(0, 1fr));
        }
      }
      legend {
        padding: 0 0 var(--space-2);
        font-weight: 600;
      }
      .well {
        display: block;
        width: 100%;
      }
      input[type='color'] {
        display: block;
        width: 100%;
        height: 36px;
        padding: 0;
        border: 1px solid var(--line);
        border-radius: var(--radius);
        background: none;
        cursor: pointer;
      }
      input[type='color']::-webkit-color-swatch-wrapper {
        padding: 0;
      }
      input[type='color']::-webkit-color-swatch {
        border: 0;
        border-radius: var(--radius);
      }
      input[type='text'] {
        width: 100%;
      }
      .pick {
        display: grid;
        gap: var(--space-2);
        font-size: var(--type-small);
        color: var(--ink-soft);
        min-width: 0;
      }
      .pick input[type='text'] {
        padding: var(--space-2) var(--space-3);
        font-size: var(--type-label);
        color: var(--ink);
      }
      .problem {
        margin-top: var(--space-3);
        font-size: var(--type-small);
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
  /** The paper that the screen shows as its white; left out, the perfect diffuser is. */
  @property({ attribute: false }) white: ArrayLike<number> | undefined;
  /** What is wrong with this colour, in a sentence. */
  @property() problem = '';
  /** A hex that was typed and is none. */
  @state() private badHex = '';
  /** The hex that the colour was picked by; rounded Lab would give a neighbour of it. */
  private picked: { hex: string; lab: Lab } | null = null;

  protected override willUpdate(changed: Map<string, unknown>): void {
    if (changed.has('lab')) this.badHex = '';
    // Seen on another white it is another screen colour.
    if (changed.has('white')) this.picked = null;
  }

  private pick(lab: Lab): void {
    this.dispatchEvent(new CustomEvent<Lab>('pick', { detail: lab }));
  }

  private pickHex(text: string): void {
    const hex = hexOfText(text);
    this.badHex = hex === null ? text : '';
    if (hex === null || hex === this.hex()) return;
    const lab = roundedLab(labOfSwatch(hex, this.white));
    this.picked = { hex, lab };
    this.pick(lab);
  }

  private hex(): string {
    const { picked, lab } = this;
    return picked !== null && picked.lab.every((value, i) => value === lab[i]) ? picked.hex : labSwatch(lab, this.white).hex;
  }

  private onPart(part: 0 | 1 | 2, value: number): void {
    const lab: Lab = [...this.lab];
    lab[part] = value;
    this.pick(lab);
  }

  override render() {
    const [l, a, b] = this.lab;
    const { inGamut } = labSwatch(this.lab, this.white);
    const hex = this.hex();
    const problem = this.badHex === '' ? this.problem : say.isNoColourWrite(this.badHex);
    const onText = (event: Event): void => this.pickHex((event.target as HTMLInputElement).value);
    return html`
      <fieldset aria-describedby=${problem === '' ? nothing : 'problem'}>
        <legend>${this.label}</legend>
        <label class="pick">
          ${say.pick}
          <span class="well swatch ${inGamut ? '' : 'outside'}" title=${inGamut ? nothing : OUTSIDE_WORDS}>
            <input type="color" aria-label=${say.colourOnScreen(this.label)} .value=${live(hex)} @change=${onText} />
          </span>
        </label>
        <label class="pick">
          ${say.hex}
          <input
            type="text"
            aria-label="${this.label}: hex"
            autocomplete="off"
            spellcheck="false"
            maxlength="9"
            ${unlessTyped(this.badHex === '' ? hex : this.badHex)}
            aria-invalid=${this.badHex === '' ? nothing : 'true'}
            @change=${onText}
          />
        </label>
        <ps-number label="L" min="0" max="100" step="0.1" .value=${l} @pick=${(event: NumberPick) => this.onPart(0, event.detail)}></ps-number>
        <ps-number label="a" min="-128" max="128" step="0.1" .value=${a} @pick=${(event: NumberPick) => this.onPart(1, event.detail)}></ps-number>
        <ps-number label="b" min="-128" max="128" step="0.1" .value=${b} @pick=${(event: NumberPick) => this.onPart(2, event.detail)}></ps-number>
      </fieldset>
      ${problem === '' ? nothing : html`<p class="problem" id="problem" role="alert">${problem}</p>`}
    `;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'colour-field': ColourField;
  }
}
