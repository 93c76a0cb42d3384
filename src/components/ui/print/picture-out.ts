import { css, html, LitElement } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import type { Recipe } from '../../../engine/recipe/types.ts';
import { studioOfRecipe } from '../../../engine/recipe/write.ts';
import { numberLocale } from '../../../engine/words/language.ts';
import { wallTools } from '../../../workers/client/client.ts';
import { say } from '../../words/en/ui/print.ts';
import { controls } from '../controls-style.ts';
import { fileNameOf } from '../download.ts';
import '../kit/number-field.ts';
import { dialogStyle } from '../kit/dialog-style.ts';
import { dialogBox } from '../kit/dialog.ts';
import type { NumberPick } from '../kit/number-field.ts';
import { Work } from '../work.ts';
import { type MadeFile, saveAndClose, saveForm } from './save-form.ts';

const MM_PER_INCH = 25.4;

/** Saves one print as a picture that carries its recipe. */
@customElement('ps-picture-out')
export class PictureOut extends LitElement {
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
    `,
  ];

  @property({ attribute: false }) relative = true;
  @state() private recipe: Recipe | null = null;
  @state() private heading = '';
  @state() private widthMm = 300;
  @state() private dpi = 150;
  @state() private kind: 'png' | 'svg' = 'png';
  @query('dialog') private dialog!: HTMLDialogElement;
  private readonly making = new Work<MadeFile>(this, { found: (made) => saveAndClose(made, this.dialog) });

  /** Asks how it is to be saved. @param heading '… as a picture' */
  show(recipe: Recipe, heading: string): void {
    this.recipe = recipe;
    this.heading = heading;
    this.widthMm = Math.round(recipe.paper.widthMm);
    this.making.clear();
    this.dialog.showModal();
  }

  private make(): void {
    const { recipe, kind, widthMm, dpi, relative } = this;
    if (recipe === null) return;
    void this.making.start(async (control) => {
      if (kind === 'svg') {
        const { printSvg } = await import('../../../engine/visitfile/carried/print-svg.ts');
        return { file: new Blob([printSvg(recipe)], { type: 'image/svg+xml' }), name: fileNameOf(recipe.title, 'svg') };
      }
      const studio = studioOfRecipe(recipe);
      const file = await wallTools().print({ studio, pulls: recipe.pulls, size: { widthMm, dpi, relative }, recipe }, control);
      return file && { file, name: fileNameOf(`${recipe.title} ${widthMm} mm`, 'png') };
    });
  }

  private number(name: 'widthMm' | 'dpi', label: string, unit: string, { min, max }: { min: number; max: number }) {
    return html`<ps-number live whole .label=${label} .unit=${unit} .min=${min} .max=${max} .bigStep=${10} .value=${this[name]} @pick=${(
      event: NumberPick,
    ) => {
      this[name] = event.detail;
    }}></ps-number>`;
  }

  private pixels() {
    const { recipe, widthMm, dpi } = this;
    const wide = Math.round((widthMm / MM_PER_INCH) * dpi);
    const high = recipe === null ? 0 : Math.round((wide * recipe.paper.heightMm) / recipe.paper.widthMm);
    return html`<div class="row">${this.number('widthMm', say.width, 'mm', { min: 5, max: 20_000 })} ${this.number('dpi', say.resolution, 'dpi', { min: 10, max: 2400 })}</div>
      <p class="soft small">${say.pixelsColouredAsHere(wide.toLocaleString(numberLocale()), high.toLocaleString(numberLocale()))}</p>`;
  }

  override render() {
    const drawn = html`<p class="soft small">
      ${say.trueSizeInMm}
    </p>`;
    return dialogBox(
      { heading: this.heading, onClose: () => this.making.stop() },
      saveForm(
        this.making,
        { make: () => this.make(), cancel: () => this.dialog.close() },
        html`<label>${say.as}
          <select aria-label=${say.file} @change=${(event: Event) => {
            this.kind = (event.target as HTMLSelectElement).value as 'png' | 'svg';
          }}>
            <option value="png" ?selected=${this.kind === 'png'}>${say.pngPicture}</option>
            <option value="svg" ?selected=${this.kind === 'svg'}>${say.svgDrawing}</option>
          </select></label>
        ${this.kind === 'png' ? this.pixels() : drawn}
        <p class="soft small">${say.fileCarriesRecipeDropped}</p>
        `,
      ),
    );
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'ps-picture-out': PictureOut;
  }
}
