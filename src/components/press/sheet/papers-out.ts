import { css, html, LitElement } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { entryAt } from '../../../engine/base/at.ts';
import type { StockSheet } from '../../../engine/visit/stencils/cut-list.ts';
import { engineFor, sentenceOf } from '../../../workers/client/client.ts';
import type { MadePlan } from '../../output/made-plan.ts';
import { missingWords } from '../../output/missing-words.ts';
import type { PageName } from '../../output/page-writer.ts';
import { choiceOptions, choiceTitle, type PaperAsked, type PaperChoice } from '../../output/papers/paper-choice.ts';
import { controls } from '../../ui/controls-style.ts';
import { download, fileNameOf } from '../../ui/download.ts';
import { rowHost } from '../../ui/layout-style.ts';
import { recipeStudio } from '../../ui/print/recipe-studio.ts';
import { imageOf } from '../../ui/print/state-pictures.ts';
import './phone-code.ts';

const PRINT_WORDS: Record<PaperChoice['what'], string> = {
  visit: 'Print the pull sheet',
  day: 'Print the bench sheet',
  'set-up': 'Print the card',
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
  @property() heading = '';
  @property({ type: Boolean }) outOfDate = false;
  @property({ type: Boolean }) relative = true;
  @property({ attribute: false }) tell!: (sentence: string) => void;
  @property({ type: Boolean }) disabled = false;
  /** Whether the pictures for the printer are being drawn. */
  @property({ type: Boolean }) preparing = false;
  @state() private busy = false;
  @state() private size: PageName = 'A4';

  private choose(change: Partial<PaperChoice>): void {
    const { what, cards } = this.asked;
    this.dispatchEvent(new CustomEvent<PaperChoice>('choose', { detail: { what, cards, ...change } }));
  }

  private async save(): Promise<void> {
    this.busy = true;
    const { made, asked, heading, size, stock, outOfDate, relative } = this;
    try {
      const [{ pullSheetPdf }, { pageFonts }] = await Promise.all([
        import('../../output/pull-sheet-pdf.ts'),
        import('../../ui/page-fonts.ts'),
      ]);
      const picture: Parameters<typeof pullSheetPdf>[1]['picture'] = async (at, pulls, heightPx) => {
        const studio = recipeStudio(entryAt(made.recipes, at));
        const png = await imageOf(await engineFor('picture').thumbnail({ studio, pulls, heightPx, relative }));
        return new Uint8Array(await png.arrayBuffer());
      };
      const { bytes, missing } = await pullSheetPdf(made, { size, asked, heading, stock, outOfDate, picture, fonts: await pageFonts() });
      download(fileNameOf(`${heading} ${choiceTitle(asked)}`, 'pdf'), bytes as Uint8Array<ArrayBuffer>, 'application/pdf');
      if (missing.length > 0) this.tell(missingWords(missing));
    } catch (error) {
      this.tell(`The PDF could not be made (${sentenceOf(error)}); print it from the browser instead.`);
    } finally {
      this.busy = false;
    }
  }

  override render() {
    const { asked, made, disabled } = this;
    return html`<label
        >On paper
        <select aria-label="What goes on paper" @change=${(event: Event) => this.choose({ what: (event.target as HTMLSelectElement).value as PaperChoice['what'] })}>
          ${choiceOptions(made.plan, asked.day, asked.setUp).map(
            ({ value, label }) => html`<option value=${value} .selected=${value === asked.what}>${label}</option>`,
          )}
        </select></label
      >
      ${
        asked.what === 'set-up'
          ? html`<press-phone-code .made=${made} .index=${asked.setUp} .heading=${this.heading} .disabled=${disabled}></press-phone-code>`
          : html`<label class="tick"
            ><input type="checkbox" .checked=${asked.cards} @change=${(event: Event) => this.choose({ cards: (event.target as HTMLInputElement).checked })} />
            with a card for each set-up</label
          >`
      }
      <button ?disabled=${disabled || this.preparing} @click=${() => this.dispatchEvent(new Event('print'))}>
        ${this.preparing ? 'Drawing the pictures…' : PRINT_WORDS[asked.what]}
      </button>
      <button ?disabled=${disabled || this.busy} @click=${() => void this.save()}>${this.busy ? 'Making the PDF…' : 'Save as PDF'}</button>
      <select aria-label="Page size of the PDF" @change=${(event: Event) => (this.size = (event.target as HTMLSelectElement).value as PageName)}>
        <option value="A4">A4</option>
        <option value="Letter">Letter</option>
      </select>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'press-papers': PapersOut;
  }
}
