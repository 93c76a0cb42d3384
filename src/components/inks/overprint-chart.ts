import { css, html, LitElement, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { type Overprint, type OverprintGrid, overprintGrid } from '../../engine/ink/overprint.ts';
import type { Ink, Paper } from '../../engine/ink/types.ts';
import { controls } from '../ui/styles.ts';

const STEPS: Record<string, [number, number]> = {
  ArrowUp: [-1, 0],
  ArrowDown: [1, 0],
  ArrowLeft: [0, -1],
  ArrowRight: [0, 1],
};

/** Every ink over every other, in both orders, as this paper shows them. */
@customElement('overprint-chart')
export class OverprintChart extends LitElement {
  static override styles = [
    controls,
    css`
      :host {
        display: block;
      }
      .chart {
        display: grid;
        grid-template-columns: minmax(0, max-content) minmax(0, 1fr);
        gap: 12px 32px;
        align-items: end;
      }
      .scroll {
        overflow-x: auto;
        padding: 2px;
      }
      .words {
        display: grid;
        gap: 14px;
      }
      table {
        border-collapse: separate;
        border-spacing: 2px;
      }
      th {
        font-weight: 400;
        font-size: 13px;
        color: var(--ink-soft);
        padding: 0 6px 4px;
      }
      th[scope='col'] {
        max-width: 64px;
        overflow: hidden;
        text-overflow: ellipsis;
        vertical-align: bottom;
        padding: 0 2px 4px;
      }
      th[scope='row'] {
        text-align: right;
        max-width: 110px;
        overflow: hidden;
        text-overflow: ellipsis;
        white-space: nowrap;
        padding: 0 8px 0 0;
      }
      th.lit {
        color: var(--ink);
        font-weight: 650;
      }
      .axes {
        font-size: 12px;
        text-align: right;
        line-height: 1.25;
        white-space: nowrap;
      }
      td {
        position: relative;
        width: 64px;
        height: 46px;
        padding: 0;
        cursor: default;
        box-shadow: 0 0 0 1px color-mix(in srgb, var(--ink) 12%, transparent);
      }
      td:focus-visible {
        outline-offset: 1px;
        z-index: 1;
      }
      td .third {
        position: absolute;
        left: 50%;
        top: 50%;
        width: 8px;
        height: 8px;
        margin: -4px;
        border-radius: 50%;
        background: #fffdf9;
        box-shadow: 0 0 0 1px rgb(0 0 0 / 0.55);
      }
      td.outside::after,
      .corner {
        content: '';
        position: absolute;
        top: 0;
        right: 0;
        border: 5px solid;
        border-color: #fffdf9 #fffdf9 transparent transparent;
        filter: drop-shadow(0 0 0.5px rgb(0 0 0 / 0.7));
      }
      .told {
        min-height: 4.4em;
        max-width: 40ch;
      }
      .keys {
        display: flex;
        flex-wrap: wrap;
        gap: 6px 22px;
      }
      .keys span {
        display: inline-flex;
        gap: 8px;
        align-items: center;
      }
      .keys i {
        position: relative;
        width: 16px;
        height: 16px;
        background: var(--ink-soft);
      }
      .keys i .third {
        position: absolute;
        inset: 4px;
        border-radius: 50%;
        background: #fffdf9;
      }
      @media (max-width: 760px) {
        .chart {
          grid-template-columns: minmax(0, 1fr);
        }
        td {
          width: 34px;
          height: 34px;
        }
        td .third {
          width: 6px;
          height: 6px;
          margin: -3px;
        }
        th[scope='col'] {
          writing-mode: vertical-rl;
          transform: rotate(180deg);
          text-align: left;
          max-width: none;
          max-height: 80px;
          padding: 4px 0 0;
        }
        th[scope='row'] {
          max-width: 64px;
          padding-right: 4px;
        }
      }
    `,
  ];

  @property({ attribute: false }) inks: readonly Ink[] = [];
  @property({ attribute: false }) paper!: Paper;
  @property({ type: Boolean }) relative = true;
  /** Row and column that are told about. */
  @state() private at: [number, number] = [0, 0];
  @state() private told = false;
  private grid: OverprintGrid = { own: [], rows: [] };

  protected override willUpdate(changed: Map<string, unknown>): void {
    if (!changed.has('inks') && !changed.has('paper') && !changed.has('relative')) return;
    this.grid = overprintGrid(this.inks, this.paper, this.relative);
    if (Math.max(...this.at) >= this.inks.length) this.at = [0, 0];
  }

  private sentence(first: number, over: number, cell: Overprint): string {
    const below = this.inks[first]!.name;
    const above = this.inks[over]!.name;
    if (first === over) return `${above} over itself, a second pull.`;
    const parts = [`${above} over ${below}: ΔE ${cell.orderDeltaE.toFixed(1)} to ${below} over ${above}.`];
    if (cell.thirdColour) parts.push('A third colour, far from both inks.');
    if (!cell.swatch.inGamut) parts.push('More colourful in print than this screen can show.');
    return parts.join(' ');
  }

  private tell(first: number, over: number): void {
    this.at = [first, over];
    this.told = true;
  }

  private onKey(event: KeyboardEvent): void {
    const step = STEPS[event.key];
    if (step === undefined) return;
    event.preventDefault();
    const last = this.inks.length - 1;
    const at = this.at.map((place, i) => Math.max(0, Math.min(last, place + step[i]!))) as [number, number];
    this.tell(...at);
    this.renderRoot.querySelector<HTMLElement>(`td[data-at="${at.join()}"]`)?.focus();
  }

  override render() {
    const { inks, grid, at, told } = this;
    if (inks.length === 0) return html`<p class="soft">Add inks to see them over each other.</p>`;
    return html`
      <div class="chart"><div class="scroll">
        <table role="grid" aria-label="Every ink over every other" @keydown=${this.onKey}>
          <thead>
            <tr>
              <th class="axes soft" aria-hidden="true">over it →<br />first down ↓</th>
              ${inks.map((ink, over) => html`<th scope="col" class=${told && at[1] === over ? 'lit' : ''} title=${ink.name}>${ink.name}</th>`)}
            </tr>
          </thead>
          <tbody>
            ${inks.map(
              (ink, first) => html`<tr>
                <th scope="row" class=${told && at[0] === first ? 'lit' : ''} title=${ink.name}>${ink.name}</th>
                ${inks.map((_, over) => this.renderCell(first, over, grid.rows[first]![over]!))}
              </tr>`,
            )}
          </tbody>
        </table>
      </div>
      <div class="words"><p class="told" role="status">${told ? this.sentence(...at, grid.rows[at[0]]![at[1]]!) : 'Point at a square to read it.'}</p>
      <p class="keys small soft">
        <span><i><span class="third"></span></i>third colour: ΔE over 10 to both inks</span>
        <span><i><span class="corner"></span></i>more colourful in print than on this screen</span>
      </p></div></div>
    `;
  }

  private renderCell(first: number, over: number, cell: Overprint) {
    return html`<td
      role="gridcell"
      data-at="${first},${over}"
      tabindex=${this.at[0] === first && this.at[1] === over ? 0 : -1}
      class="${cell.swatch.inGamut ? '' : 'outside'}"
      style="background:${cell.swatch.hex}"
      aria-label=${this.sentence(first, over, cell)}
      @pointerenter=${() => this.tell(first, over)}
      @click=${() => this.tell(first, over)}
      @focus=${() => this.tell(first, over)}
    >
      ${cell.thirdColour ? html`<span class="third"></span>` : nothing}
    </td>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'overprint-chart': OverprintChart;
  }
}
