import { Resvg } from '@resvg/resvg-js';

/** What the renderer covers, as a share of the whole picture: Σ alpha / (255 × pixels). */
export function coverageByResvg(svg: string, widthPx: number): { share: number; heightPx: number } {
  const picture = new Resvg(svg, {
    fitTo: { mode: 'width', value: widthPx },
    font: { loadSystemFonts: false },
  }).render();
  const { pixels } = picture;
  let sum = 0;
  for (let i = 3; i < pixels.length; i += 4) sum += pixels[i]!;
  return { share: sum / (255 * picture.width * picture.height), heightPx: picture.height };
}
