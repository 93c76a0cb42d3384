import { css, html, LitElement, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { CardState, SetUpCard } from '../../engine/output/set-up-cards.ts';
import '../ui/ink-chip.ts';
import { controls } from '../ui/styles.ts';
import { counted } from '../ui/words.ts';
import { CAUTIONS, CAUTIONS_DEFER } from './cautions.ts';
import { dryWords, waitWords } from './drying-words.ts';
import { offsetDiagram } from './offset-diagram.ts';
import { boundWords, capital, freeSwapWords, layWords, needsWords, planHeadline, rangesText, recipeLetter, setUpTags, timeWords } from './plan-words.ts';
import type { MadePlan } from './plan-run.ts';
import './set-up-grid.ts';
import type { StatePictures } from './state-pictures.ts';
import { GRAMS_NOTE, inkTable, screenTable, supplyStyles } from './supplies.ts';

/** A rule for pages counts only in the document's own style, and only while a pull sheet is there. */
const page = new CSSStyleSheet();
page.replaceSync('@page { margin: 12mm 12mm 14mm; }');

/** The pull order on paper: summary, grid, a card for each set-up. Shown in print alone. */
@customElement('ps-pull-sheet')
export class PullSheet extends LitElement {
  static override styles = [
    controls,
    supplyStyles,
    css`
      :host {
        display: none;
      }
      @media print {
        :host {
          display: block;
          color: #000;
          font-size: 12pt;
          line-height: 1.35;
        }
      }
      h1 {
        font-size: 26pt;
        line-height: 1.1;
        letter-spacing: -0.02em;
      }
      h2 {
        font-size: 16pt;
        margin: 0 0 3mm;
        break-after: avoid;
      }
      h3 {
        font-size: 15pt;
      }
      .headline {
        font-size: 15pt;
        font-weight: 650;
        margin: 5mm 0 1.5mm;
      }
      .fill {
        display: flex;
        gap: 8mm;
        margin: 6mm 0;
      }
      .fill span {
        flex: 1;
        border-bottom: 0.3mm solid #000;
        padding-bottom: 1mm;
        font-size: 11pt;
      }
      .prints {
        display: flex;
        flex-wrap: wrap;
        gap: 6mm;
        margin: 5mm 0;
      }
      .prints figure {
        width: 40mm;
      }
      figure {
        margin: 0;
        break-inside: avoid;
      }
      figcaption {
        padding-top: 1.5mm;
        font-size: 10.5pt;
        line-height: 1.25;
      }
      img {
        display: block;
        width: 100%;
        border: 0.2mm solid #888;
      }
      section {
        margin-top: 8mm;
      }
      .new-page {
        break-before: page;
        margin-top: 0;
      }
      .keep {
        break-inside: avoid;
      }
      .supplies th,
      .supplies td {
        padding: 1.6mm 5mm 1.6mm 0;
      }
      .supplies tr {
        break-inside: avoid;
      }
      .supplies thead th {
        font-size: 10.5pt;
      }
      ul.cautions {
        margin: 0 0 2mm;
        padding-left: 5mm;
      }
      .cautions li {
        margin-bottom: 1mm;
      }
      .defer {
        font-weight: 650;
      }
      .small {
        font-size: 10.5pt;
      }
      .card {
        break-inside: avoid;
        display: grid;
        grid-template: 'head head' auto 'wait wait' auto 'how states' auto 'sheets states' 1fr / minmax(0, 1fr) auto;
        gap: 2.5mm 8mm;
        padding: 3.5mm 0 4.5mm;
        border-top: 0.5mm solid #000;
      }
      /* Several pictures need the width, so that the sheets go below them. */
      .card.several {
        grid-template: 'head head' auto 'wait wait' auto 'how states' auto 'sheets sheets' auto / minmax(0, 1fr) auto;
      }
      .card header {
        grid-area: head;
        display: flex;
        align-items: baseline;
        gap: 4mm;
      }
      .card .at {
        font-size: 13pt;
        white-space: nowrap;
      }
      .card .screen {
        flex: 1;
        font-size: 20pt;
        line-height: 1.1;
        font-weight: 700;
        letter-spacing: -0.01em;
      }
      .card .tags {
        font-weight: 650;
      }
      .wait {
        grid-area: wait;
        padding: 1.5mm 3mm;
        border: 0.3mm solid #000;
        font-weight: 650;
      }
      .how {
        display: grid;
        grid-template-columns: 24mm minmax(0, 1fr);
        gap: 0 5mm;
        align-items: start;
        grid-area: how;
      }
      .lay {
        display: block;
        width: 24mm;
        height: 24mm;
      }
      .ink {
        display: flex;
        align-items: center;
        gap: 3mm;
        font-size: 15pt;
        font-weight: 650;
      }
      .ink ps-ink-chip {
        width: 14mm;
        height: 7mm;
      }
      .take {
        grid-area: sheets;
        display: grid;
        gap: 2mm;
        align-content: start;
      }
      .states {
        grid-area: states;
        display: flex;
        flex-wrap: wrap;
        align-content: start;
        justify-content: end;
        gap: 4mm;
        max-width: 90mm;
      }
      .states figure {
        width: 37mm;
      }
      .several .states figure {
        width: 27mm;
      }
      .states figcaption {
        padding-top: 1mm;
        white-space: nowrap;
        overflow: hidden;
        text-overflow: ellipsis;
      }
      ul.sheets {
        display: flex;
        flex-wrap: wrap;
        gap: 2mm 5mm;
        margin: 1mm 0 0;
        padding: 0;
        list-style: none;
        font-size: 13pt;
      }
      .sheets li {
        display: flex;
        align-items: center;
        gap: 1.6mm;
      }
      .box {
        width: 5.5mm;
        height: 5.5mm;
        border: 0.35mm solid #000;
      }
    `,
  ];

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
    const recipe = this.made.recipes[recipeAt]!;
    const url = this.pictures.of(recipe, pulls);
    return html`<img
      src=${url === null || url === '' ? nothing : url}
      style="aspect-ratio: ${recipe.paper.widthMm} / ${recipe.paper.heightMm}"
      alt="${recipeLetter(recipeAt)} ${recipe.title} after ${counted(pulls.length, 'pull')}"
    />`;
  }

  private card(card: SetUpCard, index: number) {
    const { plan, recipes } = this.made;
    const time = plan.times[index];
    const tags = setUpTags(card);
    return html`<article class="card ${card.states.length > 1 ? 'several' : ''}">
      <header>
        <span class="at">Set-up ${card.number}</span>
        <span class="screen">${card.screen.key} ${card.screen.name}</span>
        <span class="tags">${tags.join(', ')}</span>
      </header>
      ${time !== undefined && time.waitMinutes >= 1 ? html`<p class="wait">${capital(waitWords(plan, index))}.</p>` : nothing}
      <div class="how">
        ${offsetDiagram(card, recipes[card.states[0]?.recipe ?? 0]!.paper)}
        <div>
          <p class="ink"><ps-ink-chip .ink=${card.ink.ink}></ps-ink-chip>${card.ink.key}</p>
          <p><b>${layWords(card)}</b>, ${counted(card.strokes, 'stroke')}</p>
          <p>Mesh ${card.screen.mesh.threadsPerCm}/cm, thread ${card.screen.mesh.threadUm} µm</p>
          ${time === undefined ? nothing : html`<p>${timeWords(time)}</p>`}
          <p>${dryWords(card)}</p>
        </div>
      </div>
      <div class="take">
        ${card.states.map(
          (state) => html`<div>
            <p>
              <b>${recipeLetter(state.recipe)} ${plan.recipes[state.recipe]?.title}</b>${state.prints.length > 1
                ? `, ${state.prints.length} pulls each`
                : ''}
            </p>
            <ul class="sheets">
              ${state.sheets.map((sheet) => html`<li><span class="box"></span>${sheet}</li>`)}
            </ul>
          </div>`,
        )}
      </div>
      <div class="states">
        ${card.states.map(
          (state) => html`<figure>
            ${this.image(state.recipe, state.after)}
            <figcaption>${recipeLetter(state.recipe)} then: ${rangesText(state.sheets)}</figcaption>
          </figure>`,
        )}
      </div>
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
        <p>${needsWords(plan)}</p>
        ${plan.problems.map((problem) => html`<p class="defer">${problem.message}</p>`)}
        ${this.outOfDate ? html`<p class="defer">Out of date: recipes, sheets or figures have changed since. Plan again.</p>` : nothing}
        <div class="fill"><span>Date</span><span>Printer</span><span>Studio</span></div>
        <div class="prints">
          ${plan.recipes.map(
            (recipe, r) => html`<figure>
              ${this.image(r, recipes[r]!.pulls)}
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
        <ps-set-up-grid printed .plan=${plan}></ps-set-up-grid>
      </section>
      <section class="keep">
        <h2>Screens</h2>
        ${screenTable(plan)}
      </section>
      <section class="keep">
        <h2>Ink</h2>
        ${inkTable(plan)}
        <p class="small" style="margin-top: 2mm">${GRAMS_NOTE}</p>
      </section>
      <section class="new-page">
        <h2>Set-ups</h2>
        ${plan.cards.map((card, index) => this.card(card, index))}
      </section>
    `;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'ps-pull-sheet': PullSheet;
  }
}
