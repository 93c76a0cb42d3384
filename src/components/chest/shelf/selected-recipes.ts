import { css, html, LitElement, nothing } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import { labelsOf, pulledInks } from '../../../engine/recipe/chest/sorted-recipes.ts';
import type { Recipe } from '../../../engine/recipe/types.ts';
import type { AppStore } from '../../app-store.ts';
import { controls } from '../../ui/controls-style.ts';
import { fullDialog } from '../../ui/layout-style.ts';
import '../../ui/kit/ink-chip.ts';
import { say } from '../../words/en/chest/shelf.ts';
import './small-print.ts';
import { listed } from '../../words/plan-words.ts';

/** So many prints are told apart side by side; no source. */
const MOST_COMPARED = 6;
/** How high their pictures are drawn. */
const COMPARED_PX = 760;

/**
 * What can be done with several recipes together.
 * @fires none Event: none are to be selected any more
 */
@customElement('chest-selected')
export class SelectedRecipes extends LitElement {
  static override styles = [
    controls,
    fullDialog,
    css`
      .bar {
        padding: var(--space-4) var(--space-6);
        background: var(--sheet);
        box-shadow: var(--shadow-low);
      }
      form {
        display: inline-flex;
        gap: var(--space-3);
      }
      form input {
        width: 9em;
      }
      .head {
        padding: var(--space-7) var(--space-8);
        justify-content: space-between;
      }
      .side {
        display: grid;
        grid-template-columns: repeat(auto-fit, minmax(min(220px, 100%), calc((100dvh - 280px) * 0.74)));
        justify-content: center;
        gap: var(--space-8);
        padding: 0 var(--space-8) var(--space-10);
      }
      .side p {
        padding-left: var(--space-3);
      }
      .chips {
        display: flex;
        flex-wrap: wrap;
        gap: var(--space-2);
      }
      .chips ps-ink-chip {
        width: 26px;
      }
    `,
  ];

  @property({ attribute: false }) store!: AppStore;
  @property({ attribute: false }) recipes: readonly Recipe[] = [];
  @state() private comparing = false;
  @query('dialog') private dialog!: HTMLDialogElement;
  @query('form input') private field!: HTMLInputElement;

  private get ids(): string[] {
    return this.recipes.map(({ id }) => id);
  }

  private compare(): void {
    this.comparing = true;
    void this.updateComplete.then(() => this.dialog.showModal());
  }

  private label(event: Event): void {
    event.preventDefault();
    const label = this.field.value.trim();
    if (label !== '' && this.store.dispatch({ kind: 'label-recipes', recipes: this.ids, label, on: true })) this.field.value = '';
  }

  private removeAll(): void {
    const { length } = this.recipes;
    if (!this.store.dispatch({ kind: 'remove-recipes', recipes: this.ids })) return;
    this.store.tell(say.recipesOutOfChest(length), 'news');
    this.dispatchEvent(new Event('none'));
  }

  /** What the recipes have alike and each alone, in words. */
  private alike(): string {
    const inks = this.recipes.map((recipe) => new Set(pulledInks(recipe).map(({ name }) => name)));
    const [first = new Set<string>(), ...others] = inks;
    const shared = [...first].filter((name) => others.every((names) => names.has(name)));
    return shared.length === 0 ? say.noInkIsIn : say.inAllOfThem(listed(shared), say.are(shared.length));
  }

  private compared() {
    return html`<dialog aria-label=${say.compareRecipes} @close=${() => (this.comparing = false)}>
      <div class="row head">
        <h2>${say.recipesSideBySide(this.recipes.length)}</h2>
        <button @click=${() => this.dialog.close()}>${say.close}</button>
      </div>
      <p class="row head">${this.alike()}</p>
      <div class="side">
        ${this.recipes.map((recipe) => {
          const inks = pulledInks(recipe);
          return html`<div>
            <chest-small-print .recipe=${recipe} .relative=${this.store.relative} .heightPx=${COMPARED_PX}></chest-small-print>
            <p class="small">${say.screensInks(recipe.screens.length, inks.length)}</p>
            <p class="chips">${inks.map((ink) => html`<ps-ink-chip .ink=${ink} title=${ink.name}></ps-ink-chip>`)}</p>
            <p class="soft small">${recipe.note}</p>
          </div>`;
        })}
      </div>
    </dialog>`;
  }

  override render() {
    const { recipes } = this;
    const labels = labelsOf(recipes);
    return html`<div class="row bar" role="region" aria-label=${say.selectedRecipes}>
        <strong>${say.selected(recipes.length)}</strong>
        <button ?disabled=${recipes.length < 2 || recipes.length > MOST_COMPARED} title=${say.twoToSix} @click=${() => this.compare()}>${say.compare}</button>
        <form @submit=${this.label}>
          <input type="text" maxlength="60" aria-label=${say.label} placeholder=${say.label} /><button type="submit" ?disabled=${recipes.length === 0}>${say.labelThem}</button>
        </form>
        ${labels.map(
          (label) =>
            html`<button class="quiet" title=${say.takeThisLabelOff} @click=${() => this.store.dispatch({ kind: 'label-recipes', recipes: this.ids, label, on: false })}>${label} ✕</button>`,
        )}
        <button ?disabled=${recipes.length === 0} @click=${() => this.removeAll()}>${say.remove}</button>
      </div>
      ${this.comparing ? this.compared() : nothing}`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'chest-selected': SelectedRecipes;
  }
}
