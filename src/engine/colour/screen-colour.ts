import { cutText } from '../base/bounds.ts';
import { EngineError } from '../base/error.ts';
import { say } from '../words/en/colour/colour.ts';
import { encodeSrgb8, linearFromSrgb } from './encode.ts';
import { mapIntoSrgb } from './gamut.ts';
import { labFromXyzD50, xyzD50FromLab, type Lab } from './lab.ts';
import { linearSrgbFromXyzD50, xyzD50FromLinearSrgb } from './srgb.ts';

/**
 * The screen colour of a printed colour.
 * @param lab CIELAB, D50/2°
 * @returns '#rrggbb'; colours the screen cannot show lose chroma, not lightness or hue
 * @throws EngineError 'colour.not-a-colour' when it is not three numbers
 */
export function srgbHexFromLab(lab: Readonly<Lab>): string {
  if (!Array.isArray(lab) || lab.length !== 3 || !lab.every(Number.isFinite)) {
    throw new EngineError(
      'colour.not-a-colour',
      say.colourNeedsThreeNumbers(
        cutText(JSON.stringify(lab, (_, value) => (typeof value === 'number' ? String(value) : value)) ?? 'nothing'),
      ),
    );
  }
  return srgbHexFromLinear(...linearSrgbFromXyzD50(xyzD50FromLab(lab)));
}

/**
 * The screen colour of linear sRGB light.
 * @param r linear light, may lie outside 0–1
 * @param g linear light
 * @param b linear light
 * @returns '#rrggbb', gamut-mapped as srgbHexFromLab does
 */
export function srgbHexFromLinear(r: number, g: number, b: number): string {
  const rgb = Float64Array.of(r, g, b);
  mapIntoSrgb(rgb);
  return `#${Array.from(rgb, (light) => encodeSrgb8(light).toString(16).padStart(2, '0')).join('')}`;
}

/**
 * The printed colour that looks like a screen colour, adapted from the screen's white to D50.
 * @param hex '#rrggbb'
 * @returns CIELAB, D50/2°
 * @throws EngineError 'colour.bad-hex'
 */
export function labFromSrgbHex(hex: string): Lab {
  if (!/^#[0-9a-f]{6}$/i.test(hex)) {
    throw new EngineError('colour.bad-hex', say.isNotColourWrite(hex));
  }
  const at = (i: number): number => linearFromSrgb(Number.parseInt(hex.slice(i, i + 2), 16) / 255);
  return labFromXyzD50(...xyzD50FromLinearSrgb([at(1), at(3), at(5)]));
}
