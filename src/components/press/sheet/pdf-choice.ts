import { css, html, LitElement } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { MadePlan } from '../../output/made-plan.ts';
import { missingWords } from '../../output/missing-words.ts';
import type { PageName } from '../../output/page-writer.ts';
import type { PdfFile } from '../../output/pull-sheet-pdf.ts';
import { controls } from '../../ui/controls-style.ts';
import { download, fileNameOf } from '../../ui/download.ts';
import '../../ui/kit/progress.ts';
import type { StatePictures } from '../../ui/print/state-pictures.ts';
import { Work } from '../../ui/work.ts';
import { statePngs } from './state-pngs.ts';

/** Drawing the states takes about as long as writing the pages. */
const PICTURES_SHARE = 0.5;

/** Saves the pull sheet as a PDF, made in a worker that is started when it is first asked for. */
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
  @state() private size: PageName = 'A4';
  private readonly making = new Work<PdfFile>(this, {
    found: ({ bytes, missing }) => {
      download(fileNameOf(`${this.heading} pull sheet`, 'pdf'), bytes as Uint8Array<ArrayBuffer>, 'application/pdf');
      if (missing.length > 0) this.tell(missingWords(missing));
    },
    failed: (sentence) => this.tell(`The PDF could not be made (${sentence}); print the pull sheet from the browser instead.`),
  });

  private save(): void {
    const { made, pictures, heading, size } = this;
    void this.making.start(async ({ signal, onProgress }) => {
      const [{ makePullSheet }, { pageFonts }] = await Promise.all([
        import('../../output/pdf-client.ts'),
        import('../../ui/page-fonts.ts'),
      ]);
      const fonts = await pageFonts();
      const pngs = await statePngs(made, pictures, (share) => onProgress(share * PICTURES_SHARE));
      return makePullSheet(
        { made, size, heading, pictures: pngs, fonts },
        { signal, onProgress: (share) => onProgress(PICTURES_SHARE + share * (1 - PICTURES_SHARE)) },
      );
    });
  }

  override render() {
    const { running, progress } = this.making;
    return html`${
      running
        ? html`<ps-progress label="Making the PDF" words="Making the PDF…" .value=${progress} @stop=${() => this.making.stop()}></ps-progress>`
        : html`<button ?disabled=${this.disabled} @click=${() => this.save()}>Save as PDF</button>`
    }
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
