import { f64, u8 } from '../base/at.ts';

// Codes change at exact thresholds; a coarse index finds the neighbourhood, so that the result is
// the correctly rounded code without a power function in the hot path.
const COARSE = 4096;
const THRESHOLDS = thresholds();
const FIRST_CODE = firstCodes();

/**
 * The 8-bit sRGB code of a linear value, rounded to the nearest, clipped to 0–255.
 * @param linear linear light, 0–1; NaN gives 0
 * Source: IEC 61966-2-1. Allocates nothing; the same on every machine.
 */
export function encodeSrgb8(linear: number): number {
  if (!(linear > 0)) return 0;
  if (linear >= 1) return 255;
  let code = u8(FIRST_CODE, (linear * COARSE) | 0);
  while (linear >= f64(THRESHOLDS, code + 1)) code++;
  return code;
}

/**
 * Linear light of an sRGB value.
 * @param encoded 0–1
 * Source: IEC 61966-2-1.
 */
export function linearFromSrgb(encoded: number): number {
  return encoded <= 0.04045 ? encoded / 12.92 : ((encoded + 0.055) / 1.055) ** 2.4;
}

/** thresholds[c] is the least linear value with code c; the last is never reached. */
function thresholds(): Float64Array {
  const out = new Float64Array(257);
  for (let code = 1; code < 256; code++) out[code] = linearFromSrgb((code - 0.5) / 255);
  out[256] = Infinity;
  return out;
}

function firstCodes(): Uint8Array {
  const out = new Uint8Array(COARSE);
  let code = 0;
  for (let i = 0; i < COARSE; i++) {
    while (i / COARSE >= f64(THRESHOLDS, code + 1)) code++;
    out[i] = code;
  }
  return out;
}
