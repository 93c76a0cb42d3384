import { html, nothing } from 'lit';
import { customElement, state } from 'lit/decorators.js';
import { repeat } from 'lit/directives/repeat.js';
import { defined } from '../../engine/base/at.ts';
import { CARD_WHITE } from '../../engine/ink/characterise/card.ts';
import { demoStocks } from '../../engine/ink/demo/demo-stocks.ts';
import { swatchOf, swatchReflectance } from '../../engine/ink/film/swatch.ts';
import { printInks, stockInks } from '../../engine/ink/mix/mix.ts';
import type { Ink, Paper } from '../../engine/ink/types.ts';
import { RoomElement } from '../store-element.ts';
import '../ui/cautions.ts';
import '../ui/kit/fold.ts';
import '../ui/kit/number-field.ts';
import { controls } from '../ui/controls-style.ts';
import type { NumberPick } from '../ui/kit/number-field.ts';
import { markSwitch } from '../ui/mark-switch.ts';
import { sideRoomStyles, WideScreen } from '../ui/side-room.ts';
import './add/add-ink.ts';
import { say } from '../words/en/inks/room.ts';
import type { Measurements } from './add/cgats-file.ts';
import './shelf/ink-editor.ts';
import { drawdownCard, drawdownStyles } from './add/drawdown-card.ts';
import { BASIS_SHORT } from './add/ink-ways.ts';
import { inksStyles } from './inks-style.ts';
import './match/match-ink.ts';
import './overprint/overprint-chart.ts';
import './paper/paper-form.ts';
import './printing/printing-settings.ts';
import { swatchTemplate } from './overprint/marked-swatch.ts';

/** What lies open beside the shelf: an ink of it, a new one, or a search for a mix. */
type Side = { kind: 'ink'; id: string } | { kind: 'add' } | { kind: 'match' };

/** The ink shelf: drawdowns of every ink, stock inks to mix from, all inks over each other, the paper under them. */
@customElement('inks-room')
export class InksRoom extends RoomElement {
  static override styles = [controls, sideRoomStyles, drawdownStyles, inksStyles];

  protected readonly room = 'inks';
  @state() private side: Side | null = null;
  /** A file of measurements, kept for the next ink of it. */
  @state() private measurements: Measurements | null = null;
  private listTop = 0;
  /** The inks to print with; the same array while the inks are, so that the chart is not made anew. */
  private shelf: { of: readonly Ink[]; inks: Ink[] } = { of: [], inks: [] };
  private readonly wide = new WideScreen(this);

  /** On a phone what is open takes the place of the shelf, which is found again as it was left. */
  private open(side: Side | null): void {
    const before = this.openSide();
    this.side = side;
    void this.updateComplete.then(() => {
      const shown = this.renderRoot.querySelector<HTMLElement>('.side');
      if (this.wide.matches) shown?.scrollTo(0, 0);
      else this.scrollTop = side === null ? this.listTop : 0;
      // By keys it stands behind all inks and their overprints.
      if (side !== null && side.kind !== 'ink') shown?.focus({ preventScroll: true });
    });
    if (!this.wide.matches && before === null && side !== null) this.listTop = this.scrollTop;
  }

  /** What is open now; a wide window always has an ink open. */
  private openSide(): Side | null {
    const { inks } = this.store.project.drawer;
    const { side } = this;
    if (side !== null && (side.kind !== 'ink' || inks.some(({ id }) => id === side.id))) return side;
    const first = printInks(inks)[0] ?? inks[0];
    return this.wide.matches && first !== undefined ? { kind: 'ink', id: first.id } : null;
  }

  private bringInStocks(): void {
    const there = new Set(this.store.project.drawer.inks.map(({ id }) => id));
    const inks = demoStocks().filter(({ id }) => !there.has(id));
    if (inks.length > 0) this.store.dispatch({ kind: 'add-inks', inks });
  }

  override render() {
    const { drawer: studio } = this.store.project;
    if (this.shelf.of !== studio.inks) this.shelf = { of: studio.inks, inks: printInks(studio.inks) };
    const { inks } = this.shelf;
    const open = this.openSide();
    const openId = open?.kind === 'ink' ? open.id : null;
    return html`
      <div class="room ${open === null ? '' : 'open'}">
        <div class="left">
          <ps-fold label=${say.paper} note=${paperNote(studio.paper)}>
            <paper-form .store=${this.store} .paper=${studio.paper}></paper-form>
          </ps-fold>
          ${this.renderInks(inks, open)}
          ${this.renderStocks(openId)}
          <section class="overprints" aria-labelledby="over-head">
            <header class="row">
              <h2 id="over-head">${say.overEachOther}</h2>
              <span class="fill"></span>
              ${this.renderRelative()} ${markSwitch(this.store)}
            </header>
            <p class="soft words">${say.oneStrokeOfEach(studio.paper.name === '' ? say.thePaper : studio.paper.name)}</p>
            <overprint-chart .store=${this.store}></overprint-chart>
          </section>
          ${this.renderStrokeGain()}
          <printing-settings .store=${this.store}></printing-settings>
          <ps-cautions topic="inks"></ps-cautions>
        </div>
        ${
          open === null
            ? nothing
            : html`<aside class="side" tabindex="-1" aria-label=${this.sideLabel(open)}>
              <button class="quiet back" @click=${() => this.open(null)}>${say.allInks}</button>
              ${this.renderSide(open)}
            </aside>`
        }
      </div>
    `;
  }

  private renderInks(inks: readonly Ink[], open: Side | null) {
    const { drawer: studio } = this.store.project;
    return html`<section aria-labelledby="inks-head">
      <header class="row">
        <h2 id="inks-head">${say.inks}</h2>
        <span class="soft">${inks.length}</span>
        <span class="fill"></span>
        <button aria-pressed=${open?.kind === 'match'} @click=${() => this.open({ kind: 'match' })}>${say.matchColour}</button>
        <button aria-pressed=${open?.kind === 'add'} @click=${() => this.open({ kind: 'add' })}>${say.addInk}</button>
      </header>
      ${
        inks.length === 0
          ? html`<p class="soft">${say.noInksYetAdd}</p>`
          : html`<ul class="cards" aria-label=${say.inks}>
            ${repeat(
              inks,
              (ink) => ink.id,
              (ink) => html`<li>
                <button aria-pressed=${open?.kind === 'ink' && open.id === ink.id} @click=${() => this.open({ kind: 'ink', id: ink.id })}>
                  ${drawdownCard(ink, studio)}
                  <span class="label"><span class="ink-name">${ink.name}</span> <span class="soft small">${basisShort(ink)}</span></span>
                </button>
              </li>`,
            )}
          </ul>`
      }
    </section>`;
  }

  private renderStrokeGain() {
    return html`<section aria-labelledby="stroke-head">
      <h2 id="stroke-head">${say.strokes}</h2>
      <div class="gain">
        <ps-number
          label=${say.eachFurtherStrokeAdds}
          unit="%"
          min="0"
          max="100"
          step="5"
          decimals="1"
          .value=${Math.round(this.store.project.drawer.strokeGain * 1000) / 10}
          @pick=${(event: NumberPick) => this.store.dispatch({ kind: 'set-stroke-gain', strokeGain: event.detail / 100 })}
        ></ps-number>
        <p class="soft small words">${say.inTheorySecondStroke}</p>
      </div>
    </section>`;
  }

  private sideLabel(side: Side): string {
    if (side.kind === 'add') return say.newInk;
    if (side.kind === 'match') return say.matchColour;
    return say.ink(defined(this.store.project.drawer.inks.find(({ id }) => id === side.id)).name);
  }

  private renderSide(side: Side) {
    const openInk = (event: CustomEvent<string>): void => this.open({ kind: 'ink', id: event.detail });
    switch (side.kind) {
      case 'add':
        return html`<add-ink
          .store=${this.store}
          .measurements=${this.measurements}
          @read=${(event: CustomEvent<Measurements>) => (this.measurements = event.detail)}
          @added=${openInk}
          @dropped=${() => this.open(null)}
        ></add-ink>`;
      case 'match':
        return html`<match-ink .store=${this.store} @added=${openInk} @stocks=${this.bringInStocks}></match-ink>`;
      case 'ink':
        return html`<ink-editor @stocks=${this.bringInStocks} .store=${this.store} .ink=${defined(this.store.project.drawer.inks.find(({ id }) => id === side.id))} @added=${openInk}></ink-editor>`;
    }
  }

  /** The paper as white, as an eye that has got used to it sees, or as an instrument does. */
  private renderRelative() {
    const { relative } = this.store;
    return html`<label class="relative" title=${say.hereAndOnWall}>
      <input type="checkbox" role="switch" .checked=${relative} @change=${(event: Event) => this.store.setRelative((event.target as HTMLInputElement).checked)} />
      ${say.showPaperAsWhite}
    </label>`;
  }

  private renderStocks(openId: string | null) {
    const stocks = stockInks(this.store.project.drawer.inks);
    if (stocks.length === 0) return nothing;
    return html`<section aria-labelledby="stock-head">
      <header class="row">
        <h2 id="stock-head">${say.stockInks}</h2>
        <span class="soft">${stocks.length}</span>
        <span class="soft small">${say.weighedIntoMixes}</span>
      </header>
      <ul class="stocks" aria-label=${say.stockInks}>
        ${repeat(
          stocks,
          (ink) => ink.id,
          (ink) => {
            const swatch = swatchOf(swatchReflectance(ink, CARD_WHITE, { surface: this.store.project.drawer.surface }));
            return html`<li><button aria-pressed=${openId === ink.id} @click=${() => this.open({ kind: 'ink', id: ink.id })}>${swatchTemplate(swatch)}<span>${ink.name}${ink.role === 'base' ? html` <span class="soft small">${say.base}</span>` : nothing}</span></button></li>`;
          },
        )}
      </ul>
    </section>`;
  }
}

function paperNote({ name, widthMm, heightMm }: Paper): string {
  return [name, `${widthMm} × ${heightMm} mm`].filter((part) => part !== '').join(', ');
}

function basisShort(ink: Ink): string {
  return ink.mix === undefined ? BASIS_SHORT[ink.basis] : say.mix(BASIS_SHORT[ink.basis]);
}

declare global {
  interface HTMLElementTagNameMap {
    'inks-room': InksRoom;
  }
}
