import { css, html, LitElement, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { repeat } from 'lit/directives/repeat.js';
import { MOST_SHEETS } from '../../../engine/base/limits.ts';
import type { VisitRun } from '../../../engine/project/types.ts';
import type { Recipe } from '../../../engine/recipe/types.ts';
import { usualExtras } from '../../../engine/visit/paper-needs.ts';
import type { VisitFigures } from '../../../engine/visit/visit-figures.ts';
import { lowered } from '../../../engine/words/language.ts';
import '../../ui/kit/number-field.ts';
import { controls } from '../../ui/controls-style.ts';
import type { NumberPick } from '../../ui/kit/number-field.ts';
import { cardList } from '../../ui/layout-style.ts';
import { printImage } from '../../ui/print/print-image.ts';
import type { StatePictures } from '../../ui/print/state-pictures.ts';
import './cut-sections.ts';
import { say } from '../../words/en/press/plan.ts';
import { recipeLetter } from '../../words/plan-words.ts';

/**
 * Kept recipes and how many sheets of each are to be printed.
 * @fires cut as `press-cut-sections` of a recipe
 * @fires runs CustomEvent<VisitRun[]>: what the visit shall be, in the order of the recipes
 */
@customElement('press-visit-runs')
export class VisitRuns extends LitElement {
  static override styles = [
    controls,
    cardList,
    css`
      ul {
        --card: min(330px, 100%);
        gap: var(--space-9) var(--space-10);
        margin: 0;
      }
      li {
        display: grid;
        grid-template-columns: 92px minmax(0, 1fr);
        gap: var(--space-7);
        align-items: center;
      }
      .print {
        display: block;
        width: 100%;
        background: var(--white);
        box-shadow: var(--shadow);
      }
      li.off .print {
        opacity: 0.55;
      }
      .title {
        font-weight: 600;
        overflow-wrap: anywhere;
      }
      .facts {
        display: grid;
        gap: var(--space-1);
      }
      .count {
        display: flex;
        align-items: center;
        margin-top: var(--space-5);
      }
      .extras {
        display: flex;
        flex-wrap: wrap;
        gap: var(--space-3) var(--space-7);
        margin-top: var(--space-4);
      }
      .count .unit {
        padding-left: var(--space-5);
      }
    `,
  ];

  @property({ attribute: false }) recipes: readonly Recipe[] = [];
  @property({ attribute: false }) runs: readonly VisitRun[] = [];
  @property({ attribute: false }) press!: VisitFigures;
  @property({ attribute: false }) pictures!: StatePictures;
  /** Changes when a picture has arrived, so that the list is drawn again. */
  @property({ type: Number }) drawn = 0;

  private sheetsOf(recipe: Recipe): number {
    return this.runs.find((run) => run.recipe === recipe.id)?.sheets ?? 0;
  }

  private set(changed: Recipe, change: Partial<VisitRun>): void {
    const detail = this.recipes.flatMap((recipe): VisitRun[] => {
      const run = this.runs.find((each) => each.recipe === recipe.id) ?? { recipe: recipe.id, sheets: 0 };
      const next = recipe.id === changed.id ? { ...run, ...change } : run;
      return next.sheets === 0 ? [] : [next];
    });
    this.dispatchEvent(new CustomEvent<VisitRun[]>('runs', { detail }));
  }

  /** Overs and proofs of a recipe: as the studio does it until somebody says otherwise. */
  private extras(recipe: Recipe, sheets: number) {
    const run = this.runs.find((each) => each.recipe === recipe.id);
    const usual = usualExtras(sheets, this.press);
    const field = (key: 'overs' | 'proofs', label: string) =>
      html`<ps-number
        label=${say.ofLabel(label, recipe.title)}
        label-hidden
        unit=${lowered(label)}
        whole
        min="0"
        max=${MOST_SHEETS}
        .value=${run?.[key] ?? usual[key]}
        .stepNames=${[say.oneFewerOfOf(lowered(label), recipe.title), say.oneMoreOfOf(lowered(label), recipe.title)] as const}
        @pick=${(event: NumberPick) => this.set(recipe, { [key]: event.detail })}
      ></ps-number>`;
    return html`<div class="extras">${field('overs', say.overs)}${field('proofs', say.proofs)}</div>
      <press-cut-sections .recipe=${recipe} .picture=${this.pictures.of(recipe, recipe.pulls)}></press-cut-sections>`;
  }

  private item(recipe: Recipe, letter: string | null) {
    const sheets = this.sheetsOf(recipe);
    const url = this.pictures.of(recipe, recipe.pulls);
    return html`<li class=${sheets === 0 ? 'off' : ''}>
      ${printImage(url, recipe.title, recipe.paper.widthMm / recipe.paper.heightMm)}
      <div class="facts">
        <p class="title">${letter === null ? nothing : html`<b>${letter}</b> `}${recipe.title}</p>
        <p class="soft small">${say.pullsInks(recipe.pulls.length, recipe.inks.length)}</p>
        <div class="count">
          <ps-number
            label=${say.sheetsOf(recipe.title)}
            label-hidden
            whole
            min="0"
            max=${MOST_SHEETS}
            .value=${sheets}
            .stepNames=${[say.oneSheetFewerOf(recipe.title), say.oneSheetMoreOf(recipe.title)] as const}
            @pick=${(event: NumberPick) => this.set(recipe, { sheets: event.detail })}
          ></ps-number>
          <span class="unit soft" aria-hidden="true">${say.sheets4(sheets)}</span>
        </div>
        ${sheets > 0 ? this.extras(recipe, sheets) : nothing}
      </div>
    </li>`;
  }

  override render() {
    let used = 0;
    const letters = new Map(this.recipes.map((recipe) => [recipe.id, this.sheetsOf(recipe) > 0 ? recipeLetter(used++) : null]));
    return html`<ul>
      ${repeat(
        this.recipes,
        (recipe) => recipe.id,
        (recipe) => this.item(recipe, letters.get(recipe.id) ?? null),
      )}
    </ul>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'press-visit-runs': VisitRuns;
  }
}
