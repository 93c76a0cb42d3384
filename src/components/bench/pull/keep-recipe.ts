import { html, LitElement, nothing } from 'lit';
import { customElement, query, state } from 'lit/decorators.js';
import type { Pull } from '../../../engine/stack/types.ts';
import type { Studio } from '../../../engine/studio/studio.ts';
import { controls } from '../../ui/controls-style.ts';
import { dialogStyle } from '../../ui/kit/dialog-style.ts';
import { dialogBox } from '../../ui/kit/dialog.ts';
import '../../ui/next/offered-names.ts';
import type { Unnamed } from '../../ui/next/offered-names.ts';
import { say } from '../../words/en/bench/pull.ts';

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
  @state() private of: Unnamed | null = null;
  @query('dialog') private dialog!: HTMLDialogElement;
  @query('input') private titleField!: HTMLInputElement;
  @query('textarea') private noteField!: HTMLTextAreaElement;

  /** @param title proposed; selected, so that typing replaces it */
  show(title: string, studio: Studio, pulls: readonly Pull[]): void {
    this.title_ = title;
    this.of = { studio, pulls };
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
      { heading: say.keepAsRecipe, onClose: () => (this.open = false) },
      this.open
        ? html`<form @submit=${this.submit}>
            <label class="stacked">${say.title} <input type="text" required pattern=".*\\S.*" maxlength="200" .value=${this.title_} /></label>
            <ps-offered-names .of=${this.of} @take=${({ detail }: CustomEvent<string>) => this.take(detail)}></ps-offered-names>
            <label class="stacked">${say.noteIfAny} <textarea rows="3" maxlength="4000"></textarea></label>
            <div class="buttons">
              <button type="button" @click=${() => this.dialog.close()}>${say.cancel}</button>
              <button class="main" type="submit">${say.keep}</button>
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
