import { css, html, LitElement } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import type { Variant } from '../../../engine/explore/types.ts';
import type { Studio } from '../../../engine/studio/studio.ts';
import { numberLocale } from '../../../engine/words/language.ts';
import { wallTools } from '../../../workers/client/client.ts';
import { controls } from '../../ui/controls-style.ts';
import { fileNameOf } from '../../ui/download.ts';
import { dialogStyle } from '../../ui/kit/dialog-style.ts';
import '../../ui/kit/number-field.ts';
import { dialogBox } from '../../ui/kit/dialog.ts';
import type { NumberPick } from '../../ui/kit/number-field.ts';
import { pageFonts } from '../../ui/page-fonts.ts';
import { type MadeFile, saveAndClose, saveForm } from '../../ui/print/save-form.ts';
import { Work } from '../../ui/work.ts';
import { say } from '../../words/en/wall/print.ts';

/** Takes prints off the wall as a contact sheet. */
@customElement('wall-print-out')
export class PrintOut extends LitElement {
  static override styles = [
    controls,
    dialogStyle,
    css`
      dialog {
        --dialog-width: 440px;
      }
      .row {
        align-items: end;
      }
      .row label {
        white-space: nowrap;
      }
    `,
  ];

  @property({ attribute: false }) relative = true;
  /** How many prints hang: while they are found, a sheet of all of them grows. */
  @property({ attribute: false }) hanging = 0;
  private prints: () => readonly Variant[] = () => [];
  @state() private columns = 6;
  @state() private paper: 'a4' | 'a3' = 'a4';
  @state() private kind: 'pdf' | 'png' = 'pdf';
  @query('dialog') private dialog!: HTMLDialogElement;
  private drawer: Studio | null = null;
  private which = '';
  private readonly making = new Work<MadeFile>(this, { found: (made) => saveAndClose(made, this.dialog) });

  /**
   * @param prints the prints, asked anew when the sheet is made
   * @param which which prints these are, in words
   */
  showSheet(prints: () => readonly Variant[], which: string, studio: Studio): void {
    this.which = which;
    this.prints = prints;
    this.drawer = studio;
    this.making.clear();
    this.requestUpdate();
    this.dialog.showModal();
  }

  private make(): void {
    // Only what a worker is to know: prints of a wall hold their pulls in a way that no message carries.
    const prints = this.prints().map(({ index, seed, pulls }) => ({ index, seed, pulls }));
    const { drawer: studio, relative, paper, columns, kind } = this;
    const [first] = prints;
    if (studio === null || first === undefined) return;
    const title = `“${first.seed}”: ${this.which}`;
    void this.making.start(async (control) => {
      const typeface = kind === 'pdf' ? (await pageFonts()).plain : null;
      const file = await wallTools().sheet({ studio, prints, typeface, options: { paper, columns, title, relative } }, control);
      return file && { file, name: fileNameOf(`${first.seed} contact sheet`, kind) };
    });
  }

  private manyPrints() {
    return html`<div class="row">
        <label>${say.paper}
          <select @change=${(event: Event) => {
            this.paper = (event.target as HTMLSelectElement).value as 'a4' | 'a3';
          }}>
            <option value="a4" ?selected=${this.paper === 'a4'}>A4</option>
            <option value="a3" ?selected=${this.paper === 'a3'}>A3</option>
          </select></label>
        <ps-number live whole label=${say.columns} .min=${1} .max=${20} .bigStep=${10} .value=${this.columns} @pick=${(
          event: NumberPick,
        ) => {
          this.columns = event.detail;
        }}></ps-number>
        <label>${say.as}
          <select aria-label=${say.file} @change=${(event: Event) => {
            this.kind = (event.target as HTMLSelectElement).value as 'pdf' | 'png';
          }}>
            <option value="pdf" ?selected=${this.kind === 'pdf'}>PDF</option>
            <option value="png" ?selected=${this.kind === 'png'}>PNG</option>
          </select></label>
      </div>
      <p class="soft small">${say.eachWithItsNumber(this.prints().length.toLocaleString(numberLocale()), this.which)}</p>`;
  }

  override render() {
    return dialogBox(
      { heading: say.contactSheet, onClose: () => this.making.stop() },
      saveForm(this.making, { make: () => this.make(), cancel: () => this.dialog.close() }, this.manyPrints()),
    );
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'wall-print-out': PrintOut;
  }
}
