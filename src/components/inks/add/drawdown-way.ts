import { html, LitElement, nothing } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import { roundedLab } from '../../../engine/colour/lab.ts';
import { CARD, CARD_BLACK, CARD_WHITE, type Grounds } from '../../../engine/ink/characterise/card.ts';
import { coloursOn } from '../../../engine/ink/characterise/characterise.ts';
import { guessInk } from '../../../engine/ink/characterise/guess.ts';
import type { InkDraft } from '../../../engine/ink/characterise/ink-draft.ts';
import { type GroundChoice, groundsOf, usualGrounds } from '../../../engine/ink/characterise/own-grounds.ts';
import type { Ink } from '../../../engine/ink/types.ts';
import type { Studio } from '../../../engine/studio/studio.ts';
import { controls } from '../../ui/controls-style.ts';
import { say } from '../../words/en/inks/add.ts';
import './ground-choice.ts';
import '../photo/photo-card.ts';
import './two-colours.ts';
import { drawdownCard, drawdownWay } from './drawdown-card.ts';
import '../../ui/kit/choice.ts';
import type { Colours, ColoursFound, TwoColours } from './two-colours.ts';

/** An ochre of middling strength, which every card can hold. */
function start(): ColoursFound {
  const { kx, sx, overWhite, overBlack } = guessInk([64, 12, 38], 'translucent');
  return { kx: Array.from(kx), sx: Array.from(sx), overWhite: roundedLab(overWhite), overBlack: roundedLab(overBlack), moved: 0 };
}

const SOURCES = [
  { value: 'typed', label: say.typeThem },
  { value: 'photo', label: say.pickThemFromPhoto },
];

/** An ink from its two colours on a contrast card, typed or picked from a photo. Sends `draft`, null while there is none. */
@customElement('drawdown-way')
export class DrawdownWay extends LitElement {
  static override styles = [controls, drawdownWay];

  @property({ attribute: false }) studio!: Studio;
  @state() private found: ColoursFound = start();
  @state() private choice: GroundChoice | null = null;
  @state() private fromPhoto = false;
  @query('two-colours') private two!: TwoColours;

  protected override firstUpdated(): void {
    // Its first colours are there by then.
    void this.two.updateComplete.then(() => this.two.ask(this.found));
  }

  private get chosen(): GroundChoice {
    return (this.choice ??= usualGrounds(this.studio));
  }

  private get onCard(): boolean {
    return this.fromPhoto || (this.chosen.white === 'card' && this.chosen.black === 'card');
  }

  /** What the colours were seen on; undefined while there is no such ground. A photo is read against the card that it shows. */
  private grounds(): Grounds | undefined {
    const { studio } = this;
    if (this.fromPhoto) return { ...CARD, surface: studio.surface };
    try {
      return groundsOf(this.chosen, studio);
    } catch {
      return undefined;
    }
  }

  private onGround(choice: GroundChoice): void {
    this.choice = choice;
    // The same two colours seen on something else are another ink.
    void this.updateComplete.then(() => (this.grounds() === undefined ? this.send(null) : this.two.ask(this.found)));
  }

  private send(found: ColoursFound | null): void {
    let detail: InkDraft | null = null;
    if (found !== null) {
      const { kx, sx } = found;
      // An ink keeps what it shows on the standard card, whatever it was seen on.
      const { overWhite, overBlack } = this.onCard ? found : coloursOn(found, CARD_WHITE, CARD_BLACK, this.studio.surface);
      detail = { basis: 'drawdown', overWhite, overBlack, kx, sx };
    }
    this.dispatchEvent(new CustomEvent<InkDraft | null>('draft', { detail }));
  }

  override render() {
    const { found } = this;
    return html`
      <ps-choice
        label=${say.whereTwoColoursCome}
        .options=${SOURCES}
        .value=${this.fromPhoto ? 'photo' : 'typed'}
        @pick=${(event: CustomEvent<string>) => (this.fromPhoto = event.detail === 'photo')}
      ></ps-choice>
      ${
        this.fromPhoto
          ? html`<photo-card @colours=${(event: CustomEvent<Colours>) => void this.two.ask(event.detail)}></photo-card>`
          : html`<ground-choice .studio=${this.studio} .choice=${this.chosen} @pick=${(event: CustomEvent<GroundChoice>) => this.onGround(event.detail)}></ground-choice>`
      }
      <two-colours
        .grounds=${this.grounds()}
        .colours=${found}
        unsaved=${say.noInkCanBe}
        @found=${(event: CustomEvent<ColoursFound>) => {
          this.found = event.detail;
          this.send(event.detail);
        }}
        @refused=${() => this.send(null)}
        @forgotten=${() => this.send(this.found)}
      ></two-colours>
      ${drawdownCard(found satisfies Pick<Ink, 'kx' | 'sx'>, this.studio)}
      ${found.moved === 0 ? nothing : html`<p class="small">${say.hadToBeMoved(found.moved === 1 ? say.oneBand : say.bands(found.moved))}</p>`}
    `;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'drawdown-way': DrawdownWay;
  }
}
