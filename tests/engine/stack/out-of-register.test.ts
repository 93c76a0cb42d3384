import { expect, it } from 'vitest';
import { outOfRegister } from '../../../src/engine/stack/look/out-of-register.ts';
import type { Pull } from '../../../src/engine/stack/types.ts';

const pulls: Pull[] = ['a', 'b'].map((id) => ({ id, screen: id, ink: id, dxMm: 1, dyMm: -2, turnDeg: 0, strokes: 1 }));

it('should lay every pull anew within the tolerance, all over the circle, the same for the same seed', () => {
  const asked = { toleranceMm: 0.5, sheets: 2000, seed: 'x' };
  const sheets = outOfRegister(pulls, asked);
  expect(sheets).toHaveLength(2000);
  const off = sheets.flat().map(({ dxMm, dyMm }) => Math.hypot(dxMm - 1, dyMm + 2));
  expect(Math.max(...off)).toBeLessThanOrEqual(0.5 + 1e-9);
  // In a disc of even density the mean distance from its middle is 2/3 of its radius (∫ r · 2r dr), with a deviation
  // of √(1/2 − 4/9) · 0.5 / √4000 = 0.0019 here.
  expect(Math.abs(off.reduce((sum, value) => sum + value, 0) / off.length - 1 / 3)).toBeLessThan(0.01);
  expect(outOfRegister(pulls, asked)).toEqual(sheets);
  expect(outOfRegister(pulls, { ...asked, seed: 'y' })).not.toEqual(sheets);
  expect(outOfRegister(pulls, { ...asked, toleranceMm: 0, sheets: 1 })).toEqual([pulls]);
});
