import { css, html, LitElement, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { EngineError } from '../../../engine/base/error.ts';
import { roundTo } from '../../../engine/base/units.ts';
import { deltaE2000 } from '../../../engine/colour/delta-e.ts';
import { CARD_BLACK, CARD_WHITE } from '../../../engine/ink/characterise/card.ts';
import { coloursOn } from '../../../engine/ink/characterise/characterise.ts';
import { guessInk, OPACITIES, OPACITY, type Opacity } from '../../../engine/ink/characterise/guess.ts';
import type { InkDraft } from '../../../engine/ink/characterise/ink-draft.ts';
import { offeredColour } from '../../../engine/ink/characterise/nearest-colours.ts';
import { type GroundChoice, groundsOf, usualGrounds } from '../../../engine/ink/characterise/own-grounds.ts';
import type { Lab } from '../../../engine/ink/types.ts';
import type { Studio } from '../../../engine/studio/studio.ts';
import { fixed } from '../../../engine/words/language.ts';
import '../../ui/kit/number-field.ts';
import { controls } from '../../ui/controls-style.ts';
import './colour-field.ts';
import type { NumberPick } from '../../ui/kit/number-field.ts';
import './ground-choice.ts';
import { say } from '../../words/en/inks/add.ts';
import { drawdownCard, drawdownWay } from './drawdown-card.ts';

const NAMES: Record<Opacity, string> = {
  transparent: say.transparentBlackStaysBlack,
  translucent: say.translucentItTintsBlack,
  opaque: say.opaqueBlackHardlyShows,
};

/** Nearer to a name than this is that name. */
const SAME_OPACITY = 0.005;

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

  @property({ attribute: false }) studio!: Studio;
  @state() private colour: Lab = [64, 12, 38];
  @state() private opacity = OPACITIES.translucent;
  @state() private choice: GroundChoice | null = null;
  private draft: InkDraft | null = null;
  /** How far the ink is from the colour that was asked for, on its ground. */
  private off = 0;
  private nearest: Lab | null = null;
  private problem = '';

  private get chosen(): GroundChoice {
    return (this.choice ??= usualGrounds(this.studio));
  }

  protected override willUpdate(): void {
    const { studio } = this;
    this.nearest = null;
    this.problem = '';
    this.draft = null;
    try {
      const { kx, sx, overWhite } = guessInk(this.colour, this.opacity, groundsOf(this.chosen, studio));
      this.off = deltaE2000(this.colour, overWhite);
      const onCard = coloursOn({ kx, sx }, CARD_WHITE, CARD_BLACK, studio.surface);
      this.draft = { basis: 'guess', ...onCard, kx: Array.from(kx), sx: Array.from(sx) };
    } catch (error) {
      if (!(error instanceof EngineError)) throw error;
      this.problem = error.message;
      this.nearest = offeredColour(error, this.colour);
    }
  }

  protected override updated(changed: Map<string, unknown>): void {
    if (['colour', 'opacity', 'choice', 'studio'].some((name) => changed.has(name)))
      this.dispatchEvent(new CustomEvent<InkDraft | null>('draft', { detail: this.draft }));
  }

  override render() {
    const { draft, nearest, off, studio } = this;
    const named = (Object.keys(NAMES) as Opacity[]).find((name) => Math.abs(OPACITIES[name] - this.opacity) < SAME_OPACITY);
    return html`
      <ground-choice .studio=${studio} .choice=${this.chosen} @pick=${(event: CustomEvent<GroundChoice>) => (this.choice = event.detail)}></ground-choice>
      <colour-field label=${say.oneStrokeOverWhite} .lab=${this.colour} .problem=${this.problem} @pick=${(event: CustomEvent<Lab>) => (this.colour = event.detail)}></colour-field>
      ${nearest === null ? nothing : html`<div class="row"><button @click=${() => (this.colour = nearest)}>${say.takeNearest}</button></div>`}
      <fieldset>
        <legend>${say.howMuchItHides}</legend>
        ${(Object.keys(NAMES) as Opacity[]).map(
          (name) =>
            html`<label><input type="radio" name="opacity" .checked=${named === name} @change=${() => (this.opacity = OPACITIES[name])} /> ${NAMES[name]}</label>`,
        )}
        <ps-number
          label=${say.opacityHowLightOne}
          unit="%"
          min=${OPACITY.least * 100}
          max=${OPACITY.most * 100}
          step="1"
          decimals="0"
          .value=${roundTo(this.opacity * 100, 1)}
          @pick=${(event: NumberPick) => (this.opacity = event.detail / 100)}
        ></ps-number>
      </fieldset>
      ${draft === null ? nothing : drawdownCard(draft, studio)}
      ${draft !== null && off > 1 ? html`<p class="small">${say.soLightAndSo(named ?? say.opaque, fixed(off, 1))}</p>` : nothing}
    `;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'guess-way': GuessWay;
  }
}
