import { html, LitElement, nothing } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import { defined } from '../../../engine/base/at.ts';
import type { SheetAsPulled } from '../../../engine/log/as-pulled.ts';
import type { Deviation } from '../../../engine/log/types.ts';
import type { Happening } from '../../../engine/log/types.ts';
import type { Recipe } from '../../../engine/recipe/types.ts';
import type { InkAtHand } from '../../../engine/visit/lent/inks-at-hand.ts';
import { say } from '../../words/en/ui/log.ts';
import { eventWords, sheetWords } from '../../words/log-words.ts';
import { controls } from '../controls-style.ts';
import { dialogStyle } from '../kit/dialog-style.ts';
import { dialogBox } from '../kit/dialog.ts';
import { logSheetStyle } from './log-sheet-style.ts';
import { sheetTicks } from './sheet-ticks.ts';

/** A sheet to speak of, and the pull that is about to be printed on it. */
export interface SheetTalk {
  sheet: SheetAsPulled;
  recipe: Recipe;
  /** What the set-up prints on it; null when nothing is left to pull there. */
  pull: {
    words: string;
    strokes: number;
    /** Whether it is on the sheet already, on top of all others, logged as planned. */ printed: boolean;
  } | null;
  /** Inks that can be in the screen instead. */
  inks: readonly InkAtHand[];
  /** The over or proof that can take its place, and what it is called; null where there is none. */
  over: { number: number; words: string } | null;
  /** Sheets of which the same can be said at once, and those that are chosen at first; absent = of it alone. */
  among?: { numbers: readonly number[]; chosen: readonly number[] };
}

/** Pulled, but not as the recipe says: how, and which sheets. */
export interface PulledDifferently {
  how: Deviation;
  note: string;
  sheets: number[];
}

/** Options of inks by their places: those of the visit, and by themselves those that only the project has. */
export function inkOptions(inks: readonly InkAtHand[]) {
  const options = (others: boolean) =>
    inks.map(({ ink, stocks }, at) => ((stocks !== undefined) === others ? html`<option value=${at}>${ink.name}</option>` : nothing));
  if (inks.every(({ stocks }) => stocks === undefined)) return options(false);
  return html`${options(false)}<optgroup label=${say.otherInksOfProject}>${options(true)}</optgroup>`;
}

/**
 * What happened to one sheet, or to several at once, and what to note of it.
 * @fires otherwise CustomEvent<PulledDifferently>
 * @fires happened CustomEvent<Happening[]>
 */
@customElement('ps-log-sheet')
export class LogSheet extends LitElement {
  static override styles = [controls, dialogStyle, logSheetStyle];

  /** What is shown; null while nothing is. */
  @property({ attribute: false }) talk: SheetTalk | null = null;
  @state() private open = false;
  /** Of several, those of which it is said. */
  @state() private chosen: ReadonlySet<number> = new Set();
  @query('dialog') private dialog!: HTMLDialogElement;

  show(): void {
    this.open = true;
    this.chosen = new Set(this.talk?.among?.chosen);
    void this.updateComplete.then(() => {
      if (!this.dialog.open) this.dialog.showModal();
    });
  }

  private happened(happenings: Happening[], close = true): void {
    this.dispatchEvent(new CustomEvent<Happening[]>('happened', { detail: happenings }));
    if (close) this.dialog.close();
  }

  private value(name: string): string {
    return this.renderRoot.querySelector<HTMLInputElement>(`[name=${name}]`)?.value.trim() ?? '';
  }

  private get kept(): boolean {
    return this.renderRoot.querySelector<HTMLInputElement>('[name=kept]')?.checked ?? false;
  }

  /** The sheets that are spoken of. */
  private get sheets(): number[] {
    const { sheet, among } = defined(this.talk);
    return among === undefined ? [sheet.number] : among.numbers.filter((number) => this.chosen.has(number));
  }

  private choose(number: number, on: boolean): void {
    const chosen = new Set(this.chosen);
    if (on) chosen.add(number);
    else chosen.delete(number);
    this.chosen = chosen;
  }

  private submit(event: Event): void {
    event.preventDefault();
    const { pull, inks } = defined(this.talk);
    const { sheets } = this;
    const note = this.value('note');
    if (pull !== null) {
      const other = inks.find((_, at) => String(at) === this.value('ink'));
      const strokes = Number(this.value('strokes'));
      const how: Deviation = {
        dxMm: Number(this.value('right')),
        dyMm: Number(this.value('down')),
        ...other,
        ...(strokes === pull.strokes ? {} : { strokes }),
      };
      const asPlanned = pull.printed && note === '' && other === undefined && how.strokes === undefined && how.dxMm === 0 && how.dyMm === 0;
      if (!asPlanned) this.dispatchEvent(new CustomEvent<PulledDifferently>('otherwise', { detail: { how, note, sheets } }));
    }
    if (pull === null || this.kept) this.happened(sheets.map((sheet) => ({ kind: 'kept', sheet, note: pull === null ? note : '' })));
    else this.dialog.close();
  }

  private renderMany({ among }: SheetTalk) {
    if (among === undefined) return nothing;
    return sheetTicks({
      legend: say.whichSheets,
      numbers: among.numbers,
      chosen: this.chosen,
      choose: (number, chosen) => this.choose(number, chosen),
    });
  }

  private renderSpoiled({ sheet, over, among }: SheetTalk) {
    const note = (): string => this.value('note');
    const spoiled = (): Happening[] => this.sheets.map((each) => ({ kind: 'spoiled', sheet: each, note: note() }));
    return html`<button type="button" ?disabled=${this.none} @click=${() => this.happened(spoiled())}>${say.spoiled}</button>
      ${
        over === null || among !== undefined
          ? nothing
          : html`<button type="button" @click=${() => this.happened([{ kind: 'replaced', sheet: sheet.number, by: over.number, note: note() }])}>
            ${say.spoiledTakesItsPlace(over.words)}
          </button>`
      }`;
  }

  private get none(): boolean {
    return this.sheets.length === 0;
  }

  private renderForm(talk: SheetTalk) {
    const { pull, inks, sheet } = talk;
    if (sheet.spoiled) return nothing;
    return html`<form @submit=${this.submit}>
      ${this.renderMany(talk)}
      ${
        pull === null
          ? nothing
          : html`<fieldset>
            <legend>${say.howWasReallyPulled(pull.words, pull.printed)}</legend>
            <label class="stacked"
              >${say.ink}
              <select name="ink">
                <option value="">${say.asPlanned}</option>
                ${inkOptions(inks)}
              </select></label
            >
            <label class="stacked">${say.strokes} <input name="strokes" type="number" inputmode="numeric" min="1" max="20" step="1" required .value=${String(pull.strokes)} /></label>
            <label class="stacked">${say.offToRightMm} <input name="right" type="number" min="-100" max="100" step="0.1" required value="0" /></label>
            <label class="stacked">${say.offDownwardsMm} <input name="down" type="number" min="-100" max="100" step="0.1" required value="0" /></label>
          </fieldset>`
      }
      <label class="stacked">${say.note} <input name="note" type="text" maxlength="4000" /></label>
      ${pull === null ? nothing : html`<label><input name="kept" type="checkbox" />${say.worthKeepingAsIt}</label>`}
      <div class="buttons">
        ${this.renderSpoiled(talk)}
        <button class="main" type="submit" ?disabled=${this.none}>${pull === null ? say.keepItAsIt : say.pulledLikeThis}</button>
      </div>
    </form>`;
  }

  override render() {
    const { talk } = this;
    const many = talk?.among !== undefined;
    const heading = talk === null ? '' : many ? say.severalSheets : say.sheet(talk.sheet.number);
    const beside =
      talk === null
        ? nothing
        : html`<span class="soft small">${talk.recipe.title}${many ? '' : `, ${sheetWords(talk.sheet, talk.recipe)}`}</span>`;
    return dialogBox(
      { heading, beside, closable: true, onClose: () => (this.open = false) },
      !this.open || talk === null
        ? nothing
        : html`${this.renderForm(talk)}
            ${
              many || talk.sheet.events.length === 0
                ? nothing
                : html`<section>
                  <h3>${say.whatHappened}</h3>
                  <ul aria-label=${say.whatHappenedToSheet(talk.sheet.number)}>
                    ${talk.sheet.events.map(
                      (event) => html`<li>
                        <span>${eventWords(event, talk.recipe)}</span>
                        <button @click=${() => this.happened([{ kind: 'undone', sheet: talk.sheet.number, event: event.id }], false)}>${say.undo}</button>
                      </li>`,
                    )}
                  </ul>
                </section>`
            }`,
    );
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'ps-log-sheet': LogSheet;
  }
}
