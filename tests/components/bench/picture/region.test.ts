import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { visibleRegion } from '../../../../src/components/bench/picture/region.ts';

const SHEET = { widthMm: 560, heightMm: 760 };

describe('visibleRegion', () => {
  it('should cut at whole device pixels and cover all of the sheet that the frame shows', () => {
    fc.assert(
      fc.property(
        fc.record({
          widthPx: fc.integer({ min: 50, max: 1500 }),
          heightPx: fc.integer({ min: 50, max: 1000 }),
          x: fc.double({ min: -3000, max: 1400, noNaN: true }),
          y: fc.double({ min: -3000, max: 900, noNaN: true }),
          pxPerMm: fc.double({ min: 0.1, max: 100, noNaN: true }),
          ratio: fc.constantFrom(1, 1.25, 1.5, 2, 3),
        }),
        ({ widthPx, heightPx, x, y, pxPerMm, ratio }) => {
          const region = visibleRegion({ frame: { widthPx, heightPx }, origin: { x, y }, pxPerMm, deviceRatio: ratio }, SHEET);
          const seen = x < widthPx - 1 && y < heightPx - 1 && x + SHEET.widthMm * pxPerMm > 1 && y + SHEET.heightMm * pxPerMm > 1;
          if (region === null) {
            expect(seen).toBe(false);
            return;
          }
          expect(Number.isInteger(region.widthPx) && Number.isInteger(region.heightPx)).toBe(true);
          // One picture pixel is one device pixel.
          expect(region.widthPx / region.widthMm).toBeCloseTo(pxPerMm * ratio, 6);
          expect(region.heightPx / region.heightMm).toBeCloseTo(pxPerMm * ratio, 6);
          // Within half a device pixel of where the view has it.
          expect(Math.abs(x + region.xMm * pxPerMm - region.left)).toBeLessThanOrEqual(0.5 / ratio + 1e-6);
          expect(Math.abs(y + region.yMm * pxPerMm - region.top)).toBeLessThanOrEqual(0.5 / ratio + 1e-6);
          const right = region.left + region.widthPx / ratio;
          expect(right).toBeGreaterThanOrEqual(Math.min(widthPx, x + SHEET.widthMm * pxPerMm) - 0.5 / ratio - 1e-6);
          expect(region.xMm).toBeGreaterThanOrEqual(0);
        },
      ),
    );
  });

  it('should draw a draft of the same part with fewer pixels', () => {
    const look = { frame: { widthPx: 800, heightPx: 600 }, origin: { x: -40, y: 12 }, pxPerMm: 2.3, deviceRatio: 2 };
    const whole = visibleRegion(look, SHEET)!;
    const draft = visibleRegion(look, SHEET, 0.5)!;
    expect({ ...draft, widthPx: 0, heightPx: 0 }).toEqual({ ...whole, widthPx: 0, heightPx: 0 });
    expect(draft.widthPx).toBe(Math.round(whole.widthPx / 2));
  });
});
