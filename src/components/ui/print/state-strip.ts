import { html, LitElement, nothing } from 'lit';
import { customElement, property, query } from 'lit/decorators.js';
import { repeat } from 'lit/directives/repeat.js';
import { defined, entryAt } from '../../../engine/base/at.ts';
import type { Pull } from '../../../engine/stack/types.ts';
import type { Studio } from '../../../engine/studio/studio.ts';
import type { Picture } from '../../../workers/api/picture-api.ts';
import './picture-view.ts';
import { say } from '../../words/en/ui/print.ts';
import { controls } from '../controls-style.ts';
import { pullWords } from '../words.ts';
import { stateStripStyle } from './state-strip-style.ts';
import { ticketOf } from './state-ticket.ts';
import { StripDrag } from './strip-drag.ts';

/** Width of a state where all are shown at once, px. */
const COMPACT_PX = 32;

/** How a further state is selected: with all between, or by itself beside those that are. */
export interface PullAlso {
  pull: string;
  how: 'range' | 'also';
}

/** A pull, or all that are selected where it is one of them, and the place that the first shall have. */
export interface PullMove {
  pull: string;
  to: number;
}

/**
 * The sheet after each pull, from bare paper to last down, each with its ticket. Tickets are
 * selected by click or arrow keys, several with Shift or Ctrl, moved by dragging or Alt with an arrow key,
 * removed by Delete.
 * @fires pull-select CustomEvent<string>: the pull's id
 * @fires pull-also CustomEvent<PullAlso>
 * @fires pull-move CustomEvent<PullMove>
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
  /** All that are selected together, with that one. */
  @property({ attribute: false }) together: ReadonlySet<string> = new Set();
  /** Whether all states are shown at once, small, in rows. */
  @property({ type: Boolean, reflect: true }) compact = false;
  /** Whether each click takes a state to those selected, or from them. */
  @property({ type: Boolean }) several = false;
  /** Whether pulls i and i + 1 may change places without a visible change. */
  @property({ attribute: false }) freeSwaps: readonly boolean[] = [];
  /** The ΔE00 below which prints count as the same. */
  @property({ type: Number }) minDeltaE = 1;
  /** The state that a build-up shows now: 0 is bare paper; −1 when none plays. */
  @property({ type: Number }) shown = -1;
  /** Width of a state, px. */
  @property({ type: Number }) width = 88;
  @query('.scroller') private scroller!: HTMLElement;
  @query('[role=listbox]') private list!: HTMLElement;
  private refocus = false;
  private readonly sizes = new ResizeObserver(() => this.markMore());
  private readonly drag = new StripDrag({
    scroller: () => this.scroller,
    states: () => [...this.list.querySelectorAll<HTMLElement>('.state')],
    changed: () => this.requestUpdate(),
    drop: (pull, slot) => this.drop(pull, slot),
  });

  protected override firstUpdated(): void {
    this.sizes.observe(this.scroller);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.sizes.disconnect();
    this.drag.letGo();
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
    if (this.drag.pull !== null && !this.pulls.some((pull) => pull.id === this.drag.pull)) this.drag.letGo();
  }

  override updated(changed: Map<PropertyKey, unknown>): void {
    const option = this.list.querySelector<HTMLElement>('.chosen');
    if (this.refocus) (option ?? this.list.querySelector<HTMLElement>('[tabindex="0"]'))?.focus({ preventScroll: true });
    this.refocus = false;
    this.markMore();
    if ((changed.has('selected') || changed.has('pulls')) && this.drag.pull === null && option !== null) this.reveal(option);
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
    if (event.key === 'Escape' && this.drag.pull !== null) {
      this.drag.letGo();
      event.preventDefault();
      return;
    }
    const at = this.pulls.findIndex((pull) => pull.id === this.selected);
    const here = Math.max(0, at);
    const pull = this.pulls[here];
    if (pull === undefined || event.ctrlKey || event.metaKey) return;
    const step = this.stepOf(event.key);
    if (step !== null && event.altKey) {
      const first = this.pulls.findIndex(({ id }) => this.movedWith(pull.id).has(id));
      const to = first + step;
      if (to >= 0 && to < this.pulls.length) this.tell<PullMove>('pull-move', { pull: pull.id, to });
    } else if (step !== null || event.key === 'Home' || event.key === 'End') {
      const to = step !== null ? (at < 0 ? here : here + step) : event.key === 'Home' ? 0 : this.pulls.length - 1;
      const next = entryAt(this.pulls, Math.max(0, Math.min(this.pulls.length - 1, to)));
      if (event.shiftKey) this.tell<PullAlso>('pull-also', { pull: next.id, how: 'range' });
      else this.tell('pull-select', next.id);
      this.focusSelected();
    } else if ((event.key === 'Delete' || event.key === 'Backspace') && at >= 0) {
      this.tell('pull-remove', pull.id);
    } else if (event.key === 'Enter' || event.key === ' ') {
      this.tell('pull-select', pull.id);
    } else return;
    event.preventDefault();
    event.stopPropagation();
  }

  /** How far a key goes along the pulls; up and down by a row, where there are rows. */
  private stepOf(key: string): number | null {
    const along = { ArrowLeft: -1, ArrowRight: 1 }[key];
    if (along !== undefined) return along;
    const down = { ArrowUp: -1, ArrowDown: 1 }[key];
    if (down === undefined || !this.compact) return null;
    const tops = [...this.list.querySelectorAll<HTMLElement>('.state')].map((state) => state.offsetTop);
    return down * tops.filter((top) => top === tops[0]).length;
  }

  private drop(pull: string, slot: number): void {
    const moved = this.movedWith(pull);
    const to = slot - this.pulls.slice(0, slot).filter(({ id }) => moved.has(id)).length;
    const from = this.pulls.findIndex(({ id }) => moved.has(id));
    if (moved.size === 1) this.tell('pull-select', pull);
    if (to !== from || moved.size > 1) this.tell<PullMove>('pull-move', { pull, to });
    this.focusSelected();
  }

  private movedWith(pull: string): ReadonlySet<string> {
    return this.together.has(pull) ? this.together : new Set([pull]);
  }

  private onClick(event: MouseEvent, pull: Pull): void {
    if (this.drag.ignoresClick) return;
    if (event.shiftKey) this.tell<PullAlso>('pull-also', { pull: pull.id, how: 'range' });
    else if (this.several || event.ctrlKey || event.metaKey) this.tell<PullAlso>('pull-also', { pull: pull.id, how: 'also' });
    else this.tell('pull-select', pull.id);
    this.focusSelected();
  }

  private sheet(index: number) {
    return html`<div class="sheet"><ps-picture aria-hidden="true" .picture=${this.pictures[index] ?? null}></ps-picture></div>`;
  }

  private option(pull: Pull, index: number) {
    const { drawer: studio, drag } = this;
    const selected = pull.id === this.selected;
    const free = index > 0 && this.freeSwaps[index - 1] === true;
    const name = pullWords(pull, index, studio) + (free ? say.freeSwapWithPull(index) : '');
    const dragged = drag.mark !== null && this.movedWith(drag.pull ?? '').has(pull.id);
    return html`<div
      role="option"
      class="state ${dragged ? 'dragged' : ''} ${this.shown === index + 1 ? 'shown' : ''} ${selected ? 'chosen' : ''}"
      aria-selected=${selected || this.together.has(pull.id)}
      aria-label=${name}
      title=${name}
      tabindex=${selected || (index === 0 && !this.pulls.some((entry) => entry.id === this.selected)) ? 0 : -1}
      @pointerdown=${(event: PointerEvent) => drag.down(event, pull, index)}
      @pointermove=${drag.move}
      @pointerup=${drag.up}
      @pointercancel=${drag.up}
      @click=${(event: MouseEvent) => this.onClick(event, pull)}
    >
      ${free ? html`<span class="free" aria-hidden="true">=</span>` : nothing}
      ${this.sheet(index + 1)}
      ${this.compact ? html`<div class="place">${index + 1}</div>` : ticketOf(pull, studio)}
    </div>`;
  }

  override render() {
    const { drawer: studio, compact } = this;
    const { widthMm, heightMm } = studio.paper;
    const { mark } = this.drag;
    const width = compact ? COMPACT_PX : this.width;
    return html`<div
      class="scroller ${mark === null ? '' : 'dragging'}"
      style="--state-width: ${width}px; --sheet-ratio: ${widthMm / heightMm}"
      @scroll=${this.markMore}
      @wheel=${this.onWheel}
    >
      <div class="state bare ${this.shown === 0 ? 'shown' : ''}">
        ${this.sheet(0)}
        ${compact ? html`<div class="place" title=${say.barePaper}>0</div>` : html`<div class="ticket"><div class="line">${say.barePaper}</div></div>`}
      </div>
      <div
        role="listbox"
        aria-label=${say.stateStripFirstDown}
        aria-orientation="horizontal"
        aria-multiselectable="true"
        aria-keyshortcuts="Alt+ArrowLeft Alt+ArrowRight Shift+ArrowLeft Shift+ArrowRight Delete"
        @keydown=${this.onKey}
      >
        ${repeat(
          this.pulls,
          (pull) => pull.id,
          (pull, index) => this.option(pull, index),
        )}
        ${mark === null ? nothing : html`<div class="mark" style="left: ${mark.left}px; top: ${mark.top - 6}px; height: ${mark.height + 6}px"></div>`}
      </div>
      <div class="end ${this.childElementCount === 0 ? 'none' : ''}"><slot @slotchange=${() => this.requestUpdate()}></slot></div>
    </div>
    ${this.freeSwaps.some(Boolean) ? html`<p class="swaps">${say.freeSwapTwoNeighbouring(html`<b>=</b>`, this.minDeltaE)}</p>` : nothing}`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'ps-state-strip': StateStrip;
  }
}
