import { css, html, nothing, type PropertyValues } from 'lit';
import { customElement, state } from 'lit/decorators.js';
import { entryAt } from '../../../engine/base/at.ts';
import { OVERPRINT_COLOUR_DELTA_E } from '../../../engine/ink/film/overprint-colour.ts';
import { type OverprintGrid, overprintGrid } from '../../../engine/ink/film/overprint.ts';
import { printInks } from '../../../engine/ink/mix/mix.ts';
import type { Ink } from '../../../engine/ink/types.ts';
import type { Studio } from '../../../engine/studio/studio.ts';
import { RoomElement } from '../../store-element.ts';
import '../../ui/kit/number-field.ts';
import { controls } from '../../ui/controls-style.ts';
import type { NumberPick } from '../../ui/kit/number-field.ts';
import { stackHost } from '../../ui/layout-style.ts';
import { say } from '../../words/en/inks/overprint.ts';
import './overprint-grid.ts';
import { markStyles } from './marked-swatch.ts';
import './overprint-square.ts';
import type { Square } from './overprint-grid.ts';
import './overprint-target.ts';
import { overprintMarkStyles } from './overprint-style.ts';
import { squareSentence } from './overprint-words.ts';

/** Every ink over every other in both orders, what each square is, and the target to check it by. */
@customElement('overprint-chart')
export class OverprintChart extends RoomElement {
  static override styles = [
    controls,
    stackHost,
    markStyles,
    overprintMarkStyles,
    css`
      :host {
        gap: var(--space-10);
      }
      .chart {
        display: flex;
        flex-wrap: wrap;
        gap: var(--space-8) var(--space-9);
        align-items: start;
      }
      overprint-grid {
        flex: 0 1 auto;
        max-width: 100%;
      }
      .words {
        display: grid;
        grid-template-columns: minmax(0, 1fr);
        gap: var(--space-7);
        flex: 1 1 260px;
        min-width: 0;
      }
      .told {
        min-height: 4.4em;
        max-width: 46ch;
      }
      .keys {
        display: grid;
        gap: var(--space-4);
      }
      .keys span {
        display: flex;
        gap: var(--space-5);
        align-items: center;
      }
      .keys i {
        position: relative;
        flex: none;
        width: 22px;
        height: 18px;
        background: var(--ink-soft);
        forced-color-adjust: none;
      }
    `,
  ];

  protected readonly room = 'inks';
  @state() private overprintDeltaE = OVERPRINT_COLOUR_DELTA_E;
  @state() private pointed: Square | null = null;
  /** Ids, so that an opened square stays that of its inks. */
  @state() private opened: readonly [string, string] | null = null;
  private grid: OverprintGrid = { own: [], rows: [] };
  private inks: readonly Ink[] = [];
  private drawn: { studio: Studio; relative: boolean; overprintDeltaE: number } | null = null;

  protected override willUpdate(_: PropertyValues): void {
    const { relative, project } = this.store;
    const { drawer: studio } = project;
    const { drawn, overprintDeltaE } = this;
    if (drawn?.studio === studio && drawn.relative === relative && drawn.overprintDeltaE === overprintDeltaE) return;
    this.drawn = { studio, relative, overprintDeltaE };
    // Stock inks are weighed into mixes and never pulled by themselves.
    this.inks = printInks(studio.inks);
    this.grid = overprintGrid(this.inks, studio, relative, overprintDeltaE);
    if (this.pointed !== null && Math.max(...this.pointed) >= this.inks.length) this.pointed = null;
  }

  private openedAt(): Square | null {
    if (this.opened === null) return null;
    const [first, over] = this.opened.map((id) => this.inks.findIndex((ink) => ink.id === id)) as [number, number];
    return first < 0 || over < 0 ? null : [first, over];
  }

  private pick([first, over]: Square): void {
    const next = [entryAt(this.inks, first).id, entryAt(this.inks, over).id] as const;
    this.opened = this.opened !== null && this.opened.join() === next.join() ? null : next;
  }

  private spoken(): string {
    if (this.pointed === null) return say.pointAtSquareTo;
    const [first, over] = this.pointed;
    return squareSentence(
      this.inks.map(({ name }) => name),
      { first, over, cell: entryAt(entryAt(this.grid.rows, first), over), overprintDeltaE: this.overprintDeltaE },
    );
  }

  override render() {
    const { inks, grid, overprintDeltaE, store } = this;
    const { paper } = store.project.drawer;
    if (inks.length === 0) return html`<p class="soft">${say.addInksToSee}</p>`;
    const opened = this.openedAt();
    return html`
      <div class="chart">
        <overprint-grid
          .names=${inks.map(({ name }) => name)}
          .grid=${grid}
          .overprintDeltaE=${overprintDeltaE}
          .hatched=${store.marked}
          .picked=${opened}
          @point=${(event: CustomEvent<Square>) => (this.pointed = event.detail)}
          @pick=${(event: CustomEvent<Square>) => this.pick(event.detail)}
        ></overprint-grid>
        <div class="words">
          <p class="told" role="status">${this.spoken()}</p>
          ${
            opened === null
              ? nothing
              : html`<overprint-square .inks=${inks} .paper=${paper} .printing=${store.project.drawer} .relative=${store.relative} .grid=${grid} .square=${opened}></overprint-square>`
          }
          <ps-number
            label=${say.overprintColourIsFurther}
            unit="ΔE"
            min="0"
            max="100"
            step="1"
            decimals="1"
            .value=${overprintDeltaE}
            @pick=${(event: NumberPick) => (this.overprintDeltaE = event.detail)}
          ></ps-number>
          <p class="keys small soft">
            <span>${say.overprintColourItAppears(html`<i class="own"></i>`)}</span>
            <span>${say.moreColourfulInPrintThan(html`<i class="outside"></i>`)}</span>
          </p>
        </div>
      </div>
      <overprint-target .store=${store}></overprint-target>
    `;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'overprint-chart': OverprintChart;
  }
}
