import { describe, expect, it } from 'vitest';
import { SheetView } from '../../../../src/components/bench/picture/sheet-view.ts';

function viewOf(widthPx: number, heightPx: number): SheetView {
  const view = new SheetView();
  view.setSheet(560, 760);
  view.setFrame(widthPx, heightPx);
  return view;
}

/** The place on the sheet at a point of the frame, mm; by the definition of origin and scale. */
function placeAt(view: SheetView, x: number, y: number): [number, number] {
  return [(x - view.origin.x) / view.pxPerMm, (y - view.origin.y) / view.pxPerMm];
}

describe('SheetView', () => {
  it('should show the whole sheet in the middle, at its true proportions', () => {
    const view = viewOf(1100, 600);
    const left = view.origin.x;
    const top = view.origin.y;
    const right = 1100 - left - 560 * view.pxPerMm;
    const bottom = 600 - top - 760 * view.pxPerMm;
    expect(left).toBeCloseTo(right, 6);
    expect(top).toBeCloseTo(bottom, 6);
    expect(Math.min(left, top)).toBeGreaterThan(0);
  });

  it('should keep the place under the pointer where it is when coming closer', () => {
    const view = viewOf(1100, 600);
    const [xMm, yMm] = placeAt(view, 610, 220);
    for (const factor of [1.5, 3, 1.1]) view.zoom(factor, 610, 220);
    expect(placeAt(view, 610, 220)[0]).toBeCloseTo(xMm, 6);
    expect(placeAt(view, 610, 220)[1]).toBeCloseTo(yMm, 6);
  });

  it('should come back to the whole sheet when going further than it', () => {
    const view = viewOf(1100, 600);
    const before = { ...view.origin };
    view.zoom(4, 200, 100);
    expect(view.whole).toBe(false);
    view.zoom(0.1, 900, 500);
    expect(view.whole).toBe(true);
    expect(view.origin).toEqual(before);
  });

  it('should move the sheet with the hand, and never out of the frame', () => {
    const view = viewOf(1100, 600);
    view.zoom(3);
    const { x, y } = view.origin;
    view.pan(12, -7);
    expect(view.origin.x).toBeCloseTo(x + 12, 6);
    expect(view.origin.y).toBeCloseTo(y - 7, 6);
    view.pan(1e6, 1e6);
    const [xMm, yMm] = placeAt(view, 550, 300);
    expect([xMm, yMm]).toEqual([0, 0]);
  });

  it('should tell of a change only when there is one', () => {
    const view = viewOf(1100, 600);
    let changes = 0;
    view.addEventListener('change', () => changes++);
    view.setFrame(1100, 600);
    view.showWhole();
    view.pan(3, 3);
    expect(changes).toBe(0);
    view.zoom(2);
    expect(changes).toBe(1);
  });
});
