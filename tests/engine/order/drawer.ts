import type { Ink } from '../../../src/engine/ink/types.ts';
import type { Pull } from '../../../src/engine/stack/types.ts';
import type { Studio } from '../../../src/engine/studio/studio.ts';

/** An invented ink from two levels: absorption falling and scattering rising over the bands. */
export function ink(id: string, k: (band: number) => number, s: (band: number) => number): Ink {
  return {
    id,
    name: id,
    basis: 'invented',
    overWhite: [50, 0, 0],
    overBlack: [10, 0, 0],
    kx: Array.from({ length: 36 }, (_, band) => k(band)),
    sx: Array.from({ length: 36 }, (_, band) => s(band)),
    dryMinutes: 20,
    densityGPerCm3: 1.15,
  };
}

/** Inks 'tar', 'foam', 'rust' scatter; 'weed' and 'dusk' are quite transparent, so they commute. */
export const INKS: Ink[] = [
  ink(
    'tar',
    () => 1.5,
    () => 0.2,
  ),
  ink(
    'foam',
    () => 0.05,
    () => 1.2,
  ),
  ink(
    'rust',
    (b) => (b < 20 ? 1.2 : 0.1),
    () => 0.4,
  ),
  ink(
    'weed',
    (b) => (b > 10 && b < 20 ? 0.1 : 0.9),
    () => 0,
  ),
  ink(
    'dusk',
    (b) => (b < 12 ? 0.1 : 0.8),
    () => 0,
  ),
];

/** Rectangles on a sheet, one screen each: [x, y, width, height] in mm. */
export function rectDrawer(rects: readonly (readonly [number, number, number, number])[]): Studio {
  return {
    shapes: rects.map(([, , w, h], i) => ({
      id: `shape${i}`,
      name: `rect ${i}`,
      rings: [[0, 0, w, 0, w, h, 0, h]],
      fillRule: 'nonzero' as const,
      widthMm: w,
      heightMm: h,
    })),
    screens: rects.map(([x, y, w, h], i) => ({
      id: `s${i}`,
      number: i + 1,
      name: `screen ${i}`,
      placed: [{ shape: `shape${i}`, xMm: x + w / 2, yMm: y + h / 2, turnDeg: 0, scale: 1 }],
      mesh: { threadsPerCm: 77, threadUm: 48 },
    })),
    inks: INKS,
    paper: {
      name: 'test',
      widthMm: 200,
      heightMm: 100,
      printable: { xMm: 0, yMm: 0, widthMm: 200, heightMm: 100 },
      reflectance: Array.from({ length: 36 }, () => 0.85),
    },
    strokeGain: 0.5,
  };
}

export function pull(screen: number, inkId: string, more: Partial<Pull> = {}): Pull {
  return { id: `p${screen}`, screen: `s${screen}`, ink: inkId, dxMm: 0, dyMm: 0, turnDeg: 0, strokes: 1, ...more };
}
