import { css, html, LitElement, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { EngineError } from '../../../engine/base/error.ts';
import { deltaE2000 } from '../../../engine/colour/delta-e.ts';
import { guessInk, type Opacity } from '../../../engine/ink/characterise/guess.ts';
import type { InkDraft } from '../../../engine/ink/characterise/ink-draft.ts';
import { offeredColour } from '../../../engine/ink/characterise/nearest-colours.ts';
import './colour-field.ts';
import type { Lab } from '../../../engine/ink/types.ts';
import { controls } from '../../ui/controls-style.ts';
import { drawdownCard, drawdownWay } from './drawdown-card.ts';

const OPACITIES: Record<Opacity, string> = {
  transparent: 'Transparent: black stays black under it',
  translucent: 'Translucent: it tints black',
  opaque: 'Opaque: black hardly shows',
};

/** An ink from one colour and how much it seems to hide. Sends `draft`, null while there is none. */
@customElement('guess-way')
export class GuessWay extends LitElement {
  static override styles = [
    controls,
    drawdownWay,
    css`
      fieldset {
        display: grid;
        gap: var(--space-3);
      }
      legend {
        padding: 0 0 var(--space-2);
        font-weight: 600;
      }
      @media (pointer: coarse) {
        fieldset label {
          min-height: var(--touch);
        }
      }
    `,
  ];

  @property({ type: Number }) strokeGain = 0;
  @state() private colour: Lab = [64, 12, 38];
  @state() private opacity: Opacity = 'translucent';
  private draft: InkDraft | null = null;
  private nearest: Lab | null = null;
  private problem = '';

  protected override willUpdate(): void {
    this.nearest = null;
    this.problem = '';
    try {
      const { kx, sx, overWhite, overBlack } = guessInk(this.colour, this.opacity);
      this.draft = { basis: 'guess', overWhite, overBlack, kx: Array.from(kx), sx: Array.from(sx) };
    } catch (error) {
      if (!(error instanceof EngineError)) throw error;
      this.draft = null;
      this.problem = error.message;
      this.nearest = offeredColour(error, this.colour);
    }
  }

  protected override updated(changed: Map<string, unknown>): void {
    if (changed.has('colour') || changed.has('opacity'))
      this.dispatchEvent(new CustomEvent<InkDraft | null>('draft', { detail: this.draft }));
  }

  override render() {
    const { draft, nearest } = this;
    const off = draft === null ? 0 : deltaE2000(this.colour, draft.overWhite);
    return html`
      <colour-field label="One stroke over white" .lab=${this.colour} .problem=${this.problem} @pick=${(event: CustomEvent<Lab>) => (this.colour = event.detail)}></colour-field>
      ${nearest === null ? nothing : html`<div class="row"><button @click=${() => (this.colour = nearest)}>Take the nearest</button></div>`}
      <fieldset>
        <legend>How much it hides</legend>
        ${(Object.keys(OPACITIES) as Opacity[]).map(
          (opacity) =>
            html`<label><input type="radio" name="opacity" .checked=${this.opacity === opacity} @change=${() => (this.opacity = opacity)} /> ${OPACITIES[opacity]}</label>`,
        )}
      </fieldset>
      ${draft === null ? nothing : drawdownCard(draft, this.strokeGain)}
      ${off > 1 ? html`<p class="small">So light and so ${this.opacity} cannot be both: over white it will be ΔE ${off.toFixed(1)} off.</p>` : nothing}
    `;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'guess-way': GuessWay;
  }
}
