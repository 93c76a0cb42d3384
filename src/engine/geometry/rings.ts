import { num } from '../base/at.ts';
import type { Box, Ring } from './types.ts';

/** An affine map as SVG writes it: x' = a·x + c·y + e, y' = b·x + d·y + f. */
export type Affine = readonly [a: number, b: number, c: number, d: number, e: number, f: number];

export const IDENTITY: Affine = [1, 0, 0, 1, 0, 0];

/**
 * The map that does `inner` first and `outer` after.
 * Source: SVG 1.1 §7.5 (nested transformations).
 */
export function compose(outer: Affine, inner: Affine): Affine {
  const [a, b, c, d, e, f] = outer;
  const [p, q, r, s, t, u] = inner;
  return [a * p + c * q, b * p + d * q, a * r + c * s, b * r + d * s, a * t + c * u + e, b * t + d * u + f];
}

/**
 * A clockwise turn (y down) about a point; quarter turns are free of binary dust.
 * @param turnDeg degrees, any finite number
 */
export function turnAbout(turnDeg: number, xMm: number, yMm: number): Affine {
  const [cos, sin] = cosSin(turnDeg);
  return [cos, sin, -sin, cos, xMm - cos * xMm + sin * yMm, yMm - sin * xMm - cos * yMm];
}

function cosSin(deg: number): [number, number] {
  const turn = ((deg % 360) + 360) % 360;
  if (turn === 0) return [1, 0];
  if (turn === 90) return [0, 1];
  if (turn === 180) return [-1, 0];
  if (turn === 270) return [0, -1];
  const rad = (turn * Math.PI) / 180;
  return [Math.cos(rad), Math.sin(rad)];
}

/** New rings, each point mapped. */
export function mapRings(rings: readonly Ring[], by: Affine): Float64Array[] {
  const [a, b, c, d, e, f] = by;
  return rings.map((ring) => {
    const out = new Float64Array(ring.length);
    for (let i = 0; i + 1 < ring.length; i += 2) {
      const x = num(ring, i);
      const y = num(ring, i + 1);
      out[i] = a * x + c * y + e;
      out[i + 1] = b * x + d * y + f;
    }
    return out;
  });
}

/**
 * Signed area of one ring by the shoelace formula, mm²: positive when it runs clockwise as seen
 * (y down). A ring that crosses itself counts each part by its winding.
 */
export function ringArea(ring: Ring): number {
  const n = ring.length - (ring.length % 2);
  if (n < 6) return 0;
  // Relative to the first point, so that rings far from the origin lose no digits.
  const x0 = num(ring, 0);
  const y0 = num(ring, 1);
  let twice = 0;
  for (let i = 2; i + 3 < n; i += 2) {
    const ax = num(ring, i) - x0;
    const ay = num(ring, i + 1) - y0;
    const bx = num(ring, i + 2) - x0;
    const by = num(ring, i + 3) - y0;
    twice += ax * by - bx * ay;
  }
  return twice / 2;
}

/**
 * The smallest upright box round all points; no points give a box of no size at 0, 0.
 */
export function shapeBounds(rings: readonly Ring[]): Box {
  let left = Infinity;
  let top = Infinity;
  let right = -Infinity;
  let bottom = -Infinity;
  for (const ring of rings) {
    for (let i = 0; i + 1 < ring.length; i += 2) {
      const x = num(ring, i);
      const y = num(ring, i + 1);
      if (x < left) left = x;
      if (x > right) right = x;
      if (y < top) top = y;
      if (y > bottom) bottom = y;
    }
  }
  if (left > right) return { xMm: 0, yMm: 0, widthMm: 0, heightMm: 0 };
  return { xMm: left, yMm: top, widthMm: right - left, heightMm: bottom - top };
}

/**
 * Puts outlines on the sheet: the centre of their box goes to (xMm, yMm), they are scaled, mirrored left
 * to right where that is asked, and then turned clockwise about that centre.
 * @returns new rings, mm on the sheet
 */
export function placeRings(
  rings: readonly Ring[],
  place: { xMm: number; yMm: number; turnDeg: number; scale: number; mirrored?: true | undefined },
): Float64Array[] {
  const box = shapeBounds(rings);
  const cx = box.xMm + box.widthMm / 2;
  const cy = box.yMm + box.heightMm / 2;
  const s = place.scale;
  const across = place.mirrored === true ? -s : s;
  const scaled: Affine = [across, 0, 0, s, place.xMm - across * cx, place.yMm - s * cy];
  return mapRings(rings, compose(turnAbout(place.turnDeg, place.xMm, place.yMm), scaled));
}
