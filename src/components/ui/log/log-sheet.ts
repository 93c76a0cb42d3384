import { css, html, LitElement, nothing } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import { defined } from '../../../engine/base/at.ts';
import type { Ink } from '../../../engine/ink/types.ts';
import type { SheetAsPulled } from '../../../engine/log/as-pulled.ts';
import type { Deviation } from '../../../engine/log/types.ts';
import type { Happening } from '../../../engine/log/types.ts';
import type { Recipe } from '../../../engine/recipe/types.ts';
import { eventWords, sheetWords } from '../../words/log-words.ts';
import { controls } from '../controls-style.ts';
import { dialogStyle } from '../kit/dialog-style.ts';
import { dialogBox } from '../kit/dialog.ts';

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
  inks: readonly Ink[];
}

/**
 * What happened to one sheet, and what to note of it.
 * @fires otherwise CustomEvent<{how, note}>: pulled, but not as the recipe says
 * @fires happened CustomEvent<Happening[]>
 */
@customElement('ps-log-sheet')
export class LogSheet extends LitElement {
  static override styles = [
    controls,
    dialogStyle,
    css`
      fieldset {
        display: grid;
        grid-template-columns: repeat(auto-fit, minmax(190px, 1fr));
        gap: var(--space-6);
      }
      legend {
        margin-bottom: var(--space-4);
        padding: 0;
        font-weight: 650;
      }
      input:not([type='checkbox']),
      select,
      button {
        min-height: 48px !important;
      }
      input[type='text'],
      input[type='number'],
      select {
        width: 100%;
      }
      input[type='checkbox'] {
        width: 26px;
        height: 26px;
      }
      .buttons {
        flex-wrap: wrap;
      }
      ul {
        display: grid;
        margin: 0;
        padding: 0;
        list-style: none;
      }
      li {
        display: flex;
        align-items: center;
        gap: var(--space-6);
        min-height: 48px;
        border-top: 1px solid var(--line);
      }
      li span {
        flex: 1;
      }
      section + section,
      form + section {
        margin-top: var(--space-8);
      }
      h3 {
        margin-bottom: var(--space-3);
      }
    `,
  ];

  /** What is shown; null while nothing is. */
  @property({ attribute: false }) talk: SheetTalk | null = null;
  @state() private open = false;
  @query('dialog') private dialog!: HTMLDialogElement;

  show(): void {
    this.open = true;
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

  private submit(event: Event): void {
    event.preventDefault();
    const { sheet, pull, inks } = defined(this.talk);
    const note = this.value('note');
    if (pull !== null) {
      const ink = inks.find((_, at) => String(at) === this.value('ink'));
      const strokes = Number(this.value('strokes'));
      const how: Deviation = {
        dxMm: Number(this.value('right')),
        dyMm: Number(this.value('down')),
        ...(ink === undefined ? {} : { ink }),
        ...(strokes === pull.strokes ? {} : { strokes }),
      };
      const asPlanned = pull.printed && note === '' && ink === undefined && how.strokes === undefined && how.dxMm === 0 && how.dyMm === 0;
      if (!asPlanned) this.dispatchEvent(new CustomEvent('otherwise', { detail: { how, note } }));
    }
    if (pull === null || this.kept) this.happened([{ kind: 'kept', sheet: sheet.number, note: pull === null ? note : '' }]);
    else this.dialog.close();
  }

  private renderForm({ pull, inks, sheet }: SheetTalk) {
    if (sheet.spoiled) return nothing;
    return html`<form @submit=${this.submit}>
      ${
        pull === null
          ? nothing
          : html`<fieldset>
            <legend>How ${pull.words} was${pull.printed ? ' really' : ''} pulled</legend>
            <label class="stacked"
              >Ink
              <select name="ink">
                <option value="">as planned</option>
                ${inks.map((ink, at) => html`<option value=${at}>${ink.name}</option>`)}
              </select></label
            >
            <label class="stacked">Strokes <input name="strokes" type="number" inputmode="numeric" min="1" max="20" step="1" required .value=${String(pull.strokes)} /></label>
            <label class="stacked">Off to the right, mm <input name="right" type="number" min="-100" max="100" step="0.1" required value="0" /></label>
            <label class="stacked">Off downwards, mm <input name="down" type="number" min="-100" max="100" step="0.1" required value="0" /></label>
          </fieldset>`
      }
      <label class="stacked">Note <input name="note" type="text" maxlength="4000" /></label>
      ${pull === null ? nothing : html`<label><input name="kept" type="checkbox" />Worth keeping as it came</label>`}
      <div class="buttons">
        <button type="button" @click=${() => this.happened([{ kind: 'spoiled', sheet: sheet.number, note: this.value('note') }])}>Spoiled</button>
        <button class="main" type="submit">${pull === null ? 'Keep it as it came' : 'Pulled like this'}</button>
      </div>
    </form>`;
  }

  override render() {
    const { talk } = this;
    const heading = talk === null ? '' : `Sheet ${talk.sheet.number}`;
    const beside =
      talk === null ? nothing : html`<span class="soft small">${talk.recipe.title}, ${sheetWords(talk.sheet, talk.recipe)}</span>`;
    return dialogBox(
      { heading, beside, closable: true, onClose: () => (this.open = false) },
      !this.open || talk === null
        ? nothing
        : html`${this.renderForm(talk)}
            ${
              talk.sheet.events.length === 0
                ? nothing
                : html`<section>
                  <h3>What happened</h3>
                  <ul aria-label="What happened to sheet ${talk.sheet.number}">
                    ${talk.sheet.events.map(
                      (event) => html`<li>
                        <span>${eventWords(event, talk.recipe)}</span>
                        <button @click=${() => this.happened([{ kind: 'undone', sheet: talk.sheet.number, event: event.id }], false)}>Undo</button>
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
