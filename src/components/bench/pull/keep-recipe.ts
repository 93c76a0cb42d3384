import { html, LitElement, nothing } from 'lit';
import { customElement, query, state } from 'lit/decorators.js';
import type { Pull } from '../../../engine/stack/types.ts';
import type { Studio } from '../../../engine/studio/studio.ts';
import { engineFor } from '../../../workers/client/client.ts';
import { controls } from '../../ui/controls-style.ts';
import { dialogStyle } from '../../ui/kit/dialog-style.ts';
import { dialogBox } from '../../ui/kit/dialog.ts';
import { Work } from '../../ui/work.ts';

/** What the user says of a stack to be kept. */
export interface RecipeWords {
  title: string;
  note: string;
}

/**
 * Asks for the title of a recipe.
 * @fires keep CustomEvent<RecipeWords>
 */
@customElement('bench-keep-recipe')
export class KeepRecipe extends LitElement {
  static override styles = [controls, dialogStyle];

  @state() private open = false;
  @state() private title_ = '';
  @query('dialog') private dialog!: HTMLDialogElement;
  @query('input') private titleField!: HTMLInputElement;
  @query('textarea') private noteField!: HTMLTextAreaElement;

  /** Names from what is seen of the print. */
  private readonly names = new Work<string[]>(this);

  /** @param title proposed; selected, so that typing replaces it */
  show(title: string, studio: Studio, pulls: readonly Pull[]): void {
    this.title_ = title;
    void this.names.start(() => engineFor('picture').offeredNames({ studio, pulls }));
    this.open = true;
    void this.updateComplete.then(() => {
      this.dialog.showModal();
      this.titleField.focus();
      this.titleField.select();
    });
  }

  private take(name: string): void {
    this.titleField.value = name;
    this.titleField.focus();
  }

  private submit(event: Event): void {
    event.preventDefault();
    const words = { title: this.titleField.value.trim(), note: this.noteField.value.trim() };
    this.dialog.close();
    this.dispatchEvent(new CustomEvent<RecipeWords>('keep', { detail: words }));
  }

  override render() {
    return dialogBox(
      { heading: 'Keep as recipe', onClose: () => (this.open = false) },
      this.open
        ? html`<form @submit=${this.submit}>
            <label class="stacked">Title <input type="text" required pattern=".*\\S.*" maxlength="200" .value=${this.title_} /></label>
            ${
              this.names.found === null || this.names.found.length === 0
                ? nothing
                : html`<div class="row" role="group" aria-label="Names from what is seen">
                  ${this.names.found.map((name) => html`<button type="button" @click=${() => this.take(name)}>${name}</button>`)}
                </div>`
            }
            <label class="stacked">Note, if any <textarea rows="3" maxlength="4000"></textarea></label>
            <div class="buttons">
              <button type="button" @click=${() => this.dialog.close()}>Cancel</button>
              <button class="main" type="submit">Keep</button>
            </div>
          </form>`
        : nothing,
    );
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-keep-recipe': KeepRecipe;
  }
}
