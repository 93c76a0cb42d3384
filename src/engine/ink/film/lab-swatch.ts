import { num } from '../../base/at.ts';
import { labFromXyzD50, xyzD50FromLab, type Lab } from '../../colour/lab.ts';
import { labFromSrgbHex, srgbHexFromLinear } from '../../colour/screen-colour.ts';
import { inSrgbGamut, linearSrgbFromReflectance, linearSrgbFromXyzD50, xyzD50FromLinearSrgb } from '../../colour/srgb.ts';
import type { Swatch } from './swatch.ts';

/**
 * A printed colour, of which no curve is known, as a colour on the screen.
 * @param lab D50/2°
 * @param white the paper that the screen shows as its white, 36 bands; left out, the perfect diffuser is
 * @returns the same as swatchOf for a curve of this colour
 */
export function labSwatch(lab: Readonly<Lab>, white?: ArrayLike<number>): Swatch {
  const light = linearSrgbFromXyzD50(xyzD50FromLab(lab)) as [number, number, number];
  if (white !== undefined) whiteLight(white).forEach((full, i) => (light[i] = num(light, i) / full));
  // A colour picked on a screen and rounded to two decimals lies on the edge, not beyond it.
  return { lab: [...lab], hex: srgbHexFromLinear(...light), inGamut: inSrgbGamut(...light, 1e-3) };
}

/**
 * The printed colour that labSwatch shows as a screen colour.
 * @param hex '#rrggbb'
 * @param white as for labSwatch
 * @returns D50/2°
 * @throws EngineError 'colour.bad-hex'
 */
export function labOfSwatch(hex: string, white?: ArrayLike<number>): Lab {
  const lab = labFromSrgbHex(hex);
  if (white === undefined) return lab;
  const light = linearSrgbFromXyzD50(xyzD50FromLab(lab)) as [number, number, number];
  whiteLight(white).forEach((full, i) => (light[i] = num(light, i) * full));
  return labFromXyzD50(...xyzD50FromLinearSrgb(light));
}

function whiteLight(white: ArrayLike<number>): number[] {
  return Array.from(linearSrgbFromReflectance(white, new Float64Array(3)), (full) => (full > 1e-9 ? full : 1));
}
