import { html, LitElement, nothing } from 'lit';
import { customElement, query, state } from 'lit/decorators.js';
import { controls } from '../../ui/controls-style.ts';
import { dialogStyle } from '../../ui/kit/dialog-style.ts';
import { dialogBox } from '../../ui/kit/dialog.ts';

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

  /** @param title proposed; selected, so that typing replaces it */
  show(title: string): void {
    this.title_ = title;
    this.open = true;
    void this.updateComplete.then(() => {
      this.dialog.showModal();
      this.titleField.focus();
      this.titleField.select();
    });
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
