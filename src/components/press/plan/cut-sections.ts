import { css, html, LitElement, nothing, svg } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import { roundTo } from '../../../engine/base/units.ts';
import { type Section, sectionsOf } from '../../../engine/output/film/sections.ts';
import type { Recipe } from '../../../engine/recipe/types.ts';
import { sentenceOf } from '../../../workers/client/client.ts';
import { cutToSections } from '../../../workers/client/stencils.ts';
import { controls } from '../../ui/controls-style.ts';
import { cutFields, cutFieldsStyle, cutsOf, NO_CUTS, type TypedCuts } from '../../ui/films/cut-fields.ts';
import { dialogStyle } from '../../ui/kit/dialog-style.ts';
import { dialogBox } from '../../ui/kit/dialog.ts';
import '../../ui/kit/problem.ts';
import '../../ui/kit/progress.ts';
import { newId } from '../../ui/new-id.ts';
import { workFailure } from '../../ui/work-failure.ts';
import { Work } from '../../ui/work.ts';
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
        max-height: min(38dvh, 420px);
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
      .shared {
        fill: var(--accent);
        fill-opacity: 0.25;
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
  @state() private cuts: TypedCuts = NO_CUTS;
  @query('dialog') private dialog!: HTMLDialogElement;
  private readonly work = new Work<Recipe[]>(this, { found: (sections) => this.done(sections) });

  private open(): void {
    const { widthMm, heightMm } = this.recipe.paper;
    this.work.clear();
    // Two halves across the long side, to begin with.
    const half = String(roundTo(Math.max(widthMm, heightMm) / 2, 1));
    this.cuts = { ...NO_CUTS, ...(widthMm >= heightMm ? { across: half } : { down: half }) };
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
    const { recipe, cuts } = this;
    const ids = this.sections.all.map(() => newId());
    void this.work.start((control) => cutToSections({ recipe, cuts: cutsOf(cuts), ids }, control));
  }

  private done(detail: Recipe[]): void {
    this.dispatchEvent(new CustomEvent<Recipe[]>('cut', { detail, bubbles: true, composed: true }));
    this.dialog.close();
  }

  private sheet(sections: readonly Section[]) {
    const { widthMm, heightMm } = this.recipe.paper;
    const size = Math.min(widthMm, heightMm) / 9;
    return html`<svg viewBox="0 0 ${widthMm} ${heightMm}" role="img" aria-label=${say.inSections(this.recipe.title, Math.max(1, sections.length))}>
      <rect width=${widthMm} height=${heightMm} />
      ${this.picture === null ? nothing : svg`<image href=${this.picture} width=${widthMm} height=${heightMm} preserveAspectRatio="none" />`}
      ${sections.length < 2 ? nothing : this.lines()}
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

  private lines() {
    const { widthMm, heightMm } = this.recipe.paper;
    const { acrossMm, downMm, overlapMm = 0 } = cutsOf(this.cuts);
    return [
      ...acrossMm.map(
        (x) =>
          svg`<rect class="shared" x=${x - overlapMm / 2} width=${overlapMm} height=${heightMm} /><line x1=${x} x2=${x} y2=${heightMm} />`,
      ),
      ...downMm.map(
        (y) =>
          svg`<rect class="shared" y=${y - overlapMm / 2} width=${widthMm} height=${overlapMm} /><line y1=${y} y2=${y} x2=${widthMm} />`,
      ),
    ];
  }

  override render() {
    const { work } = this;
    const { all, wrong } = this.sections;
    const sizes = [...new Set(all.map(({ box }) => `${roundTo(box.widthMm, 1)} × ${roundTo(box.heightMm, 1)} mm`))];
    return html`<button type="button" class="quiet open" @click=${() => this.open()} aria-label=${say.cutIntoSections(this.recipe.title)}>${say.cutIntoSections2}</button>
      ${dialogBox(
        { heading: say.cutIntoSections3, closable: true, onClose: () => work.stop() },
        html`<form @submit=${(event: Event) => this.cut(event)}>
          ${this.sheet(all)}
          ${cutFields(
            this.cuts,
            (change) => {
              work.clear();
              this.cuts = { ...this.cuts, ...change };
            },
            WORDS,
          )}
          ${wrong === '' ? html`<p role="status">${say.sections(all.length, sizes.join(', '))}</p>` : html`<ps-problem>${wrong}</ps-problem>`}
          ${
            work.running
              ? html`<ps-progress label=${say.cuttingIntoSections} words=${say.cutShare(Math.round(100 * work.progress))} .value=${work.progress} @stop=${() => work.stop()}></ps-progress>`
              : workFailure(work)
          }
          <div class="buttons">
            <button type="button" @click=${() => this.dialog.close()}>${say.cancel}</button>
            <button class="main" ?disabled=${wrong !== '' || all.length < 2 || work.running}>${all.length < 2 ? say.cutIt : say.cutIntoSectionsAll(all.length)}</button>
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
