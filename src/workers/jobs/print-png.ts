import { EngineError } from '../../engine/base/error.ts';
import { SpanCache } from '../../engine/stack/screen-spans.ts';
import { paintView, ViewCache } from '../../engine/stack/view.ts';
import { carriedText } from '../../engine/visitfile/carried/carried-recipe.ts';
import type { PrintRequest } from '../api/wall-tools-api.ts';
import { say } from '../words/en/jobs.ts';
import { writePng } from './png-stream.ts';

/** A file above this takes minutes and more memory than other programs open: 250 million pixels. */
const MOST_PIXELS = 250_000_000;
const BAND_PIXELS = 2_000_000;
const MM_PER_INCH = 25.4;

/**
 * Pixels of a print at a width and resolution.
 * @throws EngineError 'print.bad-size' with a sentence that says what would do
 */
export function printSize(
  paper: { widthMm: number; heightMm: number },
  widthMm: number,
  dpi: number,
): { widthPx: number; heightPx: number } {
  const right = widthMm >= 5 && widthMm <= 20_000 && dpi >= 10 && dpi <= 2400;
  if (!right) throw new EngineError('print.bad-size', say.pictureSizes);
  const widthPx = Math.max(1, Math.round((widthMm / MM_PER_INCH) * dpi));
  const heightPx = Math.max(1, Math.round((widthPx * paper.heightMm) / paper.widthMm));
  if (widthPx * heightPx > MOST_PIXELS) {
    const most = Math.floor(dpi * Math.sqrt(MOST_PIXELS / (widthPx * heightPx)));
    throw new EngineError(
      'print.bad-size',
      say.tooManyPixels({ widthMm, dpi, million: Math.round((widthPx * heightPx) / 1e6), mostMillion: MOST_PIXELS / 1e6, mostDpi: most }),
    );
  }
  return { widthPx, heightPx };
}

/**
 * One print as a PNG file at a size on paper, painted band by band; its recipe lies in it, to be read back.
 * @param onBand gets the share that is done, 0–1; false stops
 * @returns null when stopped
 * @throws EngineError 'print.bad-size', and as paintView
 */
export function printPng(
  { studio, pulls, size, recipe }: PrintRequest,
  onBand: (share: number) => boolean | Promise<boolean>,
): Promise<Blob | null> {
  const { paper } = studio;
  const { widthPx, heightPx } = printSize(paper, size.widthMm, size.dpi);
  const cache = new ViewCache();
  cache.spans = new SpanCache(studio);
  const mmPerRow = paper.heightMm / heightPx;
  const { relative } = size;
  return writePng(
    { widthPx, heightPx, dpi: size.dpi, note: recipe && { keyword: 'Recipe', text: carriedText(recipe) } },
    Math.max(1, Math.floor(BAND_PIXELS / widthPx)),
    (fromRow, rows) => {
      const view = {
        xMm: 0,
        yMm: fromRow * mmPerRow,
        widthMm: paper.widthMm,
        heightMm: rows * mmPerRow,
        widthPx,
        heightPx: rows,
        relative,
      };
      return paintView(studio, { pulls }, view, cache);
    },
    (rows) => onBand(rows / heightPx),
  );
}
