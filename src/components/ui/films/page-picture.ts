import { svg } from 'lit';
import type { OutPage } from '../../../engine/output/film/page.ts';
import { linePath, ringPath } from '../../../engine/output/svg-text.ts';

/** Finer is not seen on a screen. */
const DIGITS = 2;

/** A page as it goes out, drawn as large as there is room. */
export function pagePicture({ widthMm, heightMm, parts, name }: OutPage) {
  return svg`<svg viewBox="0 0 ${widthMm} ${heightMm}" role="img" aria-label=${name}>
    <rect width=${widthMm} height=${heightMm} />
    ${parts.map(({ drawn: { filled, lines, texts }, clip }) => {
      const all = svg`<path d=${filled.map((ring) => ringPath(ring, DIGITS)).join('')} />
        ${lines.map(({ points, widthMm: wide }) => svg`<path class="line" d=${linePath(points, DIGITS)} stroke-width=${wide} />`)}
        ${texts.map(
          ({ text, xMm, yMm, sizeMm, bold, mirrored }) =>
            svg`<text transform="translate(${xMm} ${yMm}) scale(${mirrored ? -1 : 1} 1)" font-size=${sizeMm} font-weight=${bold ? 700 : 400}>${text}</text>`,
        )}`;
      if (clip === undefined) return all;
      const { xMm, yMm, widthMm: wide, heightMm: high } = clip;
      return svg`<svg x=${xMm} y=${yMm} width=${wide} height=${high} viewBox="${xMm} ${yMm} ${wide} ${high}">${all}</svg>`;
    })}
  </svg>`;
}
