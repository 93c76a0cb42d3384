import { css, html, svg } from 'lit';
import type { OverprintFit } from '../../../engine/ink/fit/fit-overprints.ts';

const WIDTH = 320;
const HEIGHT = 110;
/** Just visible side by side; common practice, no source. */
const VISIBLE_DELTA_E = 2;

export const chartStyles = css`
  .charts {
    display: flex;
    flex-wrap: wrap;
    gap: var(--space-8) var(--space-10);
  }
  .charts figure {
    flex: 0 1 360px;
    min-width: 0;
    margin: 0;
  }
  .charts figcaption {
    margin-bottom: var(--space-4);
  }
  .charts svg {
    display: block;
    width: 100%;
    height: auto;
    overflow: visible;
  }
  .charts rect {
    fill: var(--ink-soft);
  }
  .charts .after rect {
    fill: var(--accent);
  }
  .charts line {
    stroke: var(--line);
    vector-effect: non-scaling-stroke;
  }
  .charts .visible {
    stroke: var(--ink);
    stroke-dasharray: 3 3;
  }
  .charts text {
    fill: var(--ink-soft);
    font: var(--type-fine) var(--font);
  }
`;

/**
 * ΔE of every square before and after a fit, as bars on one scale.
 * @param names of the squares, in the order of the fit
 */
export function fitCharts(fit: OverprintFit, names: readonly string[]) {
  const most = Math.max(VISIBLE_DELTA_E * 1.5, fit.before.maxDeltaE, fit.after.maxDeltaE);
  const y = (deltaE: number): number => HEIGHT * (1 - deltaE / most);
  const step = WIDTH / fit.squares.length;
  const thick = Math.min(14, Math.max(0.6, step * 0.72));
  const chart = (title: string, which: 'before' | 'after') => {
    const { meanDeltaE, maxDeltaE } = fit[which];
    const words = `${title}: ΔE ${meanDeltaE.toFixed(1)} in the mean, ${maxDeltaE.toFixed(1)} at most`;
    return html`<figure class=${which}>
      <figcaption><strong>${title}</strong> <span class="soft">ΔE ${meanDeltaE.toFixed(1)} in the mean, ${maxDeltaE.toFixed(1)} at most</span></figcaption>
      <svg viewBox="-30 -6 ${WIDTH + 32} ${HEIGHT + 10}" role="img" aria-label=${words}>
        <line x1="0" x2=${WIDTH} y1=${HEIGHT} y2=${HEIGHT} />
        <text x="-6" y=${y(most) + 8} text-anchor="end">${most.toFixed(most < 10 ? 1 : 0)}</text>
        <text x="-6" y=${HEIGHT + 3} text-anchor="end">0</text>
        ${fit.squares.map((square, i) => {
          const deltaE = which === 'before' ? square.beforeDeltaE : square.afterDeltaE;
          const top = Math.min(y(deltaE), HEIGHT - 0.8);
          return svg`<rect x=${(i + 0.5) * step - thick / 2} width=${thick} y=${top} height=${HEIGHT - top}><title>${names[i]}: ΔE ${deltaE.toFixed(1)}</title></rect>`;
        })}
        <line class="visible" x1="0" x2=${WIDTH} y1=${y(VISIBLE_DELTA_E)} y2=${y(VISIBLE_DELTA_E)} />
      </svg>
    </figure>`;
  };
  return html`<div class="charts">${chart('Before', 'before')}${chart('After', 'after')}</div>
    <p class="small soft">A bar for each measured square, by number. The broken line is ΔE ${VISIBLE_DELTA_E}, just visible side by side (common practice, no source).</p>`;
}
