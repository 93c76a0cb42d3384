import { hearTrackpadPinch } from '../../ui/kit/trackpad-pinch.ts';
import type { WallScene } from '../wall-scene.ts';

const DRAG_PX = 5;
const DWELL_MS = 650;
const DOUBLE_TAP_MS = 400;

/** What pointing at the wall leads to. */
export interface GestureTargets {
  /** A print was clicked or tapped. */
  choose(index: number): void;
  /** A print was clicked or tapped twice. */
  open(index: number): void;
  /** The mouse has rested on a print, or left it (−1). */
  rest(index: number): void;
  /** The mouse is over a print, or over none (−1). */
  over(index: number): void;
  /** A box is drawn with the shift key held; null when it is done. */
  box(box: { left: number; top: number; width: number; height: number } | null): void;
  /** A box was drawn round these prints. */
  boxed(indexes: number[]): void;
  /** A print was clicked with the shift key held. */
  mark(index: number): void;
}

/** Makes a notch of a wheel come about a sixth closer, as on the Bench. */
const WHEEL_RATE = 0.0014;
const PINCH_RATE = 0.01;

/** Pan by drag or fingers; come closer by wheel or by pinching, as on the Bench. */
export class WallGestures {
  private readonly element: HTMLElement;
  private readonly scene: WallScene;
  private readonly targets: GestureTargets;
  private readonly pointers = new Map<number, { x: number; y: number }>();
  /** Where a box was begun. */
  private corner: { x: number; y: number } | null = null;
  private travelled = 0;
  private pinched = false;
  private lastTap = { index: -1, at: 0 };
  private under = -1;
  private dwell: ReturnType<typeof setTimeout> | undefined;
  private readonly ended = new AbortController();

  constructor(element: HTMLElement, scene: WallScene, targets: GestureTargets) {
    this.element = element;
    this.scene = scene;
    this.targets = targets;
    element.addEventListener('pointerdown', this.onDown);
    element.addEventListener('pointermove', this.onMove);
    element.addEventListener('pointerup', this.onUp);
    element.addEventListener('pointercancel', this.onCancel);
    element.addEventListener('pointerleave', this.onLeave);
    element.addEventListener('wheel', this.onWheel, { passive: false });
    hearTrackpadPinch(element, {
      busy: () => this.pointers.size > 0,
      zoom: (ratio, at) => {
        const { x, y } = this.at(at);
        this.scene.steering.zoomAt(ratio, x, y);
      },
      signal: this.ended.signal,
    });
  }

  private at(event: { clientX: number; clientY: number }): { x: number; y: number } {
    const box = this.element.getBoundingClientRect();
    return { x: event.clientX - box.left, y: event.clientY - box.top };
  }

  private readonly onDown = (event: PointerEvent): void => {
    if (event.pointerType === 'mouse' && event.button > 1) return;
    this.stopResting();
    this.element.setPointerCapture(event.pointerId);
    if (this.pointers.size === 0) {
      this.travelled = 0;
      this.pinched = false;
      this.corner = event.shiftKey ? this.at(event) : null;
    } else this.pinched = true;
    this.pointers.set(event.pointerId, this.at(event));
  };

  private readonly onMove = (event: PointerEvent): void => {
    const before = this.pointers.get(event.pointerId);
    const now = this.at(event);
    if (before === undefined) {
      if (event.pointerType === 'mouse') this.restOn(this.scene.printAt(now.x, now.y));
      return;
    }
    const others = [...this.pointers].filter(([id]) => id !== event.pointerId).map(([, point]) => point);
    this.pointers.set(event.pointerId, now);
    const other = others[0];
    if (other === undefined) {
      this.travelled += Math.hypot(now.x - before.x, now.y - before.y);
      if (this.corner !== null) {
        if (this.travelled > DRAG_PX) this.targets.box(boxOf(this.corner, now));
        return;
      }
      if (this.travelled > DRAG_PX) {
        this.element.toggleAttribute('data-dragging', true);
        this.scene.steering.panBy(now.x - before.x, now.y - before.y);
      }
      return;
    }
    // One finger of two moved: the middle moves half as far, the spread by the ratio.
    const spread = Math.hypot(before.x - other.x, before.y - other.y);
    const middle = { x: (now.x + other.x) / 2, y: (now.y + other.y) / 2 };
    this.scene.steering.panBy((now.x - before.x) / 2, (now.y - before.y) / 2);
    if (spread > 8) this.scene.steering.zoomAt(Math.hypot(now.x - other.x, now.y - other.y) / spread, middle.x, middle.y);
  };

  private readonly onUp = (event: PointerEvent): void => {
    if (!this.pointers.delete(event.pointerId)) return;
    this.element.toggleAttribute('data-dragging', false);
    const { x, y } = this.at(event);
    const { corner } = this;
    this.corner = null;
    if (corner !== null && this.travelled > DRAG_PX) {
      const { left, top, width, height } = boxOf(corner, { x, y });
      this.targets.box(null);
      this.targets.boxed(this.scene.printsIn(left, top, width, height));
      return;
    }
    if (this.pointers.size > 0 || this.pinched || this.travelled > DRAG_PX) return;
    const index = this.scene.printAt(x, y);
    if (index < 0) return;
    if (corner !== null) return this.targets.mark(index);
    const twice = this.lastTap.index === index && event.timeStamp - this.lastTap.at < DOUBLE_TAP_MS;
    this.lastTap = { index: twice ? -1 : index, at: event.timeStamp };
    if (twice) this.targets.open(index);
    else this.targets.choose(index);
  };

  private readonly onCancel = (event: PointerEvent): void => {
    this.pointers.delete(event.pointerId);
    this.corner = null;
    this.targets.box(null);
    this.element.toggleAttribute('data-dragging', false);
  };

  private readonly onLeave = (): void => this.stopResting();

  private restOn(index: number): void {
    if (index === this.under) return;
    this.stopResting();
    this.under = index;
    this.targets.over(index);
    if (index >= 0) this.dwell = setTimeout(() => this.targets.rest(index), DWELL_MS);
  }

  private stopResting(): void {
    clearTimeout(this.dwell);
    if (this.under >= 0) {
      this.targets.rest(-1);
      this.targets.over(-1);
    }
    this.under = -1;
  }

  private readonly onWheel = (event: WheelEvent): void => {
    event.preventDefault();
    this.stopResting();
    const unit = event.deltaMode === WheelEvent.DOM_DELTA_LINE ? 30 : event.deltaMode === WheelEvent.DOM_DELTA_PAGE ? 400 : 1;
    const { x, y } = this.at(event);
    const across = event.shiftKey && event.deltaX === 0 ? event.deltaY : event.deltaX;
    if (!event.ctrlKey && !event.metaKey && Math.abs(across) >= Math.abs(event.deltaY)) {
      this.scene.steering.panBy(-across * unit, 0);
      return;
    }
    // A wheel's notch is about 100, a pinch on a touchpad a few, known by ctrl.
    const rate = event.ctrlKey && Math.abs(event.deltaY) < 50 ? PINCH_RATE : WHEEL_RATE;
    this.scene.steering.zoomAt(Math.exp(-event.deltaY * unit * rate), x, y);
  };

  destroy(): void {
    clearTimeout(this.dwell);
    this.ended.abort();
    this.element.removeEventListener('pointerdown', this.onDown);
    this.element.removeEventListener('pointermove', this.onMove);
    this.element.removeEventListener('pointerup', this.onUp);
    this.element.removeEventListener('pointercancel', this.onCancel);
    this.element.removeEventListener('pointerleave', this.onLeave);
    this.element.removeEventListener('wheel', this.onWheel);
  }
}

function boxOf(a: { x: number; y: number }, b: { x: number; y: number }) {
  return { left: Math.min(a.x, b.x), top: Math.min(a.y, b.y), width: Math.abs(a.x - b.x), height: Math.abs(a.y - b.y) };
}
