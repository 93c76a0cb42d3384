import { css, html, LitElement, nothing, svg } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import { roundTo } from '../../../engine/base/units.ts';
import { type Section, sectionsOf } from '../../../engine/output/film/sections.ts';
import { sectionRecipes } from '../../../engine/recipe/section-recipes.ts';
import type { Recipe } from '../../../engine/recipe/types.ts';
import { sentenceOf } from '../../../workers/client/client.ts';
import { controls } from '../../ui/controls-style.ts';
import { cutFields, cutFieldsStyle, cutsOf, type TypedCuts } from '../../ui/films/cut-fields.ts';
import { dialogStyle } from '../../ui/kit/dialog-style.ts';
import { dialogBox } from '../../ui/kit/dialog.ts';
import '../../ui/kit/problem.ts';
import { newId } from '../../ui/new-id.ts';
import { say } from '../../words/en/press/plan.ts';

/** What a printer has after it, said before. */
const WORDS = say.eachSectionBecomesPrint;

/**
 * A print that is larger than the bed cut into sections: a button, and behind it where to cut, with a picture.
 * @fires cut CustomEvent<Recipe[]>: the sections as prints
 */
@customElement('press-cut-sections')
export class CutSections extends LitElement {
  static override styles = [
    controls,
    dialogStyle,
    cutFieldsStyle,
    css`
      .open {
        margin-left: calc(-1 * var(--space-4));
      }
      svg {
        display: block;
        width: 100%;
        max-height: min(46dvh, 420px);
      }
      rect {
        fill: var(--white);
      }
      line {
        stroke: var(--accent);
        stroke-dasharray: 6 4;
        stroke-width: 2;
        vector-effect: non-scaling-stroke;
      }
      text {
        fill: var(--accent);
        stroke: var(--white);
        stroke-width: 0.2em;
        paint-order: stroke;
        font-weight: 700;
        text-anchor: middle;
        dominant-baseline: central;
      }
    `,
  ];

  @property({ attribute: false }) recipe!: Recipe;
  /** Its picture; null until it is drawn. */
  @property({ attribute: false }) picture: string | null = null;
  @state() private cuts: TypedCuts = { across: '', down: '' };
  @state() private wrong = '';
  @query('dialog') private dialog!: HTMLDialogElement;

  private open(): void {
    const { widthMm, heightMm } = this.recipe.paper;
    this.wrong = '';
    // Two halves across the long side, to begin with.
    this.cuts =
      widthMm >= heightMm ? { across: String(roundTo(widthMm / 2, 1)), down: '' } : { across: '', down: String(roundTo(heightMm / 2, 1)) };
    this.dialog.showModal();
  }

  /** The sections that the cuts make, or why they make none. */
  private get sections(): { all: Section[]; wrong: string } {
    try {
      return { all: sectionsOf(this.recipe.paper, cutsOf(this.cuts)), wrong: '' };
    } catch (error) {
      return { all: [], wrong: sentenceOf(error) };
    }
  }

  private cut(event: Event): void {
    event.preventDefault();
    try {
      const detail = sectionRecipes(this.recipe, cutsOf(this.cuts), newId);
      this.dispatchEvent(new CustomEvent<Recipe[]>('cut', { detail, bubbles: true, composed: true }));
      this.dialog.close();
    } catch (error) {
      this.wrong = sentenceOf(error);
    }
  }

  private sheet(sections: readonly Section[]) {
    const { widthMm, heightMm } = this.recipe.paper;
    const size = Math.min(widthMm, heightMm) / 9;
    return html`<svg viewBox="0 0 ${widthMm} ${heightMm}" role="img" aria-label=${say.inSections(this.recipe.title, Math.max(1, sections.length))}>
      <rect width=${widthMm} height=${heightMm} />
      ${this.picture === null ? nothing : svg`<image href=${this.picture} width=${widthMm} height=${heightMm} preserveAspectRatio="none" />`}
      ${sections.map(({ box: { xMm, yMm, widthMm: wide, heightMm: high } }) => [
        xMm > 0 ? svg`<line x1=${xMm} y1=${yMm} x2=${xMm} y2=${yMm + high} />` : nothing,
        yMm > 0 ? svg`<line x1=${xMm} y1=${yMm} x2=${xMm + wide} y2=${yMm} />` : nothing,
      ])}
      ${
        sections.length < 2
          ? nothing
          : sections.map(
              ({ number, box }) =>
                svg`<text x=${box.xMm + box.widthMm / 2} y=${box.yMm + box.heightMm / 2} font-size=${Math.min(size, box.widthMm / 2, box.heightMm / 2)}>${number}</text>`,
            )
      }
    </svg>`;
  }

  override render() {
    const { all, wrong } = this.sections;
    const sizes = [...new Set(all.map(({ box }) => `${roundTo(box.widthMm, 1)} × ${roundTo(box.heightMm, 1)} mm`))];
    const said = this.wrong === '' ? wrong : this.wrong;
    return html`<button type="button" class="quiet open" @click=${() => this.open()} aria-label=${say.cutIntoSections(this.recipe.title)}>${say.cutIntoSections2}</button>
      ${dialogBox(
        { heading: say.cutIntoSections3, closable: true },
        html`<form @submit=${(event: Event) => this.cut(event)}>
          ${this.sheet(all)}
          ${cutFields(
            this.cuts,
            (change) => {
              this.cuts = { ...this.cuts, ...change };
              this.wrong = '';
            },
            WORDS,
          )}
          ${said === '' ? html`<p role="status">${say.sections(all.length, sizes.join(', '))}</p>` : html`<ps-problem>${said}</ps-problem>`}
          <div class="buttons">
            <button type="button" @click=${() => this.dialog.close()}>${say.cancel}</button>
            <button class="main" ?disabled=${said !== '' || all.length < 2}>${all.length < 2 ? say.cutIt : say.cutIntoSectionsAll(all.length)}</button>
          </div>
        </form>`,
      )}`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'press-cut-sections': CutSections;
  }
}
