import { Resvg } from '@resvg/resvg-js';
import type { Outline } from '../../../src/engine/geometry/types.ts';

/** The alpha of what the renderer paints, 0–255 a pixel. */
function alphaOf(svg: string, widthPx: number): { alpha: Uint8Array; widthPx: number; heightPx: number } {
  const picture = new Resvg(svg, {
    fitTo: { mode: 'width', value: widthPx },
    font: { loadSystemFonts: false },
  }).render();
  const { pixels, width, height } = picture;
  return { alpha: Uint8Array.from({ length: width * height }, (_, i) => pixels[4 * i + 3]!), widthPx: width, heightPx: height };
}

/** Outlines as one path on their page, to be painted by the same renderer. */
function drawnOn(page: { widthMm: number; heightMm: number }, { rings, fillRule }: Outline): string {
  const d = rings
    .map((ring) => `M${Array.from(ring).reduce((text: string, value, i) => `${text}${i === 0 ? '' : i % 2 === 0 ? 'L' : ' '}${value}`, '')}Z`)
    .join('');
  const { widthMm, heightMm } = page;
  return `<svg xmlns="http://www.w3.org/2000/svg" width="${widthMm}mm" height="${heightMm}mm" viewBox="0 0 ${widthMm} ${heightMm}"><path fill-rule="${fillRule}" d="${d}"/></svg>`;
}

/**
 * How far outlines are from what the renderer makes of a file: what either of the two covers and the
 * other does not (exclusive or), what the file covers, and how much more the outlines do, as shares of the page.
 */
export function differenceByResvg(
  svg: string,
  shape: Outline,
  page: { widthMm: number; heightMm: number },
  widthPx: number,
): { apart: number; share: number; more: number } {
  const wanted = alphaOf(svg, widthPx);
  const found = alphaOf(drawnOn(page, shape), widthPx);
  if (wanted.widthPx !== found.widthPx || wanted.heightPx !== found.heightPx) throw new Error('the two pictures are of different sizes');
  let apart = 0;
  let sum = 0;
  let more = 0;
  wanted.alpha.forEach((value, i) => {
    apart += Math.abs(value - found.alpha[i]!);
    sum += value;
    more += found.alpha[i]! - value;
  });
  const whole = 255 * wanted.alpha.length;
  return { apart: apart / whole, share: sum / whole, more: more / whole };
}
