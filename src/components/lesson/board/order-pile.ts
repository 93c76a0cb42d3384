import { html, LitElement, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { repeat } from 'lit/directives/repeat.js';
import { entryAt } from '../../../engine/base/at.ts';
import type { Pull } from '../../../engine/stack/types.ts';
import type { Studio } from '../../../engine/studio/studio.ts';
import { controls } from '../../ui/controls-style.ts';
import { holdPage } from '../../ui/hold-page.ts';
import { say } from '../../words/en/lesson/board.ts';
import { pullChip } from './order-chips.ts';
import { orderPileStyle } from './order-pile-style.ts';

/** Pixels that a pointer moves before a press becomes a drag. */
const DRAG_SLACK_PX = 5;

interface Drag {
  /** Place of the pull in the lesson. */
  pull: number;
  pointer: number;
  x: number;
  y: number;
  under: boolean;
}

/**
 * The pulls as they lie: last down on top. Each is moved by dragging, by its arrows, or by Alt with an arrow key.
 * @fires order CustomEvent<number[]>: places of the pulls, first down first
 * @fires pull-select CustomEvent<string>: the pull's id
 */
@customElement('ps-order-pile')
export class OrderPile extends LitElement {
  static override styles = [controls, orderPileStyle];

  /** In the order of the lesson, which their numbers tell. */
  @property({ attribute: false }) pulls: readonly Pull[] = [];
  @property({ attribute: false }) studio!: Studio;
  /** Places of the pulls, first down first. */
  @property({ attribute: false }) order: readonly number[] = [];
  @property({ attribute: false }) selected: string | null = null;
  /** How many of them lie on the sheet. */
  @property({ type: Number }) built = 0;
  /** Whether the order can be changed here. */
  @property({ type: Boolean }) fixed = false;
  @state() private drag: Drag | null = null;
  /** Where the focus goes once the pile is drawn anew: moving a node takes it. */
  private refocus = '';

  override connectedCallback(): void {
    super.connectedCallback();
    // What is dragged is moved within the page, which takes the pointer from it: the window still hears it.
    window.addEventListener('pointermove', this.onMove);
    window.addEventListener('pointerup', this.onUp);
    window.addEventListener('pointercancel', this.onUp);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    window.removeEventListener('pointermove', this.onMove);
    window.removeEventListener('pointerup', this.onUp);
    window.removeEventListener('pointercancel', this.onUp);
  }

  protected override updated(): void {
    if (this.refocus === '') return;
    const wanted = this.renderRoot.querySelector<HTMLButtonElement>(this.refocus);
    this.refocus = '';
    const pull = wanted?.closest('li')?.querySelector<HTMLButtonElement>('.pull');
    (wanted?.disabled === true ? pull : wanted)?.focus({ preventScroll: true });
  }

  /** @param to its place among the pulls, first down 0 */
  private move(pull: number, to: number, focus = ''): void {
    const rest = this.order.filter((each) => each !== pull);
    const order = [...rest.slice(0, to), pull, ...rest.slice(to)];
    if (order.join() === this.order.join() || to < 0 || to > rest.length) return;
    this.refocus = focus;
    this.dispatchEvent(new CustomEvent<number[]>('order', { detail: order }));
  }

  private onKey(event: KeyboardEvent, pull: number): void {
    const step = { ArrowUp: 1, ArrowRight: 1, ArrowDown: -1, ArrowLeft: -1 }[event.key];
    if (step === undefined || !event.altKey || this.fixed) return;
    event.preventDefault();
    this.move(pull, this.order.indexOf(pull) + step, `li[data-pull="${pull}"] .pull`);
  }

  private onDown(event: PointerEvent, pull: number): void {
    if (event.button !== 0 || this.fixed) return;
    this.drag = { pull, pointer: event.pointerId, x: event.clientX, y: event.clientY, under: false };
  }

  private readonly onMove = (event: PointerEvent): void => {
    const { drag } = this;
    if (drag?.pointer !== event.pointerId) return;
    if (!drag.under && Math.hypot(event.clientX - drag.x, event.clientY - drag.y) < DRAG_SLACK_PX) return;
    if (!drag.under) this.drag = { ...drag, under: true };
    const lying = getComputedStyle(entryAt([...this.renderRoot.querySelectorAll('ul')], 0)).flexDirection.startsWith('row');
    const below = [...this.renderRoot.querySelectorAll<HTMLElement>('li')].filter((item) => {
      if (item.dataset['pull'] === String(drag.pull)) return false;
      const box = item.getBoundingClientRect();
      return lying ? box.left + box.width / 2 < event.clientX : box.top + box.height / 2 > event.clientY;
    });
    this.move(drag.pull, below.length);
  };

  private readonly onUp = (event: PointerEvent): void => {
    if (this.drag?.pointer === event.pointerId) this.drag = null;
  };

  private item(pull: number, place: number) {
    const { studio, drag } = this;
    const it = entryAt(this.pulls, pull);
    const screen = studio.screens.find(({ id }) => id === it.screen);
    const ink = studio.inks.find(({ id }) => id === it.ink);
    const name = screen?.name ?? say.screenThatIsGone;
    const dragged = drag?.under === true && drag.pull === pull;
    const waits = place >= this.built;
    const arrow = (way: 'over' | 'under', to: number, sign: string) => html`<button
      class="quiet arrow ${way}"
      aria-label=${say.pullLater(name, way === 'over')}
      ?disabled=${to < 0 || to >= this.order.length}
      @click=${() => this.move(pull, to, `li[data-pull="${pull}"] .${way}`)}
    >
      ${sign}
    </button>`;
    return html`<li data-pull=${pull} class="${dragged ? 'dragged' : ''} ${waits ? 'waits' : ''}">
      <button
        class="pull"
        aria-pressed=${it.id === this.selected}
        title="${name}, ${ink?.name ?? ''}"
        @click=${() => this.dispatchEvent(new CustomEvent<string>('pull-select', { detail: it.id }))}
        @pointerdown=${(event: PointerEvent) => this.onDown(event, pull)}
        @touchstart=${holdPage(() => !this.fixed)}
        @keydown=${(event: KeyboardEvent) => this.onKey(event, pull)}
      >
        ${pullChip(it, pull, studio)}<span class="name">${name}<span class="ink">${ink?.name ?? ''}</span></span>
        ${waits ? html`<span class="visually-hidden">${say.notYetOnSheet}</span>` : nothing}
      </button>
      ${this.fixed ? nothing : html`<span class="arrows">${arrow('over', place + 1, '↑')}${arrow('under', place - 1, '↓')}</span>`}
    </li>`;
  }

  override render() {
    const topFirst = this.order.map((pull, place) => ({ pull, place })).reverse();
    return html`<p class="end" aria-hidden="true">${say.lastDownOnTop}</p>
      <ul aria-label=${say.pullsLastDownFirst}>
        ${repeat(
          topFirst,
          ({ pull }) => pull,
          ({ pull, place }) => this.item(pull, place),
        )}
      </ul>
      <p class="end first" aria-hidden="true">${say.firstDown}</p>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'ps-order-pile': OrderPile;
  }
}
