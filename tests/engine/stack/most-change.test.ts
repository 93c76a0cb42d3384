import { expect, it } from 'vitest';
import { mostChange } from '../../../src/engine/stack/look/most-change.ts';

const [widthPx, heightPx] = [40, 30];

/** A white picture with some pixels black. */
function drawn(...black: (readonly [x: number, y: number])[]): Uint8ClampedArray {
  const pixels = new Uint8ClampedArray(widthPx * heightPx * 4).fill(255);
  for (const [x, y] of black) pixels.fill(0, 4 * (y * widthPx + x), 4 * (y * widthPx + x) + 3);
  return pixels;
}

it('should find the square that holds most of what changes', () => {
  const near = [30, 20] as const;
  const sheets = [drawn([5, 5], near, [33, 22]), drawn([5, 5], [31, 21])];
  const found = mostChange({ widthPx, heightPx, meant: drawn([5, 5]), sheets, windowPx: 6 });
  // The three pixels lie within columns 30–33 and rows 20–22: every square of 6 about them begins at 28–30 and 17–20.
  expect(found!.xPx - 3).toBeGreaterThanOrEqual(28);
  expect(found!.xPx - 3).toBeLessThanOrEqual(30);
  expect(found!.yPx - 3).toBeGreaterThanOrEqual(17);
  expect(found!.yPx - 3).toBeLessThanOrEqual(20);
});

it('should find nothing where every sheet comes as it is meant, and take a square larger than the sheet', () => {
  expect(mostChange({ widthPx, heightPx, meant: drawn([5, 5]), sheets: [drawn([5, 5])], windowPx: 6 })).toBeNull();
  const found = mostChange({ widthPx, heightPx, meant: drawn(), sheets: [drawn([1, 1])], windowPx: 500 });
  expect(found).toEqual({ xPx: 15, yPx: 15 });
});
