import { num } from '../../../engine/base/at.ts';
import type { Grey } from '../../../engine/shapes/trace/grey.ts';
import type { Traced } from '../../../engine/shapes/trace/trace.ts';

/** A line across a picture, px of it. */
export interface Measure {
  fromX: number;
  fromY: number;
  toX: number;
  toY: number;
}

/** Pixels that a picture is shown with at most along its longer side. */
const SHOWN_PX = 1200;

/** Shown pixels for one of the picture. */
export function shownScale({ width, height }: Grey): number {
  return Math.min(1, SHOWN_PX / Math.max(width, height));
}

/** How long a line is, px of the picture. */
export function lengthOf({ fromX, fromY, toX, toY }: Measure): number {
  return Math.hypot(toX - fromX, toY - fromY);
}

/** Draws the greys of a picture. */
export async function drawGrey(canvas: HTMLCanvasElement, grey: Grey): Promise<void> {
  const pixels = new ImageData(grey.width, grey.height);
  for (let i = 0; i < grey.values.length; i++) pixels.data.set([num(grey.values, i), num(grey.values, i), num(grey.values, i), 255], 4 * i);
  const bitmap = await createImageBitmap(pixels);
  canvas.getContext('2d')?.drawImage(bitmap, 0, 0, canvas.width, canvas.height);
  bitmap.close();
}

/** Draws what was traced, black on white. */
export function drawTraced(canvas: HTMLCanvasElement, { shape, pixelMm }: Traced, scale: number): void {
  const context = canvas.getContext('2d');
  if (context === null) return;
  const style = getComputedStyle(canvas);
  context.fillStyle = style.getPropertyValue('--white');
  context.fillRect(0, 0, canvas.width, canvas.height);
  if (shape === null) return;
  const path = new Path2D();
  const by = scale / pixelMm;
  for (const ring of shape.rings) {
    for (let i = 0; i < ring.length; i += 2) {
      if (i === 0) path.moveTo(num(ring, 0) * by, num(ring, 1) * by);
      else path.lineTo(num(ring, i) * by, num(ring, i + 1) * by);
    }
    path.closePath();
  }
  context.save();
  context.clip(path, 'evenodd');
  context.fillStyle = style.getPropertyValue('--black');
  context.fillRect(0, 0, canvas.width, canvas.height);
  context.restore();
}

/** Draws a line of known length over a picture. */
export function drawMeasure(canvas: HTMLCanvasElement, { fromX, fromY, toX, toY }: Measure, scale: number): void {
  const context = canvas.getContext('2d');
  if (context === null) return;
  const style = getComputedStyle(canvas);
  for (const [colour, width] of [
    ['--white', 5],
    ['--mark', 2.5],
  ] as const) {
    context.strokeStyle = style.getPropertyValue(colour);
    context.lineWidth = width;
    context.beginPath();
    context.moveTo(fromX * scale, fromY * scale);
    context.lineTo(toX * scale, toY * scale);
    context.stroke();
  }
}
