import { html, LitElement, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { entryAt } from '../../../engine/base/at.ts';
import { rangesText } from '../../../engine/base/words.ts';
import '../../ui/kit/ink-chip.ts';
import type { MadePlan } from '../../output/made-plan.ts';
import { controls } from '../../ui/controls-style.ts';
import { paperHost } from '../../ui/layout-style.ts';
import { printImage } from '../../ui/print/print-image.ts';
import type { StatePictures } from '../../ui/print/state-pictures.ts';
import { counted } from '../../ui/words.ts';
import { CAUTIONS, CAUTIONS_DEFER } from '../../words/cautions.ts';
import { beginWords, boundWords, endWords, freeSwapWords, needsWords, planHeadline, recipeLetter } from '../../words/plan-words.ts';
import '../grid/set-up-grid.ts';
import { GRAMS_NOTE, OVERS_NOTE, TEST_SHEET_NOTE } from '../../words/supply-words.ts';
import { inkTable, paperTable, screenTable, stockTable, supplyStyles } from '../plan/supplies.ts';
import { type DrawSheet, pullSheetCard } from './pull-sheet-card.ts';
import { dayTables, passportList } from './pull-sheet-parts.ts';
import { pullSheetStyle } from './pull-sheet-style.ts';

/** A rule for pages counts only in the document's own style, and only while a pull sheet is there. */
const page = new CSSStyleSheet();
page.replaceSync(`@page {
  margin: 12mm 12mm 14mm;
  @bottom-right {
    content: counter(page) ' of ' counter(pages);
    font: 10pt system-ui, sans-serif;
  }
}`);

const PROBLEMS_PRINTED = 3;

/** The pull order on paper: summary, grid, a card for each set-up. Shown in print alone. */
@customElement('press-pull-sheet')
export class PullSheet extends LitElement {
  static override styles = [controls, supplyStyles, paperHost, pullSheetStyle];

  @property({ attribute: false }) made!: MadePlan;
  @property({ attribute: false }) pictures!: StatePictures;
  /** The project's title. */
  @property() heading = '';
  @property({ type: Boolean }) outOfDate = false;
  /** Changes when a picture has arrived, so that the sheet is drawn again. */
  @property({ type: Number }) drawn = 0;

  override connectedCallback(): void {
    super.connectedCallback();
    document.adoptedStyleSheets = [...document.adoptedStyleSheets, page];
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    document.adoptedStyleSheets = document.adoptedStyleSheets.filter((sheet) => sheet !== page);
  }

  /** Resolves when every picture is in the page and can be printed. */
  async ready(): Promise<void> {
    await this.updateComplete;
    await this.pictures.settled();
    this.requestUpdate();
    await this.updateComplete;
    await Promise.all([...this.renderRoot.querySelectorAll('img')].map((image) => image.decode().catch(() => undefined)));
  }

  private readonly image: DrawSheet = (recipeAt, pulls) => {
    const recipe = entryAt(this.made.recipes, recipeAt);
    const url = this.pictures.of(recipe, pulls);
    return printImage(
      url,
      `${recipeLetter(recipeAt)} ${recipe.title} after ${counted(pulls.length, 'pull')}`,
      recipe.paper.widthMm / recipe.paper.heightMm,
    );
  };

  private prints() {
    const { plan, recipes } = this.made;
    return html`<div class="prints ${recipes.length > 4 ? 'many' : ''}">
        ${plan.recipes.map(
          (recipe, r) => html`<figure>
            ${this.image(r, entryAt(recipes, r).pulls)}
            <figcaption>
              <b>${recipeLetter(r)} ${recipe.title}</b><br />${counted(recipe.sheets.length, 'sheet')}: ${rangesText(recipe.sheets)}
            </figcaption>
          </figure>`,
        )}
      </div>`;
  }

  private cover() {
    const { plan } = this.made;
    return html`<section class="cover" style="margin-top: 0">
      <p>Pull sheet</p>
      <h1>${this.heading}</h1>
      <p class="headline">${counted(plan.sheets.length, 'sheet')}, ${planHeadline(plan)}</p>
      <p>${boundWords(plan)} ${freeSwapWords(plan)}</p>
      <p>${[needsWords(plan), beginWords(plan), endWords(plan)].filter((words) => words !== '').join(' ')}</p>
      ${plan.problems.slice(0, PROBLEMS_PRINTED).map((problem) => html`<p class="defer">${problem.message}</p>`)}
      ${
        plan.problems.length > PROBLEMS_PRINTED
          ? html`<p>And ${counted(plan.problems.length - PROBLEMS_PRINTED, 'more such warning')}.</p>`
          : nothing
      }
      ${this.outOfDate ? html`<p class="defer">Out of date: recipes, sheets or figures have changed since. Plan again.</p>` : nothing}
      <div class="fill"><span>Date</span><span>Printer</span><span>Studio</span></div>
      ${this.prints()}
      <section class="keep">
        <h2>Before you start</h2>
        <ul class="cautions">
          ${CAUTIONS.map((caution) => html`<li>${caution}</li>`)}
        </ul>
        <p class="defer">${CAUTIONS_DEFER}</p>
      </section>
    </section>`;
  }

  private supplies() {
    return html`<section class="keep">
      <h2>Screens</h2>
      ${screenTable(this.made)}
    </section>
    <section class="keep">
      <h2>Ink</h2>
      ${inkTable(this.made.plan)} ${stockTable(this.made.plan)}
      <p class="small" style="margin-top: 2mm">${GRAMS_NOTE}</p>
    </section>
    <section class="keep">
      <h2>Paper</h2>
      ${paperTable(this.made)}
      <p class="small" style="margin-top: 2mm">${this.made.plan.testSheet === true ? TEST_SHEET_NOTE : OVERS_NOTE}</p>
    </section>`;
  }

  override render() {
    const { plan, recipes } = this.made;
    return html`
      ${this.cover()}
      <section class="new-page">
        <h2>Set-up grid</h2>
        <press-set-up-grid printed .plan=${plan}></press-set-up-grid>
      </section>
      <section class="new-page">
        <h2>Days</h2>
        ${dayTables(this.made)}
      </section>
      ${this.supplies()}
      <section class="new-page">
        <h2>Set-ups</h2>
        ${plan.cards.map((_, index) => pullSheetCard(this.made, index, this.image))}
      </section>
      <section class="new-page">
        <h2>Sheets</h2>
        ${passportList(this.made, (recipe) => this.image(recipe, entryAt(recipes, recipe).pulls))}
      </section>
    `;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'press-pull-sheet': PullSheet;
  }
}
