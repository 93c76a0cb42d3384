import { num } from '../../engine/base/at.ts';
import { shapeBounds } from '../../engine/geometry/rings.ts';
import type { PlacedShape, Shape } from '../../engine/shapes/types.ts';

/** A shape as an SVG path, in the coordinates of its file, mm. */
export interface OutlinePath {
  d: string;
  /** Middle of its box. */
  xMm: number;
  yMm: number;
  viewBox: string;
}

// No silhouette here is shown larger than about so many pixels.
const FINEST_SHARE = 1 / 1500;
const paths = new WeakMap<Shape, OutlinePath>();

/** The path of a shape; made once, since shapes are values that are never written to. */
export function outlinePath(shape: Shape): OutlinePath {
  let path = paths.get(shape);
  if (path === undefined) {
    const box = shapeBounds(shape.rings);
    const finest = Math.max(box.widthMm, box.heightMm) * FINEST_SHARE;
    path = {
      d: shape.rings.map((ring) => ringPath(ring, finest)).join(''),
      xMm: box.xMm + box.widthMm / 2,
      yMm: box.yMm + box.heightMm / 2,
      viewBox: `${box.xMm} ${box.yMm} ${box.widthMm} ${box.heightMm}`,
    };
    paths.set(shape, path);
  }
  return path;
}

/** How the path of a shape comes to lie where it is placed on the sheet, mm. */
export function placedTransform({ xMm, yMm, turnDeg, scale, mirrored }: PlacedShape, path: OutlinePath): string {
  return `translate(${xMm} ${yMm}) rotate(${turnDeg}) scale(${mirrored === true ? -scale : scale} ${scale}) translate(${-path.xMm} ${-path.yMm})`;
}

function ringPath(ring: readonly number[], finest: number): string {
  let d = '';
  let lastX = Infinity;
  let lastY = Infinity;
  for (let i = 0; i + 1 < ring.length; i += 2) {
    const x = num(ring, i);
    const y = num(ring, i + 1);
    if (Math.abs(x - lastX) < finest && Math.abs(y - lastY) < finest) continue;
    d += `${d === '' ? 'M' : 'L'}${+x.toFixed(3)} ${+y.toFixed(3)}`;
    lastX = x;
    lastY = y;
  }
  return `${d}Z`;
}
