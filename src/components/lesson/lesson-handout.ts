import { html, LitElement, nothing } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import { entryAt } from '../../engine/base/at.ts';
import { handoutPictures } from '../../engine/lesson/handout.ts';
import { engineFor } from '../../workers/client/client.ts';
import type { JobControl } from '../../workers/client/job-control.ts';
import type { PageName } from '../output/page-writer.ts';
import type { PdfFile } from '../output/pull-sheet-pdf.ts';
import { controls } from '../ui/controls-style.ts';
import { download, fileNameOf } from '../ui/download.ts';
import '../ui/kit/choice.ts';
import { dialogStyle } from '../ui/kit/dialog-style.ts';
import { dialogBox } from '../ui/kit/dialog.ts';
import { GONE_INK_HEX, inkHexes } from '../ui/kit/ink-chip.ts';
import { imageOf } from '../ui/print/state-pictures.ts';
import { Work } from '../ui/work.ts';
import { say } from '../words/en/lesson/room.ts';
import type { LessonAnswer } from './board/lesson-run.ts';

/** Rows of a picture on paper: sharp at 65 mm. */
const ROWS = 560;

/** The lesson on paper, to be given to a class. */
@customElement('ps-lesson-handout')
export class LessonHandout extends LitElement {
  static override styles = [controls, dialogStyle];

  /** All orders sorted; null until they are. */
  @property({ attribute: false }) answer: LessonAnswer | null = null;
  /** The project's title. */
  @property() heading = '';
  @state() private size: PageName = 'A4';
  /** Signs that the PDF's letters lack. */
  @state() private lack = '';
  @query('dialog') private dialog!: HTMLDialogElement;
  private readonly work = new Work<PdfFile>(this, {
    found: ({ bytes, missing }) => {
      download(fileNameOf(`Lesson ${this.heading}`, 'pdf'), bytes as BlobPart, 'application/pdf');
      this.lack = missing.slice(0, 8).join(' ');
      if (missing.length === 0) this.dialog.close();
    },
  });

  private async make({ question, result }: LessonAnswer, control: JobControl<number>): Promise<PdfFile> {
    const { studio, pulls, relative } = question;
    const prints = [];
    for (const { letter, orders } of handoutPictures(result, this.heading)) {
      const all = orders.map((index) => entryAt(result.orders, index));
      const down = entryAt(all, 0).map((at) => entryAt(pulls, at));
      const picture = await engineFor('picture').thumbnail({ studio, pulls: down, heightPx: ROWS, relative });
      prints.push({ letter, orders: all, png: new Uint8Array(await (await imageOf(picture)).arrayBuffer()) });
    }
    const [{ makeHandout }, { pageFonts }] = await Promise.all([import('../output/pdf-client.ts'), import('../ui/page-fonts.ts')]);
    const named = pulls.map((pull) => {
      const ink = studio.inks.find(({ id }) => id === pull.ink);
      const screen = studio.screens.find(({ id }) => id === pull.screen);
      return { screen: screen?.name ?? '', ink: ink?.name ?? '', hex: ink === undefined ? GONE_INK_HEX : inkHexes(ink).overWhite };
    });
    const { size, heading: title } = this;
    const counts = { orders: result.orders.length, pictures: result.count };
    return makeHandout({ title, pulls: named, prints, ...counts, size, fonts: await pageFonts() }, control);
  }

  private start(): void {
    const { answer } = this;
    if (answer !== null) void this.work.start((control) => this.make(answer, control));
  }

  override render() {
    const { work } = this;
    return html`<button ?disabled=${this.answer === null} @click=${() => this.dialog.showModal()}>${say.handout}</button>
      ${dialogBox(
        { heading: say.thisLessonOnPaper, closable: true },
        html`<form method="dialog">
          <p>${say.itsPicturesWithBlanks}</p>
          <ps-choice
            label=${say.paper}
            .options=${[
              { value: 'A4', label: 'A4' },
              { value: 'Letter', label: say.letter },
            ]}
            .value=${this.size}
            @pick=${(event: CustomEvent<string>) => (this.size = event.detail as PageName)}
          ></ps-choice>
          ${work.failure === '' ? nothing : html`<p role="alert">${work.failure}</p>`}
          ${this.lack === '' ? nothing : html`<p role="alert">${say.pdfIsSavedBut(this.lack)}</p>`}
          <div class="buttons">
            <button type="button" class="main" ?disabled=${work.running} @click=${() => this.start()}>${work.running ? say.makingIt : say.saveAsPDF}</button>
          </div>
        </form>`,
      )}`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'ps-lesson-handout': LessonHandout;
  }
}
