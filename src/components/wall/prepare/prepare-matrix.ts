import { html, nothing } from 'lit';
import { lacks, type WantedPrint } from '../../../engine/explore/prepare/prepare.ts';
import { say } from '../../words/en/wall/prepare.ts';

/** Rows that are shown; more would be read by nobody. */
const MOST_ROWS = 120;
/** Of these, so many are for prints that lack something, which say what else to make. */
const MOST_LACKING = 60;

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
export function prepareMatrix(prints: readonly WantedPrint[], columns: readonly MatrixColumn[]) {
  const there = (kind: MatrixColumn['kind']): Set<string> =>
    new Set(columns.filter((column) => column.kind === kind && column.state !== 'missing').map(({ id }) => id));
  const [screens, inks] = [there('screen'), there('ink')];
  const rows = prints.map((print) => {
    const lacking = lacks(print, screens, inks);
    const missing = { screen: new Set(lacking.screens), ink: new Set(lacking.inks) };
    const names = columns.filter(({ kind, id }) => missing[kind].has(id)).map(({ head }) => head);
    return { print, names };
  });
  rows.sort((a, b) => a.names.length - b.names.length || b.print.weight - a.print.weight);
  const printable = rows.filter(({ names }) => names.length === 0);
  const lacking = rows.slice(printable.length);
  const shown = printable.slice(0, MOST_ROWS - Math.min(lacking.length, MOST_LACKING));
  shown.push(...lacking.slice(0, MOST_ROWS - shown.length));
  return html`<div class="scroll" tabindex="0" role="region" aria-label=${say.whatEachPrintTakes}>
      <table class="matrix">
        <thead>
          <tr>
            <th scope="col">${say.print}</th>
            ${columns.map(({ kind, head, name, state }) => html`<th scope="col" data-state=${state} title="${name}, ${STATES[state]}"><span class="name">${name}</span>${kind === 'screen' ? html`<b>${head}</b>` : nothing}</th>`)}
            <th scope="col" class="lacks">${say.lacks}</th>
          </tr>
        </thead>
        <tbody>
          ${shown.map(
            ({ print, names }) => html`<tr ?data-printed=${names.length === 0}>
              <th scope="row">${print.name}${print.weight > 1 ? html` <span class="soft">× ${print.weight}</span>` : nothing}</th>
              ${columns.map(({ id, kind, state }) => {
                const takes = (kind === 'screen' ? print.screens : print.inks).includes(id);
                return html`<td data-state=${state}>${takes ? html`<i aria-hidden="true"></i><span class="visually-hidden">${STATES[state]}</span>` : nothing}</td>`;
              })}
              <td class="lacks">${names.length === 0 ? say.nothing : names.slice(0, 6).join(', ')}${names.length > 6 ? say.andMore(names.length - 6) : ''}</td>
            </tr>`,
          )}
        </tbody>
      </table>
    </div>
    ${rows.length > shown.length ? html`<p class="soft small">${say.andMorePrints(rows.length - shown.length)}</p>` : nothing}`;
}
