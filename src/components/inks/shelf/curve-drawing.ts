import { css, html, nothing, svg } from 'lit';
import { num } from '../../../engine/base/at.ts';
import { WAVELENGTHS_NM } from '../../../engine/colour/weights.ts';
import { CARD_BLACK, CARD_WHITE } from '../../../engine/ink/characterise/card.ts';
import type { Surface } from '../../../engine/ink/film/saunderson.ts';
import { swatchReflectance } from '../../../engine/ink/film/swatch.ts';
import type { Ink } from '../../../engine/ink/types.ts';
import { say } from '../../words/en/inks/shelf.ts';

const WIDTH = 350;
const HEIGHT = 150;
const LABEL_LINE = 14;

export const curveStyles = css`
  .curves {
    display: block;
    width: 100%;
    height: auto;
    overflow: visible;
  }
  .curves path {
    fill: none;
    stroke: var(--ink);
    stroke-width: 1.6;
    vector-effect: non-scaling-stroke;
  }
  .curves .black {
    stroke-dasharray: 5 3;
  }
  .curves line {
    stroke: var(--line);
    stroke-width: 1;
    vector-effect: non-scaling-stroke;
  }
  .curves rect {
    fill: var(--accent);
    fill-opacity: 0.18;
  }
  .curves text {
    fill: var(--ink-soft);
    font: var(--type-fine) var(--font);
    font-variant-numeric: tabular-nums;
  }
`;

const x = (nm: number): number => ((nm - 380) / 350) * WIDTH;
// Where paper glows a reading may pass 100 %; the frame has room for it.
const y = (reflectance: number): number => HEIGHT * (1 - Math.min(1.1, reflectance));

function line(reflectance: ArrayLike<number>): string {
  return WAVELENGTHS_NM.map((nm, band) => `${band === 0 ? 'M' : 'L'}${x(nm)} ${y(num(reflectance, band)).toFixed(2)}`).join('');
}

/**
 * Two reflectance curves, 380 to 730 nm.
 * @param moved bands to be marked
 */
export function twoCurves(white: ArrayLike<number>, black: ArrayLike<number>, label: string, moved: readonly number[] = []) {
  // Labels stand at the ends of the curves, a line apart at least.
  const last = WAVELENGTHS_NM.length - 1;
  const under = Math.max(y(num(black, last)) + 4, 18);
  const over = Math.min(y(num(white, last)) + 4, under - LABEL_LINE);
  const band = WIDTH / last;
  return html`<svg class="curves" viewBox="-36 -8 ${WIDTH + 104} ${HEIGHT + 32}" role="img" aria-label=${label}>
    ${moved.length === 0 ? nothing : moved.map((at) => svg`<rect x=${x(num(WAVELENGTHS_NM, at)) - band / 2} width=${band} y="0" height=${HEIGHT} />`)}
    ${[0, 0.5, 1].map((r) => svg`<line x1="0" x2=${WIDTH} y1=${y(r)} y2=${y(r)} /><text x="-6" y=${y(r) + 4} text-anchor="end">${r * 100} %</text>`)}
    ${[400, 500, 600, 700].map((nm) => svg`<line x1=${x(nm)} x2=${x(nm)} y1=${HEIGHT} y2=${HEIGHT + 4} /><text x=${x(nm)} y=${HEIGHT + 17} text-anchor="middle">${nm}${nm === 700 ? ' nm' : ''}</text>`)}
    ${svg`<path d=${line(white)} /><path class="black" d=${line(black)} />
      <text x=${WIDTH + 6} y=${over}>${say.overWhite}</text>
      <text x=${WIDTH + 6} y=${under}>${say.overBlack}</text>`}
  </svg>`;
}

/** Reflectance of one stroke over the card's white and over its black, 380 to 730 nm. */
export function curveDrawing(ink: Pick<Ink, 'kx' | 'sx' | 'name'>, surface?: Surface) {
  const white = swatchReflectance(ink, CARD_WHITE, { surface });
  const black = swatchReflectance(ink, CARD_BLACK, { surface });
  return twoCurves(white, black, say.reflectanceOfOverWhite(ink.name));
}
