import { css, html, nothing } from 'lit';
import { customElement } from 'lit/decorators.js';
import { K1, K2, TRAPPING } from '../../../engine/base/limits.ts';
import { roundTo } from '../../../engine/base/units.ts';
import { GEOMETRIES, type Surface, type Trapping, TRAPPING_SOURCE } from '../../../engine/ink/film/printing.ts';
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
      table {
        border-collapse: collapse;
        font-size: var(--type-small);
      }
      th,
      td {
        padding: var(--space-2) var(--space-7) var(--space-2) 0;
        font-weight: 400;
        text-align: left;
      }
    `,
  ];

  protected readonly room = 'inks';

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
    if (pairs.length === 0) return nothing;
    const { inks } = this.store.project.drawer;
    const name = (id: string): string => inks.find((ink) => ink.id === id)?.name ?? 'an ink that is gone';
    return html`<table aria-label="Pairs with a trapping of their own">
      <tbody>
        ${pairs.map(
          (pair) => html`<tr>
            <th scope="row">${name(pair.over)} on ${name(pair.under)}</th>
            <td>${roundTo(pair.factor * 100, 1)} %</td>
            <td><button class="quiet" @click=${() => this.setTrapping({ pairs: pairs.filter((other) => other !== pair) })}>As all others</button></td>
          </tr>`,
        )}
      </tbody>
    </table>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'printing-settings': PrintingSettings;
  }
}
