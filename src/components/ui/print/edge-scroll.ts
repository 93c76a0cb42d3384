/** Within so many pixels of an edge a drag scrolls. */
const ZONE_PX = 48;
/** A frame scrolls by this share of how far the pointer is in the zone; at most a zone's worth. */
const SHARE = 1 / 4;

/**
 * How far a list scrolls in one frame while something is held at its edge.
 * @param x where the pointer is, with the edges of the list, CSS px
 * @returns px to the right, below zero to the left; 0 away from the edges
 */
function edgeStep(x: number, left: number, right: number): number {
  const beyond = Math.max(0, x - (right - ZONE_PX)) - Math.max(0, left + ZONE_PX - x);
  const step = Math.max(-ZONE_PX, Math.min(ZONE_PX, beyond)) * SHARE;
  // Less than a pixel would be rounded away, and the strip would stand.
  return step === 0 ? 0 : Math.sign(step) * Math.max(1, Math.abs(step));
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

  /** @param moved called after each step */
  constructor(scroller: () => HTMLElement, moved: () => void) {
    this.scroller = scroller;
    this.moved = moved;
  }

  /** @param x where the pointer is now, CSS px */
  hold(x: number): void {
    this.x = x;
    this.frame ??= requestAnimationFrame(() => this.step());
  }

  stop(): void {
    if (this.frame !== null) cancelAnimationFrame(this.frame);
    this.frame = null;
  }

  private step(): void {
    this.frame = null;
    const scroller = this.scroller();
    const { left, right } = scroller.getBoundingClientRect();
    const before = scroller.scrollLeft;
    scroller.scrollLeft += edgeStep(this.x, left, right);
    if (scroller.scrollLeft === before) return;
    this.hold(this.x);
    this.moved();
  }
}
