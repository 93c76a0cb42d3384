import type { View } from '../camera/camera.ts';
import type { NumberLabels } from '../draw/number-labels.ts';
import type { Extent } from './wall-layout.ts';
import type { PlanAxis, WallPlan } from './wall-plan.ts';

const SIZE_PX = 12;
const EDGE_PX = 10;
/** Ticks nearer than this to the one before are left out. */
const APART_PX = 56;

/** Writes the titles of groups, and the axes of a map along the edges of what is seen. */
export function drawAxes(labels: NumberLabels, plan: WallPlan, view: View, size: Extent): void {
  const { context, density } = labels;
  if (context === null || (plan.axes === null && plan.titles.length === 0)) return;
  if (labels.blank) context.clearRect(0, 0, labels.canvas.width, labels.canvas.height);
  labels.blank = false;
  context.setTransform(density, 0, 0, density, 0, 0);
  const writer = new AxisWriter(labels, context, size);
  if (plan.axes !== null) {
    const { x, y, left, top, width, height } = plan.axes;
    writer.across(x, (at) => (left + at * width) * view.scale + view.x);
    writer.upwards(y, (at) => (top + (1 - at) * height) * view.scale + view.y);
  }
  writer.titles(plan.titles, view);
  context.setTransform(1, 0, 0, 1, 0, 0);
}

/** Writes on what is seen, CSS px. */
class AxisWriter {
  private readonly labels: NumberLabels;
  private readonly context: CanvasRenderingContext2D;
  private readonly size: Extent;

  constructor(labels: NumberLabels, context: CanvasRenderingContext2D, size: Extent) {
    this.labels = labels;
    this.context = context;
    this.size = size;
  }

  private style(weight: number, sizePx: number, align: CanvasTextAlign): void {
    const { context, labels } = this;
    context.font = `${weight} ${sizePx}px ${labels.font}`;
    context.textAlign = align;
    context.fillStyle = weight > 400 ? labels.strong : labels.colour;
  }

  private write(text: string, x: number, y: number): void {
    const { context } = this;
    // A rim of the wall's own colour, so that a print behind does not hide it.
    context.lineJoin = 'round';
    context.lineWidth = 4;
    context.strokeStyle = this.labels.wall;
    context.strokeText(text, x, y);
    context.fillText(text, x, y);
  }

  titles(titles: WallPlan['titles'], view: View): void {
    this.style(650, SIZE_PX + 2, 'left');
    for (const { text, left, top } of titles) {
      const y = top * view.scale + view.y;
      if (y > -SIZE_PX && y < this.size.height + SIZE_PX) this.write(text, Math.max(8, left * view.scale + view.x), y);
    }
  }

  across(axis: PlanAxis, pxOf: (at: number) => number): void {
    const { width, height } = this.size;
    const y = height - EDGE_PX;
    this.style(650, SIZE_PX, 'right');
    const titleFrom = width - this.context.measureText(axis.title).width - EDGE_PX - 20;
    this.write(`${axis.title} →`, width - EDGE_PX, y);
    this.style(400, SIZE_PX, 'center');
    let last = -Infinity;
    for (const { at, label } of axis.ticks) {
      const x = pxOf(at);
      if (x < 30 || x > titleFrom - 24 || x - last < APART_PX) continue;
      last = x;
      this.write(label, x, y);
    }
  }

  upwards(axis: PlanAxis, pxOf: (at: number) => number): void {
    this.style(650, SIZE_PX, 'left');
    this.write(`↑ ${axis.title}`, EDGE_PX, EDGE_PX + SIZE_PX);
    this.style(400, SIZE_PX, 'left');
    let last = Infinity;
    for (const { at, label } of axis.ticks) {
      const y = pxOf(at);
      if (y < EDGE_PX + SIZE_PX + 22 || y > this.size.height - 34 || last - y < APART_PX * 0.7) continue;
      last = y;
      this.write(label, EDGE_PX, y + 4);
    }
  }
}
