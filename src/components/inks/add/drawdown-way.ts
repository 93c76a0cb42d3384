import { html, LitElement, nothing } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import { roundedLab } from '../../../engine/colour/lab.ts';
import { guessInk } from '../../../engine/ink/characterise/guess.ts';
import type { InkDraft } from '../../../engine/ink/characterise/ink-draft.ts';
import type { Ink } from '../../../engine/ink/types.ts';
import { controls } from '../../ui/controls-style.ts';
import { drawdownCard, drawdownWay } from './drawdown-card.ts';
import '../photo/photo-card.ts';
import './two-colours.ts';
import type { Colours, ColoursFound, TwoColours } from './two-colours.ts';
import '../../ui/kit/choice.ts';

/** An ochre of middling strength, which every card can hold. */
function start(): ColoursFound {
  const { kx, sx, overWhite, overBlack } = guessInk([64, 12, 38], 'translucent');
  return { kx: Array.from(kx), sx: Array.from(sx), overWhite: roundedLab(overWhite), overBlack: roundedLab(overBlack), moved: 0 };
}

const SOURCES = [
  { value: 'typed', label: 'Type them' },
  { value: 'photo', label: 'Pick them from a photo' },
];

/** An ink from its two colours on a contrast card, typed or picked from a photo. Sends `draft`, null while there is none. */
@customElement('drawdown-way')
export class DrawdownWay extends LitElement {
  static override styles = [controls, drawdownWay];

  @property({ type: Number }) strokeGain = 0;
  @state() private found: ColoursFound = start();
  @state() private fromPhoto = false;
  @query('two-colours') private two!: TwoColours;

  protected override firstUpdated(): void {
    this.send(this.found);
  }

  private send(found: ColoursFound | null): void {
    const detail: InkDraft | null =
      found === null ? null : { basis: 'drawdown', overWhite: found.overWhite, overBlack: found.overBlack, kx: found.kx, sx: found.sx };
    this.dispatchEvent(new CustomEvent<InkDraft | null>('draft', { detail }));
  }

  override render() {
    const { found } = this;
    return html`
      <ps-choice
        label="Where the two colours come from"
        .options=${SOURCES}
        .value=${this.fromPhoto ? 'photo' : 'typed'}
        @pick=${(event: CustomEvent<string>) => (this.fromPhoto = event.detail === 'photo')}
      ></ps-choice>
      ${this.fromPhoto ? html`<photo-card @colours=${(event: CustomEvent<Colours>) => void this.two.ask(event.detail)}></photo-card>` : nothing}
      <two-colours
        .colours=${found}
        unsaved="No ink can be so; nothing can be added yet."
        @found=${(event: CustomEvent<ColoursFound>) => {
          this.found = event.detail;
          this.send(event.detail);
        }}
        @refused=${() => this.send(null)}
        @forgotten=${() => this.send(this.found)}
      ></two-colours>
      ${drawdownCard(found satisfies Pick<Ink, 'kx' | 'sx'>, this.strokeGain)}
      ${found.moved === 0 ? nothing : html`<p class="small">${found.moved === 1 ? 'One band' : `${found.moved} bands`} had to be moved to be a film that can exist.</p>`}
    `;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'drawdown-way': DrawdownWay;
  }
}
