import type { Picture } from '../../../workers/api/picture-api.ts';
import type { Region } from './region.ts';

/** Shows a picture on a canvas of its size. */
export function paint(canvas: HTMLCanvasElement, picture: Picture): void {
  if (canvas.width !== picture.widthPx) canvas.width = picture.widthPx;
  if (canvas.height !== picture.heightPx) canvas.height = picture.heightPx;
  canvas.getContext('2d')?.putImageData(new ImageData(picture.pixels, picture.widthPx, picture.heightPx), 0, 0);
}

/**
 * Puts a canvas that shows a part of the sheet where that part lies now.
 * @param origin the sheet's top left in the frame, CSS px
 */
export function putCanvas(canvas: HTMLCanvasElement, region: Region | null, origin: { x: number; y: number }, pxPerMm: number): void {
  if (region === null) return;
  const exact = Math.abs(region.pxPerMm - pxPerMm) < 1e-9;
  const onGrid = (at: number): number => (exact ? Math.round(at * devicePixelRatio) / devicePixelRatio : at);
  const left = onGrid(origin.x + region.xMm * pxPerMm);
  const top = onGrid(origin.y + region.yMm * pxPerMm);
  canvas.style.transform = `translate(${left}px, ${top}px)`;
  canvas.style.width = `${region.widthMm * pxPerMm}px`;
  canvas.style.height = `${region.heightMm * pxPerMm}px`;
}
