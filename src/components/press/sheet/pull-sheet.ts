import { html, LitElement, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { entryAt } from '../../../engine/base/at.ts';
import { rangesText } from '../../../engine/base/words.ts';
import { tickGroups } from '../../../engine/log/ticks/ticks.ts';
import '../../ui/print/ink-chip.ts';
import type { CardState, SetUpCard } from '../../../engine/visit/set-up-cards.ts';
import type { MadePlan } from '../../output/made-plan.ts';
import { controls } from '../../ui/controls-style.ts';
import { printImage } from '../../ui/print/print-image.ts';
import type { StatePictures } from '../../ui/print/state-pictures.ts';
import { counted } from '../../ui/words.ts';
import { CAUTIONS, CAUTIONS_DEFER } from '../../words/cautions.ts';
import { dryWords, waitWords } from '../../words/drying-words.ts';
import { mixWords } from '../../words/mix-words.ts';
import { offsetWords } from '../../words/offset-words.ts';
import {
  beginWords,
  boundWords,
  capital,
  endWords,
  freeSwapWords,
  needsWords,
  planHeadline,
  recipeLetter,
  setUpTags,
  timeWords,
} from '../../words/plan-words.ts';
import { GRAMS_NOTE, OVERS_NOTE } from '../../words/supply-words.ts';
import '../grid/set-up-grid.ts';
import { inkTable, paperTable, screenTable, stockTable, supplyStyles } from '../plan/supplies.ts';
import { offsetDiagram } from './offset-diagram.ts';
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
  static override styles = [controls, supplyStyles, pullSheetStyle];

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

  private image(recipeAt: number, pulls: CardState['after']) {
    const recipe = entryAt(this.made.recipes, recipeAt);
    const url = this.pictures.of(recipe, pulls);
    return printImage(
      url,
      `${recipeLetter(recipeAt)} ${recipe.title} after ${counted(pulls.length, 'pull')}`,
      recipe.paper.widthMm / recipe.paper.heightMm,
    );
  }

  /** How sheets look before a set-up and after it. */
  private pair({ recipe, before, after }: CardState) {
    return html`<div class="pair">${this.image(recipe, before)}${this.image(recipe, after)}</div>`;
  }

  private card(card: SetUpCard, index: number) {
    const { plan, recipes } = this.made;
    const time = plan.times[index];
    const tags = setUpTags(plan, index);
    const many = card.states.length > 3;
    return html`<article class="card ${many ? 'many' : card.states.length > 1 ? 'several' : ''}">
      <header>
        <span class="at">Set-up ${card.number}</span>
        <span class="screen">${card.screen.key} ${card.screen.name}</span>
        <span class="tags">${tags.join(', ')}</span>
      </header>
      ${time !== undefined && time.waitMinutes >= 1 ? html`<p class="wait">${capital(waitWords(plan, index))}.</p>` : nothing}
      <div class="how">
        ${offsetDiagram(card, entryAt(recipes, card.states[0]?.recipe ?? 0).paper)}
        <div>
          <p class="ink"><ps-ink-chip .ink=${card.ink.ink}></ps-ink-chip>${card.ink.key}</p>
          ${mixWords(card) === null ? nothing : html`<p>${mixWords(card)}</p>`}
          <p><b>${offsetWords(card)}</b>, ${card.strokes > 1 ? html`<b>${counted(card.strokes, 'stroke')}</b>` : '1 stroke'}</p>
          <p>Mesh ${card.screen.mesh.threadsPerCm}/cm, thread ${card.screen.mesh.threadUm} µm</p>
          ${time === undefined ? nothing : html`<p>${timeWords(plan, time)}</p>`}
          <p>${dryWords(plan, index)}</p>
        </div>
      </div>
      <div class="take">
        ${card.states.map(
          (state) => html`<div>
            ${many ? this.pair(state) : nothing}
            <div>
              <p>
                <b>${recipeLetter(state.recipe)} ${plan.recipes[state.recipe]?.title}</b>${
                  state.prints.length > 1 ? `, ${state.prints.length} pulls each` : ''
                }
              </p>
              <ul class="sheets">
                ${tickGroups(state.sheets).map((group) => html`<li><span class="box"></span>${rangesText(group)}</li>`)}
              </ul>
            </div>
          </div>`,
        )}
      </div>
      ${
        many
          ? nothing
          : html`<div class="states">
            ${card.states.map(
              (state) => html`<figure>
                ${this.pair(state)}
                <figcaption>${recipeLetter(state.recipe)}: now and then</figcaption>
              </figure>`,
            )}
          </div>`
      }
    </article>`;
  }

  override render() {
    const { plan, recipes } = this.made;
    const sheets = plan.sheets.length;
    return html`
      <section class="cover" style="margin-top: 0">
        <p>Pull sheet</p>
        <h1>${this.heading}</h1>
        <p class="headline">${counted(sheets, 'sheet')}, ${planHeadline(plan)}</p>
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
        <div class="prints ${recipes.length > 4 ? 'many' : ''}">
          ${plan.recipes.map(
            (recipe, r) => html`<figure>
              ${this.image(r, entryAt(recipes, r).pulls)}
              <figcaption>
                <b>${recipeLetter(r)} ${recipe.title}</b><br />${counted(recipe.sheets.length, 'sheet')}: ${rangesText(recipe.sheets)}
              </figcaption>
            </figure>`,
          )}
        </div>
        <section class="keep">
          <h2>Before you start</h2>
          <ul class="cautions">
            ${CAUTIONS.map((caution) => html`<li>${caution}</li>`)}
          </ul>
          <p class="defer">${CAUTIONS_DEFER}</p>
        </section>
      </section>
      <section class="new-page">
        <h2>Set-up grid</h2>
        <press-set-up-grid printed .plan=${plan}></press-set-up-grid>
      </section>
      <section class="new-page">
        <h2>Days</h2>
        ${dayTables(this.made)}
      </section>
      <section class="keep">
        <h2>Screens</h2>
        ${screenTable(this.made)}
      </section>
      <section class="keep">
        <h2>Ink</h2>
        ${inkTable(plan)} ${stockTable(plan)}
        <p class="small" style="margin-top: 2mm">${GRAMS_NOTE}</p>
      </section>
      <section class="keep">
        <h2>Paper</h2>
        ${paperTable(this.made)}
        <p class="small" style="margin-top: 2mm">${OVERS_NOTE}</p>
      </section>
      <section class="new-page">
        <h2>Set-ups</h2>
        ${plan.cards.map((card, index) => this.card(card, index))}
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
