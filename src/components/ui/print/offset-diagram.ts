import { html, svg, type TemplateResult } from 'lit';
import type { Paper } from '../../../engine/ink/types.ts';
import type { SetUpCard } from '../../../engine/visit/set-up-cards.ts';
import { say } from '../../words/en/ui/print.ts';
import { offsetArrow, offsetWords } from '../../words/offset-words.ts';
import type { StencilPath } from './stencil-path.ts';

const BOX = 150;
const MARGIN = 15;
/** Arms of an arrow's head. */
const HEAD = 7;

/**
 * The sheet at its three lays, two on the long edge and one round the corner, and which way the
 * print is moved on it, with the millimetres beside, over what the stencil prints.
 */
export function offsetDiagram(
  card: Pick<SetUpCard, 'dxMm' | 'dyMm' | 'turnDeg'>,
  paper: Pick<Paper, 'widthMm' | 'heightMm'>,
  stencil: StencilPath,
): TemplateResult {
  const scale = (BOX - 2 * MARGIN) / Math.max(paper.widthMm, paper.heightMm);
  const width = paper.widthMm * scale;
  const height = paper.heightMm * scale;
  const left = (BOX - width) / 2;
  const top = (BOX - height) / 2;
  const bottom = top + height;
  // The long edge lies at two stops, its neighbour at one.
  const upright = height > width;
  const lays: [number, number, boolean][] = upright
    ? [
        [left, top + height * 0.22, true],
        [left, top + height * 0.78, true],
        [left + width * 0.25, bottom, false],
      ]
    : [
        [left + width * 0.22, bottom, false],
        [left + width * 0.78, bottom, false],
        [left, bottom - height * 0.25, true],
      ];
  const arrow = offsetArrow(card);
  const cx = left + width / 2;
  const cy = top + height / 2;
  const reach = arrow.length;
  const angle = (Math.atan2(card.dyMm, card.dxMm) * 180) / Math.PI;
  return html`<svg class="offset-diagram" viewBox="0 0 ${BOX} ${BOX}" role="img" aria-label=${say.printedAreaAgainstLays(offsetWords(card))}>
    <rect x=${left} y=${top} width=${width} height=${height} fill="var(--stock)" stroke="var(--stock-line)" />
    ${lays.map(([x, y, onSide]) =>
      onSide
        ? svg`<rect x=${x - 7} y=${y - 9} width="6" height="18" fill="currentColor" />`
        : svg`<rect x=${x - 9} y=${y + 1} width="18" height="6" fill="currentColor" />`,
    )}
    ${stencil.path === '' ? '' : svg`<path d=${stencil.path} transform="translate(${left} ${top}) scale(${scale})" fill="currentColor" fill-rule=${stencil.fillRule} opacity="0.22" />`}
    <path d="M${cx - 7} ${cy}h14M${cx} ${cy - 7}v14" stroke="var(--stock-line)" fill="none" />
    ${
      reach === 0
        ? svg`<circle cx=${cx} cy=${cy} r="4" fill="var(--offset-accent, var(--film-accent))" />`
        : svg`<g transform="translate(${cx} ${cy}) rotate(${angle})" stroke="var(--offset-accent, var(--film-accent))" stroke-width="3" fill="none" stroke-linejoin="miter">
          <path d="M0 0H${reach}M${reach - HEAD} ${-HEAD}L${reach} 0L${reach - HEAD} ${HEAD}" />
          ${arrow.cut ? svg`<path d="M${reach / 2 - 5} 6l4 -12M${reach / 2 + 1} 6l4 -12" stroke-width="2" />` : ''}
        </g>
        <text x=${cx} y=${top - 4} text-anchor="middle" style="font-size: var(--type-small)" fill="currentColor">${arrow.words}</text>`
    }
  </svg>`;
}
