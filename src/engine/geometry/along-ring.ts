import { f64 } from '../base/at.ts';

/**
 * The part of a closed ring between two distances along it.
 * @param ring flat, mm
 * @param fromMm from the ring's first point, as it runs; `toMm` is no less, and no farther than once round
 * @returns flat line, mm
 */
export function lineAlong(ring: Float64Array, fromMm: number, toMm: number): number[] {
  const line: number[] = [];
  let alongMm = 0;
  for (let i = 0; i + 1 < ring.length && alongMm <= toMm; i += 2) {
    const next = (i + 2) % ring.length;
    const [x, y] = [f64(ring, i), f64(ring, i + 1)];
    const [right, down] = [f64(ring, next) - x, f64(ring, next + 1) - y];
    const lengthMm = Math.hypot(right, down);
    const from = Math.max(0, fromMm - alongMm);
    const to = Math.min(lengthMm, toMm - alongMm);
    alongMm += lengthMm;
    if (from >= to) continue;
    if (line.length === 0) line.push(x + (right * from) / lengthMm, y + (down * from) / lengthMm);
    line.push(x + (right * to) / lengthMm, y + (down * to) / lengthMm);
  }
  return line;
}
