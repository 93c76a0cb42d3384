import { css, html, LitElement, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { repeat } from 'lit/directives/repeat.js';
import { type RecipeView, sortedRecipes } from '../../engine/recipe/chest/sorted-recipes.ts';
import type { Recipe } from '../../engine/recipe/types.ts';
import { type AppStore, StoreController } from '../app-store.ts';
import { controls } from '../ui/controls-style.ts';
import { chooseFiles } from '../ui/download.ts';
import { FileDrop, fileDropStyles } from '../ui/files/file-drop.ts';
import { FileReading } from '../ui/files/file-reading.ts';
import '../ui/kit/empty.ts';
import { cardGrid } from '../ui/layout-style.ts';
import { say } from '../words/en/chest/room.ts';
import './recipe-print.ts';
import './shelf/recipe-walk.ts';
import './shelf/selected-recipes.ts';
import { importRecipe } from './import-recipes.ts';
import './shelf/small-print.ts';
import './visit-list.ts';
import { type ShelfLook, shelfTools } from './shelf/shelf-tools.ts';

/** The kept recipes, pinned up; recipe files come in and go out here. */
@customElement('chest-room')
export class ChestRoom extends LitElement {
  static override styles = [
    controls,
    fileDropStyles,
    cardGrid,
    css`
      .room {
        min-height: 100%;
        padding: var(--space-9) var(--space-10) 72px;
      }
      header {
        margin-bottom: var(--space-9);
      }
      header h2 + .soft {
        margin-left: calc(-1 * var(--space-3));
      }
      .fill {
        flex: 1;
      }
      .prints {
        --card: 270px;
        gap: var(--space-11) var(--space-10);
        align-items: start;
      }
      .few {
        --card: 132px;
        gap: var(--space-7) var(--space-6);
      }
      .shelf {
        margin-bottom: var(--space-8);
      }
      .shelf input {
        width: min(300px, 100%);
      }
      .looks {
        gap: var(--space-2);
      }
      chest-selected {
        display: block;
        position: sticky;
        z-index: 2;
        top: 0;
        margin-bottom: var(--space-8);
      }
      .prints .opened {
        grid-column: 1 / -1;
      }
      ps-empty {
        min-height: 60vh;
      }
      .ghosts {
        display: flex;
        gap: var(--space-8);
        max-width: 100%;
        margin-bottom: var(--space-7);
      }
      .ghosts i {
        width: 96px;
        aspect-ratio: 560 / 760;
        border: 1px dashed var(--line);
      }
      @media (max-width: 760px) {
        .room {
          padding: var(--space-7) var(--space-8) var(--space-10);
        }
        .prints {
          grid-template-columns: minmax(0, 1fr);
          gap: var(--space-10);
        }
        chest-selected {
          position: static;
        }
        .shelf {
          gap: var(--space-3);
        }
        .shelf input {
          width: 100%;
        }
        .looks {
          display: contents;
        }
        .shelf :is(select, button) {
          padding-inline: var(--space-4);
          font-size: var(--type-small);
        }
        .few {
          grid-template-columns: repeat(auto-fill, minmax(104px, 1fr));
          gap: var(--space-5);
        }
      }
    `,
  ];

  @property({ attribute: false }) store!: AppStore;
  @state() private opened: string | null = null;
  @state() private view: RecipeView = { words: '', label: '', sort: 'oldest' };
  @state() private look: ShelfLook = 'large';
  /** Ids of those selected; null while none are to be. */
  @state() private selected: ReadonlySet<string> | null = null;
  private work: Promise<void> = Promise.resolve();
  private readonly file = new FileReading(this);
  private readonly fileDrop = new FileDrop(this, (dropped) => this.bringIn([...dropped.files]));

  override connectedCallback(): void {
    super.connectedCallback();
    new StoreController(this, this.store);
  }

  protected override shouldUpdate(): boolean {
    return this.store.room === 'chest';
  }

  private async choose(): Promise<void> {
    this.bringIn(await chooseFiles('.json,.png,.svg,application/json,image/png,image/svg+xml', true));
  }

  private bringIn(files: readonly File[]): void {
    if (files.length > 0) this.work = this.work.then(() => this.read(files));
  }

  private async read(files: readonly File[]): Promise<void> {
    const { store } = this;
    const kept: string[] = [];
    for (const file of files) {
      const found = await importRecipe(file, store.project.recipes, (each) => this.file.read('recipe', each));
      if (found.kind === 'refused') for (const sentence of found.sentences) store.refuse(sentence);
      else if (found.kind === 'there') store.tell(say.isAlreadyInChest(found.title), 'news');
      else if (store.dispatch({ kind: 'keep-recipe', recipe: found.recipe })) kept.push(found.recipe.title);
    }
    if (kept.length === 1) store.tell(say.isInChest(kept[0] ?? ''), 'news');
    else if (kept.length > 1) store.tell(say.recipesAreInChest(kept.length), 'news');
  }

  private pick(id: string): void {
    if (this.selected === null) {
      this.look = 'large';
      this.opened = id;
      void this.updateComplete.then(() => this.renderRoot.querySelector('.opened')?.scrollIntoView({ block: 'nearest' }));
      return;
    }
    const selected = new Set(this.selected);
    if (!selected.delete(id)) selected.add(id);
    this.selected = selected;
  }

  /** What hangs in the Chest, and what is done with several of it. */
  private shelf(recipes: readonly Recipe[]) {
    const shown = sortedRecipes(recipes, this.view);
    const chosen = this.selected === null ? [] : recipes.filter(({ id }) => this.selected?.has(id) === true);
    return html`${
      recipes.length < 2
        ? nothing
        : shelfTools({
            recipes,
            shown: shown.length,
            view: this.view,
            look: this.look,
            selecting: this.selected !== null,
            setView: (change) => (this.view = { ...this.view, ...change }),
            setLook: (look) => (this.look = look),
            setSelecting: (on) => {
              this.selected = on ? new Set() : null;
              if (on && this.look === 'large') this.look = 'small';
            },
          })
    }
      ${this.selected === null ? nothing : html`<chest-selected .store=${this.store} .recipes=${chosen} @none=${() => (this.selected = null)}></chest-selected>`}
      ${shown.length === 0 ? html`<p class="soft">${say.noRecipeIsLike}</p>` : this.hung(shown)}`;
  }

  private hung(shown: readonly Recipe[]) {
    const { relative } = this.store;
    if (this.look === 'tree') {
      return html`<chest-recipe-walk
        .recipes=${shown}
        .relative=${relative}
        .selected=${this.selected}
        @pick-recipe=${(event: CustomEvent<string>) => this.pick(event.detail)}
      ></chest-recipe-walk>`;
    }
    const small = this.look === 'small';
    return html`<ul class="prints ${small ? 'few' : ''}" aria-label=${say.keptRecipes}>
      ${repeat(
        shown,
        (recipe) => recipe.id,
        (recipe) => html`<li class=${!small && this.opened === recipe.id ? 'opened' : ''} aria-label=${recipe.title}>
          ${
            small
              ? html`<chest-small-print
                .recipe=${recipe}
                .relative=${relative}
                .selected=${this.selected?.has(recipe.id) ?? null}
                @pick=${() => this.pick(recipe.id)}
              ></chest-small-print>`
              : html`<chest-print
                .store=${this.store}
                .recipe=${recipe}
                .opened=${this.opened === recipe.id}
                @unfold=${() => (this.opened = this.opened === recipe.id ? null : recipe.id)}
              ></chest-print>`
          }
        </li>`,
      )}
    </ul>`;
  }

  override render() {
    const { recipes } = this.store.project;
    return html`
      <div class="room">
        <header class="row">
          <h2>${say.keptRecipes}</h2>
          ${recipes.length === 0 ? nothing : html`<span class="soft">${recipes.length}</span>`}
          <span class="fill"></span>
          <button @click=${() => void this.choose()}>${say.bringInRecipeFiles}</button>
        </header>
        ${this.file.line()}
        ${
          recipes.length === 0
            ? html`<ps-empty centred heading=${say.nothingKeptYet}>
              <div slot="picture" class="ghosts" aria-hidden="true"><i></i><i></i><i></i></div>
              ${say.recipeHoldsEverythingIt}
              <button slot="actions" class="main" @click=${() => this.store.go('wall')}>${say.goToWall}</button>
            </ps-empty>`
            : this.shelf(recipes)
        }
        <chest-visits .store=${this.store}></chest-visits>
      </div>
      ${this.fileDrop.veil(say.dropRecipeFilesTo)}
    `;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'chest-room': ChestRoom;
  }
}
