import { num } from '../../../engine/base/at.ts';
import type { View } from '../camera/camera.ts';
import type { PlanIndex } from '../plan/plan-index.ts';
import type { Extent } from '../plan/wall-layout.ts';
import type { WallPlan } from '../plan/wall-plan.ts';

/** Smaller prints go without their numbers: the numbers would be louder than the prints. */
const LEAST_PRINT_PX = 74;

/** Draws the number under each print in view, on a canvas of its own above the prints. */
export class NumberLabels {
  readonly canvas = document.createElement('canvas');
  readonly context: CanvasRenderingContext2D | null;
  density = 1;
  /** False when something was drawn that must be wiped away. */
  blank = true;
  colour = '';
  strong = '';
  /** Prints with a pin in them. */
  pinned: ReadonlySet<number> = new Set();
  /** What prints are called that have no number on this wall. */
  names: ReadonlyMap<number, string> = new Map();
  /** The wall behind, as a rim about letters. */
  wall = '';
  font = 'sans-serif';

  constructor() {
    this.context = this.canvas.getContext('2d');
    this.canvas.setAttribute('aria-hidden', 'true');
  }

  resize(width: number, height: number, density: number): void {
    this.density = density;
    this.canvas.width = Math.round(width * density);
    // It is blank now, but a browser that hid it goes on to show what stood there until something is drawn: `blank` stays.
    this.canvas.height = Math.round(height * density);
  }

  /** @param inView gives the prints in view, by number; asked only when they are large enough for numbers */
  draw(plan: WallPlan, view: View, inView: () => readonly number[], focus: number): void {
    const { context } = this;
    if (context === null) return;
    const height = plan.printHeight * view.scale;
    const shown = height >= LEAST_PRINT_PX;
    if (!this.blank) context.clearRect(0, 0, this.canvas.width, this.canvas.height);
    this.blank = !shown;
    if (!shown) return;
    const size = Math.min(14, Math.max(10, height / 9));
    context.setTransform(this.density, 0, 0, this.density, 0, 0);
    context.textBaseline = 'alphabetic';
    context.textAlign = 'left';
    for (const index of inView()) {
      const x = num(plan.at, index * 2) * view.scale + view.x;
      const y = (num(plan.at, index * 2 + 1) + plan.printHeight) * view.scale + view.y;
      const focused = index === focus;
      context.font = `${focused ? 650 : 400} ${size}px ${this.font}`;
      context.fillStyle = focused ? this.strong : this.colour;
      context.fillText(
        this.names.get(index) ?? String(index + 1),
        Math.round(x),
        Math.round(y + size * 0.6 + Math.min(9, 7 * view.scale + 2)),
      );
    }
    context.setTransform(1, 0, 0, 1, 0, 0);
  }

  /** Draws the head of a pin at the upper edge of each pinned print, large enough to be seen from afar. */
  drawPins(planned: PlanIndex, view: View, size: Extent): void {
    const { context } = this;
    const { plan } = planned;
    if (context === null || this.pinned.size === 0) return;
    if (this.blank) context.clearRect(0, 0, this.canvas.width, this.canvas.height);
    this.blank = false;
    const radius = Math.min(6, Math.max(2.5, 0.045 * plan.printWidth * view.scale));
    context.setTransform(this.density, 0, 0, this.density, 0, 0);
    for (const index of this.pinned) {
      if (!planned.hangs(index)) continue;
      const x = (num(plan.at, index * 2) + plan.printWidth / 2) * view.scale + view.x;
      const y = num(plan.at, index * 2 + 1) * view.scale + view.y;
      if (x < -radius || y < -radius || x > size.width + radius || y > size.height + radius) continue;
      context.beginPath();
      context.arc(x, y + radius / 2, radius, 0, 2 * Math.PI);
      context.lineWidth = 3;
      context.strokeStyle = this.wall;
      context.stroke();
      context.fillStyle = this.strong;
      context.fill();
    }
    context.setTransform(1, 0, 0, 1, 0, 0);
  }
}
