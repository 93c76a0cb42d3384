import { html, LitElement, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { lacks, type WantedPrint } from '../../../engine/explore/prepare/prepare.ts';
import { controls } from '../../ui/controls-style.ts';
import { say } from '../../words/en/wall/prepare.ts';
import { prepareMatrixStyle } from './prepare-matrix-style.ts';
import { scrollStyle } from './prepare-style.ts';

/** Rows that are shown at first, half of them for prints that lack something, which say what else to make. */
const FIRST_ROWS = 120;
/** As many more each time they are asked for: more at once would keep the page waiting. */
const MORE_ROWS = 500;

/** A column: a screen or an ink. */
export interface MatrixColumn {
  id: string;
  kind: 'screen' | 'ink';
  /** '7' or 'Tar', as it is called among what a print lacks. */
  head: string;
  name: string;
  state: 'there' | 'chosen' | 'missing';
}

const STATES: Record<MatrixColumn['state'], string> = { there: say.there, chosen: say.toMake, missing: say.notThere };

/** Prints by screens and inks: what each takes, what is there, what it lacks; printable ones first. */
@customElement('wall-prepare-matrix')
export class PrepareMatrix extends LitElement {
  static override styles = [controls, scrollStyle, prepareMatrixStyle];

  @property({ attribute: false }) prints: readonly WantedPrint[] = [];
  @property({ attribute: false }) columns: readonly MatrixColumn[] = [];
  @state() private most = FIRST_ROWS;

  override render() {
    const there = (kind: MatrixColumn['kind']): Set<string> =>
      new Set(this.columns.filter((column) => column.kind === kind && column.state !== 'missing').map(({ id }) => id));
    const [screens, inks] = [there('screen'), there('ink')];
    const rows = this.prints.map((print) => {
      const lacking = lacks(print, screens, inks);
      const missing = { screen: new Set(lacking.screens), ink: new Set(lacking.inks) };
      const names = this.columns.filter(({ kind, id }) => missing[kind].has(id)).map(({ head }) => head);
      return { print, names };
    });
    rows.sort((a, b) => a.names.length - b.names.length || b.print.weight - a.print.weight);
    const printable = rows.filter(({ names }) => names.length === 0);
    const lacking = rows.slice(printable.length);
    const shown = printable.slice(0, this.most - Math.min(lacking.length, this.most / 2));
    shown.push(...lacking.slice(0, this.most - shown.length));
    const more = Math.min(MORE_ROWS, rows.length - shown.length);
    return html`<div class="scroll" tabindex="0" role="region" aria-label=${say.whatEachPrintTakes}>
        <table>
          <thead>
            <tr>
              <th scope="col">${say.print}</th>
              ${this.columns.map(({ kind, head, name, state }) => html`<th scope="col" data-state=${state} title="${name}, ${STATES[state]}"><span class="name">${name}</span>${kind === 'screen' ? html`<b>${head}</b>` : nothing}</th>`)}
              <th scope="col" class="lacks">${say.lacks}</th>
            </tr>
          </thead>
          <tbody>
            ${shown.map(
              ({ print, names }) => html`<tr ?data-printed=${names.length === 0}>
                <th scope="row">${print.name}${print.weight > 1 ? html` <span class="soft">× ${print.weight}</span>` : nothing}</th>
                ${this.columns.map(({ id, kind, state }) => {
                  const takes = (kind === 'screen' ? print.screens : print.inks).includes(id);
                  return html`<td data-state=${state}>${takes ? html`<i aria-hidden="true"></i><span class="visually-hidden">${STATES[state]}</span>` : nothing}</td>`;
                })}
                <td class="lacks">${names.length === 0 ? say.nothing : names.slice(0, 6).join(', ')}${names.length > 6 ? say.andMore(names.length - 6) : ''}</td>
              </tr>`,
            )}
          </tbody>
        </table>
      </div>
      ${more > 0 ? html`<button class="more" @click=${() => (this.most += MORE_ROWS)}>${say.showMorePrints(more, rows.length - shown.length)}</button>` : nothing}`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'wall-prepare-matrix': PrepareMatrix;
  }
}
