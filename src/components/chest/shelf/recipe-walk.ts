import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { type RecipeBranch, recipeTree } from '../../../engine/recipe/chest/recipe-tree.ts';
import type { Recipe } from '../../../engine/recipe/types.ts';
import { controls } from '../../ui/controls-style.ts';
import './small-print.ts';
import { say } from '../../words/en/chest/shelf.ts';

/**
 * Recipes as they came of each other, each under the one that it came of; arrow keys walk it.
 * @fires pick-recipe CustomEvent<string>: the id of one that was pressed
 */
@customElement('chest-recipe-walk')
export class RecipeWalk extends LitElement {
  static override styles = [
    controls,
    css`
      :host {
        display: block;
      }
      ul {
        display: grid;
        gap: var(--space-6);
        margin: 0;
        padding: 0;
        list-style: none;
      }
      :host {
        overflow-x: auto;
      }
      li {
        display: flex;
        align-items: start;
        gap: var(--space-6);
      }
      ul ul {
        padding-left: var(--space-6);
        border-left: 1px solid var(--line);
      }
      chest-small-print {
        flex: none;
        width: 132px;
      }
    `,
  ];

  @property({ attribute: false }) recipes: readonly Recipe[] = [];
  @property({ type: Boolean }) relative = true;
  @property({ attribute: false }) selected: ReadonlySet<string> | null = null;

  /** Right goes down to the first child, left up to the parent, up and down along the list. */
  private onKey(event: KeyboardEvent): void {
    const here = (event.target as Element).closest('li');
    if (here === null || event.altKey || event.ctrlKey || event.metaKey) return;
    const next =
      {
        ArrowRight: here.querySelector('li'),
        ArrowLeft: here.parentElement?.closest('li'),
        ArrowDown: here.nextElementSibling,
        ArrowUp: here.previousElementSibling,
      }[event.key] ?? null;
    if (next === null) return;
    event.preventDefault();
    next.querySelector('chest-small-print')?.shadowRoot?.querySelector('button')?.focus();
  }

  private branch({ recipe, children }: RecipeBranch): TemplateResult {
    return html`<li>
      <chest-small-print
        .recipe=${recipe}
        .relative=${this.relative}
        .selected=${this.selected?.has(recipe.id) ?? null}
        @pick=${() => this.dispatchEvent(new CustomEvent<string>('pick-recipe', { detail: recipe.id }))}
      ></chest-small-print>
      ${children.length === 0 ? nothing : html`<ul aria-label=${say.cameOf(recipe.title)}>${children.map((child) => this.branch(child))}</ul>`}
    </li>`;
  }

  override render() {
    return html`<ul aria-label=${say.recipesAsTheyCame} @keydown=${this.onKey}>${recipeTree(this.recipes).map((branch) => this.branch(branch))}</ul>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'chest-recipe-walk': RecipeWalk;
  }
}
