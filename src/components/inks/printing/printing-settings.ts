import { css, html, nothing } from 'lit';
import { customElement, state } from 'lit/decorators.js';
import { entryAt } from '../../../engine/base/at.ts';
import { K1, K2, TRAPPING } from '../../../engine/base/limits.ts';
import { roundTo } from '../../../engine/base/units.ts';
import { GEOMETRIES, type Surface, type Trapping, TRAPPING_SOURCE, type TrappingPair } from '../../../engine/ink/film/printing.ts';
import { printInks } from '../../../engine/ink/mix/mix.ts';
import type { Ink } from '../../../engine/ink/types.ts';
import { RoomElement } from '../../store-element.ts';
import { controls } from '../../ui/controls-style.ts';
import '../../ui/kit/fold.ts';
import '../../ui/kit/number-field.ts';
import type { NumberPick } from '../../ui/kit/number-field.ts';
import '../../ui/kit/select.ts';
import { closeStackHost } from '../../ui/layout-style.ts';

/** Neither surface nor trapping, as in projects from before. */
const NO_SURFACE: Surface = { k1: 0, k2: 0 };
const NO_TRAPPING: Trapping = { factor: 1 };
/** In the list of ways to measure: numbers of one's own. */
const OWN = 'own';

/** How inks were measured, and how thick a film is on a film: settings of the whole studio. */
@customElement('printing-settings')
export class PrintingSettings extends RoomElement {
  static override styles = [
    controls,
    closeStackHost,
    css`
      section {
        display: grid;
        gap: var(--space-5);
      }
      section + section {
        margin-top: var(--space-8);
      }
      .words {
        max-width: 62ch;
      }
      .fields {
        display: flex;
        flex-wrap: wrap;
        gap: var(--space-5) var(--space-7);
        align-items: end;
        margin: var(--space-4) 0 var(--space-5);
      }
      h3 {
        margin: var(--space-5) 0 0;
        font-size: var(--type-text);
      }
      .pair {
        display: flex;
        flex-wrap: wrap;
        gap: var(--space-5) var(--space-7);
        align-items: end;
      }
      .pair ps-select {
        max-width: 100%;
      }
    `,
  ];

  protected readonly room = 'inks';
  /** The pair that is to get a trapping of its own, by ink; null until one is chosen. */
  @state() private over: string | null = null;
  @state() private under: string | null = null;

  private setSurface(surface: Surface): void {
    this.store.dispatch({ kind: 'set-surface', surface: { k1: surface.k1, k2: surface.k2 } });
  }

  private setTrapping(change: Partial<Trapping>): void {
    this.store.dispatch({ kind: 'set-trapping', trapping: { ...(this.store.project.drawer.trapping ?? NO_TRAPPING), ...change } });
  }

  override render() {
    return html`${this.renderSurface()} ${this.renderTrapping()}`;
  }

  private renderSurface() {
    const surface = this.store.project.drawer.surface ?? NO_SURFACE;
    const known = GEOMETRIES.find(({ surface: { k1, k2 } }) => k1 === surface.k1 && k2 === surface.k2);
    const options = [
      ...GEOMETRIES.map(({ id, label }) => ({ value: id as string, label })),
      ...(known === undefined ? [{ value: OWN, label: 'shares of your own, below' }] : []),
    ];
    return html`<section aria-labelledby="surface-head">
      <h2 id="surface-head">How inks were measured</h2>
      <ps-select
        label="Instrument, or eye"
        .options=${options}
        .value=${known?.id ?? OWN}
        @pick=${(event: CustomEvent<string>) => {
          const picked = GEOMETRIES.find(({ id }) => id === event.detail);
          if (picked !== undefined) this.setSurface(picked.surface);
        }}
      ></ps-select>
      <p class="soft small words">
        Light is thrown back at a print’s surface, outside and inside, before it has gone through all the ink. Taking that into account, every ink goes on showing what it shows alone; overprints and
        further strokes come out another colour. Projects from before have no surface.
      </p>
      <ps-fold quiet label="The two shares" note="k1 ${roundTo(surface.k1, 3)}, k2 ${roundTo(surface.k2, 3)}">
        <div class="fields">
          ${this.share('Thrown back outside (k1)', surface.k1, K1, (k1) => this.setSurface({ ...surface, k1 }))}
          ${this.share('Thrown back inside (k2)', surface.k2, K2, (k2) => this.setSurface({ ...surface, k2 }))}
        </div>
        <p class="soft small words">Shares of the light, after Saunderson (1942). Outside about 4 % where the gloss is measured too, else none; inside 40 to 60 % of prints (from memory). A fit to a pulled target finds your own.</p>
      </ps-fold>
    </section>`;
  }

  private share(label: string, value: number, limits: { least: number; most: number }, pick: (share: number) => void) {
    return html`<ps-number
      label=${label}
      unit="%"
      min=${limits.least * 100}
      max=${limits.most * 100}
      step="1"
      decimals="1"
      .value=${roundTo(value * 100, 2)}
      @pick=${(event: NumberPick) => pick(roundTo(event.detail / 100, 4))}
    ></ps-number>`;
  }

  private renderTrapping() {
    const { trapping = NO_TRAPPING } = this.store.project.drawer;
    return html`<section aria-labelledby="trapping-head">
      <h2 id="trapping-head">A film on a film</h2>
      <ps-number
        label="Trapping: as thick as on the paper"
        unit="%"
        min=${TRAPPING.least * 100}
        max=${TRAPPING.most * 100}
        step="5"
        decimals="1"
        .value=${roundTo(trapping.factor * 100, 2)}
        @pick=${(event: NumberPick) => this.setTrapping({ factor: roundTo(event.detail / 100, 4) })}
      ></ps-number>
      <p class="soft small words">
        ${TRAPPING_SOURCE} Where it is not 100 %, two inks that only absorb no longer print alike in both orders. Projects from before have 100 %.
      </p>
      ${this.renderPairs(trapping)}
    </section>`;
  }

  private renderPairs({ pairs = [] }: Trapping) {
    const inks = printInks(this.store.project.drawer.inks);
    const name = (id: string): string => this.store.project.drawer.inks.find((ink) => ink.id === id)?.name ?? 'an ink that is gone';
    const put = (pair: TrappingPair, factor: number): void =>
      this.setTrapping({ pairs: [...pairs.filter((other) => !isPair(other, pair)), { under: pair.under, over: pair.over, factor }] });
    return html`<h3>Pairs with a trapping of their own</h3>
      ${pairs.length === 0 ? html`<p class="soft small">None: the number above holds for every ink on every other.</p>` : nothing}
      ${pairs.map(
        (pair) => html`<div class="pair">
          <ps-number
            label="${name(pair.over)} on ${name(pair.under)}"
            unit="%"
            min=${TRAPPING.least * 100}
            max=${TRAPPING.most * 100}
            step="5"
            decimals="1"
            .value=${roundTo(pair.factor * 100, 2)}
            @pick=${(event: NumberPick) => put(pair, roundTo(event.detail / 100, 4))}
          ></ps-number>
          <button class="quiet" aria-label="${name(pair.over)} on ${name(pair.under)}: as all others" @click=${() => this.setTrapping({ pairs: pairs.filter((other) => other !== pair) })}>As all others</button>
        </div>`,
      )}
      ${inks.length < 2 ? nothing : this.renderNewPair(inks, put)}`;
  }

  private renderNewPair(inks: readonly Ink[], put: (pair: TrappingPair, factor: number) => void) {
    const { trapping = NO_TRAPPING } = this.store.project.drawer;
    const known = (id: string | null, fallback: number): string => inks.find((ink) => ink.id === id)?.id ?? entryAt(inks, fallback).id;
    const pair = { over: known(this.over, 1), under: known(this.under, 0) };
    const options = inks.map(({ id, name }) => ({ value: id, label: name }));
    const there = (trapping.pairs ?? []).some((other) => isPair(other, pair));
    return html`<div class="pair">
      <ps-select label="Ink" .options=${options} .value=${pair.over} @pick=${(event: CustomEvent<string>) => (this.over = event.detail)}></ps-select>
      <ps-select label="laid on" .options=${options} .value=${pair.under} @pick=${(event: CustomEvent<string>) => (this.under = event.detail)}></ps-select>
      <button ?disabled=${there} @click=${() => put({ ...pair, factor: trapping.factor }, trapping.factor)}>Give this pair its own</button>
    </div>`;
  }
}

/** Whether a pair is of these inks. */
function isPair(one: TrappingPair, { under, over }: Pick<TrappingPair, 'under' | 'over'>): boolean {
  return one.under === under && one.over === over;
}

declare global {
  interface HTMLElementTagNameMap {
    'printing-settings': PrintingSettings;
  }
}
