import { html, LitElement, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { repeat } from 'lit/directives/repeat.js';
import { guessInk } from '../../engine/ink/guess.ts';
import { DEFAULT_DENSITY_G_PER_CM3, DEFAULT_DRY_MINUTES } from '../../engine/ink/make-ink.ts';
import type { Ink } from '../../engine/ink/types.ts';
import { type AppStore, StoreController } from '../app-store.ts';
import '../ui/number-field.ts';
import type { NumberPick } from '../ui/number-field.ts';
import { controls } from '../ui/styles.ts';
import { drawdownCard, drawdownStyles } from './drawdown.ts';
import './ink-editor.ts';
import { BASIS_SHORT } from './ink-words.ts';
import { inksStyles } from './inks-styles.ts';
import './overprint-chart.ts';
import './paper-form.ts';

/** The ink shelf: drawdowns of every ink, all inks over each other, the paper under them. */
@customElement('inks-room')
export class InksRoom extends LitElement {
  static override styles = [controls, drawdownStyles, inksStyles];

  @property({ attribute: false }) store!: AppStore;
  @state() private chosen: string | null = null;
  /** An ink that is being made and not in the project yet. */
  @state() private fresh: Ink | null = null;
  private listTop = 0;
  private readonly wide = matchMedia('(min-width: 1000px)');

  override connectedCallback(): void {
    super.connectedCallback();
    new StoreController(this, this.store);
    this.wide.addEventListener('change', this.redraw);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.wide.removeEventListener('change', this.redraw);
  }

  protected override shouldUpdate(): boolean {
    return this.store.room === 'inks';
  }

  private readonly redraw = (): void => this.requestUpdate();

  /** A new ink starts as an ochre of middling strength, which every card can hold. */
  private start(): void {
    this.showing(true);
    const { kx, sx, overWhite, overBlack } = guessInk([64, 12, 38], 'translucent');
    this.fresh = {
      id: crypto.randomUUID(),
      name: 'New ink',
      basis: 'guess',
      overWhite,
      overBlack,
      kx: Array.from(kx),
      sx: Array.from(sx),
      dryMinutes: DEFAULT_DRY_MINUTES,
      densityGPerCm3: DEFAULT_DENSITY_G_PER_CM3,
    };
  }

  /** On a phone the open ink takes the place of the shelf, which is found again as it was left. */
  private showing(one: boolean): void {
    if (this.wide.matches) return;
    if (one && this.fresh === null && this.chosen === null) this.listTop = this.scrollTop;
    void this.updateComplete.then(() => (this.scrollTop = one ? 0 : this.listTop));
  }

  private choose(id: string | null): void {
    this.showing(id !== null);
    this.fresh = null;
    this.chosen = id;
  }

  private open(): Ink | undefined {
    if (this.fresh !== null) return this.fresh;
    const { inks } = this.store.project.drawer;
    return inks.find((ink) => ink.id === this.chosen) ?? (this.wide.matches ? inks[0] : undefined);
  }

  override render() {
    const { drawer } = this.store.project;
    const open = this.open();
    return html`
      <div class="room ${open === undefined ? '' : 'open'}">
        <div class="left">
          <section aria-labelledby="inks-head">
            <header class="row">
              <h2 id="inks-head">Inks</h2>
              <span class="soft">${drawer.inks.length}</span>
              <span class="fill"></span>
              <button @click=${this.start}>Add an ink</button>
            </header>
            ${drawer.inks.length === 0
              ? html`<p class="soft">No inks yet: add one from its colour over white and over black.</p>`
              : html`<ul class="cards" aria-label="Inks">
                  ${repeat(
                    drawer.inks,
                    (ink) => ink.id,
                    (ink) => html`<li>
                      <button aria-pressed=${open?.id === ink.id} aria-label="${ink.name}, ${BASIS_SHORT[ink.basis]}" @click=${() => this.choose(ink.id)}>
                        ${drawdownCard(ink, drawer.strokeGain)}
                        <span class="label"><span class="ink-name">${ink.name}</span><span class="soft small">${BASIS_SHORT[ink.basis]}</span></span>
                      </button>
                    </li>`,
                  )}
                </ul>`}
          </section>
          <section aria-labelledby="over-head">
            <h2 id="over-head">Over each other</h2>
            <p class="soft words">One stroke of each on ${drawer.paper.name === '' ? 'the paper' : drawer.paper.name}. Where a square and its mirror across the diagonal differ, the order of the two matters.</p>
            <overprint-chart .inks=${drawer.inks} .paper=${drawer.paper} .relative=${this.store.relative}></overprint-chart>
          </section>
          <section aria-labelledby="stroke-head">
            <h2 id="stroke-head">Strokes</h2>
            <div class="gain">
              <ps-number
                label="Each further stroke adds, of the first film"
                min="0"
                max="1"
                step="0.05"
                decimals="2"
                .value=${drawer.strokeGain}
                @pick=${(event: NumberPick) => this.store.dispatch({ kind: 'set-stroke-gain', strokeGain: event.detail })}
              ></ps-number>
              <p class="soft small words">In theory a second stroke doubles the film; in practice it is about 1.2 to 1.6 times (from memory): 0.4 by default.</p>
            </div>
          </section>
          <section aria-labelledby="paper-head">
            <h2 id="paper-head">Paper</h2>
            <paper-form .store=${this.store} .paper=${drawer.paper}></paper-form>
          </section>
        </div>
        ${open === undefined
          ? nothing
          : html`<aside class="side" aria-label=${this.fresh === null ? `Ink ${open.name}` : 'A new ink'}>
              <button class="quiet back" @click=${() => this.choose(null)}>← All inks</button>
              <ink-editor
                .store=${this.store}
                .ink=${open}
                .fresh=${this.fresh !== null}
                @draft=${(event: CustomEvent<Ink>) => (this.fresh = event.detail)}
                @added=${(event: CustomEvent<string>) => this.choose(event.detail)}
                @dropped=${() => this.choose(null)}
              ></ink-editor>
            </aside>`}
      </div>
    `;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'inks-room': InksRoom;
  }
}
