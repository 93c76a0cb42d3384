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
  if (plan.axes !== null) {
    const { x, y, left, top, width, height } = plan.axes;
    across(labels, context, x, (at) => (left + at * width) * view.scale + view.x, size);
    upwards(labels, context, y, (at) => (top + (1 - at) * height) * view.scale + view.y, size);
  }
  context.font = `650 ${SIZE_PX + 2}px ${labels.font}`;
  context.textAlign = 'left';
  context.fillStyle = labels.strong;
  for (const title of plan.titles) {
    const y = title.top * view.scale + view.y;
    if (y > -SIZE_PX && y < size.height + SIZE_PX) write(labels, context, title.text, Math.max(8, title.left * view.scale + view.x), y);
  }
  context.setTransform(1, 0, 0, 1, 0, 0);
}

function write(labels: NumberLabels, context: CanvasRenderingContext2D, text: string, x: number, y: number): void {
  // A rim of the wall's own colour, so that a print behind does not hide it.
  context.lineJoin = 'round';
  context.lineWidth = 4;
  context.strokeStyle = labels.wall;
  context.strokeText(text, x, y);
  context.fillText(text, x, y);
}

function across(labels: NumberLabels, context: CanvasRenderingContext2D, axis: PlanAxis, pxOf: (at: number) => number, size: Extent): void {
  const y = size.height - EDGE_PX;
  context.font = `650 ${SIZE_PX}px ${labels.font}`;
  const titleFrom = size.width - context.measureText(axis.title).width - EDGE_PX - 20;
  context.textAlign = 'right';
  context.fillStyle = labels.strong;
  write(labels, context, `${axis.title} →`, size.width - EDGE_PX, y);
  context.font = `400 ${SIZE_PX}px ${labels.font}`;
  context.textAlign = 'center';
  context.fillStyle = labels.colour;
  let last = -Infinity;
  for (const { at, label } of axis.ticks) {
    const x = pxOf(at);
    if (x < 30 || x > titleFrom - 24 || x - last < APART_PX) continue;
    last = x;
    write(labels, context, label, x, y);
  }
}

function upwards(
  labels: NumberLabels,
  context: CanvasRenderingContext2D,
  axis: PlanAxis,
  pxOf: (at: number) => number,
  size: Extent,
): void {
  context.textAlign = 'left';
  context.font = `650 ${SIZE_PX}px ${labels.font}`;
  context.fillStyle = labels.strong;
  write(labels, context, `↑ ${axis.title}`, EDGE_PX, EDGE_PX + SIZE_PX);
  context.font = `400 ${SIZE_PX}px ${labels.font}`;
  context.fillStyle = labels.colour;
  let last = Infinity;
  for (const { at, label } of axis.ticks) {
    const y = pxOf(at);
    if (y < EDGE_PX + SIZE_PX + 22 || y > size.height - 34 || last - y < APART_PX * 0.7) continue;
    last = y;
    write(labels, context, label, EDGE_PX, y + 4);
  }
}
