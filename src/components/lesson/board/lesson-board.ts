import { html, LitElement, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { entryAt } from '../../../engine/base/at.ts';
import { LESSON_PULLS } from '../../../engine/base/limits.ts';
import { type LessonSheet, lessonStudio, opacityOf, withOpacity } from '../../../engine/lesson/lesson-sheet.ts';
import { moveCopy } from '../../../engine/stack/copied-pulls.ts';
import type { Pull } from '../../../engine/stack/types.ts';
import { controls } from '../../ui/controls-style.ts';
import '../../ui/kit/progress.ts';
import { say } from '../../words/en/lesson/board.ts';
import './compare-bar.ts';
import { ALL_RIGHTS, type BoardChange, type BoardRights } from './board-change.ts';
import './contact-sheet.ts';
import type { CompareLook } from './compare-bar.ts';
import { isFreeSpace } from './free-space.ts';
import './lesson-sheet.ts';
import { lessonBoardStyle } from './lesson-board-style.ts';
import type { PullOffset } from './lesson-sheet.ts';
import { LessonStand } from './lesson-stand.ts';
import './order-pile.ts';
import './pull-tools.ts';
import { builtWords, orderWords, pictureWords } from './lesson-words.ts';
import type { OpacityPick } from './pull-tools.ts';

/** One print, then the other, for so long each: slower than what could harm anyone (WCAG 2.3.1). */
const BLINK_MS = 900;

/**
 * One large print, its pulls beside it to be put in another order, and all pictures that they can print.
 * @fires change CustomEvent<BoardChange>: shapes were moved, or inks made clearer or more opaque
 * @fires order-change Event: the pulls were put in another order by hand
 * @fires put-back Event: they shall be as they were
 * @fires stand Event: the order, what is known of it, or how far it is built has changed
 * @fires trouble CustomEvent<string>: why something could not be drawn; empty when it could again
 */
@customElement('ps-lesson-board')
export class LessonBoard extends LitElement {
  static override styles = [controls, lessonBoardStyle];

  @property({ attribute: false }) sheet!: LessonSheet;
  /** Whether the paper is shown white. */
  @property({ type: Boolean }) relative = true;
  @property({ attribute: false }) rights: BoardRights = ALL_RIGHTS;
  /** Whether the print and the pictures are hidden until someone asks. */
  @property({ type: Boolean }) covered = false;
  /** Whether it is read from afar: fewer words, larger. */
  @property({ type: Boolean }) hall = false;
  /** Whether the pictures are hidden until someone asks; the print is not. */
  @property({ type: Boolean }) untold = false;
  /** Whether something was moved or made clearer, so that it can be put back. */
  @property({ type: Boolean }) changed = false;
  /** Whether the keys of the room are the board's. */
  @property({ type: Boolean }) active = true;
  @state() private selected: string | null = null;
  @state() private dragging = false;
  @state() private look: CompareLook = 'where';
  @state() private blinked = false;
  private blinking: ReturnType<typeof setInterval> | undefined;
  /** Drags so far: each is undone by itself. */
  private drags = 0;
  readonly stand = new LessonStand(this, {
    failed: (sentence) => this.dispatchEvent(new CustomEvent('trouble', { detail: sentence })),
    settled: () => this.dispatchEvent(new CustomEvent('trouble', { detail: '' })),
  });

  override connectedCallback(): void {
    super.connectedCallback();
    window.addEventListener('keydown', this.onKey);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    window.removeEventListener('keydown', this.onKey);
    clearInterval(this.blinking);
  }

  /** The space bar lays one pull more, wherever it does nothing else. */
  private readonly onKey = (event: KeyboardEvent): void => {
    if (!this.active || this.covered || this.sheet.pulls.length < LESSON_PULLS.least || !isFreeSpace(event)) return;
    event.preventDefault();
    this.build(event.shiftKey ? -1 : 1);
  };

  build(step: 1 | -1): void {
    this.stopComparing();
    this.stand.build(step);
  }

  private stopComparing(): void {
    this.stand.compare(null);
    this.setLook('where');
  }

  private compare(picture: number): void {
    if (picture === this.stand.otherPicture) this.stopComparing();
    else {
      if (this.stand.built < this.stand.order.length) this.stand.setOrder(this.stand.order);
      this.stand.compare(picture);
    }
  }

  private setLook(look: CompareLook): void {
    clearInterval(this.blinking);
    this.look = look;
    this.blinked = look === 'other';
    if (look === 'blink') this.blinking = setInterval(() => (this.blinked = !this.blinked), BLINK_MS);
  }

  /** Shows where the print differs from that of another order. */
  compareWith(order: readonly number[]): void {
    this.setLook('where');
    this.stand.compareWith(order);
  }

  setOrder(order: readonly number[]): void {
    this.stopComparing();
    this.stand.setOrder(order);
  }

  private change(change: Partial<BoardChange>): void {
    const { pulls, inks } = this.sheet;
    this.dispatchEvent(new CustomEvent<BoardChange>('change', { detail: { pulls: [...pulls], inks: [...inks], ...change } }));
  }

  private moveTo({ pull, ...to }: PullOffset): void {
    this.change({ pulls: moveCopy(this.sheet.pulls, pull, to), move: `${pull} ${this.drags}` });
  }

  private setOpacity({ ink, opacity }: OpacityPick): void {
    this.dragging = true;
    this.change({ inks: withOpacity(this.sheet.inks, ink, opacity), move: `opacity ${ink} ${this.drags}` });
  }

  private setDragging(dragging: boolean): void {
    this.dragging = dragging;
    this.drags++;
  }

  protected override willUpdate(): void {
    const { sheet, relative, dragging: draft } = this;
    if (!sheet.pulls.some(({ id }) => id === this.selected)) this.selected = sheet.pulls[0]?.id ?? null;
    const { widthMm, heightMm } = sheet.studio.paper;
    this.style.setProperty('--sheet-aspect', (widthMm / heightMm).toFixed(4));
    this.stand.follow({ sheet, relative, draft });
  }

  protected override updated(): void {
    this.dispatchEvent(new Event('stand'));
  }

  private renderPile() {
    const { sheet, rights, stand } = this;
    const studio = lessonStudio(sheet.studio, sheet.inks);
    const pull = sheet.pulls.find(({ id }) => id === this.selected);
    return html`<div class="pile">
      <ps-order-pile
        .pulls=${sheet.pulls}
        .studio=${studio}
        .order=${stand.order}
        .built=${this.covered ? stand.order.length : stand.built}
        .selected=${this.selected}
        ?fixed=${!rights.order}
        @order=${(event: CustomEvent<number[]>) => {
          this.setOrder(event.detail);
          this.dispatchEvent(new Event('order-change'));
        }}
        @pull-select=${(event: CustomEvent<string>) => (this.selected = event.detail)}
      ></ps-order-pile>
      ${this.hall && stand.against !== null ? this.renderCompare() : nothing}
      ${
        (rights.place || rights.ink) && !(this.hall && stand.against !== null)
          ? html`<ps-pull-tools
            .pulls=${sheet.pulls}
            .studio=${studio}
            .selected=${this.selected}
            .opacity=${pull === undefined ? 0 : opacityOf(sheet.inks, pull.ink)}
            ?changed=${this.changed}
            ?short=${this.hall}
            .inks=${rights.ink}
            .places=${rights.place}
            @opacity=${(event: CustomEvent<OpacityPick>) => this.setOpacity(event.detail)}
            @opacity-end=${() => this.setDragging(false)}
            @pull-offset=${(event: CustomEvent<PullOffset>) => this.moveTo(event.detail)}
            @put-back=${() => this.dispatchEvent(new Event('put-back'))}
          ></ps-pull-tools>`
          : nothing
      }
    </div>`;
  }

  private get down(): Pull[] {
    return this.stand.order.map((at) => entryAt(this.sheet.pulls, at));
  }

  private renderPrint() {
    const { sheet, stand, covered } = this;
    const { studio } = sheet;
    const whole = stand.built === stand.order.length;
    const { difference } = stand.run;
    const comparing = stand.against !== null;
    const picture = comparing && this.blinked ? (difference?.other ?? stand.run.sheet) : stand.run.sheet;
    return html`<div class="print ${comparing && !this.hall ? 'comparing' : ''} ${covered && !this.rights.place ? 'blind' : ''}">
      <ps-lesson-sheet
        .pulls=${sheet.pulls}
        .studio=${studio}
        .picture=${picture}
        .outline=${comparing && this.look === 'where' ? (difference?.outline ?? null) : null}
        .selected=${this.selected}
        ?covered=${covered}
        ?fixed=${!this.rights.place}
        label=${whole ? say.printOf(orderWords(stand.order)) : builtWords(this.down, stand.built, studio)}
        @pull-select=${(event: CustomEvent<string>) => (this.selected = event.detail)}
        @pull-offset=${(event: CustomEvent<PullOffset>) => this.moveTo(event.detail)}
        @drag-state=${(event: CustomEvent<boolean>) => this.setDragging(event.detail)}
      ></ps-lesson-sheet>
      ${covered ? html`<slot name="covered"></slot>` : comparing && !this.hall ? this.renderCompare() : this.renderBuild(whole)}
    </div>`;
  }

  private renderCompare() {
    const { stand, sheet } = this;
    return html`<ps-compare-bar
      .picture=${stand.picture}
      .other=${stand.otherPicture}
      .pulls=${sheet.pulls}
      .places=${stand.run.difference?.places ?? null}
      .look=${this.look}
      @look=${(event: CustomEvent<CompareLook>) => this.setLook(event.detail)}
      @compare-end=${() => this.stopComparing()}
    ></ps-compare-bar>`;
  }

  /** Lays a pull more; what then lies on the sheet is said aloud as well. */
  private renderBuild(whole: boolean) {
    const { stand } = this;
    const { answer } = stand;
    const known = whole && !this.untold && answer !== null && stand.picture >= 0;
    const words = known
      ? pictureWords(answer.result, stand.picture, this.hall)
      : builtWords(this.down, stand.built, this.sheet.studio, this.hall);
    return html`<div class="build">
      <button aria-label=${say.onePullFewer} title=${say.onePullFewerShift} @click=${() => this.build(-1)}>−</button>
      <p role="status">${words}</p>
      <button aria-label=${say.onePullMore} title=${say.onePullMoreSpace} @click=${() => this.build(1)}>+</button>
    </div>`;
  }

  private renderPictures() {
    const { stand } = this;
    const { answer } = stand;
    const { progress, stopped } = stand.run;
    if (this.covered || this.untold) return html`<div class="pictures"><slot name="pictures"></slot></div>`;
    return html`<div class="pictures">
      <slot name="pictures"></slot>
      ${stopped ? html`<p class="row soft">${say.stoppedBeforeAllOrders} <button @click=${() => stand.run.again()}>${say.goOn}</button></p>` : nothing}
      ${
        progress === null || progress === 0
          ? nothing
          : html`<ps-progress label=${say.comparingAllOrders} .value=${progress} words=${say.compared(Math.round(progress * 100))} @stop=${() => stand.run.stop()}></ps-progress>`
      }
      ${
        answer === null
          ? html`<p class="soft">${say.printingAllOrders}</p>`
          : html`<ps-contact-sheet
            class=${stand.run.outdated && !this.dragging ? 'behind' : ''}
            .answer=${answer}
            ?bare=${this.hall}
            .shown=${stand.picture}
            .against=${stand.otherPicture}
            @picture-select=${(event: CustomEvent<number>) => {
              this.stopComparing();
              stand.show(event.detail);
            }}
            @picture-compare=${(event: CustomEvent<number>) => this.compare(event.detail)}
          ></ps-contact-sheet>`
      }
    </div>`;
  }

  override render() {
    return html`<slot name="task"></slot>${this.renderPile()} ${this.renderPrint()} ${this.renderPictures()}`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'ps-lesson-board': LessonBoard;
  }
}
