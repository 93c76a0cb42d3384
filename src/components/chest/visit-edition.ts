import { css, html, LitElement, nothing } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import { MOST_SHEETS } from '../../engine/base/limits.ts';
import {
  type ChosenMark,
  checkEdition,
  type Edition,
  type EditionCounts,
  editionMarks,
  newEdition,
} from '../../engine/log/edition/edition.ts';
import type { Recipe } from '../../engine/recipe/types.ts';
import { usualExtras } from '../../engine/visit/paper-needs.ts';
import { type AppStore, StoreController } from '../app-store.ts';
import { controls } from '../ui/controls-style.ts';
import { dialogStyle } from '../ui/kit/dialog-style.ts';
import { dialogBox } from '../ui/kit/dialog.ts';
import '../ui/kit/number-field.ts';
import type { NumberPick } from '../ui/kit/number-field.ts';
import './edition-papers.ts';
import './edition-sheets.ts';
import { beganWords } from '../words/edition-words.ts';
import { say } from '../words/en/chest/room.ts';
import { EditionVisits } from './edition-visits.ts';

const NUMBERS = [
  ['impressions', say.impressions],
  ['ap', say.artistsProofsAP],
  ['pp', say.printersProofsPP],
  ['hc', say.horsCommerceHC],
] as const;

/** An edition of a recipe: its numbers, its sheets for the Press and from its log, its documentation. */
@customElement('chest-edition')
export class VisitEdition extends LitElement {
  static override styles = [
    controls,
    dialogStyle,
    css`
      :host {
        display: contents;
      }
      dialog {
        --dialog-width: 820px;
      }
      section + section {
        margin-top: var(--space-9);
        padding-top: var(--space-8);
        border-top: 1px solid var(--line);
      }
      h3 {
        margin-bottom: var(--space-5);
      }
      .fields {
        display: grid;
        grid-template-columns: repeat(auto-fill, minmax(min(150px, 42%), 1fr));
        align-items: end;
        gap: var(--space-6) var(--space-7);
      }
      .fields input {
        width: 100%;
      }
      .offered {
        margin-top: var(--space-5);
      }
      .warn {
        margin-top: var(--space-5);
        padding-left: var(--space-6);
        border-left: 3px solid var(--accent);
        font-weight: 600;
      }
      .marks {
        max-height: 7em;
        margin-top: var(--space-6);
        overflow-y: auto;
      }
      section > .row {
        margin-top: var(--space-6);
      }
      .press {
        align-items: end;
      }
    `,
  ];

  @property({ attribute: false }) store!: AppStore;
  @property({ attribute: false }) recipe!: Recipe;
  /** Counts as they are typed, while they are no edition. */
  @state() private typed: EditionCounts | null = null;
  @state() private open = false;
  /** Whether the other recipes stay out of the visit. */
  @state() private alone = true;
  @query('dialog') private dialog!: HTMLDialogElement;
  private readonly visits = new EditionVisits(this, () => this.store);
  private fresh: { edition: Edition; sheets: number } | null = null;

  override connectedCallback(): void {
    super.connectedCallback();
    new StoreController(this, this.store);
  }

  show(): void {
    this.open = true;
    this.typed = null;
    void this.visits.read(this.recipe.id, this.edition.visit);
    void this.updateComplete.then(() => this.dialog.showModal());
  }

  private get kept(): Edition | undefined {
    return this.store.project.editions?.find((edition) => edition.recipe === this.recipe.id);
  }

  /** Sheets that there are for it: the good ones of the log, else those that the Press is to print; 0 where there are none. */
  private get sheets(): number {
    return this.visits.good > 0
      ? this.visits.good
      : (this.store.project.visit.find(({ recipe }) => recipe === this.recipe.id)?.sheets ?? 0);
  }

  private get edition(): Edition {
    const { kept, fresh, sheets, recipe } = this;
    if (kept !== undefined) return kept;
    if (fresh?.edition.recipe === recipe.id && fresh.sheets === sheets) return fresh.edition;
    const edition = newEdition(recipe, sheets);
    this.fresh = { edition, sheets };
    return edition;
  }

  /** Why just these numbers are offered. */
  private get offered(): string {
    if (this.kept !== undefined || this.typed !== null || this.sheets === 0) return '';
    return this.visits.good > 0 ? say.offeredForGoodSheets(this.sheets) : say.offeredForSheetsAtPress(this.sheets);
  }

  /** Kept as it is said, so that closing the window loses nothing; undo takes it back. */
  private say(edition: Edition, part?: 'counts'): void {
    this.store.dispatch({ kind: 'set-edition', edition, ...(part === undefined ? {} : { part }) });
  }

  private count(change: Partial<EditionCounts>): void {
    const counts = { ...(this.typed ?? this.edition.counts), ...change };
    const impossible = checkEdition(counts).some((problem) => problem.code !== 'edition.ap');
    this.typed = impossible ? counts : null;
    if (!impossible) this.say({ ...this.edition, counts }, 'counts');
  }

  /** Sheets beside those with a mark: as many as the studio's overs, unless somebody said. */
  private sparesFor(marks: number): number {
    return this.edition.spares ?? usualExtras(marks, this.store.project.press).overs;
  }

  /** The approved standard is what other editions pull a proof for. */
  private take(sheets: number, overs: number): void {
    const { id, title } = this.recipe;
    const others = this.alone ? [] : this.store.project.visit.filter((run) => run.recipe !== id);
    if (
      !this.store.dispatch({
        kind: 'set-visit',
        runs: [...others, { recipe: id, sheets, overs, ...(this.edition.counts.bat ? { proofs: 0 } : {}) }],
      })
    )
      return;
    this.dialog.close();
    this.store.tell(say.isAtPressWithSheets(title, sheets + overs), 'news');
    this.store.go('press');
  }

  private chooseVisit(visit: string): void {
    // Marks are of the sheets of a visit.
    this.say({ ...this.edition, visit, marks: [] });
    void this.visits.read(this.recipe.id, visit);
  }

  private renderCounts(counts: EditionCounts, marks: readonly string[]) {
    const problems = checkEdition(counts);
    const box = (name: 'bat' | 'variable', words: string) =>
      html`<label><input type="checkbox" .checked=${counts[name]} @change=${(event: Event) => this.count({ [name]: (event.target as HTMLInputElement).checked })} />${words}</label>`;
    return html`<section>
      <div class="fields">
        ${NUMBERS.map(
          ([name, label]) => html`<label class="stacked"
            >${label}
            <input
              type="number"
              inputmode="numeric"
              min=${name === 'impressions' ? 1 : 0}
              max=${MOST_SHEETS}
              step="1"
              .value=${Number.isNaN(counts[name]) ? '' : String(counts[name])}
              @input=${(event: Event) => this.count({ [name]: (event.target as HTMLInputElement).valueAsNumber })}
          /></label>`,
        )}
      </div>
      <div class="row">${box('bat', say.oneApprovedStandardBAT)} ${box('variable', say.variableEditionEV)}</div>
      ${this.offered === '' ? nothing : html`<p class="soft small offered">${this.offered}</p>`}
      ${problems.map((problem) => html`<p class="warn">${problem.message}</p>`)}
      <p class="marks small" aria-label=${say.numbering}>${marks.join(' · ')}</p>
      <p class="soft small">${say.pencilTheseBelowPrinted}</p>
    </section>`;
  }

  private renderPress(marks: number, impossible: boolean) {
    const spares = this.sparesFor(marks);
    const tooMany = marks + spares > MOST_SHEETS;
    const others = this.store.project.visit.filter((run) => run.recipe !== this.recipe.id).length;
    return html`<section aria-label=${say.toPress}>
      <h3>${say.toPress}</h3>
      <div class="row press">
        <ps-number
          label=${say.spareSheets}
          whole
          min="0"
          max=${MOST_SHEETS}
          .value=${spares}
          @pick=${(event: NumberPick) => this.say({ ...this.edition, spares: event.detail })}
        ></ps-number>
        ${
          others === 0
            ? nothing
            : html`<label><input type="checkbox" .checked=${this.alone} @change=${(event: Event) => (this.alone = (event.target as HTMLInputElement).checked)} />${say.byItselfLeaveOther(others)}</label>`
        }
        <button type="button" class="main" ?disabled=${impossible || tooMany} @click=${() => this.take(marks, spares)}>${say.takeSheetsToPress(marks + spares)}</button>
      </div>
      ${tooMany && !impossible ? html`<p class="warn">${say.sheetsAreTooMany(marks, spares, MOST_SHEETS)}</p>` : nothing}
      <p class="soft small" style="margin-top: 8px">${say.spareSheetsArePulled}</p>
    </section>`;
  }

  private renderSheets(edition: Edition) {
    const { heads, head } = this.visits;
    const record = this.visits.recordOf(edition);
    if (head === null || record === null) {
      return html`<section><h3>${say.sheets}</h3><p class="soft">${say.nothingOfThisPrint}</p></section>`;
    }
    return html`<section aria-label=${say.sheetsOfEdition}>
      <h3>${say.sheets}</h3>
      <p style="margin-bottom: 10px">
        ${
          heads.length === 1
            ? html`${say.printedIn(head.title, beganWords(head))}`
            : html`<label
              >${say.printedIn2}
              <select @change=${(event: Event) => this.chooseVisit((event.target as HTMLSelectElement).value)}>
                ${heads.map((each) => html`<option value=${each.id} ?selected=${each.id === head.id}>${each.title}, ${beganWords(each)}</option>`)}
              </select></label
            >`
        }
      </p>
      <chest-edition-sheets .edition=${edition} .record=${record} @marks=${(event: CustomEvent<ChosenMark[]>) => this.say({ ...edition, visit: head.id, marks: event.detail })}></chest-edition-sheets>
    </section>`;
  }

  private renderAll() {
    const { edition } = this;
    const counts = this.typed ?? edition.counts;
    const impossible = this.typed !== null;
    const marks = impossible ? [] : editionMarks(counts);
    const { head } = this.visits;
    const record = this.visits.recordOf(edition);
    return html`${this.renderCounts(counts, marks)} ${this.renderPress(marks.length, impossible)} ${this.renderSheets(edition)}
      <section aria-label=${say.documentation}>
        <h3>${say.documentation}</h3>
        <chest-edition-papers
          .recipe=${this.recipe}
          .edition=${edition}
          .visit=${head === null || record === null ? null : { title: head.title, record }}
          .relative=${this.store.relative}
          .disabled=${impossible}
          .tell=${(sentence: string) => this.store.tell(sentence)}
          @said=${(event: CustomEvent<Edition>) => this.say(event.detail)}
        ></chest-edition-papers>
      </section>`;
  }

  override render() {
    return dialogBox(
      { heading: say.editionOf(this.recipe.title), closable: true, onClose: () => (this.open = false) },
      this.open ? this.renderAll() : nothing,
    );
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'chest-edition': VisitEdition;
  }
}
