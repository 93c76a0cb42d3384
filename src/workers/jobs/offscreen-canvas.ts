/**
 * A canvas for a worker.
 * @returns null where the browser has none for workers
 */
export function offscreenCanvas(widthPx: number, heightPx: number): OffscreenCanvas | null {
  return typeof OffscreenCanvas === 'undefined' ? null : new OffscreenCanvas(widthPx, heightPx);
}
