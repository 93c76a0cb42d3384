import { css, html, LitElement, nothing } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import { MOST_PULLS } from '../../../engine/base/limits.ts';
import type { Studio } from '../../../engine/studio/studio.ts';
import '../../ui/kit/ink-chip.ts';
import { controls } from '../../ui/controls-style.ts';
import { dialogStyle } from '../../ui/kit/dialog-style.ts';
import { dialogBox } from '../../ui/kit/dialog.ts';
import '../../ui/kit/problem.ts';
import { pickStyle } from '../../ui/pick-style.ts';
import { screenGlyph } from '../../ui/print/screen-outline.ts';
import { say } from '../../words/en/bench/pull.ts';
import { say as room } from '../../words/en/bench/room.ts';

/** So many screens are found without typing. */
const FILTER_FROM = 13;

/** A screen and an ink for a new pull. */
export interface NewPull {
  screen: string;
  ink: string;
}

/**
 * Asks for the screen and the ink of a new pull.
 * @fires add CustomEvent<NewPull>
 */
@customElement('bench-add-pull')
export class AddPull extends LitElement {
  static override styles = [
    controls,
    pickStyle,
    dialogStyle,
    css`
      legend {
        padding: 0 0 var(--space-3);
        font-size: var(--type-small);
        color: var(--ink-soft);
      }
      .screens {
        display: grid;
        grid-template-columns: repeat(auto-fill, minmax(112px, 1fr));
        gap: var(--space-2);
        max-height: min(320px, 38dvh);
        overflow-y: auto;
        padding: var(--space-1);
      }
      .inks {
        display: grid;
        grid-template-columns: repeat(auto-fill, minmax(128px, 1fr));
        gap: var(--space-1) var(--space-4);
        padding: var(--space-1);
        max-height: 180px;
        overflow-y: auto;
      }
      label.choice {
        min-height: 36px;
        padding: 0 var(--space-3);
        min-width: 0;
        gap: var(--space-5);
      }
      .screens label.choice {
        display: grid;
        align-content: start;
        justify-items: center;
        gap: var(--space-3);
        padding: var(--space-5) var(--space-3) var(--space-4);
        font-size: var(--type-small);
      }
      label.choice span {
        max-width: 100%;
        overflow-wrap: anywhere;
        line-height: 1.25;
        text-wrap: balance;
      }
      .screens label.choice span {
        text-align: center;
      }
      label.choice:has(:checked) {
        font-weight: 600;
      }
      .glyph {
        width: 56px;
        height: 44px;
      }
    `,
  ];

  @property({ attribute: false }) drawer!: Studio;
  /** Whether the stack takes no further pull. */
  @property({ type: Boolean }) full = false;
  @state() private screen = '';
  @state() private ink = '';
  @state() private filter = '';
  @state() private open = false;
  @query('dialog') private dialog!: HTMLDialogElement;

  /** Opens the dialog; the last choices still stand. */
  show(): void {
    const { screens, inks } = this.drawer;
    if (!screens.some((screen) => screen.id === this.screen)) this.screen = screens[0]?.id ?? '';
    if (!inks.some((ink) => ink.id === this.ink)) this.ink = inks[0]?.id ?? '';
    this.filter = '';
    this.open = true;
    void this.updateComplete.then(() => {
      this.dialog.showModal();
      this.renderRoot.querySelector<HTMLElement>('.screens :checked')?.focus();
    });
  }

  private submit(event: Event): void {
    event.preventDefault();
    this.dialog.close();
    this.dispatchEvent(new CustomEvent<NewPull>('add', { detail: { screen: this.screen, ink: this.ink } }));
  }

  private content() {
    const { screens, inks } = this.drawer;
    const filter = this.filter.trim().toLowerCase();
    const found = screens.filter((screen) => filter === '' || `${screen.number} ${screen.name}`.toLowerCase().includes(filter));
    return html`<form @submit=${this.submit}>
      ${
        screens.length < FILTER_FROM
          ? nothing
          : html`<label class="stacked">
            ${say.findScreen}
            <input type="search" .value=${this.filter} @input=${(event: Event) => (this.filter = (event.target as HTMLInputElement).value)} />
          </label>`
      }
      <fieldset role="radiogroup">
        <legend>${say.screen}</legend>
        <div class="screens">
          ${found.map(
            (screen) => html`<label class="choice pick">
              <input
                type="radio"
                name="screen"
                aria-label=${say.screenNumber(screen.number, screen.name)}
                .checked=${screen.id === this.screen}
                @change=${() => (this.screen = screen.id)}
              />
              ${screenGlyph(screen, this.drawer)}
              <span>${screen.number} ${screen.name}</span>
            </label>`,
          )}
        </div>
        ${found.length === 0 ? html`<p class="small soft">${say.noScreenIsCalled}</p>` : nothing}
      </fieldset>
      <fieldset role="radiogroup">
        <legend>${say.inkOverWhiteAnd}</legend>
        <div class="inks">
          ${inks.map(
            (ink) => html`<label class="choice pick">
              <input type="radio" name="ink" aria-label=${ink.name} .checked=${ink.id === this.ink} @change=${() => (this.ink = ink.id)} />
              <ps-ink-chip .ink=${ink}></ps-ink-chip><span>${ink.name}</span>
            </label>`,
          )}
        </div>
      </fieldset>
      ${this.full ? html`<ps-problem>${room.stackIsFull(MOST_PULLS)}</ps-problem>` : html`<p class="small soft">${say.itGoesDownLast}</p>`}
      <div class="buttons">
        <button type="button" @click=${() => this.dialog.close()}>${say.cancel}</button>
        <button class="main" type="submit" ?disabled=${this.full || !screens.some((screen) => screen.id === this.screen) || this.ink === ''}>${say.addPull}</button>
      </div>
    </form>`;
  }

  override render() {
    return dialogBox({ heading: say.addPull2, onClose: () => (this.open = false) }, this.open ? this.content() : nothing);
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-add-pull': AddPull;
  }
}
