import { describe, it, expect } from 'vitest';
import { layWall } from '../../../../src/components/canvas/plan/wall-layout.ts';

describe('layWall', () => {
  it('should make the prints as large as any number of columns can', () => {
    for (const view of [
      { width: 1100, height: 800 },
      { width: 700, height: 900 },
      { width: 900, height: 200 },
    ]) {
      const layout = layWall(200, 560 / 760, view);
      const scaleWith = (columns: number) =>
        Math.min(view.width / (columns * layout.cellWidth), view.height / (Math.ceil(200 / columns) * layout.cellHeight));
      const best = Math.max(...Array.from({ length: 200 }, (_, i) => scaleWith(i + 1)));
      expect(scaleWith(layout.columns)).toBeCloseTo(best, 3);
      expect(layout.columns * layout.rows).toBeGreaterThanOrEqual(200);
    }
  });

  it('should lay prints that can be told apart on a phone', () => {
    const view = { width: 390, height: 560 };
    const layout = layWall(200, 560 / 760, view);
    const printHeightPx = (view.width / layout.width) * layout.printHeight;
    expect(printHeightPx).toBeGreaterThan(55);
    expect(layout.columns * layout.rows).toBeGreaterThanOrEqual(200);
  });

  it('should keep the proportions of the sheet', () => {
    const layout = layWall(7, 560 / 760, { width: 100, height: 100 });
    expect(layout.printWidth / layout.printHeight).toBeCloseTo(560 / 760, 9);
  });
});
