import type { Pull } from '../../../engine/stack/types.ts';
import { EdgeScroll } from './edge-scroll.ts';

/** Pixels a pointer moves before a press becomes a drag. */
const DRAG_SLACK_PX = 5;

/** A state that is pressed, and from `under` on moved. */
interface Drag {
  pull: string;
  pointer: number;
  ticket: HTMLElement;
  start: { x: number; y: number };
  /** Where the pointer is now. */
  x: number;
  y: number;
  startScroll: number;
  /** How far it may go right without making the strip longer, px. */
  most: number;
  under: boolean;
  /** Where the insertion mark is: before the state that now has this place. */
  slot: number;
}

interface StripParts {
  scroller(): HTMLElement;
  /** The states of the strip, first down first. */
  states(): HTMLElement[];
  changed(): void;
  /** A state was let go before the state that has a place. */
  drop(pull: string, slot: number): void;
}

/** A state of a strip that is moved by hand, in one row or in several. */
export class StripDrag {
  private readonly parts: StripParts;
  private readonly edge: EdgeScroll;
  private held: Drag | null = null;
  /** A click that a drag ends with is none. */
  ignoresClick = false;

  constructor(parts: StripParts) {
    this.parts = parts;
    this.edge = new EdgeScroll(parts.scroller, () => this.follow());
  }

  /** The pull that is pressed, whether or not it moves yet; null for none. */
  get pull(): string | null {
    return this.held?.pull ?? null;
  }

  /** Where the state that is moved would come to lie, px from the top left of the states; null while none is moved. */
  get mark(): { left: number; top: number; height: number } | null {
    if (this.held?.under !== true) return null;
    const states = this.parts.states();
    const at = states[this.held.slot];
    const last = states.at(-1);
    if (at !== undefined) return { left: at.offsetLeft, top: at.offsetTop, height: at.offsetHeight };
    return last === undefined ? null : { left: last.offsetLeft + last.offsetWidth, top: last.offsetTop, height: last.offsetHeight };
  }

  down(event: PointerEvent, pull: Pull, slot: number): void {
    const onHandle = (event.target as Element).closest('.handle') !== null;
    this.ignoresClick = false;
    if (event.button !== 0 || event.shiftKey || event.ctrlKey || event.metaKey || (event.pointerType === 'touch' && !onHandle)) return;
    const ticket = event.currentTarget as HTMLElement;
    const { clientX: x, clientY: y } = event;
    const scroller = this.parts.scroller();
    const startScroll = scroller.scrollLeft;
    const right = ticket.getBoundingClientRect().right - scroller.getBoundingClientRect().left + startScroll;
    const most = Math.max(0, scroller.scrollWidth - right);
    this.held = { pull: pull.id, pointer: event.pointerId, ticket, start: { x, y }, x, y, startScroll, most, under: false, slot };
    ticket.setPointerCapture(event.pointerId);
    this.parts.changed();
  }

  readonly move = (event: PointerEvent): void => {
    const { held } = this;
    if (held === null || event.pointerId !== held.pointer) return;
    held.under ||= Math.hypot(event.clientX - held.start.x, event.clientY - held.start.y) > DRAG_SLACK_PX;
    if (!held.under) return;
    held.x = event.clientX;
    held.y = event.clientY;
    this.follow();
    this.edge.hold(event.clientX);
  };

  /** Puts the ticket under the pointer and the mark where it would come to lie. */
  private follow(): void {
    const { held } = this;
    if (held === null) return;
    const boxes = this.parts.states().map((state) => state.getBoundingClientRect());
    const inRows = new Set(boxes.map(({ top }) => Math.round(top))).size > 1;
    held.slot = boxes.filter((box) => {
      const beforeInRow = held.x > box.left + box.width / 2;
      return inRows ? held.y > box.bottom || (held.y > box.top && beforeInRow) : beforeInRow;
    }).length;
    const { style } = held.ticket;
    const right = held.x - held.start.x + this.parts.scroller().scrollLeft - held.startScroll;
    style.setProperty('--drag-x', `${Math.min(held.most, right)}px`);
    style.setProperty('--drag-y', inRows ? `${held.y - held.start.y}px` : '-6px');
    this.parts.changed();
  }

  readonly up = (event: PointerEvent): void => {
    const { held } = this;
    if (held === null || event.pointerId !== held.pointer) return;
    this.letGo();
    if (!held.under || event.type === 'pointercancel') return;
    this.ignoresClick = true;
    this.parts.drop(held.pull, held.slot);
  };

  /** Lets the state back to where it was. */
  letGo(): void {
    this.held?.ticket.style.removeProperty('--drag-x');
    this.held?.ticket.style.removeProperty('--drag-y');
    this.edge.stop();
    this.held = null;
    this.parts.changed();
  }
}
