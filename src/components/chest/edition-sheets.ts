import { css, html, LitElement, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { live } from 'lit/directives/live.js';
import { repeat } from 'lit/directives/repeat.js';
import type { EditionRecord, EditionSheet } from '../../engine/log/edition/edition-sheets.ts';
import { type ChosenMark, type Edition, editionMarks } from '../../engine/log/edition/edition.ts';
import { controls } from '../ui/controls-style.ts';
import { cardList } from '../ui/layout-style.ts';
import { pulledWords } from '../words/edition-words.ts';
import { say } from '../words/en/chest/room.ts';

/** Marks of the sheets beside those that are given out: kept out of the edition, or as they come. */
const OUT = 'out';
const BY_ITSELF = '';

/**
 * Which sheet of a visit is 3/20, which AP 1; what was spoiled.
 * @fires marks CustomEvent<ChosenMark[]>: the marks that are given by hand from now on
 */
@customElement('chest-edition-sheets')
export class EditionSheets extends LitElement {
  static override styles = [
    controls,
    cardList,
    css`
      ul {
        --card: 250px;
        gap: 0 var(--space-9);
        margin: var(--space-5) 0;
      }
      li {
        display: grid;
        grid-template-columns: 34px 116px minmax(0, 1fr);
        gap: var(--space-5);
        align-items: center;
        min-height: 48px;
        border-top: 1px solid var(--line);
      }
      .number {
        font-weight: 650;
        font-variant-numeric: tabular-nums;
      }
      select {
        width: 100%;
      }
      .hand {
        font-weight: 650;
      }
      .warn {
        margin: 0 0 var(--space-4);
        padding-left: var(--space-6);
        border-left: 3px solid var(--accent);
        font-weight: 600;
      }
    `,
  ];

  @property({ attribute: false }) edition!: Edition;
  @property({ attribute: false }) record!: EditionRecord;

  private tell(marks: ChosenMark[]): void {
    this.dispatchEvent(new CustomEvent<ChosenMark[]>('marks', { detail: marks }));
  }

  private choose(sheet: number, value: string): void {
    const mark = value === OUT ? '' : value;
    // A mark stands on one sheet: whoever had it by hand takes what comes.
    const others = this.edition.marks.filter((entry) => entry.sheet !== sheet && (mark === '' || entry.mark !== mark));
    this.tell(value === BY_ITSELF ? others : [...others, { sheet, mark }]);
  }

  private keepAll(): void {
    this.tell(
      this.record.sheets.flatMap(({ number, mark, fate }) =>
        fate === 'reject' || fate === 'spare' ? [] : [{ sheet: number, mark: mark ?? '' }],
      ),
    );
  }

  private item(entry: EditionSheet, marks: readonly string[]) {
    const { number, mark, chosen, fate } = entry;
    if (fate === 'reject') {
      return html`<li aria-label=${say.sheet(number)}>
        <span class="number">${number}</span><span class="soft">${say.reject}</span><span class="small soft">${entry.sheet.notes.at(-1) ?? say.spoiled}</span>
      </li>`;
    }
    const value = chosen ? (mark ?? OUT) : BY_ITSELF;
    return html`<li aria-label=${say.sheet(number)}>
      <span class="number">${number}</span>
      <select class=${chosen ? 'hand' : ''} aria-label=${say.markOfSheet(number)} .value=${live(value)} @change=${(event: Event) => this.choose(number, (event.target as HTMLSelectElement).value)}>
        <option value=${BY_ITSELF} ?selected=${value === BY_ITSELF}>${chosen ? say.asItComes : (mark ?? say.spare)}</option>
        <option value=${OUT} ?selected=${value === OUT}>${say.keptOut}</option>
        ${marks.map((each) => html`<option value=${each} ?selected=${value === each}>${each}</option>`)}
      </select>
      <span class="small soft">${pulledWords(entry)}</span>
    </li>`;
  }

  override render() {
    const { sheets, problems } = this.record;
    const marks = editionMarks(this.edition.counts);
    const rejects = sheets.filter((sheet) => sheet.fate === 'reject').length;
    const loose = sheets.some((sheet) => sheet.fate === 'numbered' && !sheet.chosen);
    return html`${problems.map((problem) => html`<p class="warn">${problem.message}</p>`)}
      <p class="small">${say.sheetsRejectsChooseMark(sheets.length, rejects)}</p>
      <ul aria-label=${say.marksOfSheets}>
        ${repeat(
          sheets,
          (sheet) => sheet.number,
          (sheet) => this.item(sheet, marks),
        )}
      </ul>
      <div class="row">
        ${loose ? html`<button type="button" @click=${this.keepAll}>${say.theyArePencilledKeep}</button>` : nothing}
        ${this.edition.marks.length === 0 ? nothing : html`<button type="button" class="quiet" @click=${() => this.tell([])}>${say.numberAnew}</button>`}
      </div>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'chest-edition-sheets': EditionSheets;
  }
}
