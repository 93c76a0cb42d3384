import { css, html, LitElement, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { StockSheet } from '../../../engine/visit/stencils/cut-list.ts';
import type { DatedVisit } from '../../../engine/visitfile/calendar.ts';
import type { MadePlan } from '../../output/made-plan.ts';
import { missingWords } from '../../output/missing-words.ts';
import type { PageName } from '../../output/page-writer.ts';
import { choiceOptions, choiceTitle, type PaperAsked, type PaperChoice, pictureRows } from '../../output/papers/paper-choice.ts';
import { papersOf, statesOf } from '../../output/papers/papers.ts';
import type { PdfFile } from '../../output/pull-sheet-pdf.ts';
import { controls } from '../../ui/controls-style.ts';
import { download, fileNameOf } from '../../ui/download.ts';
import { rowHost } from '../../ui/layout-style.ts';
import '../../ui/kit/progress.ts';
import { Work } from '../../ui/work.ts';
import './phone-code.ts';
import { say } from '../../words/en/press/sheet.ts';
import { statePngs } from './state-pngs.ts';

/** Drawing the states takes about as long as writing the pages. */
const PICTURES_SHARE = 0.5;

const PRINT_WORDS: Record<PaperChoice['what'], string> = {
  visit: say.printPullSheet,
  day: say.printBenchSheet,
  'set-up': say.printCard,
  week: say.printWeek,
};

/**
 * What of a visit goes on paper, printed or as a PDF; what makes the PDF is loaded when it is first asked for.
 * @fires choose CustomEvent<PaperChoice>
 * @fires print Event: the browser shall print it
 */
@customElement('press-papers')
export class PapersOut extends LitElement {
  static override styles = [
    controls,
    rowHost,
    css`
      :host {
        gap: var(--space-4) var(--space-6);
      }
    `,
  ];

  @property({ attribute: false }) made!: MadePlan;
  @property({ attribute: false }) asked!: PaperAsked;
  @property({ attribute: false }) stock!: StockSheet;
  @property({ attribute: false }) visits: readonly DatedVisit[] = [];
  @property() heading = '';
  @property({ type: Boolean }) outOfDate = false;
  @property({ type: Boolean }) relative = true;
  @property({ attribute: false }) tell!: (sentence: string) => void;
  @property({ type: Boolean }) disabled = false;
  /** Whether the pictures for the printer are being drawn. */
  @property({ type: Boolean }) preparing = false;
  @state() private size: PageName = 'A4';
  private fileName = '';
  private readonly making = new Work<PdfFile>(this, {
    found: ({ bytes, missing }) => {
      download(this.fileName, bytes as Uint8Array<ArrayBuffer>, 'application/pdf');
      if (missing.length > 0) this.tell(missingWords(missing));
    },
    failed: (sentence) => this.tell(say.pdfCouldNotBe(sentence)),
  });

  private choose(change: Partial<PaperChoice>): void {
    const { what, cards } = this.asked;
    this.dispatchEvent(new CustomEvent<PaperChoice>('choose', { detail: { what, cards, ...change } }));
  }

  private save(): void {
    const { made, asked, heading, size, stock, visits, outOfDate, relative } = this;
    this.fileName = fileNameOf(`${heading} ${choiceTitle(asked, made.plan)}`, 'pdf');
    void this.making.start(async ({ signal, onProgress }) => {
      const [{ makePullSheet }, { pageFonts }] = await Promise.all([
        import('../../output/pdf-client.ts'),
        import('../../ui/page-fonts.ts'),
      ]);
      const fonts = await pageFonts();
      const states = statesOf(papersOf(made, asked, { heading, outOfDate, stock, visits }));
      const pictures = await statePngs(states, made.recipes, {
        heightPx: pictureRows(asked),
        relative,
        signal,
        onProgress: (share) => onProgress(share * PICTURES_SHARE),
      });
      return makePullSheet(
        { made, size, asked, heading, stock, visits, outOfDate, pictures, fonts },
        { signal, onProgress: (share) => onProgress(PICTURES_SHARE + share * (1 - PICTURES_SHARE)) },
      );
    });
  }

  override render() {
    const { asked, made, disabled } = this;
    return html`<label
        >${say.onPaper}
        <select aria-label=${say.whatGoesOnPaper} @change=${(event: Event) => this.choose({ what: (event.target as HTMLSelectElement).value as PaperChoice['what'] })}>
          ${choiceOptions(made.plan, asked, this.visits.length).map(
            ({ value, label }) => html`<option value=${value} .selected=${value === asked.what}>${label}</option>`,
          )}
        </select></label
      >
      ${
        asked.what === 'set-up'
          ? html`<press-phone-code .made=${made} .index=${asked.setUp} .heading=${this.heading} .disabled=${disabled}></press-phone-code>`
          : asked.what === 'week'
            ? nothing
            : html`<label class="tick"
            ><input type="checkbox" .checked=${asked.cards} @change=${(event: Event) => this.choose({ cards: (event.target as HTMLInputElement).checked })} />
            ${say.withCardForEach}</label
          >`
      }
      <button ?disabled=${disabled || this.preparing} @click=${() => this.dispatchEvent(new Event('print'))}>
        ${this.preparing ? say.drawingPictures : PRINT_WORDS[asked.what]}
      </button>
      ${
        this.making.running
          ? html`<ps-progress label=${say.makingPDF} words=${say.makingPDF2} .value=${this.making.progress} @stop=${() => this.making.stop()}></ps-progress>`
          : html`<button ?disabled=${disabled} @click=${() => this.save()}>${say.saveAsPDF}</button>`
      }
      <select aria-label=${say.pageSizeOfPDF} @change=${(event: Event) => (this.size = (event.target as HTMLSelectElement).value as PageName)}>
        <option value="A4">A4</option>
        <option value="Letter">${say.letter}</option>
      </select>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'press-papers': PapersOut;
  }
}
