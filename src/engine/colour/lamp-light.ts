import { num } from '../base/at.ts';
import { labCurve, type Lab, type Xyz } from './lab.ts';
import { BANDS } from './weights.ts';

/** CIE 1931 2° colour-matching functions every 10 nm: nm, x, y, z. Source: CIE 015, table of the standard observer. */
const OBSERVER: readonly (readonly [number, number, number, number])[] = [
  [380, 0.001368, 3.9e-5, 0.00645],
  [390, 0.004243, 0.00012, 0.02005],
  [400, 0.01431, 0.000396, 0.06785],
  [410, 0.04351, 0.00121, 0.2074],
  [420, 0.13438, 0.004, 0.6456],
  [430, 0.2839, 0.0116, 1.3856],
  [440, 0.34828, 0.023, 1.74706],
  [450, 0.3362, 0.038, 1.77211],
  [460, 0.2908, 0.06, 1.6692],
  [470, 0.19536, 0.09098, 1.28764],
  [480, 0.09564, 0.13902, 0.8129501],
  [490, 0.03201, 0.20802, 0.46518],
  [500, 0.0049, 0.323, 0.272],
  [510, 0.0093, 0.503, 0.1582],
  [520, 0.06327, 0.71, 0.07825],
  [530, 0.1655, 0.862, 0.04216],
  [540, 0.2904, 0.954, 0.0203],
  [550, 0.4334499, 0.9949501, 0.00875],
  [560, 0.5945, 0.995, 0.0039],
  [570, 0.7621, 0.952, 0.0021],
  [580, 0.9163, 0.87, 0.00165],
  [590, 1.0263, 0.757, 0.0011],
  [600, 1.0622, 0.631, 0.0008],
  [610, 1.0026, 0.503, 0.00034],
  [620, 0.8544499, 0.381, 0.00019],
  [630, 0.6424, 0.265, 5e-5],
  [640, 0.4479, 0.175, 2e-5],
  [650, 0.2835, 0.107, 0.0],
  [660, 0.1649, 0.061, 0.0],
  [670, 0.0874, 0.032, 0.0],
  [680, 0.04677, 0.017, 0.0],
  [690, 0.0227, 0.00821, 0.0],
  [700, 0.0113592, 0.004102, 0.0],
  [710, 0.0057903, 0.002091, 0.0],
  [720, 0.0028993, 0.001047, 0.0],
  [730, 0.00144, 0.00052, 0.0],
  [740, 0.0006901, 0.0002492, 0.0],
  [750, 0.0003323, 0.00012, 0.0],
  [760, 0.0001662, 6e-5, 0.0],
  [770, 8.31e-5, 3e-5, 0.0],
  [780, 4.15e-5, 1.5e-5, 0.0],
];

/** Of each band, X, Y and Z under the lamp; what lies beyond the last band counts as that band's. */
const LAMP: readonly Xyz[] = lampWeights();
const WHITE: Xyz = sumOf(new Float64Array(BANDS).fill(1));

/**
 * CIELAB of a surface under a filament lamp (CIE illuminant A), 2°, relative to a perfect white under it.
 * @param reflectance 36 bands from 380 to 730 nm, 0–1
 * Two surfaces that look alike by day and are apart here change against each other from room to room.
 */
export function labUnderLamp(reflectance: ArrayLike<number>): Lab {
  const xyz = sumOf(reflectance);
  const [fx, fy, fz] = xyz.map((value, i) => labCurve(value / num(WHITE, i))) as Xyz;
  return [116 * fy - 16, 500 * (fx - fy), 200 * (fy - fz)];
}

/** Relative power of illuminant A. Source: CIE 015, 3.1, the equation of its definition. */
function lampPower(nm: number): number {
  return 100 * (560 / nm) ** 5 * (Math.expm1(1.435e7 / (2848 * 560)) / Math.expm1(1.435e7 / (2848 * nm)));
}

function lampWeights(): Xyz[] {
  const rows = Array.from({ length: BANDS }, (): Xyz => [0, 0, 0]);
  const all = OBSERVER.reduce((sum, [nm, , y]) => sum + y * lampPower(nm), 0);
  OBSERVER.forEach(([nm, ...xyz], at) => {
    const row = rows[Math.min(at, BANDS - 1)];
    xyz.forEach((value, i) => row !== undefined && (row[i] = num(row, i) + (100 * value * lampPower(nm)) / all));
  });
  return rows;
}

function sumOf(reflectance: ArrayLike<number>): Xyz {
  const sum: Xyz = [0, 0, 0];
  LAMP.forEach((row, band) => row.forEach((weight, i) => (sum[i] = num(sum, i) + weight * num(reflectance, band))));
  return sum;
}
