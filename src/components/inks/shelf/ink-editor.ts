import { html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { DENSITY_G_PER_CM3, DRY_MINUTES, STACK_MINUTES } from '../../../engine/base/limits.ts';
import { roundTo } from '../../../engine/base/units.ts';
import { CARD } from '../../../engine/ink/characterise/card.ts';
import { drawdown } from '../../../engine/ink/film/drawdown.ts';
import { stackMinutesOf } from '../../../engine/ink/film/drying.ts';
import { meshName } from '../../../engine/ink/film/mesh-choices.ts';
import type { Mesh } from '../../../engine/ink/film/mesh.ts';
import { mixesOf } from '../../../engine/ink/mix/remix.ts';
import type { Ink } from '../../../engine/ink/types.ts';
import '../../ui/kit/fold.ts';
import '../../ui/kit/number-field.ts';
import { fixed } from '../../../engine/words/language.ts';
import { StoreElement } from '../../store-element.ts';
import { controls } from '../../ui/controls-style.ts';
import type { NumberPick } from '../../ui/kit/number-field.ts';
import { say } from '../../words/en/inks/shelf.ts';
import { CARD_STYLE, drawdownStyles } from '../add/drawdown-card.ts';
import './ink-drift.ts';
import './ink-film.ts';
import './ink-letdown.ts';
import { BASIS_TRUST } from '../add/ink-ways.ts';
import type { ColoursFound } from '../add/two-colours.ts';
import { swatchTemplate } from '../overprint/marked-swatch.ts';
import '../add/two-colours.ts';
import { curveDrawing, curveStyles } from './curve-drawing.ts';
import { foldStyles } from './fold-style.ts';
import { editorStyles } from './ink-editor-style.ts';

/** One ink of the project: its name, how far to trust it, its colours and what follows from them. Saved as it changes. */
@customElement('ink-editor')
export class InkEditor extends StoreElement {
  static override styles = [controls, drawdownStyles, curveStyles, foldStyles, editorStyles];

  @property({ attribute: false }) ink!: Ink;
  /** How many bands the colours last asked for had moved. */
  @state() private moved = 0;

  protected override willUpdate(changed: Map<string, unknown>): void {
    if (changed.has('ink') && (changed.get('ink') as Ink | undefined)?.id !== this.ink.id) this.moved = 0;
  }

  private save(change: Partial<Ink>): void {
    this.store.dispatch({ kind: 'change-ink', ink: { ...this.ink, ...change } });
  }

  /** Other colours than those measured or mixed are an estimate, and no longer that mix. */
  private recolour({ overWhite, overBlack, kx, sx, moved }: ColoursFound): void {
    const { mix: _, fit: __, ...ink } = this.ink;
    if (this.store.dispatch({ kind: 'change-ink', ink: { ...ink, overWhite, overBlack, kx, sx, basis: 'drawdown' } })) this.moved = moved;
  }

  private setMesh(mesh: Mesh | null): void {
    const { mesh: _, ...ink } = this.ink;
    this.store.dispatch({ kind: 'change-ink', ink: mesh === null ? ink : { ...ink, mesh } });
  }

  private setStock(stock: boolean, base: boolean): void {
    const { stock: _, role: __, ...ink } = this.ink;
    const changed: Ink = { ...ink, ...(stock ? { stock: true as const } : {}), ...(base ? { role: 'base' as const } : {}) };
    if (!this.store.dispatch({ kind: 'change-ink', ink: changed })) return;
    // Stock inks are no choice of colour, so the Wall does not pull them by themselves.
    const { palette } = this.store.project.explore;
    const others = palette.filter((id) => id !== ink.id);
    if (stock === palette.includes(ink.id))
      this.store.dispatch({ kind: 'set-explore', change: { palette: stock ? others : [...others, ink.id] } });
  }

  private removeInk(): void {
    if (this.store.dispatch({ kind: 'remove-ink', ink: this.ink.id })) {
      this.store.tell(say.isOutOfInks(this.ink.name), 'news');
    }
  }

  override render() {
    const { ink } = this;
    const estimate = ink.basis !== 'measured' && ink.mix === undefined;
    return html`
      <header>
        <label class="name">
          <span class="visually-hidden">${say.nameOfInk}</span>
          <input
            type="text"
            .value=${ink.name}
            @change=${(event: Event) => this.save({ name: (event.target as HTMLInputElement).value.trim() || ink.name })}
          />
        </label>
      </header>
      <p class="soft small">${say.stockInkForMixing(Boolean(ink.stock), BASIS_TRUST[ink.basis])}</p>
      ${this.renderMixes()} ${this.renderStrokes()} ${ink.mix === undefined ? nothing : this.renderMix(ink.mix)}
      <section aria-label=${say.curves}>
        ${curveDrawing(ink, this.store.project.drawer.surface)}
        <p class="soft small">
          ${say.reflectanceOfOneStroke(ink.mix !== undefined ? say.workedOutFromMix : estimate ? say.workedOutFromTwo : say.asMeasuredOnStandard)}
          ${this.moved === 0 ? nothing : html`<span class="moved">${say.hadToBeMoved(this.moved === 1 ? say.oneBand : say.bands(this.moved))}</span>`}
        </p>
      </section>
      <div>${this.renderColours(estimate)} ${this.renderFilm()} ${ink.role === 'base' ? nothing : this.renderLetdown()} ${ink.mix === undefined ? this.renderDrift() : nothing} ${this.renderPress()}</div>
      <div class="row actions"><button class="quiet" @click=${this.removeInk}>${say.removeInk}</button></div>
    `;
  }

  private renderColours(estimate: boolean) {
    const { ink } = this;
    return html`<ps-fold ruled ?open=${estimate} label=${say.colours} note=${estimate ? '' : ink.mix === undefined ? say.asMeasured : say.fromMix}>
      <div class="inside">
        ${estimate ? nothing : html`<p class="soft small">${say.otherColoursMakeIt}</p>`}
        <two-colours .colours=${ink} .grounds=${{ ...CARD, surface: this.store.project.drawer.surface }} @found=${(event: CustomEvent<ColoursFound>) => this.recolour(event.detail)}></two-colours>
      </div>
    </ps-fold>`;
  }

  private renderFilm() {
    const { ink } = this;
    return html`<ps-fold ruled label=${say.meshAndInkFilm} note=${ink.mesh === undefined ? say.meshNotKnown : say.foundOn(meshName(ink.mesh))}>
      <div class="inside">
        <ink-film .store=${this.store} .ink=${ink} @mesh=${(event: CustomEvent<Mesh | null>) => this.setMesh(event.detail)} @solids=${(event: CustomEvent<number>) => this.save({ solids: event.detail })}></ink-film>
      </div>
    </ps-fold>`;
  }

  private renderLetdown() {
    return html`<ps-fold ruled label=${say.letItDown} note=${say.withTransparentBase}>
      <div class="inside">
        <ink-letdown .store=${this.store} .ink=${this.ink} @added=${(event: CustomEvent<string>) => this.dispatchEvent(new CustomEvent('added', { detail: event.detail }))}></ink-letdown>
      </div>
    </ps-fold>`;
  }

  private renderDrift() {
    const last = this.ink.measurements?.at(-1)?.date;
    return html`<ps-fold ruled label=${say.measuredOnOtherDays} note=${last === undefined ? say.once : say.lastOn(last)}>
      <div class="inside"><ink-drift .store=${this.store} .ink=${this.ink}></ink-drift></div>
    </ps-fold>`;
  }

  private renderPress() {
    const { ink } = this;
    return html`<ps-fold ruled label=${say.atPress} note=${say.minGCm(ink.dryMinutes, roundTo(ink.densityGPerCm3, 2))}>
      <div class="inside">
        <div class="fields">
          <ps-number label=${say.dryToPrintOn} unit="min" min=${DRY_MINUTES.least} max=${DRY_MINUTES.most} .value=${ink.dryMinutes} @pick=${(event: NumberPick) => this.save({ dryMinutes: event.detail })}></ps-number>
          <ps-number label=${say.dryToStack} unit="min" min=${STACK_MINUTES.least} max=${STACK_MINUTES.most} .value=${stackMinutesOf(ink)} @pick=${(event: NumberPick) => this.save({ stackMinutes: event.detail })}></ps-number>
          <ps-number label=${say.density} unit="g/cm³" min=${DENSITY_G_PER_CM3.least} max=${DENSITY_G_PER_CM3.most} step="0.01" decimals="2" .value=${ink.densityGPerCm3} @pick=${(event: NumberPick) => this.save({ densityGPerCm3: event.detail })}></ps-number>
        </div>
        <p class="soft small">${say.theyDependOnInk}</p>
        ${
          ink.mix !== undefined
            ? nothing
            : html`<label><input type="checkbox" .checked=${ink.stock === true} @change=${(event: Event) => this.setStock((event.target as HTMLInputElement).checked, ink.role === 'base')} /> ${say.stockInkOnlyFor}</label>
              <label><input type="checkbox" .checked=${ink.role === 'base'} @change=${(event: Event) => this.setStock(ink.stock === true, (event.target as HTMLInputElement).checked)} /> ${say.transparentBase}</label>`
        }
      </div>
    </ps-fold>`;
  }

  /** What follows when a stock ink changes. */
  private renderMixes() {
    const mixes = mixesOf(this.store.project.drawer.inks, this.ink.id);
    if (mixes.length === 0) return nothing;
    const names = mixes
      .slice(0, 4)
      .map(({ name }) => name)
      .join(', ');
    return html`<p class="soft small">${say.weighedIntoWhatChanges(names, mixes.length > 4 ? say.andMore(mixes.length - 4) : '')}</p>`;
  }

  private renderMix(mix: NonNullable<Ink['mix']>) {
    const { inks } = this.store.project.drawer;
    const all = mix.reduce((sum, { parts }) => sum + parts, 0);
    const names = mix.map(({ ink, parts }) => ({
      name: inks.find((each) => each.id === ink)?.name ?? say.inkThatIsGone,
      share: (100 * parts) / all,
    }));
    return html`<section aria-label=${say.mix}>
      <table class="mix">
        <tbody>
          ${names.map(({ name, share }) => html`<tr><th scope="row">${name}</th><td>${fixed(share, 1)} g</td></tr>`)}
        </tbody>
      </table>
      <p class="soft small">${say.weighedFor100G}</p>
    </section>`;
  }

  /** The film grows with the strokes: what one, two and three give over both halves of the card. */
  private renderStrokes() {
    const { strokeGain: gain, surface } = this.store.project.drawer;
    const columns = [1, 2, 3].map((strokes) => ({ strokes, on: drawdown(this.ink, strokes, gain, surface) }));
    return html`<figure class="strokes" style=${CARD_STYLE}>
      <div class="strip">
        ${columns.map(
          ({ strokes, on }) => html`<span
            class="column"
            role="img"
            aria-label=${say.lightnessOverWhiteOver(strokes === 1 ? say.oneStroke : say.strokes(strokes), roundTo(on.white.lab[0], 0), roundTo(on.black.lab[0], 0))}
            >${swatchTemplate(on.white)}${swatchTemplate(on.black)}</span
          >`,
        )}
      </div>
      <figcaption>${columns.map(({ strokes }) => html`<span>${strokes === 1 ? say.n1Stroke : say.strokes(strokes)}</span>`)}</figcaption>
    </figure>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'ink-editor': InkEditor;
  }
}
