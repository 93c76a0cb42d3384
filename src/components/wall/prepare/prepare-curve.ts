import { html, svg } from 'lit';
import { entryAt } from '../../../engine/base/at.ts';
import type { PrepareStep } from '../../../engine/explore/prepare/prepare.ts';
import { say } from '../../words/en/wall/prepare.ts';

const WIDTH = 460;
const HEIGHT = 180;
const EDGE = { left: 48, right: 10, top: 12, bottom: 26 };

/** What the curve is drawn from. */
interface Curve {
  steps: readonly PrepareStep[];
  /** Weight of all prints. */
  all: number;
  /** The number of new ones that is chosen. */
  count: number;
  /** 'new screens'. */
  what: string;
  choose: (count: number) => void;
}

/** Prints possible by new screens: a step for each number, with what no choice of so many exceeds where that is more. */
export function prepareCurve({ steps, all, count, what, choose }: Curve) {
  const last = Math.max(1, steps.length - 1);
  const x = (n: number): number => EDGE.left + (n / last) * (WIDTH - EDGE.left - EDGE.right);
  const y = (weight: number): number => HEIGHT - EDGE.bottom - (weight / Math.max(1e-9, all)) * (HEIGHT - EDGE.top - EDGE.bottom);
  const path = (value: (step: PrepareStep) => number): string =>
    steps.map((step, i) => `${i === 0 ? 'M' : 'L'}${x(step.count).toFixed(1)} ${y(value(step)).toFixed(1)}`).join('');
  const open = steps.some(({ printed, bound }) => bound > printed + 1e-9);
  const chosen = entryAt(steps, Math.min(count, steps.length - 1));
  const every = Math.max(1, Math.ceil(last / 8));
  return html`<svg class="curve" viewBox="0 0 ${WIDTH} ${HEIGHT}" role="img" aria-label=${say.printsPossibleBy(what, steps.map(({ count: n, printed }) => `${n}: ${Math.round(printed)}`).join(', '))}>
    ${[0, 0.5, 1].map(
      (share) => svg`<line class="rule" x1=${EDGE.left} x2=${WIDTH - EDGE.right} y1=${y(share * all)} y2=${y(share * all)} />
        <text x=${EDGE.left - 6} y=${y(share * all) + 4} text-anchor="end">${Math.round(share * 100)} %</text>`,
    )}
    ${open ? svg`<path class="bound" d=${path(({ bound }) => bound)} />` : svg``}
    <path class="printed" d=${path(({ printed }) => printed)} />
    ${steps.map(({ count: n, printed }) => svg`<circle cx=${x(n)} cy=${y(printed)} r=${n === count ? 5 : 3} ?data-chosen=${n === count} />`)}
    ${steps.map(({ count: n }) => (n % every === 0 ? svg`<text x=${x(n)} y=${HEIGHT - 8} text-anchor="middle">${n}</text>` : svg``))}
    <line class="at" x1=${x(chosen.count)} x2=${x(chosen.count)} y1=${EDGE.top} y2=${HEIGHT - EDGE.bottom} />
    ${steps.map(({ count: n }) => svg`<rect class="hit" x=${x(n) - (WIDTH / last) * 0.5} y="0" width=${WIDTH / last} height=${HEIGHT} @click=${() => choose(n)} />`)}
  </svg>`;
}
