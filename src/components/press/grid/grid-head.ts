import { html, nothing } from 'lit';
import { entryAt } from '../../../engine/base/at.ts';
import { minutesText, rangesText } from '../../../engine/base/words.ts';
import { extraUse, type SheetColumn, type SheetGrid } from '../../../engine/visit/sheet-columns.ts';
import { workMinutes } from '../../../engine/visit/visit-times.ts';
import type { PressPlan } from '../../../engine/visit/visit.ts';
import { say } from '../../words/en/press/grid.ts';
import { recipeLetter, useLetter, useWord } from '../../words/plan-words.ts';

/** Over fewer columns a title would be cut off after a syllable: its letter says which it is. */
const LEAST_FOR_TITLE = 4;

/** Whether a column is the first of its recipe, but for the first of all. */
export function startsAt({ columns }: SheetGrid, at: number): boolean {
  return at > 0 && entryAt(columns, at - 1).recipe !== entryAt(columns, at).recipe;
}

/** Whether several sheets share a column. */
export function wide(column: SheetColumn): boolean {
  return column.sheets.length > 1;
}

/** Whether the test sheet of the run has a column, behind the others. */
export function hasTest({ testSheet, cards }: PressPlan): boolean {
  return testSheet === true && cards.some(({ test }) => test !== undefined);
}

/** Under the number of a proof or an over what it is: by a letter, for a word is too wide. */
function useOf(plan: PressPlan, { sheets }: SheetColumn) {
  const use = extraUse(plan, entryAt(sheets, 0));
  if (use === null) return nothing;
  return html`<small aria-hidden="true">${useLetter(use)}</small><span class="visually-hidden">, ${useWord(use)}</span>`;
}

/** The recipes and sheets that the columns of a plan's grid stand for. */
export function gridHead(plan: PressPlan, grid: SheetGrid) {
  const merged = grid.columns.some(wide);
  return html`
    <thead>
          <tr>
            <th class="corner" rowspan="2" scope="col">
              <span>${say.setUpsAtPress(
                plan.cards.length,
                minutesText(Math.round(workMinutes(plan))),
                plan.sheets.some(({ number }) => extraUse(plan, number) !== null),
              )}</span>
            </th>
            ${grid.spans.map(({ recipe, columns }, at) => {
              const title = plan.recipes[recipe]?.title ?? '';
              const narrow = columns < (merged ? 2 : LEAST_FOR_TITLE);
              return html`<th class="recipe ${at > 0 ? 'starts' : ''}" colspan=${columns} scope="colgroup" title=${title}>
                <span class="title"><b>${recipeLetter(recipe)}</b> ${narrow ? html`<span class="visually-hidden">${title}</span>` : title}</span>
              </th>`;
            })}
            ${hasTest(plan) ? html`<th class="starts test" scope="col" rowspan="2" title=${say.testSheetOfRun}>${say.test}<br />${plan.testNumber ?? ''}</th>` : nothing}
          </tr>
          <tr>
            ${grid.columns.map(
              (column, at) => html`<th scope="col" class="${startsAt(grid, at) ? 'starts' : ''} ${wide(column) ? 'wide' : ''}">
                <span class="visually-hidden">${say.sheet} </span>${rangesText(column.sheets)}${useOf(plan, column)}
              </th>`,
            )}
          </tr>
        </thead>
  `;
}

/** The columns by their widths alone, for tables that must have the same. */
export function gridColumns(plan: PressPlan, grid: SheetGrid) {
  return html`<colgroup>
    <col class="names" />
    ${grid.columns.map((column) => (wide(column) ? html`<col style="width: max(44px, ${rangesText(column.sheets).length}ch + 8px)" />` : html`<col />`))}
    ${hasTest(plan) ? html`<col class="test" />` : nothing}
  </colgroup>`;
}
