import { f64 } from '../../base/at.ts';
import { BOOLEAN_GRID_MM } from '../booleans.ts';
import type { Box } from '../types.ts';
import { crossings } from './level-line.ts';
import type { Prepared } from './shared-area.ts';

/** Edges nearer to each other than this may meet once they lie on the grid of booleans. */
const MARGIN_MM = 10 * BOOLEAN_GRID_MM;
/** Outlines of more rings, or more edges between them, are left to clipping. */
const MOST_RINGS = 60;
const MOST_EDGE_PAIRS = 2_000_000;

/**
 * Whether two outlines whose boxes meet are seen to lie apart: no edges come near each other, and neither has a
 * ring inside the other. Takes a tenth of the time that clipping does.
 * @returns true only where `sharedArea` is 0; false says nothing
 */
export function surelyApart(a: Prepared, b: Prepared): boolean {
  if (a.rings.length > MOST_RINGS || b.rings.length > MOST_RINGS) return false;
  const [inA, inB] = [edgesIn(a.rings, b.box), edgesIn(b.rings, a.box)];
  if ((inA.length / 4) * (inB.length / 4) > MOST_EDGE_PAIRS) return false;
  return !comeNear(inA, inB) && outside(a.rings, b) && outside(b.rings, a);
}

/** Ends of the edges that lie in a box or near it, the upper one first: x0, y0, x1, y1 each. */
function edgesIn(rings: readonly Float64Array[], box: Box): number[] {
  const [left, right] = [box.xMm - MARGIN_MM, box.xMm + box.widthMm + MARGIN_MM];
  const [top, bottom] = [box.yMm - MARGIN_MM, box.yMm + box.heightMm + MARGIN_MM];
  const found: number[] = [];
  for (const ring of rings) {
    let x0 = f64(ring, ring.length - 2);
    let y0 = f64(ring, ring.length - 1);
    for (let i = 0; i < ring.length; i += 2) {
      const x1 = f64(ring, i);
      const y1 = f64(ring, i + 1);
      if ((x0 >= left || x1 >= left) && (x0 <= right || x1 <= right) && (y0 >= top || y1 >= top) && (y0 <= bottom || y1 <= bottom)) {
        if (y0 <= y1) found.push(x0, y0, x1, y1);
        else found.push(x1, y1, x0, y0);
      }
      x0 = x1;
      y0 = y1;
    }
  }
  return found;
}

function comeNear(edges: readonly number[], others: readonly number[]): boolean {
  const [one, two] = [Float64Array.from(edges), Float64Array.from(others)];
  for (let i = 0; i < one.length; i += 4) {
    const [x0, x1] = [f64(one, i), f64(one, i + 2)];
    const left = Math.min(x0, x1) - MARGIN_MM;
    const right = Math.max(x0, x1) + MARGIN_MM;
    const top = f64(one, i + 1) - MARGIN_MM;
    const bottom = f64(one, i + 3) + MARGIN_MM;
    for (let j = 0; j < two.length; j += 4) {
      if (f64(two, j + 1) > bottom || f64(two, j + 3) < top) continue;
      const [u0, u1] = [f64(two, j), f64(two, j + 2)];
      if ((u0 < left && u1 < left) || (u0 > right && u1 > right)) continue;
      if (!divides(one, i, two, j) && !divides(two, j, one, i)) return true;
    }
  }
  return false;
}

/** Whether an edge of another table lies wholly on one side of the line through an edge, and not near it. */
function divides(line: Float64Array, i: number, other: Float64Array, j: number): boolean {
  const [x, y] = [f64(line, i), f64(line, i + 1)];
  const [dx, dy] = [f64(line, i + 2) - x, f64(line, i + 3) - y];
  const least = MARGIN_MM * Math.hypot(dx, dy);
  const first = dx * (f64(other, j + 1) - y) - dy * (f64(other, j) - x);
  const last = dx * (f64(other, j + 3) - y) - dy * (f64(other, j + 2) - x);
  return (first > least && last > least) || (first < -least && last < -least);
}

/** Whether the first corner of each ring lies outside an area. */
function outside(rings: readonly Float64Array[], { rings: area, box }: Prepared): boolean {
  return rings.every((ring) => {
    const [x, y] = [f64(ring, 0), f64(ring, 1)];
    if (x < box.xMm || x > box.xMm + box.widthMm || y < box.yMm || y > box.yMm + box.heightMm) return true;
    return crossings(area, y).filter((at) => at > x).length % 2 === 0;
  });
}
