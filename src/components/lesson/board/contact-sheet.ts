import { html, LitElement, nothing } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import { repeat } from 'lit/directives/repeat.js';
import { entryAt, num } from '../../../engine/base/at.ts';
import '../../ui/print/picture-view.ts';
import { controls } from '../../ui/controls-style.ts';
import '../../ui/kit/fold.ts';
import { cardList } from '../../ui/layout-style.ts';
import { say } from '../../words/en/lesson/board.ts';
import { contactSheetStyle } from './contact-sheet-style.ts';
import { FallTogether } from './fall-together.ts';
import type { LessonAnswer } from './lesson-run.ts';
import { orderWords } from './lesson-words.ts';
import { chipStyles, orderChips } from './order-chips.ts';

/** Orders listed under a print before the rest is folded away. */
const LISTED = 4;
/** Pictures shown before the rest is asked for: six pulls can have 720. */
const SHOWN = 120;
/** So many pictures stand large; more are small. */
const LARGE = 24;

/**
 * Each picture that the pulls can print, with the orders that print it.
 * @fires picture-select CustomEvent<number>: the picture to look at, counted from 0
 * @fires picture-compare CustomEvent<number>: the picture to compare the one shown with
 */
@customElement('ps-contact-sheet')
export class ContactSheet extends LitElement {
  static override styles = [controls, chipStyles, cardList, contactSheetStyle];

  @property({ attribute: false }) answer!: LessonAnswer;
  /** The picture that is looked at, counted from 0. */
  @property({ type: Number }) shown = 0;
  /** The picture that it is compared with; −1 for none. */
  @property({ type: Number }) against = -1;
  /** Whether the orders under the pictures are left out. */
  @property({ type: Boolean }) bare = false;

  /** Pictures shown; all of them when asked for. */
  @state() private most = SHOWN;
  @query('.layer') private layer!: HTMLElement;
  private readonly falling = new FallTogether();

  private cards(): HTMLElement[] {
    return [...this.renderRoot.querySelectorAll<HTMLElement>('.print')];
  }

  protected override willUpdate(changed: Map<PropertyKey, unknown>): void {
    if (changed.has('answer') && this.hasUpdated) this.falling.before(this.cards());
  }

  protected override updated(changed: Map<PropertyKey, unknown>): void {
    if (changed.has('answer')) this.falling.after(this.cards(), this.answer, this.layer);
  }

  private orders(indexes: readonly number[]) {
    const { question, result } = this.answer;
    return html`<div class="orders">
      ${indexes.map((index) => orderChips(entryAt(result.orders, index), question.pulls, question.studio))}
    </div>`;
  }

  private tell(name: string, picture: number): void {
    this.dispatchEvent(new CustomEvent<number>(name, { detail: picture }));
  }

  private renderOrders(group: readonly number[]) {
    if (this.bare) return nothing;
    return html`${this.orders(group.slice(0, LISTED))}
    ${
      group.length > LISTED
        ? html`<ps-fold quiet label=${say.more(group.length - LISTED)}>
          ${this.orders(group.slice(LISTED))}
        </ps-fold>`
        : nothing
    }`;
  }

  private renderPicture(group: readonly number[], at: number) {
    const { question, result } = this.answer;
    const { widthMm, heightMm } = question.studio.paper;
    const first = num(group, 0);
    const orders = say.orders(group.length);
    return html`<li>
      <button
        class="print"
        data-first=${first}
        aria-pressed=${at === this.shown}
        aria-label=${say.pictureShowOnSheet(at + 1, orders, orderWords(entryAt(result.orders, first)))}
        @click=${() => this.tell('picture-select', at)}
      >
        <ps-picture
          aria-hidden="true"
          .picture=${entryAt(result.pictures, at)}
          style="width: 100%; aspect-ratio: ${widthMm} / ${heightMm}"
        ></ps-picture>
      </button>
      <div class="below">
        <span class="how-many"><b>${at + 1}</b> ${this.bare ? nothing : orders}</span>
        ${
          at === this.shown
            ? html`<span class="soft small">${this.bare ? nothing : say.shown}</span>`
            : html`<button
              class="quiet compare"
              aria-pressed=${at === this.against}
              aria-label=${say.comparePictureWithOne(at + 1)}
              @click=${() => this.tell('picture-compare', at)}
            >
              ${say.compare}
            </button>`
        }
      </div>
      ${this.renderOrders(group)}
    </li>`;
  }

  override render() {
    const { result } = this.answer;
    const small = result.groups.length > LARGE;
    return html`<div class="frame">
        <ul class=${small ? 'small' : ''} aria-label=${say.allPictures}>
          ${repeat(
            result.groups.slice(0, this.most),
            (group) => group[0],
            (group, at) => this.renderPicture(group, at),
          )}
        </ul>
        <div class="layer"></div>
      </div>
      ${
        result.groups.length > this.most
          ? html`<p class="row">
            ${say.ofPicturesAreShown(this.most, result.groups.length)}
            <button @click=${() => (this.most = Infinity)}>${say.showAll}</button>
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
