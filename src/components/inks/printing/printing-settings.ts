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
import { say } from '../../words/en/inks/printing.ts';

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
      ...(known === undefined ? [{ value: OWN, label: say.sharesOfYourOwn }] : []),
    ];
    return html`<section aria-labelledby="surface-head">
      <h2 id="surface-head">${say.howInksWereMeasured}</h2>
      <ps-select
        label=${say.instrumentOrEye}
        .options=${options}
        .value=${known?.id ?? OWN}
        @pick=${(event: CustomEvent<string>) => {
          const picked = GEOMETRIES.find(({ id }) => id === event.detail);
          if (picked !== undefined) this.setSurface(picked.surface);
        }}
      ></ps-select>
      <p class="soft small words">
        ${say.lightIsThrownBack}
      </p>
      <ps-fold quiet label=${say.twoShares} note="k1 ${roundTo(surface.k1, 3)}, k2 ${roundTo(surface.k2, 3)}">
        <div class="fields">
          ${this.share(say.thrownBackOutsideK1, surface.k1, K1, (k1) => this.setSurface({ ...surface, k1 }))}
          ${this.share(say.thrownBackInsideK2, surface.k2, K2, (k2) => this.setSurface({ ...surface, k2 }))}
        </div>
        <p class="soft small words">${say.sharesOfLightAfter}</p>
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
      <h2 id="trapping-head">${say.filmOnFilm}</h2>
      <ps-number
        label=${say.trappingAsThickAs}
        unit="%"
        min=${TRAPPING.least * 100}
        max=${TRAPPING.most * 100}
        step="5"
        decimals="1"
        .value=${roundTo(trapping.factor * 100, 2)}
        @pick=${(event: NumberPick) => this.setTrapping({ factor: roundTo(event.detail / 100, 4) })}
      ></ps-number>
      <p class="soft small words">
        ${say.whereItIsNot(TRAPPING_SOURCE)}
      </p>
      ${this.renderPairs(trapping)}
    </section>`;
  }

  private renderPairs({ pairs = [] }: Trapping) {
    const inks = printInks(this.store.project.drawer.inks);
    const name = (id: string): string => this.store.project.drawer.inks.find((ink) => ink.id === id)?.name ?? say.inkThatIsGone;
    const put = (pair: TrappingPair, factor: number): void =>
      this.setTrapping({ pairs: [...pairs.filter((other) => !isPair(other, pair)), { under: pair.under, over: pair.over, factor }] });
    return html`<h3>${say.pairsWithTrappingOf}</h3>
      ${pairs.length === 0 ? html`<p class="soft small">${say.noneNumberAboveHolds}</p>` : nothing}
      ${pairs.map(
        (pair) => html`<div class="pair">
          <ps-number
            label=${say.on(name(pair.over), name(pair.under))}
            unit="%"
            min=${TRAPPING.least * 100}
            max=${TRAPPING.most * 100}
            step="5"
            decimals="1"
            .value=${roundTo(pair.factor * 100, 2)}
            @pick=${(event: NumberPick) => put(pair, roundTo(event.detail / 100, 4))}
          ></ps-number>
          <button class="quiet" aria-label=${say.onAsAllOthers(name(pair.over), name(pair.under))} @click=${() => this.setTrapping({ pairs: pairs.filter((other) => other !== pair) })}>${say.asAllOthers}</button>
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
      <ps-select label=${say.ink} .options=${options} .value=${pair.over} @pick=${(event: CustomEvent<string>) => (this.over = event.detail)}></ps-select>
      <ps-select label=${say.laidOn} .options=${options} .value=${pair.under} @pick=${(event: CustomEvent<string>) => (this.under = event.detail)}></ps-select>
      <button ?disabled=${there} @click=${() => put({ ...pair, factor: trapping.factor }, trapping.factor)}>${say.giveThisPairIts}</button>
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
