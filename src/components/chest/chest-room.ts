import { css, html, LitElement, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { repeat } from 'lit/directives/repeat.js';
import { type AppStore, StoreController } from '../app-store.ts';
import { controls } from '../ui/controls-style.ts';
import { chooseFiles } from '../ui/download.ts';
import { FileDrop, fileDropStyles } from '../ui/files/file-drop.ts';
import { FileReading } from '../ui/files/file-reading.ts';
import '../ui/kit/empty.ts';
import { cardGrid } from '../ui/layout-style.ts';
import { importRecipe } from './import-recipes.ts';
import './recipe-print.ts';
import './visit-list.ts';

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
      }
    `,
  ];

  @property({ attribute: false }) store!: AppStore;
  @state() private opened: string | null = null;
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
      if (found.kind === 'refused') for (const sentence of found.sentences) store.tell(sentence);
      else if (found.kind === 'there') store.tell(`${found.title} is already in the chest.`, 'news');
      else if (store.dispatch({ kind: 'keep-recipe', recipe: found.recipe })) kept.push(found.recipe.title);
    }
    if (kept.length === 1) store.tell(`${kept[0]} is in the chest.`, 'news');
    else if (kept.length > 1) store.tell(`${kept.length} recipes are in the chest.`, 'news');
  }

  override render() {
    const { recipes } = this.store.project;
    return html`
      <div class="room">
        <header class="row">
          <h2>Kept recipes</h2>
          ${recipes.length === 0 ? nothing : html`<span class="soft">${recipes.length}</span>`}
          <span class="fill"></span>
          <button @click=${() => void this.choose()}>Bring in recipe files…</button>
        </header>
        ${this.file.line()}
        ${
          recipes.length === 0
            ? html`<ps-empty centred heading="Nothing kept yet">
              <div slot="picture" class="ghosts" aria-hidden="true"><i></i><i></i><i></i></div>
              A recipe holds everything it takes to build a print: its screens, inks, paper and pulls. Keep one from the Wall or the Bench, or drop a recipe file here.
              <button slot="actions" class="main" @click=${() => this.store.go('wall')}>Go to the Wall</button>
            </ps-empty>`
            : html`<ul class="prints" aria-label="Kept recipes">
              ${repeat(
                recipes,
                (recipe) => recipe.id,
                (recipe) => html`<li class=${this.opened === recipe.id ? 'opened' : ''} aria-label=${recipe.title}>
                  <chest-print
                    .store=${this.store}
                    .recipe=${recipe}
                    .opened=${this.opened === recipe.id}
                    @unfold=${() => (this.opened = this.opened === recipe.id ? null : recipe.id)}
                  ></chest-print>
                </li>`,
              )}
            </ul>`
        }
        <chest-visits .store=${this.store}></chest-visits>
      </div>
      ${this.fileDrop.veil('Drop recipe files to keep them')}
    `;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'chest-room': ChestRoom;
  }
}
