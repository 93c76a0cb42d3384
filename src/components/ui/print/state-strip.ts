import { html, LitElement, nothing } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import { repeat } from 'lit/directives/repeat.js';
import { defined, entryAt } from '../../../engine/base/at.ts';
import type { Pull } from '../../../engine/stack/types.ts';
import type { Studio } from '../../../engine/studio/studio.ts';
import '../kit/ink-chip.ts';
import type { Picture } from '../../../workers/api/picture-api.ts';
import './picture-view.ts';
import { controls } from '../controls-style.ts';
import { offsetText, pullWords } from '../words.ts';
import { EdgeScroll } from './edge-scroll.ts';
import { screenGlyph } from './screen-outline.ts';
import { stateStripStyle } from './state-strip-style.ts';

/** Pixels a pointer moves before a press becomes a drag. */
const DRAG_SLACK_PX = 5;
interface Drag {
  pull: string;
  pointer: number;
  ticket: HTMLElement;
  startX: number;
  /** Where the pointer is now. */
  x: number;
  startScroll: number;
  under: boolean;
  /** Place of the insertion mark: before the pull that now has this position. */
  slot: number;
}

/**
 * The sheet after each pull, from bare paper to last down, each with its ticket. Tickets are
 * chosen by click or arrow keys, moved by dragging or Alt with an arrow key, removed by Delete.
 * @fires pull-select CustomEvent<string>: the pull's id
 * @fires pull-move CustomEvent<{ pull: string; to: number }>: the position it shall have
 * @fires pull-remove CustomEvent<string>: the pull's id
 */
@customElement('ps-state-strip')
export class StateStrip extends LitElement {
  static override styles = [controls, stateStripStyle];

  @property({ attribute: false }) pulls: readonly Pull[] = [];
  @property({ attribute: false }) drawer!: Studio;
  /** Bare paper first: pulls + 1 pictures, fewer while they come. */
  @property({ attribute: false }) pictures: readonly Picture[] = [];
  @property({ attribute: false }) selected: string | null = null;
  /** Whether pulls i and i + 1 may change places without a visible change. */
  @property({ attribute: false }) freeSwaps: readonly boolean[] = [];
  /** The ΔE00 below which prints count as the same. */
  @property({ type: Number }) minDeltaE = 1;
  /** The state that a build-up shows now: 0 is bare paper; −1 when none plays. */
  @property({ type: Number }) shown = -1;
  /** Width of a state, px. */
  @property({ type: Number }) width = 88;
  @state() private drag: Drag | null = null;
  @query('.scroller') private scroller!: HTMLElement;
  @query('[role=listbox]') private list!: HTMLElement;
  private refocus = false;
  private readonly sizes = new ResizeObserver(() => this.markMore());
  private ignoreClick = false;
  private readonly edge = new EdgeScroll(
    () => this.scroller,
    () => this.followDrag(),
  );

  protected override firstUpdated(): void {
    this.sizes.observe(this.scroller);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.sizes.disconnect();
    this.edge.stop();
  }

  /** States that lie beyond the strip's end are hinted at. */
  private markMore(): void {
    const { scrollLeft, scrollWidth, clientWidth } = this.scroller;
    this.toggleAttribute('data-more', scrollLeft + clientWidth < scrollWidth - 2);
  }

  /** A wheel that only turns one way walks the strip. */
  private onWheel(event: WheelEvent): void {
    if (event.ctrlKey || event.shiftKey || event.deltaX !== 0) return;
    const before = this.scroller.scrollLeft;
    this.scroller.scrollLeft += event.deltaY * (event.deltaMode === WheelEvent.DOM_DELTA_LINE ? 30 : 1);
    if (this.scroller.scrollLeft !== before) event.preventDefault();
  }

  /** Puts the focus on the selected ticket once it is drawn. */
  focusSelected(): void {
    this.refocus = true;
    this.requestUpdate();
  }

  override willUpdate(): void {
    // Moving a node takes the focus from it; whoever moved a ticket goes on with that ticket.
    if (this.shadowRoot?.activeElement instanceof HTMLElement && this.shadowRoot.activeElement.matches('.state')) this.refocus = true;
    if (this.drag !== null && !this.pulls.some((pull) => pull.id === defined(this.drag).pull)) this.drag = null;
    if (this.drag === null) this.edge.stop();
  }

  override updated(changed: Map<PropertyKey, unknown>): void {
    const option = this.list.querySelector<HTMLElement>('[aria-selected=true]');
    if (this.refocus) (option ?? this.list.querySelector<HTMLElement>('[tabindex="0"]'))?.focus({ preventScroll: true });
    this.refocus = false;
    this.markMore();
    if ((changed.has('selected') || changed.has('pulls')) && this.drag === null && option !== null) this.reveal(option);
  }

  private reveal(option: HTMLElement): void {
    const box = option.getBoundingClientRect();
    const frame = this.scroller.getBoundingClientRect();
    if (frame.width === 0) return;
    const end = defined(this.renderRoot.querySelector('.end')).getBoundingClientRect().width;
    const over = Math.max(0, box.right + 10 + end - frame.right) - Math.max(0, frame.left - box.left + 30);
    if (over !== 0) this.scroller.scrollBy({ left: over });
  }

  private tell<T>(name: string, detail: T): void {
    this.dispatchEvent(new CustomEvent<T>(name, { detail }));
  }

  private onKey(event: KeyboardEvent): void {
    if (event.key === 'Escape' && this.drag !== null) {
      this.drag = null;
      event.preventDefault();
      return;
    }
    const at = this.pulls.findIndex((pull) => pull.id === this.selected);
    const here = at < 0 ? 0 : at;
    const pull = this.pulls[here];
    if (pull === undefined || event.ctrlKey || event.metaKey) return;
    const step = { ArrowLeft: -1, ArrowRight: 1 }[event.key];
    if (step !== undefined && event.altKey) {
      const to = here + step;
      if (to >= 0 && to < this.pulls.length) this.tell('pull-move', { pull: pull.id, to });
    } else if (step !== undefined || event.key === 'Home' || event.key === 'End') {
      const to = step !== undefined ? (at < 0 ? here : here + step) : event.key === 'Home' ? 0 : this.pulls.length - 1;
      const next = entryAt(this.pulls, Math.max(0, Math.min(this.pulls.length - 1, to)));
      this.tell('pull-select', next.id);
      this.focusSelected();
    } else if ((event.key === 'Delete' || event.key === 'Backspace') && at >= 0) {
      this.tell('pull-remove', pull.id);
    } else if (event.key === 'Enter' || event.key === ' ') {
      this.tell('pull-select', pull.id);
    } else return;
    event.preventDefault();
    event.stopPropagation();
  }

  private onDown(event: PointerEvent, pull: Pull): void {
    const onHandle = (event.target as Element).closest('.handle') !== null;
    this.ignoreClick = false;
    if (event.button !== 0 || (event.pointerType === 'touch' && !onHandle)) return;
    const slot = this.pulls.indexOf(pull);
    this.drag = {
      pull: pull.id,
      pointer: event.pointerId,
      ticket: event.currentTarget as HTMLElement,
      startX: event.clientX,
      x: event.clientX,
      startScroll: this.scroller.scrollLeft,
      under: false,
      slot,
    };
    (event.currentTarget as HTMLElement).setPointerCapture(event.pointerId);
  }

  private onMove(event: PointerEvent): void {
    const { drag } = this;
    if (drag === null || event.pointerId !== drag.pointer) return;
    const under = drag.under || Math.abs(event.clientX - drag.startX) > DRAG_SLACK_PX;
    if (!under) return;
    this.drag = { ...drag, under, x: event.clientX };
    this.followDrag();
    this.edge.hold(event.clientX);
  }

  /** Puts the ticket under the pointer and the mark where it would come to lie. */
  private followDrag(): void {
    const { drag } = this;
    if (drag === null) return;
    const states = [...this.list.querySelectorAll<HTMLElement>('.state')];
    let slot = 0;
    for (const option of states) {
      const box = option.getBoundingClientRect();
      if (drag.x > box.left + box.width / 2) slot++;
    }
    const shift = drag.x - drag.startX + this.scroller.scrollLeft - drag.startScroll;
    drag.ticket.style.setProperty('--drag-x', `${shift}px`);
    this.drag = { ...drag, slot };
  }

  private onUp(event: PointerEvent): void {
    const { drag } = this;
    if (drag === null || event.pointerId !== drag.pointer) return;
    drag.ticket.style.removeProperty('--drag-x');
    this.edge.stop();
    this.drag = null;
    if (!drag.under || event.type === 'pointercancel') return;
    this.ignoreClick = true;
    const from = this.pulls.findIndex((pull) => pull.id === drag.pull);
    const to = drag.slot > from ? drag.slot - 1 : drag.slot;
    this.tell('pull-select', drag.pull);
    if (to !== from) this.tell('pull-move', { pull: drag.pull, to });
    this.focusSelected();
  }

  private onClick(pull: Pull): void {
    if (this.ignoreClick) return;
    this.tell('pull-select', pull.id);
    this.focusSelected();
  }

  private sheet(index: number) {
    return html`<div class="sheet"><ps-picture aria-hidden="true" .picture=${this.pictures[index] ?? null}></ps-picture></div>`;
  }

  private option(pull: Pull, index: number) {
    const { drawer: studio, drag } = this;
    const screen = studio.screens.find((entry) => entry.id === pull.screen);
    const ink = studio.inks.find((entry) => entry.id === pull.ink);
    const selected = pull.id === this.selected;
    const free = index > 0 && this.freeSwaps[index - 1] === true;
    const name = pullWords(pull, index, studio) + (free ? `; a free swap with pull ${index}` : '');
    const still = pull.dxMm === 0 && pull.dyMm === 0;
    const turn = pull.turnDeg === 0 ? '' : `${String(pull.turnDeg).replace('-', '−')}°`;
    const offset = still ? (turn === '' ? 'no offset' : 'turned') : `${offsetText(pull.dxMm)} ${offsetText(pull.dyMm)} mm`;
    return html`<div
      role="option"
      class="state ${drag?.under === true && drag.pull === pull.id ? 'dragged' : ''} ${this.shown === index + 1 ? 'shown' : ''}"
      aria-selected=${selected}
      aria-label=${name}
      title=${name}
      tabindex=${selected || (index === 0 && !this.pulls.some((entry) => entry.id === this.selected)) ? 0 : -1}
      @pointerdown=${(event: PointerEvent) => this.onDown(event, pull)}
      @pointermove=${this.onMove}
      @pointerup=${this.onUp}
      @pointercancel=${this.onUp}
      @click=${() => this.onClick(pull)}
    >
      ${free ? html`<span class="free" aria-hidden="true">=</span>` : nothing}
      ${this.sheet(index + 1)}
      <div class="ticket">
        <div class="line"><span class="number">${screen?.number ?? '?'}</span>${screenGlyph(screen, studio)}</div>
        <div class="line"><ps-ink-chip .ink=${ink}></ps-ink-chip>${turn}<span class="strokes">×${pull.strokes}</span></div>
        <div class="line offset ${offset.length > 13 ? 'long' : ''}">${offset}</div>
      </div>
      <div class="handle" aria-hidden="true">
        <svg viewBox="0 0 22 10" fill="none" stroke="currentColor" stroke-width="1.5"><path d="M1 1h20M1 5h20M1 9h20" /></svg>
      </div>
    </div>`;
  }

  override render() {
    const { drag, drawer: studio, width } = this;
    const { widthMm, heightMm } = studio.paper;
    const cell = width + 22;
    return html`<div
      class="scroller ${drag?.under === true ? 'dragging' : ''}"
      style="--state-width: ${width}px; --sheet-ratio: ${widthMm / heightMm}"
      @scroll=${this.markMore}
      @wheel=${this.onWheel}
    >
      <div class="state bare ${this.shown === 0 ? 'shown' : ''}">
        ${this.sheet(0)}
        <div class="ticket"><div class="line">bare paper</div></div>
      </div>
      <div
        role="listbox"
        aria-label="State strip, first down to last down"
        aria-orientation="horizontal"
        aria-keyshortcuts="Alt+ArrowLeft Alt+ArrowRight Delete"
        @keydown=${this.onKey}
      >
        ${repeat(
          this.pulls,
          (pull) => pull.id,
          (pull, index) => this.option(pull, index),
        )}
        ${drag?.under === true ? html`<div class="mark" style="left: ${drag.slot * cell}px"></div>` : nothing}
      </div>
      <div class="end ${this.childElementCount === 0 ? 'none' : ''}"><slot @slotchange=${() => this.requestUpdate()}></slot></div>
    </div>
    ${
      this.freeSwaps.some(Boolean)
        ? html`<p class="swaps"><b>=</b> free swap: two neighbouring pulls that may change places; the print stays the same within ΔE ${this.minDeltaE}.</p>`
        : nothing
    }`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'ps-state-strip': StateStrip;
  }
}
