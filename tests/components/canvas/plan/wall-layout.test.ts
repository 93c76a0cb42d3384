import { describe, it, expect } from 'vitest';
import { Camera } from '../../../../src/components/canvas/camera/camera.ts';
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

  it.each([360, 375, 390, 412, 430])('should lay prints that can be judged on a phone %i px wide', (width) => {
    const view = { width, height: 610 };
    for (const places of [30, 200]) {
      const layout = layWall(places, 560 / 760, view);
      const camera = new Camera();
      camera.fit(view, layout, { width: layout.printWidth, height: layout.printHeight });
      // Asked for: about 120 px; three of a phone's width are as near as whole prints come.
      expect(layout.printWidth * camera.scale).toBeGreaterThan(92);
      expect(layout.printWidth * camera.scale).toBeLessThan(125);
      expect(layout.width * camera.scale).toBeLessThan(width);
      expect(layout.columns * layout.rows).toBeGreaterThanOrEqual(places);
    }
  });

  it('should keep the proportions of the sheet', () => {
    const layout = layWall(7, 560 / 760, { width: 100, height: 100 });
    expect(layout.printWidth / layout.printHeight).toBeCloseTo(560 / 760, 9);
  });
});
