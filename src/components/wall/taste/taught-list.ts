import { css, html, LitElement, svg } from 'lit';
import { customElement, property, query } from 'lit/decorators.js';
import { num } from '../../../engine/base/at.ts';
import { SKETCH_FIELDS } from '../../../engine/explore/look/sketch.ts';
import type { TasteChoice, TastePrint } from '../../../engine/explore/taste/choices.ts';
import { sketchOfText } from '../../../engine/explore/taste/traits.ts';
import { controls } from '../../ui/controls-style.ts';
import { dialogStyle } from '../../ui/kit/dialog-style.ts';
import { dialogBox } from '../../ui/kit/dialog.ts';
import { say } from '../../words/en/wall/taste.ts';
import { wayWord } from './taste-words.ts';

/** What was taught, choice by choice, each of which can be forgotten. Tells `forget`. */
@customElement('wall-taught-list')
export class TaughtList extends LitElement {
  static override styles = [
    controls,
    dialogStyle,
    css`
      dialog {
        --dialog-width: 760px;
      }
      ul {
        margin: var(--space-5) 0;
        padding: 0;
        list-style: none;
      }
      li {
        display: flex;
        flex-wrap: wrap;
        align-items: center;
        gap: var(--space-2) var(--space-5);
        padding: var(--space-3) 0;
        border-top: 1px solid var(--line);
      }
      .said {
        display: flex;
        flex: 1 1 16em;
        flex-wrap: wrap;
        align-items: center;
        gap: var(--space-2) var(--space-4);
        min-width: 0;
        overflow-wrap: anywhere;
        font-size: var(--type-label);
      }
      .print {
        display: inline-flex;
        align-items: center;
        gap: var(--space-3);
      }
      svg {
        flex: none;
        width: 25px;
        height: 36px;
        border: 1px solid var(--line);
      }
    `,
  ];

  @property({ attribute: false }) choices: readonly TasteChoice[] = [];
  @query('dialog') private dialog!: HTMLDialogElement;

  show(): void {
    this.dialog.showModal();
  }

  /** Who forgot by keys stays in the list as it gets shorter. */
  protected override updated(): void {
    if (this.dialog.open && this.shadowRoot?.activeElement === null) this.dialog.querySelector('button')?.focus();
  }

  private forget(choices: readonly TasteChoice[]): void {
    this.dispatchEvent(new CustomEvent('forget', { detail: choices, bubbles: true, composed: true }));
  }

  private print({ name, sketch }: TastePrint) {
    const { across, down } = SKETCH_FIELDS;
    const lab = sketchOfText(sketch);
    return html`<span class="print"><svg viewBox="0 0 ${across} ${down}" preserveAspectRatio="none" aria-hidden="true">
        ${Array.from({ length: across * down }, (_, field) => svg`<rect x=${field % across} y=${Math.floor(field / across)} width="1.05" height="1.05" fill="oklab(${[0, 1, 2].map((i) => num(lab, field * 3 + i).toFixed(3)).join(' ')})" />`)}
      </svg>
      <span>${name.replace('no.', 'No.')}</span></span>`;
  }

  private one(choice: TasteChoice) {
    const [other] = choice.over;
    return html`<li>
      <span class="said">
        ${this.print(choice.chosen)} <span class="soft">${wayWord(choice.way)}</span>
        ${choice.way === 'compared' && other !== undefined ? this.print(other) : html`<span class="soft small">${say.overPrintsBesideIt(choice.over.length)}</span>`}
      </span>
      <button class="quiet" @click=${() => this.forget([choice])}>${say.forgetThis}</button>
    </li>`;
  }

  override render() {
    const { choices } = this;
    return dialogBox(
      { heading: say.whatWasTaught, closable: true },
      choices.length === 0
        ? html`<p class="soft">${say.nothingYet}</p>`
        : html`<p class="soft small">${say.newestFirstSmallPictures}</p>
            <ul>
              ${choices.toReversed().map((choice) => this.one(choice))}
            </ul>
            <p class="buttons"><button @click=${() => this.forget(choices)}>${say.forgetAllChoices(choices.length)}</button></p>`,
    );
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'wall-taught-list': TaughtList;
  }
}
