/** Within so many pixels of an edge a drag scrolls. */
const ZONE_PX = 48;
/** A second scrolls by so many times how far the pointer is in the zone; at most a zone's worth. */
const TIMES_A_SECOND = 15;
/** A frame that came late, as where a processor draws, scrolls no further than one of so long, s. */
const LONGEST_FRAME_S = 0.1;

/**
 * How far a list scrolls in one frame while something is held at its edge.
 * @param x where the pointer is, with the edges of the list, CSS px
 * @param seconds since the frame before
 * @returns px to the right, below zero to the left; 0 away from the edges
 */
function edgeStep(x: number, { left, right }: DOMRect, seconds: number): number {
  const beyond = Math.max(0, x - (right - ZONE_PX)) - Math.max(0, left + ZONE_PX - x);
  const step = Math.min(ZONE_PX, Math.abs(beyond)) * TIMES_A_SECOND * Math.min(LONGEST_FRAME_S, seconds);
  // Less than a pixel would be rounded away, and the strip would stand.
  return Math.sign(beyond) * Math.max(1, step);
}

/**
 * Scrolls a list on, a step a frame, while something is held at its edge: a pointer that is held
 * still sends no events of its own.
 */
export class EdgeScroll {
  private readonly scroller: () => HTMLElement;
  private readonly moved: () => void;
  private frame: number | null = null;
  private x = 0;
  /** When the frame before came, ms; null while nothing scrolls. */
  private lastMs: number | null = null;

  /** @param moved called after each step */
  constructor(scroller: () => HTMLElement, moved: () => void) {
    this.scroller = scroller;
    this.moved = moved;
  }

  /** @param x where the pointer is now, CSS px */
  hold(x: number): void {
    this.x = x;
    this.frame ??= requestAnimationFrame((nowMs) => this.step(nowMs));
  }

  stop(): void {
    if (this.frame !== null) cancelAnimationFrame(this.frame);
    this.frame = null;
    this.lastMs = null;
  }

  private step(nowMs: number): void {
    this.frame = null;
    const seconds = (nowMs - (this.lastMs ?? nowMs)) / 1000;
    this.lastMs = nowMs;
    const scroller = this.scroller();
    const before = scroller.scrollLeft;
    scroller.scrollLeft += edgeStep(this.x, scroller.getBoundingClientRect(), seconds);
    if (scroller.scrollLeft === before) {
      this.lastMs = null;
      return;
    }
    this.hold(this.x);
    this.moved();
  }
}
