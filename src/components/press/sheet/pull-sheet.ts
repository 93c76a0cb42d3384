import { html, LitElement, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { entryAt } from '../../../engine/base/at.ts';
import type { StockSheet } from '../../../engine/visit/stencils/cut-list.ts';
import type { DatedVisit } from '../../../engine/visitfile/calendar.ts';
import type { MadePlan } from '../../output/made-plan.ts';
import type { PaperState } from '../../output/papers/paper-blocks.ts';
import type { PaperAsked } from '../../output/papers/paper-choice.ts';
import { papersOf } from '../../output/papers/papers.ts';
import { controls } from '../../ui/controls-style.ts';
import { paperHost } from '../../ui/layout-style.ts';
import { offsetDiagram } from '../../ui/print/offset-diagram.ts';
import { printImage } from '../../ui/print/print-image.ts';
import type { StatePictures } from '../../ui/print/state-pictures.ts';
import { stencilPath } from '../../ui/print/stencil-path.ts';
import { say } from '../../words/en/press/sheet.ts';
import { recipeLetter } from '../../words/plan-words.ts';
import { paperHtml, type PaperView } from './paper-html.ts';
import { paperTablesStyle } from './paper-tables-style.ts';
import { pullSheetStyle } from './pull-sheet-style.ts';

/** A rule for pages counts only in the document's own style, and only while a pull sheet is there. */
const page = new CSSStyleSheet();
page.replaceSync(`@page {
  margin: 12mm 12mm 14mm;
  @bottom-right {
    content: counter(page) ' of ' counter(pages);
    font: 10pt system-ui, sans-serif;
  }
}
@page lying {
  size: landscape;
}`);

/** The papers of a visit as the browser prints them: the blocks that the PDF draws too. Made when they are asked for. */
@customElement('press-pull-sheet')
export class PullSheet extends LitElement {
  static override styles = [controls, paperHost, paperTablesStyle, pullSheetStyle];

  @property({ attribute: false }) made!: MadePlan;
  @property({ attribute: false }) pictures!: StatePictures;
  @property({ attribute: false }) asked!: PaperAsked;
  @property({ attribute: false }) stock!: StockSheet;
  @property({ attribute: false }) visits: readonly DatedVisit[] = [];
  /** The project's title. */
  @property() heading = '';
  @property({ type: Boolean }) outOfDate = false;
  /** Changes when a picture has arrived, so that the sheet is drawn again. */
  @property({ type: Number }) drawn = 0;
  /** Whether the papers stand in the page: those of a long visit take seconds to lay out, so only while they are printed. */
  @state() private asPrinted = false;
  private readonly printing = matchMedia('print');

  /** Also when the browser itself is told to print, which waits for no microtask. */
  private readonly begin = (): void => {
    this.asPrinted = true;
    this.performUpdate();
  };

  private readonly end = (): void => {
    this.asPrinted = this.printing.matches;
  };

  private readonly follow = (): void => (this.printing.matches ? this.begin() : this.end());

  override connectedCallback(): void {
    super.connectedCallback();
    window.addEventListener('beforeprint', this.begin);
    window.addEventListener('afterprint', this.end);
    this.printing.addEventListener('change', this.follow);
    document.adoptedStyleSheets = [...document.adoptedStyleSheets, page];
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    window.removeEventListener('beforeprint', this.begin);
    window.removeEventListener('afterprint', this.end);
    this.printing.removeEventListener('change', this.follow);
    document.adoptedStyleSheets = document.adoptedStyleSheets.filter((sheet) => sheet !== page);
  }

  /** Resolves when every picture is in the page and can be printed. */
  async ready(): Promise<void> {
    this.asPrinted = true;
    await this.updateComplete;
    await this.pictures.settled();
    this.requestUpdate();
    await this.updateComplete;
    await Promise.all([...this.renderRoot.querySelectorAll('img')].map((image) => image.decode().catch(() => undefined)));
  }

  private readonly view: PaperView = {
    image: ({ recipe: at, pulls }: PaperState) => {
      const recipe = entryAt(this.made.recipes, at);
      const words = say.afterPulls(recipeLetter(at), recipe.title, pulls.length);
      return printImage(this.pictures.of(recipe, pulls), words, recipe.paper.widthMm / recipe.paper.heightMm);
    },
    diagram: ({ card }) =>
      offsetDiagram(card, entryAt(this.made.recipes, card.states[0]?.recipe ?? 0).paper, stencilPath(card, this.made.recipes)),
  };

  override render() {
    if (!this.asPrinted) return nothing;
    const { made, asked, heading, outOfDate, stock, visits } = this;
    return html`${paperHtml(papersOf(made, asked, { heading, outOfDate, stock, visits }), this.view)}`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'press-pull-sheet': PullSheet;
  }
}
