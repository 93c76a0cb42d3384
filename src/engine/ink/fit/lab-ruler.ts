import { num } from '../../base/at.ts';
import { type Lab, WHITE_D50, xyzD50 } from '../../colour/lab.ts';
import { BANDS, WEIGHTS_D50 } from '../../colour/weights.ts';

/**
 * Three directions in which differences from a colour are measured: lightness, chroma and hue, each
 * divided by its CIEDE2000 weight there. The rotation of blues is left out.
 */
export function rulerAt([l, a, b]: Lab): Lab[] {
  const c7 = Math.hypot(a, b) ** 7;
  const stretch = 1.5 - 0.5 * Math.sqrt(c7 / (c7 + 25 ** 7));
  const chroma = Math.hypot(a * stretch, b);
  const hue = Math.atan2(b, a * stretch);
  const degrees = (angle: number, from: number): number => Math.cos(angle * hue + (from * Math.PI) / 180);
  const t = 1 - 0.17 * degrees(1, -30) + 0.24 * degrees(2, 0) + 0.32 * degrees(3, 6) - 0.2 * degrees(4, -63);
  const sl = 1 + (0.015 * (l - 50) ** 2) / Math.sqrt(20 + (l - 50) ** 2);
  const sc = 1 + 0.045 * chroma;
  const sh = 1 + 0.015 * chroma * t;
  const [cos, sin] = [Math.cos(hue), Math.sin(hue)];
  return [
    [1 / sl, 0, 0],
    [0, (stretch * cos) / sc, sin / sc],
    [0, (-stretch * sin) / sh, cos / sh],
  ];
}

/** Change of L, a, b (D50/2°) with the reflectance of each band, 3 a band. */
export function labSlopes(reflectance: Float64Array): Float64Array {
  const xyz = xyzD50(reflectance);
  const [fx, fy, fz] = xyz.map((value, i) => {
    const ratio = value / num(WHITE_D50, i);
    const rise = ratio > 216 / 24389 ? 1 / (3 * Math.cbrt(ratio) ** 2) : 24389 / 27 / 116;
    return rise / num(WHITE_D50, i);
  }) as [number, number, number];
  const out = new Float64Array(3 * BANDS);
  for (let band = 0; band < BANDS; band++) {
    const x = fx * num(WEIGHTS_D50.x, band);
    const y = fy * num(WEIGHTS_D50.y, band);
    const z = fz * num(WEIGHTS_D50.z, band);
    out[3 * band] = 116 * y;
    out[3 * band + 1] = 500 * (x - y);
    out[3 * band + 2] = 200 * (y - z);
  }
  return out;
}
