import { html, LitElement, noChange, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { entryAt } from '../../../engine/base/at.ts';
import { minutesText, rangesText } from '../../../engine/base/words.ts';
import type { SetUpCard } from '../../../engine/visit/set-up-cards.ts';
import { extraUse, type SheetColumn, type SheetGrid, sheetGrid } from '../../../engine/visit/sheet-columns.ts';
import { workMinutes } from '../../../engine/visit/visit-times.ts';
import type { PressPlan } from '../../../engine/visit/visit.ts';
import '../../ui/kit/ink-chip.ts';
import { capital } from '../../../engine/words/language.ts';
import { controls } from '../../ui/controls-style.ts';
import { inkHexes, writingOn } from '../../ui/kit/ink-chip.ts';
import { waitWords } from '../../words/drying-words.ts';
import { say } from '../../words/en/press/grid.ts';
import { offsetShort, offsetWords } from '../../words/offset-words.ts';
import { listed, recipeLetter, setUpTags, useLetter, useWord } from '../../words/plan-words.ts';
import { setUpGridStyle } from './set-up-grid-style.ts';

/** With more sheets than this, sheets that are printed alike share a column. */
const MOST_COLUMNS = 60;
/** Over fewer columns a title would be cut off after a syllable: its letter says which it is. */
const LEAST_FOR_TITLE = 4;
/** Rows that are drawn in one go: all of a long order would hold the page for seconds. */
const ROWS_AT_ONCE = 12;
/** From more columns than this on they stand close, so that all fit beside a card on a laptop. */
const WIDE_PLAN = 16;

/**
 * The set-up grid: rows are set-ups in time, columns are numbered sheets, a filled square is a pull.
 * @fires set-up-select CustomEvent<number>: index of the set-up
 */
@customElement('press-set-up-grid')
export class SetUpGrid extends LitElement {
  static override styles = [controls, setUpGridStyle];

  @property({ attribute: false }) plan!: PressPlan;
  @property({ type: Number }) selected = 0;
  /** Indices of set-ups that are done. */
  @property({ attribute: false }) done: ReadonlySet<number> = new Set();

  /** How many rows stand, from the first; the others follow some at a time. */
  @state() private shown = ROWS_AT_ONCE;
  private sheets: { of: PressPlan; grid: SheetGrid } | null = null;
  /** What the rows that stand were drawn of. */
  private readonly rows: { plan: PressPlan; chosen: boolean; done: boolean }[] = [];
  private waiting: ReturnType<typeof setTimeout> | undefined;

  protected override updated(): void {
    if (this.shown >= this.plan.cards.length || this.waiting !== undefined) return;
    this.waiting = setTimeout(() => {
      this.waiting = undefined;
      this.shown += ROWS_AT_ONCE;
    });
  }

  private get grid(): SheetGrid {
    if (this.sheets?.of !== this.plan) this.sheets = { of: this.plan, grid: sheetGrid(this.plan, MOST_COLUMNS) };
    return this.sheets.grid;
  }

  private get beds(): boolean {
    return this.plan.times.some((time) => time.bed > 0);
  }

  private choose(index: number): void {
    this.dispatchEvent(new CustomEvent<number>('set-up-select', { detail: index }));
  }

  private onKey(event: KeyboardEvent, index: number): void {
    const last = this.plan.cards.length - 1;
    const to = { ArrowDown: index + 1, ArrowUp: index - 1, Home: 0, End: last }[event.key];
    if (to === undefined || to < 0 || to > last) return;
    event.preventDefault();
    this.shown = Math.max(this.shown, to + 1);
    this.choose(to);
    void this.updateComplete.then(() => this.renderRoot.querySelector<HTMLElement>(`button[data-at="${to}"]`)?.focus());
  }

  private head(card: SetUpCard, index: number) {
    const tags = setUpTags(this.plan, index);
    const bed = this.beds ? say.bed((this.plan.times[index]?.bed ?? 0) + 1) : '';
    const content = html`
      <span class="at">${this.done.has(index) ? html`<span class="tick" aria-hidden="true">✓</span><span class="visually-hidden">${say.done} </span>` : nothing}${card.number}${bed === '' ? nothing : html`<small>${bed}</small>`}</span>
      <ps-ink-chip .ink=${card.ink.ink}></ps-ink-chip>
      <span class="words">
        <span class="name" style="display: block">${card.screen.key} ${card.screen.name}</span>
        <span class="how" style="display: block"
          >${card.ink.key} · <span aria-hidden="true">${offsetShort(card)}</span
            ><span class="visually-hidden">${offsetWords(card)}</span> · ${strokesOf(card)}</span
        >
      </span>
      <span class="tags">${tags.map((tag, i) => html`${i > 0 ? html`<span class="visually-hidden">,</span> <br />` : nothing}${tag.includes(say.mount) ? html`<b>${tag}</b>` : tag}`)}</span>
    `;
    return html`<button
      data-at=${index}
      aria-pressed=${index === this.selected}
      tabindex=${index === this.selected ? 0 : -1}
      @click=${() => this.choose(index)}
      @keydown=${(event: KeyboardEvent) => this.onKey(event, index)}
    >
      ${content}
    </button>`;
  }

  private square(card: SetUpCard, strokes: number) {
    if (strokes === 0) return nothing;
    const paint = inkHexes(card.ink.ink).overWhite;
    return html`<span class="pull" style="background: ${paint}; color: ${writingOn(card.ink.ink)}"
      ><span class="visually-hidden">${say.strokes(strokes)}</span>${strokes > 1 ? html`<span aria-hidden="true">${strokes}</span>` : nothing}</span
    >`;
  }

  /** Under the number of a proof or an over what it is: by a letter, for a word is too wide. */
  private useOf({ sheets }: SheetColumn) {
    const use = extraUse(this.plan, entryAt(sheets, 0));
    if (use === null) return nothing;
    return html`<small aria-hidden="true">${useLetter(use)}</small><span class="visually-hidden">, ${useWord(use)}</span>`;
  }

  /** The column of the test sheet of the run, behind the others; nothing where the visit has none. */
  private get hasTest(): boolean {
    const { testSheet, cards } = this.plan;
    return testSheet === true && cards.some(({ test }) => test !== undefined);
  }

  private testSquare(card: SetUpCard) {
    if (!this.hasTest) return nothing;
    return html`<td class="starts">${card.test === undefined ? nothing : this.square(card, 1)}</td>`;
  }

  private gaps(index: number, columns: number) {
    const time = this.plan.times[index];
    if (time === undefined) return nothing;
    const before = this.plan.times[index - 1];
    const newDay = (before === undefined || before.day < time.day) && this.plan.daysNeeded > 1;
    const wait = time.waitMinutes >= 1 ? waitWords(this.plan, index) : null;
    if (!newDay && wait === null) return nothing;
    return html`<tr class="gap">
      <th scope="row">
        <span
          >${newDay ? html`<span class="day" style="display: inline; padding: 0">${say.day(time.day)}</span>` : nothing}${newDay && wait !== null ? ': ' : nothing}${wait === null ? nothing : newDay ? wait : capital(wait)}</span
        >
      </th>
      <td colspan=${columns}></td>
    </tr>`;
  }

  /** What stands is drawn anew only where it changed, so that each further row costs one row. */
  private changedRow(card: SetUpCard, index: number) {
    const before = this.rows[index];
    const now = { plan: this.plan, chosen: index === this.selected, done: this.done.has(index) };
    if (before !== undefined && before.plan === now.plan && before.chosen === now.chosen && before.done === now.done) return noChange;
    this.rows[index] = now;
    return this.row(card, index);
  }

  private row(card: SetUpCard, index: number) {
    const { grid } = this;
    return html`${this.gaps(index, grid.columns.length + (this.hasTest ? 1 : 0))}
      <tr class="${card.mount ? 'mount' : ''} ${this.done.has(index) ? 'done' : ''} ${index === this.selected ? 'chosen' : ''}" @click=${() => this.choose(index)}>
        <th scope="row">${this.head(card, index)}</th>
        ${entryAt(grid.strokes, index).map(
          (strokes, at) => html`<td class="${startsAt(grid, at) ? 'starts' : ''} ${wide(entryAt(grid.columns, at)) ? 'wide' : ''}">
            ${this.square(card, strokes)}
          </td>`,
        )}
        ${this.testSquare(card)}
      </tr>`;
  }

  override render() {
    const { plan, grid } = this;
    this.rows.length = Math.min(this.rows.length, plan.cards.length, this.shown);
    const merged = grid.columns.some(wide);
    return html`<div class="scroller" role="region" aria-label=${say.setUpGrid} tabindex="0">
      <table class=${grid.columns.length > WIDE_PLAN ? 'close' : ''}>
        <caption class="visually-hidden">
          ${say.setUpsInTime}
        </caption>
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
            ${this.hasTest ? html`<th class="starts test" scope="col" rowspan="2" title=${say.testSheetOfRun}>${say.test}<br />${plan.testNumber ?? ''}</th>` : nothing}
          </tr>
          <tr>
            ${grid.columns.map(
              (column, at) => html`<th scope="col" class="${startsAt(grid, at) ? 'starts' : ''} ${wide(column) ? 'wide' : ''}">
                <span class="visually-hidden">${say.sheet} </span>${rangesText(column.sheets)}${this.useOf(column)}
              </th>`,
            )}
          </tr>
        </thead>
        <tbody>
          ${plan.cards.slice(0, this.shown).map((card, index) => this.changedRow(card, index))}
        </tbody>
      </table>
    </div>`;
  }
}

/** Whether a column is the first of its recipe, but for the first of all. */
function startsAt({ columns }: SheetGrid, at: number): boolean {
  return at > 0 && entryAt(columns, at - 1).recipe !== entryAt(columns, at).recipe;
}

function wide(column: SheetColumn): boolean {
  return column.sheets.length > 1;
}

/** '1 stroke'; '1 and 2 strokes' where its sheets are pulled with several counts. */
function strokesOf({ strokes, instructions = [] }: SetUpCard): string {
  const counts = [...new Set([strokes, ...instructions.map((each) => each.strokes)])].sort((a, b) => a - b);
  return counts.length === 1 ? say.strokes(strokes) : say.strokesCounts(listed(counts.map(String)));
}

declare global {
  interface HTMLElementTagNameMap {
    'press-set-up-grid': SetUpGrid;
  }
}
