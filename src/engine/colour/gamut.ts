import { f64 } from '../base/at.ts';
import { oklabFromLinearSrgb } from './oklab.ts';
import { inSrgbGamut } from './srgb.ts';

// CSS Color 4, 13.2.1: a colour as near as this to its clipped self is clipped, and chroma is halved to this step.
const JUST_NOTICEABLE = 0.02;
const STEP = 1e-4;

/**
 * Brings linear sRGB into what the screen can show, in place: chroma is reduced, lightness and hue kept.
 * Swatches and pictures both go through here, so that a colour is the same in both.
 * @param rgb three numbers from `at`, linear light; what is inside stays as it is
 * Source: CSS Color Module Level 4, 13.2.1 (binary search in OKLCh with local clipping).
 * Allocates nothing for a colour that lies inside.
 */
export function mapIntoSrgb(rgb: Float64Array, at = 0): void {
  const [r, g, b] = [f64(rgb, at), f64(rgb, at + 1), f64(rgb, at + 2)];
  if (inSrgbGamut(r, g, b)) return setClipped(rgb, at, [r, g, b]);
  const [l, a, bb] = oklabFromLinearSrgb(r, g, b);
  if (l >= 1) return setClipped(rgb, at, [1, 1, 1]);
  if (!(l > 0)) return setClipped(rgb, at, [0, 0, 0]);
  const chroma = Math.hypot(a, bb);
  let low = 0;
  let high = 1;
  let light: Light = [l, l, l];
  while ((high - low) * chroma > STEP) {
    const share = (low + high) / 2;
    light = linearFromOklab(l, share * a, share * bb);
    if (inSrgbGamut(...light) || missOfClip(light, [l, share * a, share * bb]) <= JUST_NOTICEABLE) low = share;
    else high = share;
  }
  setClipped(rgb, at, light);
}

type Light = [number, number, number];

function missOfClip([r, g, b]: Light, [l, a, bb]: Light): number {
  const clipped = oklabFromLinearSrgb(clip(r), clip(g), clip(b));
  return Math.hypot(clipped[0] - l, clipped[1] - a, clipped[2] - bb);
}

function setClipped(rgb: Float64Array, at: number, [r, g, b]: Light): void {
  rgb[at] = clip(r);
  rgb[at + 1] = clip(g);
  rgb[at + 2] = clip(b);
}

function clip(value: number): number {
  return value > 0 ? (value < 1 ? value : 1) : 0;
}

/** The inverse of oklabFromLinearSrgb; its constants of the same source. */
function linearFromOklab(l: number, a: number, b: number): Light {
  const long = (l + 0.3963377774 * a + 0.2158037573 * b) ** 3;
  const middle = (l - 0.1055613458 * a - 0.0638541728 * b) ** 3;
  const short = (l - 0.0894841775 * a - 1.291485548 * b) ** 3;
  return [
    4.0767416621 * long - 3.3077115913 * middle + 0.2309699292 * short,
    -1.2684380046 * long + 2.6097574011 * middle - 0.3413193965 * short,
    -0.0041960863 * long - 0.7034186147 * middle + 1.707614701 * short,
  ];
}
