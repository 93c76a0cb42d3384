import { describe, it, expect } from 'vitest';
import { between, Camera, type View } from '../../../../src/components/canvas/camera/camera.ts';

const VIEW = { width: 1000, height: 800 };
const WALL = { width: 1800, height: 1200 };
const PRINT = { width: 74, height: 100 };

function standing(): Camera {
  const camera = new Camera();
  camera.fit(VIEW, WALL, PRINT);
  return camera;
}

function toWall(view: View, x: number, y: number): [number, number] {
  return [(x - view.x) / view.scale, (y - view.y) / view.scale];
}

describe('Camera', () => {
  it('should show prints at first that are large enough to be judged, from the top left', () => {
    const camera = standing();
    expect(PRINT.width * camera.scale).toBeCloseTo(120, 6);
    const [left, top] = toWall(camera, 0, 0);
    expect(left).toBeGreaterThan(-30);
    expect(left).toBeLessThanOrEqual(0);
    expect(top).toBeGreaterThan(-30);
    expect(top).toBeLessThanOrEqual(0);
    // Where all of them are as large, and on a narrow view, nothing is left out.
    const few = new Camera();
    few.fit(VIEW, { width: 500, height: 224 }, PRINT);
    expect(few.startView()).toEqual(few.overview());
    const phone = new Camera();
    phone.fit({ width: 390, height: 560 }, WALL, PRINT);
    expect(phone.startView()).toEqual(phone.overview());
  });

  it('should show the whole wall in the middle when that is asked for, in a window of another size too', () => {
    const camera = standing();
    camera.keeps = 'whole';
    camera.fit(VIEW, WALL, PRINT);
    const [left, top] = toWall(camera, 0, 0);
    const [right, bottom] = toWall(camera, VIEW.width, VIEW.height);
    expect(left).toBeLessThanOrEqual(0);
    expect(top).toBeLessThanOrEqual(0);
    expect(right).toBeGreaterThanOrEqual(WALL.width);
    expect(bottom).toBeGreaterThanOrEqual(WALL.height);
    expect(left + right).toBeCloseTo(WALL.width, 6);
    expect(top + bottom).toBeCloseTo(WALL.height, 6);
  });

  it('should not make posters of a few prints: they leave a quarter of the view free', () => {
    for (const wall of [
      { width: 80, height: 110 },
      { width: 400, height: 110 },
    ]) {
      const camera = new Camera();
      camera.fit(VIEW, wall, PRINT);
      const printPx = 100 * camera.scale;
      expect(printPx).toBeLessThan(0.75 * VIEW.height);
      expect(printPx).toBeGreaterThan(0.2 * VIEW.height);
    }
  });

  it('should begin at the top of a wall that is much taller than the view, at its full width', () => {
    const camera = new Camera();
    camera.fit({ width: 390, height: 500 }, { width: 630, height: 3600 }, PRINT);
    const [left, top] = toWall(camera, 0, 0);
    const [right] = toWall(camera, 390, 0);
    expect(left).toBeLessThanOrEqual(0);
    expect(right).toBeGreaterThanOrEqual(630);
    expect(right - left).toBeLessThan(700);
    expect(top).toBeLessThanOrEqual(0);
    expect(top).toBeGreaterThan(-60);
  });

  it('should keep the point under the pointer where it is when one steps closer', () => {
    const camera = standing();
    const before = toWall(camera, 300, 200);
    const view = camera.zoomed(2.5, 300, 200);
    expect(view.scale).toBeCloseTo(camera.scale * 2.5, 9);
    const after = toWall(view, 300, 200);
    expect(after[0]).toBeCloseTo(before[0], 6);
    expect(after[1]).toBeCloseTo(before[1], 6);
  });

  it('should keep a print whole in view while one steps closer to it, and in the middle when it no longer fits', () => {
    const camera = standing();
    // In the top left corner of the wall.
    const print = { left: 0, top: 0, width: 75, height: 100 };
    for (let i = 0; i < 12; i++) {
      const view = camera.zoomedOnto(1.5, print);
      camera.set(view);
      const [width, height] = [print.width * camera.scale, print.height * camera.scale];
      for (const [start, length, room] of [
        [camera.x, width, VIEW.width],
        [camera.y, height, VIEW.height],
      ] as const) {
        if (length <= room) {
          expect(start).toBeGreaterThanOrEqual(-1e-6);
          expect(start + length).toBeLessThanOrEqual(room + 1e-6);
        } else expect(start + length / 2).toBeCloseTo(room / 2, 6);
      }
    }
    expect(print.height * camera.scale).toBeGreaterThan(VIEW.height);
  });

  it('should never lose the wall out of sight', () => {
    const camera = standing();
    for (const [dx, dy] of [
      [9e4, 9e4],
      [-9e5, 0],
      [0, -9e5],
    ] as const) {
      camera.panBy(dx, dy);
      const [x, y] = toWall(camera, VIEW.width / 2, VIEW.height / 2);
      expect(x).toBeGreaterThanOrEqual(-1e-6);
      expect(x).toBeLessThanOrEqual(WALL.width + 1e-6);
      expect(y).toBeGreaterThanOrEqual(-1e-6);
      expect(y).toBeLessThanOrEqual(WALL.height + 1e-6);
    }
  });

  it('should move as little as it must to bring a print into view', () => {
    const camera = standing();
    camera.keeps = 'place';
    camera.set(camera.zoomed(6, 0, 0));
    const shown = toWall(camera, 400, 400);
    const still = camera.revealing({ left: shown[0], top: shown[1], width: 10, height: 10 });
    expect(still.x).toBe(camera.x);
    expect(still.y).toBe(camera.y);
    const far = camera.revealing({ left: 1700, top: 1100, width: 74, height: 124 });
    const [right, bottom] = toWall(far, VIEW.width, VIEW.height);
    expect(right).toBeGreaterThanOrEqual(1774);
    expect(bottom).toBeGreaterThanOrEqual(1224);
  });

  it('should keep the middle in the middle when the window changes and one stands close', () => {
    const camera = standing();
    camera.keeps = 'place';
    camera.set(camera.zoomed(4));
    const before = toWall(camera, VIEW.width / 2, VIEW.height / 2);
    camera.fit({ width: 600, height: 900 }, WALL, PRINT);
    const after = toWall(camera, 300, 450);
    expect(after[0]).toBeCloseTo(before[0], 6);
    expect(after[1]).toBeCloseTo(before[1], 6);
  });
});

describe('between', () => {
  it('should start at one view, end at the other, and keep their common point still', () => {
    const camera = standing();
    const from: View = { scale: camera.scale, x: camera.x, y: camera.y };
    const to = camera.zoomed(5, 700, 100);
    expect(between(from, to, 0)).toEqual(from);
    expect(between(from, to, 1).x).toBeCloseTo(to.x, 6);
    const [x, y] = toWall(from, 700, 100);
    const half = between(from, to, 0.5);
    expect(x * half.scale + half.x).toBeCloseTo(700, 6);
    expect(y * half.scale + half.y).toBeCloseTo(100, 6);
  });
});
