import { differenceCiede2000 } from 'culori';
import { describe, expect, it } from 'vitest';
import type { Lab } from '../../../../src/engine/colour/lab.ts';
import { rulerAt } from '../../../../src/engine/ink/fit/lab-ruler.ts';

// The outside reference: culori's own CIEDE2000.
const reference = differenceCiede2000();
const peer = (a: Lab, b: Lab): number => reference({ mode: 'lab', l: a[0], a: a[1], b: a[2] }, { mode: 'lab', l: b[0], a: b[1], b: b[2] });

const SMALL = 0.01;
const DIRECTIONS: Lab[] = [
  [1, 0, 0],
  [0, 1, 0],
  [0, 0, 1],
  [0, 1, 1],
  [0, 1, -1],
];
// Away from blue, hue 275°, where CIEDE2000 turns its axes and the ruler leaves that out.
const COLOURS: Lab[] = [
  [50, 60, 20],
  [80, 5, 90],
  [30, -40, 30],
  [60, -50, -5],
  [20, 30, -10],
  [90, 2, 8],
];

describe('rulerAt', () => {
  it.each(COLOURS)('should measure small differences from L %i, a %i, b %i as CIEDE2000 does', (...lab) => {
    const ruler = rulerAt(lab);
    for (const direction of DIRECTIONS) {
      const moved = lab.map((value, i) => value + SMALL * direction[i]!) as Lab;
      const measured = Math.hypot(...ruler.map((axis) => axis.reduce((sum, weight, i) => sum + weight * SMALL * direction[i]!, 0)));
      // The slope of the stretch of a is left out, which is felt below a chroma of 20.
      expect(measured / peer(lab, moved)).toBeGreaterThan(0.85);
      expect(measured / peer(lab, moved)).toBeLessThan(1.15);
    }
  });
});
