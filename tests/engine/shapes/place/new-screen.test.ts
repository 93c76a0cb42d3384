import { describe, it, expect } from 'vitest';
import { checkMesh, openingUm } from '../../../../src/engine/shapes/place/mesh-size.ts';
import { nextScreenNumber, placeInMiddle, reachBeyondMm, screenOfShape } from '../../../../src/engine/shapes/place/new-screen.ts';
import type { Shape } from '../../../../src/engine/shapes/types.ts';

const PRINTABLE = { xMm: 30, yMm: 30, widthMm: 500, heightMm: 700 };

function box(widthMm: number, heightMm: number): Shape {
  return {
    id: 'box',
    name: 'box',
    rings: [[7, 9, 7 + widthMm, 9, 7 + widthMm, 9 + heightMm, 7, 9 + heightMm]],
    fillRule: 'nonzero',
    widthMm,
    heightMm,
  };
}

describe('screenOfShape', () => {
  it('should lay a shape that fits in the middle, at its own size', () => {
    const { screen, fitted } = screenOfShape(box(100, 200), PRINTABLE, { id: 's', number: 4 });
    expect(fitted).toBe(false);
    expect(screen).toMatchObject({ id: 's', number: 4, name: 'box' });
    expect(screen.placed).toEqual([{ shape: 'box', xMm: 280, yMm: 380, turnDeg: 0, scale: 1 }]);
    expect(reachBeyondMm(box(100, 200), screen.placed[0]!, PRINTABLE)).toBe(0);
  });

  it('should make a shape that is too large as large as fits', () => {
    for (const shape of [box(3000, 200), box(501, 20), box(2, 7777), box(500.0001, 700)]) {
      const { placed, fitted } = placeInMiddle(shape, PRINTABLE);
      expect(fitted).toBe(true);
      expect(reachBeyondMm(shape, placed, PRINTABLE)).toBe(0);
      // Not needlessly small: 2 per mille more would stick out.
      expect(reachBeyondMm(shape, { ...placed, scale: placed.scale + 0.002 }, PRINTABLE)).toBeGreaterThan(0);
    }
  });
});

describe('reachBeyondMm', () => {
  it('should give the distance beyond the side that is passed most', () => {
    const place = { xMm: 30, yMm: 380, turnDeg: 0, scale: 1 };
    expect(reachBeyondMm(box(100, 200), place, PRINTABLE)).toBeCloseTo(50, 9);
    // 20 mm beyond each side in turn, and 7 mm beyond the one before it.
    for (const [xMm, yMm] of [
      [60, 637],
      [473, 110],
      [500, 123],
      [87, 650],
    ] as const) {
      expect(reachBeyondMm(box(100, 200), { ...place, xMm, yMm }, PRINTABLE)).toBeCloseTo(20, 9);
    }
    // A quarter turn swaps width and height.
    expect(reachBeyondMm(box(100, 200), { ...place, turnDeg: 90 }, PRINTABLE)).toBeCloseTo(100, 9);
  });
});

describe('nextScreenNumber', () => {
  it('should be one more than the highest', () => {
    expect(nextScreenNumber([])).toBe(1);
    expect(nextScreenNumber([{ number: 3 }, { number: 12 }, { number: 5 }])).toBe(13);
  });
});

describe('openingUm', () => {
  // A mesh maker's catalogue (see tests/published/ink/mesh.json), 225 threads an inch: openings in whole µm.
  it.each([
    [40, 73],
    [48, 65],
    [54, 59],
  ])('should agree with a published sheet at a thread of %i µm', (threadUm, publishedUm) => {
    expect(Math.abs(openingUm({ threadsPerCm: 225 / 2.54, threadUm }) - publishedUm)).toBeLessThan(0.5);
  });
});

describe('checkMesh', () => {
  it('should pass a usual mesh', () => {
    expect(checkMesh({ threadsPerCm: 90, threadUm: 48 })).toEqual([]);
  });

  it('should refuse threads that leave no opening, and figures that are none', () => {
    expect(checkMesh({ threadsPerCm: 120, threadUm: 90 })[0]?.code).toBe('mesh.closed');
    expect(checkMesh({ threadsPerCm: Number.NaN, threadUm: 48 })[0]?.code).toBe('mesh.count');
    expect(checkMesh({ threadsPerCm: 90, threadUm: -1 })[0]?.code).toBe('mesh.thread');
  });
});
