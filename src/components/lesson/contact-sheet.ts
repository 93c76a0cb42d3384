import { html, LitElement, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { repeat } from 'lit/directives/repeat.js';
import { entryAt, num } from '../../engine/base/at.ts';
import '../ui/print/picture-view.ts';
import { controls } from '../ui/controls-style.ts';
import '../ui/kit/fold.ts';
import { cardList } from '../ui/layout-style.ts';
import { counted } from '../ui/words.ts';
import { contactSheetStyle } from './contact-sheet-style.ts';
import type { LessonAnswer } from './lesson-run.ts';
import { orderWords } from './lesson-words.ts';
import { chipStyles, orderChips } from './order-chips.ts';

/** Orders listed under a print before the rest is folded away. */
const LISTED = 6;
/** Pictures shown before the rest is asked for: six pulls can have 720. */
const SHOWN = 120;

/**
 * Each picture that the pulls can print, with the orders that print it.
 * @fires order-select CustomEvent<number>: index of an order to look at
 */
@customElement('ps-contact-sheet')
export class ContactSheet extends LitElement {
  static override styles = [controls, chipStyles, cardList, contactSheetStyle];

  @property({ attribute: false }) answer!: LessonAnswer;
  /** Index of the order that is looked at. */
  @property({ type: Number }) shown = 0;

  /** Pictures shown; all of them when asked for. */
  @state() private most = SHOWN;

  private orders(indexes: readonly number[]) {
    const { question, result } = this.answer;
    return html`<div class="orders">
      ${indexes.map((index) => orderChips(entryAt(result.orders, index), question.pulls, question.studio))}
    </div>`;
  }

  override render() {
    const { question, result } = this.answer;
    const small = result.groups.length > 24;
    return html`<ul style=${small ? '--print: 124px' : nothing}>
      ${repeat(
        result.groups.slice(0, this.most),
        (group) => group[0],
        (group, at) => {
          const first = num(group, 0);
          return html`<li>
            <button
              class="print"
              aria-pressed=${group.includes(this.shown)}
              aria-label="Show ${orderWords(entryAt(result.orders, first))} on the sheet"
              @click=${() => this.dispatchEvent(new CustomEvent<number>('order-select', { detail: first }))}
            >
              <ps-picture
                .picture=${entryAt(result.pictures, at)}
                label="Print of ${orderWords(entryAt(result.orders, first))}"
                style="width: 100%; aspect-ratio: ${question.studio.paper.widthMm} / ${question.studio.paper.heightMm}"
              ></ps-picture>
            </button>
            <span class="how-many">${counted(group.length, 'order')}${small ? nothing : group.length === 1 ? ' prints this' : ' print this'}</span>
            ${this.orders(group.slice(0, LISTED))}
            ${
              group.length > LISTED
                ? html`<ps-fold quiet label="${group.length - LISTED} more">
                  ${this.orders(group.slice(LISTED))}
                </ps-fold>`
                : nothing
            }
          </li>`;
        },
      )}
    </ul>
    ${
      result.groups.length > this.most
        ? html`<p class="row">
          ${this.most} of ${result.groups.length} pictures are shown.
          <button @click=${() => (this.most = Infinity)}>Show all</button>
        </p>`
        : nothing
    }`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'ps-contact-sheet': ContactSheet;
  }
}
