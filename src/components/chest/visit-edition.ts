import { css, html, LitElement, nothing } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import { checkEdition, type EditionCounts, editionMarks } from '../../engine/log/edition.ts';
import type { Recipe } from '../../engine/recipe/types.ts';
import type { AppStore } from '../app-store.ts';
import { dialogStyle } from '../bench/dialog-style.ts';
import { controls } from '../ui/styles.ts';
import { counted } from '../ui/words.ts';
import { type EditionWords, printEdition } from './visit-edition-sheet.ts';

const NUMBERS = [
  ['impressions', 'Impressions'],
  ['ap', 'Artist’s proofs (AP)'],
  ['pp', 'Printer’s proofs (PP)'],
  ['hc', 'Hors commerce (HC)'],
] as const;
const WORDS = [
  ['artist', 'Artist'],
  ['title', 'Title'],
  ['year', 'Year of printing'],
  ['workshop', 'Workshop and printer'],
  ['dates', 'Dates of printing'],
  ['screens', 'Fate of the screens'],
  ['other', 'Other editions or states'],
] as const;

/** An edition of a recipe: its numbers, its sheets for the Press, its documentation sheet. */
@customElement('visit-edition')
export class VisitEdition extends LitElement {
  static override styles = [
    controls,
    dialogStyle,
    css`
      :host {
        display: contents;
      }
      .fields {
        display: grid;
        grid-template-columns: repeat(auto-fit, minmax(200px, 1fr));
        gap: 12px 16px;
      }
      .fields input {
        width: 100%;
      }
      .warn {
        padding-left: 12px;
        border-left: 3px solid var(--accent);
        font-weight: 600;
      }
      .marks {
        max-height: 7em;
        overflow-y: auto;
      }
    `,
  ];

  @property({ attribute: false }) store!: AppStore;
  @property({ attribute: false }) recipe!: Recipe;
  @state() private counts: EditionCounts = { impressions: 20, ap: 2, pp: 1, hc: 0, bat: true, variable: false };
  @state() private open = false;
  @query('dialog') private dialog!: HTMLDialogElement;

  show(): void {
    this.open = true;
    void this.updateComplete.then(() => this.dialog.showModal());
  }

  private take(sheets: number): void {
    const { id, title } = this.recipe;
    const runs = this.store.project.visit.filter((run) => run.recipe !== id);
    if (!this.store.dispatch({ kind: 'set-visit', runs: [...runs, { recipe: id, sheets }] })) return;
    this.dialog.close();
    this.store.tell(`${title} is at the Press with ${counted(sheets, 'sheet')}: the edition and its proofs. Overs come on top, as your studio figures say.`, 'news');
    this.store.go('press');
  }

  private print(): void {
    const words = Object.fromEntries(WORDS.map(([name]) => [name, this.renderRoot.querySelector<HTMLInputElement>(`[name=${name}]`)!.value.trim()])) as EditionWords;
    const { impressions, ap, pp, hc, bat, variable } = this.counts;
    printEdition(this.renderRoot, this.recipe, words, [
      ['Edition', `${impressions}${variable ? ', variable edition (EV)' : ''}`],
      ['Artist’s proofs (AP)', String(ap)],
      ['Printer’s proofs (PP)', String(pp)],
      ['Hors commerce (HC)', String(hc)],
      ['Approved standard (BAT)', bat ? '1' : 'none'],
    ]);
  }

  private box(name: 'bat' | 'variable', words: string) {
    return html`<label
      ><input type="checkbox" .checked=${this.counts[name]} @change=${(event: Event) => (this.counts = { ...this.counts, [name]: (event.target as HTMLInputElement).checked })} />${words}</label
    >`;
  }

  override render() {
    const problems = checkEdition(this.counts);
    const impossible = problems.some((problem) => problem.code !== 'edition.ap');
    const marks = problems.some((problem) => problem.code === 'edition.count') ? [] : editionMarks(this.counts);
    return html`<dialog aria-label="Edition of ${this.recipe.title}" @close=${() => (this.open = false)}>
      ${!this.open
        ? nothing
        : html`<form @submit=${(event: Event) => event.preventDefault()}>
            <h2>Edition of ${this.recipe.title}</h2>
            <div class="fields">
              ${NUMBERS.map(
                ([name, label]) => html`<label class="stacked"
                  >${label}
                  <input
                    type="number"
                    min=${name === 'impressions' ? 1 : 0}
                    max="500"
                    step="1"
                    .value=${String(this.counts[name])}
                    @input=${(event: Event) => (this.counts = { ...this.counts, [name]: (event.target as HTMLInputElement).valueAsNumber })}
                /></label>`,
              )}
            </div>
            <div class="row">${this.box('bat', 'One approved standard (BAT)')} ${this.box('variable', 'Variable edition (EV)')}</div>
            ${problems.map((problem) => html`<p class="warn">${problem.message}</p>`)}
            <p class="marks small" aria-label="Numbering">${marks.join(' · ')}</p>
            <p class="soft small">Pencil these below the image, left. The numerator is not the order of printing.</p>
            <div class="fields">
              ${WORDS.map(([name, label]) => html`<label class="stacked">${label} <input type="text" name=${name} maxlength="300" value=${name === 'title' ? this.recipe.title : ''} /></label>`)}
            </div>
            <div class="buttons" style="flex-wrap: wrap">
              <button type="button" @click=${() => this.dialog.close()}>Close</button>
              <button type="button" ?disabled=${impossible} @click=${this.print}>Print the documentation sheet</button>
              <button type="button" class="main" ?disabled=${impossible} @click=${() => this.take(marks.length)}>Take ${counted(marks.length, 'sheet')} to the Press</button>
            </div>
            <p class="soft small">Not legal advice: what must be disclosed depends on where a print is sold.</p>
          </form>`}
    </dialog>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'visit-edition': VisitEdition;
  }
}
