import { nothing, svg } from 'lit';
import { ringPath } from '../../engine/output/svg-text.ts';
import type { ThinShown } from './screen-thin.ts';

/** So large that the smallest place is seen on a sheet of half a metre, mm. */
const POINTED_MM = 12;

/** Thin places on a sheet, red, with a ring round the one that is pointed out. */
export function thinMarks(thin: ThinShown | null) {
  if (thin === null || thin.places.length === 0) return nothing;
  const d = thin.places.flatMap(({ rings }) => rings.map((ring) => ringPath(ring, 2))).join('');
  const { chosen } = thin;
  return svg`<path class="thin" d=${d} />
    ${
      chosen === null
        ? nothing
        : svg`<circle
          class="pointed"
          cx=${chosen.box.xMm + chosen.box.widthMm / 2}
          cy=${chosen.box.yMm + chosen.box.heightMm / 2}
          r=${Math.max(POINTED_MM, Math.hypot(chosen.box.widthMm, chosen.box.heightMm) / 2)}
        />`
    }`;
}
