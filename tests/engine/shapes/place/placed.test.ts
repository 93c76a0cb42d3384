import { describe, expect, it } from 'vitest';
import { outlineArea } from '../../../../src/engine/geometry/booleans.ts';
import { shapeBounds } from '../../../../src/engine/geometry/rings.ts';
import { pullRings, screenRings } from '../../../../src/engine/shapes/place/placed.ts';
import type { Screen, Shape } from '../../../../src/engine/shapes/types.ts';

const square: Shape = {
  id: 'square',
  name: 'square',
  rings: [[0, 0, 10, 0, 10, 10, 0, 10]],
  fillRule: 'nonzero',
  widthMm: 10,
  heightMm: 10,
};
const frame: Shape = {
  ...square,
  id: 'frame',
  rings: [square.rings[0]!, [2, 2, 8, 2, 8, 8, 2, 8]],
  fillRule: 'evenodd',
};
const at = (shape: string, xMm: number, yMm: number) => ({ shape, xMm, yMm, turnDeg: 0, scale: 1 });
const screen = (...placed: Screen['placed']): Screen => ({
  id: 's1',
  number: 1,
  name: 'one',
  placed,
  mesh: { threadsPerCm: 90, threadUm: 48 },
});

describe('screenRings', () => {
  it('should give one shape as it is, with its rule', () => {
    const out = screenRings(screen(at('frame', 50, 50)), [square, frame]);
    expect(out.fillRule).toBe('evenodd');
    expect(outlineArea(out)).toBeCloseTo(64, 9);
    expect(shapeBounds(out.rings)).toEqual({ xMm: 45, yMm: 45, widthMm: 10, heightMm: 10 });
  });

  it('should join several shapes, overlaps counted once, also from a map', () => {
    const shapes = new Map([square, frame].map((shape) => [shape.id, shape]));
    const out = screenRings(screen(at('square', 50, 50), at('square', 55, 50), at('frame', 100, 50)), shapes);
    expect(out.fillRule).toBe('nonzero');
    expect(outlineArea(out)).toBeCloseTo(150 + 64, 9);
  });

  it('should not let shapes of opposite winding cancel out', () => {
    const reversed: Shape = { ...square, id: 'reversed', rings: [[0, 0, 0, 10, 10, 10, 10, 0]] };
    const out = screenRings(screen(at('square', 50, 50), at('reversed', 50, 50)), [square, reversed]);
    expect(outlineArea(out)).toBeCloseTo(100, 9);
  });

  it('should name a shape that is not in the drawer', () => {
    expect(() => screenRings(screen(at('gone', 0, 0)), [square])).toThrow(/'gone'/);
  });

  it('should print nothing from an empty screen', () => {
    expect(screenRings(screen(), [square]).rings).toEqual([]);
  });
});

describe('pullRings', () => {
  it('should refuse a lay that is no number rather than print nothing', () => {
    for (const bad of [{ dxMm: NaN }, { dyMm: Infinity }, { turnDeg: NaN }]) {
      const lay = { dxMm: 0, dyMm: 0, turnDeg: 0, ...bad };
      expect(() => pullRings(screen(at('square', 5, 5)), [square], lay, { widthMm: 100, heightMm: 100 })).toThrow(
        expect.objectContaining({ code: 'screen.bad-offset' }),
      );
    }
  });

  it('should turn about the middle of the sheet and then shift', () => {
    // Sheet 200 × 100, centre (100, 50). (150, 50) turned a quarter clockwise is (100, 100).
    const out = pullRings(
      screen(at('square', 150, 50)),
      [square],
      { dxMm: 3, dyMm: -2, turnDeg: 90 },
      { widthMm: 200, heightMm: 100 },
    );
    expect(shapeBounds(out.rings)).toEqual({ xMm: 98, yMm: 93, widthMm: 10, heightMm: 10 });
  });
});
