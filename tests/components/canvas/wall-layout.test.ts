import { describe, it, expect } from 'vitest';
import { layWall, leftOf, placeAfter, placeAt, placesIn, topOf } from '../../../src/components/canvas/wall-layout.ts';

describe('layWall', () => {
  it('should make the prints as large as any number of columns can', () => {
    for (const view of [{ width: 1100, height: 800 }, { width: 700, height: 900 }, { width: 900, height: 200 }]) {
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

describe('placeAt', () => {
  const layout = layWall(50, 0.7, { width: 1000, height: 700 });

  it('should find each print by its own middle, and none between prints', () => {
    for (let index = 0; index < 50; index++) {
      const x = leftOf(layout, index) + layout.printWidth / 2;
      const y = topOf(layout, index) + layout.printHeight / 2;
      expect(placeAt(layout, x, y)).toBe(index);
      expect(placeAt(layout, leftOf(layout, index) + layout.printWidth + 1, y)).toBe(-1);
    }
    expect(placeAt(layout, -1, 5)).toBe(-1);
    expect(placeAt(layout, layout.width + 20, 5)).toBe(-1);
  });
});

describe('placesIn', () => {
  it('should hold every print that a part of the wall touches', () => {
    const layout = layWall(200, 0.7, { width: 1000, height: 700 });
    const part = { x: 333, y: 222, width: 400, height: 300 };
    const range = placesIn(layout, part.x, part.y, part.width, part.height);
    for (let index = 0; index < 200; index++) {
      const left = leftOf(layout, index);
      const top = topOf(layout, index);
      const touches =
        left < part.x + part.width && left + layout.printWidth > part.x && top < part.y + part.height && top + layout.printHeight > part.y;
      const column = index % layout.columns;
      const row = Math.floor(index / layout.columns);
      const within = column >= range.firstColumn && column < range.endColumn && row >= range.firstRow && row < range.endRow;
      if (touches) expect(within).toBe(true);
    }
    expect((range.endColumn - range.firstColumn) * (range.endRow - range.firstRow)).toBeLessThan(100);
  });
});

describe('placeAfter', () => {
  const layout = { ...layWall(20, 0.7, { width: 1000, height: 700 }), columns: 6 };

  it('should walk along rows and columns and stop at the ends', () => {
    expect(placeAfter(layout, 0, 'ArrowRight', 19)).toBe(1);
    expect(placeAfter(layout, 0, 'ArrowLeft', 19)).toBe(0);
    expect(placeAfter(layout, 7, 'ArrowUp', 19)).toBe(1);
    expect(placeAfter(layout, 7, 'ArrowDown', 19)).toBe(13);
    expect(placeAfter(layout, 17, 'ArrowDown', 19)).toBe(17);
    expect(placeAfter(layout, 7, 'Home', 19)).toBe(0);
    expect(placeAfter(layout, 7, 'End', 19)).toBe(19);
    expect(placeAfter(layout, 19, 'ArrowRight', 19)).toBe(19);
  });
});
