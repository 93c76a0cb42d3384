import { css, html, LitElement, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { repeat } from 'lit/directives/repeat.js';
import { MOST_SHEETS } from '../../../engine/base/limits.ts';
import type { VisitRun } from '../../../engine/project/types.ts';
import type { Recipe } from '../../../engine/recipe/types.ts';
import { controls } from '../../ui/controls-style.ts';
import { cardList } from '../../ui/layout-style.ts';
import { printImage } from '../../ui/print/print-image.ts';
import type { StatePictures } from '../../ui/print/state-pictures.ts';
import { counted } from '../../ui/words.ts';
import { recipeLetter } from '../../words/plan-words.ts';

/**
 * Kept recipes and how many sheets of each are to be printed.
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
      .count button {
        width: 44px;
        min-height: 44px;
        padding: 0;
        font-size: var(--type-head);
        line-height: 1;
      }
      .count button:first-child {
        border-radius: var(--radius) 0 0 var(--radius);
      }
      .count button:last-of-type {
        border-radius: 0 var(--radius) var(--radius) 0;
      }
      .count input {
        width: 62px;
        min-height: 44px;
        margin: 0 -1px;
        border-radius: 0;
        text-align: center;
        font-size: var(--type-lead);
        font-weight: 600;
        appearance: textfield;
        -moz-appearance: textfield;
      }
      .count input::-webkit-inner-spin-button {
        appearance: none;
      }
      .refused {
        margin-top: var(--space-3);
        color: var(--accent);
        font-weight: 600;
      }
      .count .unit {
        padding-left: var(--space-5);
      }
    `,
  ];

  @property({ attribute: false }) recipes: readonly Recipe[] = [];
  @property({ attribute: false }) runs: readonly VisitRun[] = [];
  @property({ attribute: false }) pictures!: StatePictures;
  /** Changes when a picture has arrived, so that the list is drawn again. */
  @property({ type: Number }) drawn = 0;

  @state() private refused: string | null = null;

  private sheetsOf(recipe: Recipe): number {
    return this.runs.find((run) => run.recipe === recipe.id)?.sheets ?? 0;
  }

  private set(changed: Recipe, sheets: number): void {
    this.refused = null;
    const detail = this.recipes.flatMap((recipe): VisitRun[] => {
      const count = recipe.id === changed.id ? sheets : this.sheetsOf(recipe);
      return count === 0 ? [] : [{ recipe: recipe.id, sheets: count }];
    });
    this.dispatchEvent(new CustomEvent<VisitRun[]>('runs', { detail }));
  }

  private onTyped(recipe: Recipe, input: HTMLInputElement): void {
    const sheets = input.valueAsNumber;
    const right = Number.isInteger(sheets) && sheets >= 0 && sheets <= MOST_SHEETS;
    if (right) this.set(recipe, sheets);
    else this.refused = recipe.id;
    // What was refused is put back.
    input.value = String(this.sheetsOf(recipe));
  }

  private item(recipe: Recipe, letter: string | null) {
    const sheets = this.sheetsOf(recipe);
    const url = this.pictures.of(recipe, recipe.pulls);
    return html`<li class=${sheets === 0 ? 'off' : ''}>
      ${printImage(url, recipe.title, recipe.paper.widthMm / recipe.paper.heightMm)}
      <div class="facts">
        <p class="title">${letter === null ? nothing : html`<b>${letter}</b> `}${recipe.title}</p>
        <p class="soft small">${counted(recipe.pulls.length, 'pull')}, ${counted(recipe.inks.length, 'ink')}</p>
        <div class="count">
          <button aria-label="One sheet fewer of ${recipe.title}" ?disabled=${sheets === 0} @click=${() => this.set(recipe, sheets - 1)}>−</button>
          <input
            type="number"
            inputmode="numeric"
            min="0"
            max=${MOST_SHEETS}
            step="1"
            aria-label="Sheets of ${recipe.title}"
            .value=${String(sheets)}
            @change=${(event: Event) => this.onTyped(recipe, event.target as HTMLInputElement)}
            @focus=${(event: Event) => (event.target as HTMLInputElement).select()}
          />
          <button aria-label="One sheet more of ${recipe.title}" ?disabled=${sheets >= MOST_SHEETS} @click=${() => this.set(recipe, sheets + 1)}>+</button>
          <span class="unit soft" aria-hidden="true">${sheets === 1 ? 'sheet' : 'sheets'}</span>
        </div>
        ${
          this.refused === recipe.id
            ? html`<p class="refused small" role="alert">Give a whole number from 0 to ${MOST_SHEETS}.</p>`
            : nothing
        }
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
