import { css, html, LitElement } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { entryAt } from '../../../engine/base/at.ts';
import type { Pull } from '../../../engine/stack/types.ts';
import { sentenceOf } from '../../../workers/client/client.ts';
import type { MadePlan } from '../../output/made-plan.ts';
import { missingWords } from '../../output/missing-words.ts';
import type { PageName } from '../../output/page-writer.ts';
import { controls } from '../../ui/controls-style.ts';
import { download, fileNameOf } from '../../ui/download.ts';
import type { StatePictures } from '../../ui/print/state-pictures.ts';

/** Saves the pull sheet as a PDF; what makes it is loaded when it is first asked for. */
@customElement('press-pdf-choice')
export class PdfChoice extends LitElement {
  static override styles = [
    controls,
    css`
      :host {
        display: inline-flex;
        gap: var(--space-4);
        align-items: center;
      }
    `,
  ];

  @property({ attribute: false }) made!: MadePlan;
  @property({ attribute: false }) pictures!: StatePictures;
  @property() heading = '';
  @property({ attribute: false }) tell!: (sentence: string) => void;
  @property({ type: Boolean }) disabled = false;
  @state() private busy = false;
  @state() private size: PageName = 'A4';

  private async save(): Promise<void> {
    this.busy = true;
    const { made, pictures, heading, size } = this;
    try {
      const [{ pullSheetPdf }, { pageFonts }] = await Promise.all([
        import('../../output/pull-sheet-pdf.ts'),
        import('../../ui/page-fonts.ts'),
      ]);
      for (const card of made.plan.cards) {
        for (const { recipe, before, after } of card.states) {
          if (before.length > 0) pictures.of(entryAt(made.recipes, recipe), before);
          pictures.of(entryAt(made.recipes, recipe), after);
        }
      }
      for (const recipe of made.recipes) pictures.of(recipe, recipe.pulls);
      await pictures.settled();
      const picture = async (recipe: number, pulls: readonly Pull[]): Promise<Uint8Array | null> => {
        const url = pictures.of(entryAt(made.recipes, recipe), pulls);
        return url === null || url === '' ? null : new Uint8Array(await (await fetch(url)).arrayBuffer());
      };
      const { bytes, missing } = await pullSheetPdf(made, { size, heading, picture, fonts: await pageFonts() });
      download(fileNameOf(`${heading} pull sheet`, 'pdf'), bytes as Uint8Array<ArrayBuffer>, 'application/pdf');
      if (missing.length > 0) this.tell(missingWords(missing));
    } catch (error) {
      this.tell(`The PDF could not be made (${sentenceOf(error)}); print the pull sheet from the browser instead.`);
    } finally {
      this.busy = false;
    }
  }

  override render() {
    return html`<button ?disabled=${this.disabled || this.busy} @click=${() => void this.save()}>
        ${this.busy ? 'Making the PDF…' : 'Save as PDF'}
      </button>
      <select aria-label="Page size of the PDF" @change=${(event: Event) => (this.size = (event.target as HTMLSelectElement).value as PageName)}>
        <option value="A4">A4</option>
        <option value="Letter">Letter</option>
      </select>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'press-pdf-choice': PdfChoice;
  }
}
