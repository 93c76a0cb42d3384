import { html, LitElement } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { entryAt } from '../../../engine/base/at.ts';
import type { Overprint, OverprintGrid } from '../../../engine/ink/film/overprint.ts';
import { controls } from '../../ui/controls-style.ts';
import { say } from '../../words/en/inks/overprint.ts';
import { markStyles } from './marked-swatch.ts';
import { gridStyles, overprintMarkStyles } from './overprint-style.ts';
import { squareSentence } from './overprint-words.ts';

/** A square of the chart: places of the ink that is first down and of the one over it. */
export type Square = readonly [number, number];

const STEPS: Record<string, Square> = {
  ArrowUp: [-1, 0],
  ArrowDown: [1, 0],
  ArrowLeft: [0, -1],
  ArrowRight: [0, 1],
  PageUp: [-8, 0],
  PageDown: [8, 0],
  Home: [0, -Infinity],
  End: [0, Infinity],
};

/** From so many inks on the squares are small. */
const MANY = 13;

/**
 * Rows of inks first down, columns of inks over them.
 * @fires point CustomEvent<Square>: a square is read
 * @fires pick CustomEvent<Square>: a square is opened
 */
@customElement('overprint-grid')
export class OverprintGridElement extends LitElement {
  static override styles = [controls, markStyles, overprintMarkStyles, gridStyles];

  @property({ attribute: false }) names: readonly string[] = [];
  @property({ attribute: false }) grid: OverprintGrid = { own: [], rows: [] };
  @property({ type: Number }) overprintDeltaE = 10;
  /** Whether what the screen cannot show is hatched; a corner tells it anyway. */
  @property({ type: Boolean }) hatched = false;
  @property({ attribute: false }) picked: Square | null = null;
  /** The square that the keyboard is at. */
  @state() private at: Square = [0, 0];
  @state() private pointed = false;

  protected override willUpdate(): void {
    if (Math.max(...this.at) >= this.names.length) this.at = [0, 0];
  }

  private point(square: Square): void {
    this.at = square;
    this.pointed = true;
    this.dispatchEvent(new CustomEvent<Square>('point', { detail: square }));
  }

  private pick(square: Square): void {
    this.dispatchEvent(new CustomEvent<Square>('pick', { detail: square }));
  }

  private onKey(event: KeyboardEvent): void {
    if (event.key === 'Enter' || event.key === ' ') {
      event.preventDefault();
      this.pick(this.at);
      return;
    }
    const step = STEPS[event.key];
    if (step === undefined) return;
    event.preventDefault();
    const last = this.names.length - 1;
    const [row, column] = event.ctrlKey && !Number.isFinite(step[1]) ? [step[1], step[1]] : step;
    const within = (place: number): number => Math.max(0, Math.min(last, place));
    const square: Square = [within(this.at[0] + row), within(this.at[1] + column)];
    this.point(square);
    const cell = this.renderRoot.querySelector<HTMLElement>(`td[data-at="${square.join()}"]`);
    cell?.focus({ preventScroll: true });
    cell?.scrollIntoView({ block: 'nearest', inline: 'nearest' });
  }

  override render() {
    const { names, grid, at, pointed } = this;
    const lit = (ink: number, axis: 0 | 1): string => (pointed && at[axis] === ink ? 'lit' : '');
    return html`<div class="scroll ${names.length >= MANY ? 'many' : ''} ${this.hatched ? 'hatched' : ''}">
      <table role="grid" aria-label=${say.everyInkOverEvery} @keydown=${this.onKey}>
        <thead>
          <tr>
            <th class="axes" aria-hidden="true">${say.overIt}<br />${say.firstDown}</th>
            ${names.map((name, over) => html`<th scope="col" class=${lit(over, 1)} title=${name}>${name}</th>`)}
          </tr>
        </thead>
        <tbody>
          ${names.map(
            (name, first) => html`<tr>
              <th scope="row" class=${lit(first, 0)} title=${name}>${name}</th>
              ${names.map((_, over) => this.cell(first, over, entryAt(entryAt(grid.rows, first), over)))}
            </tr>`,
          )}
        </tbody>
      </table>
    </div>`;
  }

  private cell(first: number, over: number, cell: Overprint) {
    const { at, picked } = this;
    const square: Square = [first, over];
    return html`<td
      role="gridcell"
      data-at=${square.join()}
      tabindex=${at[0] === first && at[1] === over ? 0 : -1}
      class="${cell.swatch.inGamut ? '' : 'outside'} ${cell.overprintColour ? 'own' : ''}"
      style="background-color:${cell.swatch.hex}"
      aria-selected=${picked !== null && picked[0] === first && picked[1] === over ? 'true' : 'false'}
      aria-label=${squareSentence(this.names, { first, over, cell, overprintDeltaE: this.overprintDeltaE })}
      @pointerenter=${() => this.point(square)}
      @focus=${() => this.point(square)}
      @click=${() => this.pick(square)}
    ></td>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'overprint-grid': OverprintGridElement;
  }
}
