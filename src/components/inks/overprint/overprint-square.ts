import { css, html, LitElement, svg } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { entryAt, num } from '../../../engine/base/at.ts';
import { WAVELENGTHS_NM } from '../../../engine/colour/weights.ts';
import { stackReflectance } from '../../../engine/ink/film/film.ts';
import { nearestInk, type OverprintGrid } from '../../../engine/ink/film/overprint.ts';
import type { Printing } from '../../../engine/ink/film/printing.ts';
import { type Swatch, swatchOf } from '../../../engine/ink/film/swatch.ts';
import type { Ink, Paper } from '../../../engine/ink/types.ts';
import { fixed } from '../../../engine/words/language.ts';
import { controls } from '../../ui/controls-style.ts';
import { labWords } from '../../ui/words.ts';
import { say } from '../../words/en/inks/overprint.ts';
import { withinWords } from '../../words/error-words.ts';
import { markStyles, swatchTemplate } from './marked-swatch.ts';
import type { Square } from './overprint-grid.ts';

const WIDTH = 350;
const HEIGHT = 170;
const x = (nm: number): number => ((nm - 380) / 350) * WIDTH;
const y = (reflectance: number): number => HEIGHT * (1 - Math.min(1.1, reflectance));

interface Line {
  kind: 'chosen' | 'turned' | 'below' | 'above';
  name: string;
  reflectance: ArrayLike<number>;
  swatch: Swatch;
}

/** One square of the chart, opened: reflectance of both inks and of both orders, and the figures. */
@customElement('overprint-square')
export class OverprintSquare extends LitElement {
  static override styles = [
    controls,
    markStyles,
    css`
      :host {
        display: grid;
        gap: var(--space-6);
        min-width: 0;
        max-width: 520px;
      }
      svg.curves {
        display: block;
        width: 100%;
        height: auto;
        overflow: visible;
      }
      path,
      line {
        fill: none;
        stroke: var(--ink-soft);
        stroke-width: 1.2;
        vector-effect: non-scaling-stroke;
      }
      .rule {
        stroke: var(--line);
        stroke-width: 1;
      }
      .chosen {
        stroke: var(--ink);
        stroke-width: 2.4;
      }
      .turned {
        stroke: var(--ink);
        stroke-width: 2;
        stroke-dasharray: 7 4;
      }
      .above {
        stroke-dasharray: 1.5 3;
      }
      text {
        fill: var(--ink-soft);
        font: var(--type-fine) var(--font);
      }
      table {
        border-collapse: collapse;
        width: 100%;
        font-size: var(--type-small);
      }
      th {
        font-weight: 400;
        text-align: left;
        padding: var(--space-2) var(--space-4) var(--space-2) 0;
        overflow-wrap: anywhere;
      }
      thead th {
        color: var(--ink-soft);
      }
      td {
        padding: var(--space-2) var(--space-4) var(--space-2) 0;
      }
      .number,
      thead th[scope='col'] {
        text-align: right;
        padding: var(--space-2) 0 var(--space-2) var(--space-4);
        white-space: nowrap;
      }
      td svg {
        display: block;
        width: 30px;
        height: 8px;
        overflow: visible;
      }
      .swatch {
        display: block;
        width: 26px;
        height: 18px;
        box-shadow: var(--edge);
      }
      .figures {
        display: grid;
        gap: var(--space-1);
      }
    `,
  ];

  @property({ attribute: false }) inks: readonly Ink[] = [];
  @property({ attribute: false }) paper!: Paper;
  /** Surface and trapping of the studio. */
  @property({ attribute: false }) printing: Printing = {};
  @property({ type: Boolean }) relative = true;
  @property({ attribute: false }) grid!: OverprintGrid;
  @property({ attribute: false }) square!: Square;

  private lines(): Line[] {
    const [first, over] = this.square;
    const below = entryAt(this.inks, first);
    const above = entryAt(this.inks, over);
    const ground = this.paper.reflectance;
    const white = this.relative ? ground : undefined;
    const line = (kind: Line['kind'], name: string, ...inks: Ink[]): Line => {
      const reflectance = stackReflectance(inks, ground, this.printing);
      return { kind, name, reflectance, swatch: swatchOf(reflectance, white) };
    };
    if (first === over) return [line('chosen', say.overItself(above.name), above, above), line('below', say.alone(above.name), above)];
    return [
      line('chosen', say.over(above.name, below.name), below, above),
      line('turned', say.over(below.name, above.name), above, below),
      line('below', say.alone(below.name), below),
      line('above', say.alone(above.name), above),
    ];
  }

  override render() {
    const [first, over] = this.square;
    const lines = this.lines();
    const { orderDeltaE, nearestDeltaE, expectedDeltaE } = entryAt(entryAt(this.grid.rows, first), over);
    const nearest = entryAt(this.inks, nearestInk(this.grid, first, over)).name;
    const path = ({ reflectance }: Line): string =>
      WAVELENGTHS_NM.map((nm, band) => `${band === 0 ? 'M' : 'L'}${x(nm)} ${y(num(reflectance, band)).toFixed(2)}`).join('');
    return html`
      <h3 tabindex="-1">${entryAt(lines, 0).name}</h3>
      <svg class="curves" viewBox="-42 -8 ${WIDTH + 50} ${HEIGHT + 32}" role="img" aria-label=${say.reflectanceFrom380To(lines.map(({ name }) => name).join(', '))}>
        ${[0, 0.5, 1].map((r) => svg`<line class="rule" x1="0" x2=${WIDTH} y1=${y(r)} y2=${y(r)} /><text x="-6" y=${y(r) + 4} text-anchor="end">${r * 100} %</text>`)}
        ${[400, 500, 600, 700].map((nm) => svg`<line class="rule" x1=${x(nm)} x2=${x(nm)} y1=${HEIGHT} y2=${HEIGHT + 4} /><text x=${x(nm)} y=${HEIGHT + 18} text-anchor="middle">${nm}${nm === 700 ? ' nm' : ''}</text>`)}
        ${[...lines].reverse().map((line) => svg`<path class=${line.kind} d=${path(line)} />`)}
      </svg>
      <table>
        <thead>
          <tr><th colspan="3">${say.on(this.paper.name === '' ? say.thePaper : this.paper.name)}</th><th scope="col">L</th><th scope="col">a</th><th scope="col">b</th></tr>
        </thead>
        <tbody>
          ${lines.map(
            ({ kind, name, swatch }) => html`<tr>
              <td><svg viewBox="0 0 30 8" aria-hidden="true"><line class=${kind} x1="0" x2="30" y1="4" y2="4" /></svg></td>
              <td>${swatchTemplate(swatch)}</td>
              <th scope="row">${name}</th>
              ${labWords(swatch.lab).map((value) => html`<td class="number">${value}</td>`)}
            </tr>`,
          )}
        </tbody>
      </table>
      <div class="figures small">
        ${first === over ? '' : html`<p>${say.deltaEBetweenTwoOrders(fixed(orderDeltaE, 1))}</p>`}
        <p>${say.printShouldComeOut(withinWords(expectedDeltaE))}</p>
        <p>${say.deltaEToNearestInk(fixed(nearestDeltaE, 1), nearest)}</p>
      </div>
    `;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'overprint-square': OverprintSquare;
  }
}
