import { hearTrackpadPinch } from '../../ui/kit/trackpad-pinch.ts';
import type { SheetView } from './sheet-view.ts';

/** A notch of a mouse wheel is 100 to 120; this makes it about a sixth closer. */
const WHEEL_RATE = 0.0014;
/** A pinch on a trackpad comes as small wheel steps with Ctrl. */
const PINCH_RATE = 0.01;

export interface PanZoomOptions {
  moving(moving: boolean): void;
  /** The place on the sheet under the pointer, mm; null when it leaves. */
  point(place: { xMm: number; yMm: number } | null): void;
  /** A place that was pressed without moving. */
  tap(place: { xMm: number; yMm: number }): void;
  /** Whether a press there takes hold of something that lies on the sheet, rather than of the sheet. */
  takes(event: PointerEvent): boolean;
  /** What was taken hold of lies so much further, mm; `done` when it is let go there. */
  drag(by: { dxMm: number; dyMm: number }, done: boolean): void;
  /** It belongs where it was: the drag was broken off. */
  dragBack(): void;
}

/** A hand moves so far without meaning to, px. */
const STILL_PX = 5;

/** Wheel, drag and pinch on a frame move and scale its view; a drag of what lies on the sheet moves that. */
export class PanZoom {
  private readonly frame: HTMLElement;
  private readonly view: SheetView;
  private readonly options: PanZoomOptions;
  /** Where a press began that may be a tap; null once it is none. */
  private still: { x: number; y: number } | null = null;
  /** The pointer that holds something on the sheet, and where it took it. */
  private held: { pointer: number; x: number; y: number; moved: boolean } | null = null;
  private readonly down = new Map<number, { x: number; y: number }>();

  constructor(frame: HTMLElement, view: SheetView, options: PanZoomOptions) {
    this.frame = frame;
    this.view = view;
    this.options = options;
    frame.addEventListener('wheel', this.onWheel, { passive: false });
    hearTrackpadPinch(frame, {
      busy: () => this.down.size > 0,
      zoom: (ratio, at) => {
        const { x, y } = this.at(at);
        view.zoom(ratio, x, y);
      },
    });
    frame.addEventListener('pointerdown', this.onDown);
    frame.addEventListener('pointermove', this.onMove);
    frame.addEventListener('pointerup', this.onUp);
    frame.addEventListener('pointercancel', this.onUp);
    frame.addEventListener('pointerleave', () => options.point(null));
    frame.addEventListener('dblclick', (event) => {
      const { x, y } = this.at(event);
      view.zoom(event.shiftKey ? 0.5 : 2, x, y);
    });
  }

  private at(event: { clientX: number; clientY: number }): { x: number; y: number } {
    const { left, top } = this.frame.getBoundingClientRect();
    return { x: event.clientX - left, y: event.clientY - top };
  }

  private readonly onWheel = (event: WheelEvent): void => {
    event.preventDefault();
    const { x, y } = this.at(event);
    const lines = event.deltaMode === WheelEvent.DOM_DELTA_LINE ? 30 : 1;
    this.view.zoom(Math.exp(-event.deltaY * lines * (event.ctrlKey ? PINCH_RATE : WHEEL_RATE)), x, y);
  };

  private readonly onDown = (event: PointerEvent): void => {
    if (event.button !== 0) return;
    this.still = this.down.size === 0 ? this.at(event) : null;
    // A second finger pinches the sheet.
    this.letGo();
    if (this.still !== null && this.options.takes(event)) this.held = { pointer: event.pointerId, ...this.still, moved: false };
    this.down.set(event.pointerId, this.at(event));
    this.frame.setPointerCapture(event.pointerId);
    this.options.moving(true);
  };

  /** Lets what is dragged back to where it was. */
  letGo(): boolean {
    const moved = this.held?.moved === true;
    this.held = null;
    if (moved) this.options.dragBack();
    return moved;
  }

  private dragHeld(now: { x: number; y: number }, done: boolean): void {
    const { held } = this;
    if (held === null) return;
    const { pxPerMm } = this.view;
    held.moved = true;
    this.options.drag({ dxMm: (now.x - held.x) / pxPerMm, dyMm: (now.y - held.y) / pxPerMm }, done);
  }

  private readonly onMove = (event: PointerEvent): void => {
    const { view } = this;
    const now = this.at(event);
    const { still } = this;
    if (still !== null && Math.hypot(now.x - still.x, now.y - still.y) > STILL_PX) this.still = null;
    const before = this.down.get(event.pointerId);
    if (this.held !== null && this.held.pointer === event.pointerId) {
      if (this.still === null) this.dragHeld(now, false);
    } else if (before !== undefined) {
      if (this.down.size >= 2) {
        const [one, other] = [...this.down].filter(([id]) => id !== event.pointerId).map(([, place]) => place);
        if (one !== undefined && other === undefined) {
          const distance = (place: { x: number; y: number }): number => Math.max(1, Math.hypot(place.x - one.x, place.y - one.y));
          view.pan((now.x - before.x) / 2, (now.y - before.y) / 2);
          view.zoom(distance(now) / distance(before), (now.x + one.x) / 2, (now.y + one.y) / 2);
        }
      } else view.pan(now.x - before.x, now.y - before.y);
    }
    if (before !== undefined) this.down.set(event.pointerId, now);
    this.options.point(this.onSheet(now));
  };

  private onSheet({ x, y }: { x: number; y: number }): { xMm: number; yMm: number } {
    const { origin, pxPerMm } = this.view;
    return { xMm: (x - origin.x) / pxPerMm, yMm: (y - origin.y) / pxPerMm };
  }

  private readonly onUp = (event: PointerEvent): void => {
    if (event.type === 'pointerup' && this.still !== null && this.down.has(event.pointerId)) this.options.tap(this.onSheet(this.still));
    if (this.held?.pointer === event.pointerId) {
      if (event.type === 'pointerup' && this.still === null) {
        this.dragHeld(this.at(event), true);
        this.held = null;
      } else this.letGo();
    }
    this.still = null;
    this.down.delete(event.pointerId);
    if (this.down.size === 0) this.options.moving(false);
  };
}
