import { f64 } from '../../base/at.ts';

/**
 * Where a level line goes into an area and out of it, in turn, mm.
 * @param rings of an outline, x and y in turn, mm
 * @param y of the line, mm
 */
export function crossings(rings: readonly Float64Array[], y: number): number[] {
  const found: number[] = [];
  for (const ring of rings) {
    let x0 = f64(ring, ring.length - 2);
    let y0 = f64(ring, ring.length - 1);
    for (let i = 0; i < ring.length; i += 2) {
      const x1 = f64(ring, i);
      const y1 = f64(ring, i + 1);
      if (y0 <= y !== y1 <= y) found.push(x0 + ((y - y0) * (x1 - x0)) / (y1 - y0));
      x0 = x1;
      y0 = y1;
    }
  }
  return found.sort((one, other) => one - other);
}
