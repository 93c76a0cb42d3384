import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { repeat } from 'lit/directives/repeat.js';
import { defined, entryAt } from '../../../engine/base/at.ts';
import { rangesText } from '../../../engine/base/words.ts';
import type { SheetAsPulled } from '../../../engine/log/as-pulled.ts';
import { checkLog } from '../../../engine/log/check.ts';
import { numberSheets, sheetsOfEdition } from '../../../engine/log/edition/edition-sheets.ts';
import type { LogEvent } from '../../../engine/log/types.ts';
import type { Happening } from '../../../engine/log/types.ts';
import type { AppStore } from '../../app-store.ts';
import { say } from '../../words/en/ui/log.ts';
import { eventWords, sheetWords } from '../../words/log-words.ts';
import { recipeLetter } from '../../words/plan-words.ts';
import { controls } from '../controls-style.ts';
import '../kit/fold.ts';
import { FileReading } from '../files/file-reading.ts';
import { cardGrid } from '../layout-style.ts';
import { printImage } from '../print/print-image.ts';
import type { StatePictures } from '../print/state-pictures.ts';
import { keepSheet, bringInLog, saveLog } from './log-files.ts';
import type { LogKeeper } from './log-keeper.ts';
import { testEntry } from './test-entry.ts';

const CONFLICTS_TOLD = 3;
/** Contradictions that end when the entry at which they were found is undone. */
const MENDED_BY_UNDO: ReadonlySet<string> = new Set([
  'log.sheet',
  'log.pull',
  'log.ink',
  'log.twice',
  'log.spoiled',
  'log.replaced',
  'log.order',
]);

/** Every sheet of a visit as it really is: number, picture, where it lies, what happened to it. */
@customElement('ps-log-sheets')
export class LogSheets extends LitElement {
  static override styles = [
    controls,
    cardGrid,
    css`
      .tools {
        margin: var(--space-4) 0 var(--space-8);
      }
      .warn {
        margin: 0 0 var(--space-4);
        padding-left: var(--space-6);
        border-left: 3px solid var(--accent);
        font-weight: 600;
      }
      .sheets {
        --card: 190px;
        gap: var(--space-9) var(--space-9);
      }
      .sheets li {
        display: grid;
        gap: var(--space-3);
        align-content: start;
        min-width: 0;
        content-visibility: auto;
        contain-intrinsic-size: auto 400px;
      }
      .print {
        display: block;
        width: 100%;
        background: var(--stock);
        box-shadow: var(--shadow);
      }
      ps-next {
        display: grid;
      }
      .bare {
        margin-top: var(--space-9);
      }
      .spoiled .print {
        opacity: 0.35;
      }
      .head {
        display: flex;
        align-items: baseline;
        justify-content: space-between;
        margin-top: var(--space-2);
        font-weight: 650;
        font-variant-numeric: tabular-nums;
      }
      .number {
        font-size: var(--type-head);
      }
      .title {
        overflow-wrap: anywhere;
      }
      label {
        display: grid;
        grid-template-columns: auto minmax(0, 1fr);
      }
      label input {
        width: 100%;
      }
      ol {
        margin: var(--space-2) 0;
        padding-left: var(--space-8);
      }
      @media (max-width: 760px) {
        .sheets {
          grid-template-columns: repeat(2, minmax(0, 1fr));
          gap: var(--space-9) var(--space-7);
        }
      }
    `,
  ];

  @property({ attribute: false }) store!: AppStore;
  @property({ attribute: false }) log!: LogKeeper;
  @property({ attribute: false }) pictures!: StatePictures;
  /** Changes when a picture has arrived or something was logged. */
  @property({ type: Number }) drawn = 0;
  /** Only sheets of these recipes; null shows all. */
  @property({ attribute: false }) only: ReadonlySet<string> | null = null;
  /** What else is offered for a sheet that is not spoiled, by its number; null for nothing. */
  @property({ attribute: false }) offer: ((number: number) => TemplateResult) | null = null;

  private readonly file = new FileReading(this);

  private async add(happenings: Happening[]): Promise<void> {
    await this.log.add(happenings);
    this.requestUpdate();
  }

  private undo(event: LogEvent): Promise<void> {
    return this.add([{ kind: 'undone', sheet: event.sheet, event: event.id }]);
  }

  private renderConflicts() {
    const { head, events } = this.log;
    const conflicts = checkLog(defined(head), events, this.log.pairs);
    const rest = conflicts.length - CONFLICTS_TOLD;
    const found = new Map(events.map((event) => [say.event(event.id), event]));
    return html`${conflicts.slice(0, CONFLICTS_TOLD).map((problem) => {
      const event = found.get(problem.where ?? '');
      const mend =
        event !== undefined && MENDED_BY_UNDO.has(problem.code)
          ? html` <button @click=${() => void this.undo(event)}>${say.undoEntryOfSheet(event.sheet)}</button>`
          : nothing;
      return html`<p class="warn">${problem.message}${mend}</p>`;
    })}
    ${rest > 0 ? html`<p class="warn">${say.andMoreContradictionsIn(rest)}</p>` : nothing}`;
  }

  /** What is to be pencilled on the sheets of editions, by sheet number. */
  private get marks(): ReadonlyMap<number, string> {
    const { head, sheets, events } = this.log;
    const marks = new Map<number, string>();
    for (const edition of this.store.project.editions ?? []) {
      // While no visit was chosen, the numbers are those of the visit at the Press.
      if (edition.visit === undefined ? this.store.room !== 'press' : edition.visit !== defined(head).id) continue;
      const recipe = defined(head).recipes.find(({ id }) => id === edition.recipe);
      if (recipe === undefined) continue;
      const own = sheetsOfEdition(recipe, defined(head), events, sheets);
      for (const { number, mark } of numberSheets(edition, own, recipe.pulls.length)) if (mark !== null) marks.set(number, mark);
    }
    return marks;
  }

  private renderSheet(sheet: SheetAsPulled, mark: string | undefined) {
    const recipe = entryAt(this.log.recipes, sheet.recipe);
    const words = say.sheet(sheet.number);
    return html`<li class=${sheet.spoiled ? 'spoiled' : ''} aria-label=${words}>
      ${printImage(this.pictures.of(recipe, sheet.pulls), say.asPulled(words), recipe.paper.widthMm / recipe.paper.heightMm)}
      <p class="head"><span class="number">${sheet.number}</span>${sheet.use === 'proof' || sheet.use === 'over' ? html` <span class="soft small">${sheet.use}</span>` : nothing}${mark === undefined ? nothing : html`<span class="mark">${mark}</span>`}</p>
      <p class="small title" title=${recipe.title}>${recipeLetter(sheet.recipe)} ${recipe.title}</p>
      <p class="soft small">${sheetWords(sheet, recipe)}</p>
      ${sheet.notes.map((note) => html`<p class="small">${note}</p>`)}
      <label class="small"
        >${say.liesIn}
        <input
          type="text"
          maxlength="200"
          aria-label=${say.whereSheetLies(sheet.number)}
          placeholder=${say.boxOrDrawer}
          .value=${sheet.box}
          @change=${(event: Event) => void this.add([{ kind: 'placed', sheet: sheet.number, box: (event.target as HTMLInputElement).value.trim() }])}
      /></label>
      ${
        sheet.pulls.length === 0
          ? nothing
          : html`<button aria-label=${say.keepSheetAsRecipe(sheet.number)} @click=${() => keepSheet(this.store, recipe, sheet)}>${say.keepAsRecipe}</button>`
      }
      ${sheet.spoiled ? nothing : this.offer?.(sheet.number)}
      ${
        sheet.events.length === 0
          ? nothing
          : html`<ps-fold quiet class="small" label=${say.whatHappened}>
            <ol>
              ${sheet.events.map((event) => html`<li style="display: list-item">${eventWords(event, recipe)} <button class="quiet" @click=${() => void this.undo(event)}>${say.undo}</button></li>`)}
            </ol>
          </ps-fold>`
      }
    </li>`;
  }

  /** Whether a sheet is of some recipes, or was until it went on otherwise. */
  private isOf(recipes: ReadonlySet<string>, { recipe }: SheetAsPulled): boolean {
    const { id, parent = '' } = entryAt(this.log.recipes, recipe);
    return recipes.has(id) || recipes.has(parent);
  }

  override render() {
    const { head, events, sheets, test } = this.log;
    if (head === null) return nothing;
    const shown = sheets.filter((sheet) => this.only === null || this.isOf(this.only, sheet));
    const { marks } = this;
    const bare = shown.filter((sheet) => sheet.events.length === 0).map((sheet) => sheet.number);
    return html`<div class="row tools">
        <button @click=${() => saveLog(head, events)}>${say.saveLogAsFile}</button>
        <button @click=${() => void bringInLog(this.store, this.log, this.file).then(() => this.requestUpdate())}>${say.bringInAnotherDevices}</button>
        ${marks.size > 0 && this.store.room === 'press' ? html`<button @click=${() => this.store.go('chest')}>${say.numbersAndDocumentationIn}</button>` : nothing}
      </div>
      ${this.file.line()} ${this.renderConflicts()}
      <ul class="sheets" aria-label=${say.sheetsAsPulled}>
        ${repeat(
          shown.filter((sheet) => sheet.events.length > 0),
          (sheet) => sheet.number,
          (sheet) => this.renderSheet(sheet, marks.get(sheet.number)),
        )}
        ${test === null || test.events.length === 0 || this.only !== null ? nothing : testEntry({ test, of: head.recipes }, this.pictures, (happenings) => void this.add(happenings))}
      </ul>
      ${bare.length === 0 ? nothing : html`<p class="soft bare">${say.stillBarePaperSheets(bare.length, rangesText(bare))}</p>`}`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'ps-log-sheets': LogSheets;
  }
}
