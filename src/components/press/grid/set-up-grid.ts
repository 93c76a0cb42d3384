import { html, LitElement, noChange, nothing, type PropertyValues } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { guard } from 'lit/directives/guard.js';
import { entryAt } from '../../../engine/base/at.ts';
import type { SetUpCard } from '../../../engine/visit/set-up-cards.ts';
import { type SheetGrid, sheetGrid } from '../../../engine/visit/sheet-columns.ts';
import type { PressPlan } from '../../../engine/visit/visit.ts';
import '../../ui/kit/ink-chip.ts';
import { capital } from '../../../engine/words/language.ts';
import { controls } from '../../ui/controls-style.ts';
import { inkHexes, writingOn } from '../../ui/kit/ink-chip.ts';
import { waitWords } from '../../words/drying-words.ts';
import { say } from '../../words/en/press/grid.ts';
import { offsetShort, offsetWords } from '../../words/offset-words.ts';
import { listed, setUpTags } from '../../words/plan-words.ts';
import { gridColumns, gridHead, hasTest, startsAt, wide } from './grid-head.ts';
import { gridPartsStyle } from './grid-parts-style.ts';
import { setUpGridStyle } from './set-up-grid-style.ts';

/** With more sheets than this, sheets that are printed alike share a column. */
const MOST_COLUMNS = 60;
/** A longer order is in parts, each a table: those out of view are not laid out. */
const LONG = 60;
/** Rows of a part, and about how high each is, px. */
const PART = 48;
const ROW_PX = 48;
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
  static override styles = [controls, setUpGridStyle, gridPartsStyle];

  @property({ attribute: false }) plan!: PressPlan;
  @property({ type: Number }) selected = 0;
  /** Indices of set-ups that are done. */
  @property({ attribute: false }) done: ReadonlySet<number> = new Set();

  /** How many rows, from the first, are of the plan; the others follow some at a time, and until then are of the one before it, or not there. */
  @state() private fresh = ROWS_AT_ONCE;
  private sheets: { of: PressPlan; grid: SheetGrid } | null = null;
  /** What the rows that stand were drawn of. */
  private readonly rows: { plan: PressPlan; chosen: boolean; done: boolean }[] = [];
  /** Whether they are in parts. */
  private parted = false;
  private waiting: ReturnType<typeof setTimeout> | undefined;

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has('plan')) this.fresh = ROWS_AT_ONCE;
  }

  protected override updated(): void {
    if (this.fresh >= this.plan.cards.length || this.waiting !== undefined) return;
    this.waiting = setTimeout(() => {
      this.waiting = undefined;
      this.fresh += ROWS_AT_ONCE;
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
    this.fresh = Math.max(this.fresh, to + 1);
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

  private testSquare(card: SetUpCard) {
    if (!hasTest(this.plan)) return nothing;
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
    if (index >= this.fresh) return noChange;
    const now = { plan: this.plan, chosen: index === this.selected, done: this.done.has(index) };
    if (before !== undefined && before.plan === now.plan && before.chosen === now.chosen && before.done === now.done) return noChange;
    this.rows[index] = now;
    return this.row(card, index);
  }

  private row(card: SetUpCard, index: number) {
    const { grid } = this;
    return html`${this.gaps(index, grid.columns.length + (hasTest(this.plan) ? 1 : 0))}
      <tr class="${card.mount ? 'mount' : ''} ${this.done.has(index) ? 'done' : ''} ${index === this.selected ? 'chosen' : ''}" @click=${() => this.choose(index)}>
        <th scope="row">${this.head(card, index)}</th>
        ${squares(grid, index).map(
          ({
            at,
            columns,
            strokes,
          }) => html`<td colspan=${columns} class="${startsAt(grid, at) ? 'starts' : ''} ${wide(entryAt(grid.columns, at)) ? 'wide' : ''}">
            ${this.square(card, strokes)}
          </td>`,
        )}
        ${this.testSquare(card)}
      </tr>`;
  }

  override render() {
    const { plan, grid } = this;
    const { length } = plan.cards;
    const long = length > LONG;
    if (long !== this.parted) this.rows.length = 0;
    this.parted = long;
    const standing = Math.min(length, Math.max(this.fresh, this.rows.length));
    this.rows.length = Math.min(this.rows.length, standing);
    const close = grid.columns.length > WIDE_PLAN ? 'close' : '';
    const caption = html`<caption class="visually-hidden">
      ${say.setUpsInTime}
    </caption>`;
    const head = guard([plan], () => gridHead(plan, grid));
    const rows = (from: number, end: number) =>
      html`<tbody>
        ${plan.cards.slice(from, Math.min(end, standing)).map((card, i) => this.changedRow(card, from + i))}
      </tbody>`;
    const parts = Array.from({ length: long ? Math.ceil(standing / PART) : 0 }, (_, part) => part * PART);
    return html`<div class="scroller" role="region" aria-label=${say.setUpGrid} tabindex="0">
      ${
        long
          ? html`<table class="long top ${close}" aria-hidden="true">${gridColumns(plan, grid)} ${head}</table>
            ${parts.map(
              (from) => html`<div class="part" style="contain-intrinsic-height: auto ${ROW_PX * Math.min(PART, length - from)}px">
                <table class="long ${close}">${caption} ${gridColumns(plan, grid)} ${head} ${rows(from, from + PART)}</table>
              </div>`,
            )}`
          : html`<table class=${close}>${caption} ${head} ${rows(0, length)}</table>`
      }
    </div>`;
  }
}

/** What a set-up prints, column by column; the empty columns of a recipe between are one square, as most are empty. */
function squares(grid: SheetGrid, index: number): { at: number; columns: number; strokes: number }[] {
  const found: { at: number; columns: number; strokes: number }[] = [];
  entryAt(grid.strokes, index).forEach((strokes, at) => {
    const last = found.at(-1);
    if (last !== undefined && last.strokes === 0 && strokes === 0 && !startsAt(grid, at)) last.columns++;
    else found.push({ at, columns: 1, strokes });
  });
  return found;
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
