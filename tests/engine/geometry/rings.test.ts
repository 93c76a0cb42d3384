import { describe, expect, it } from 'vitest';
import { compose, mapRings, placeRings, ringArea, shapeBounds, turnAbout } from '../../../src/engine/geometry/rings.ts';

const square = [0, 0, 10, 0, 10, 10, 0, 10];

describe('ringArea', () => {
  it('should be positive clockwise as seen, negative the other way', () => {
    expect(ringArea(square)).toBe(100);
    expect(ringArea([0, 0, 0, 10, 10, 10, 10, 0])).toBe(-100);
  });

  it('should not lose digits far from the origin', () => {
    const far = square.map((v) => v * 1e-3 + 1e6);
    expect(ringArea(far)).toBeCloseTo(1e-4, 10);
  });

  it('should be nothing for fewer than three points', () => {
    expect(ringArea([0, 0, 5, 5])).toBe(0);
  });
});

describe('shapeBounds', () => {
  it('should cover all rings', () => {
    expect(shapeBounds([square, [-5, 2, 3, 20, 1, 1]])).toEqual({
      xMm: -5,
      yMm: 0,
      widthMm: 15,
      heightMm: 20,
    });
  });
});

describe('turnAbout', () => {
  it('should turn clockwise, exactly in quarters', () => {
    expect([...mapRings([[10, 0]], turnAbout(90, 0, 0))[0]!]).toEqual([0, 10]);
    expect([...mapRings([[10, 0]], turnAbout(-90, 0, 0))[0]!]).toEqual([0, -10]);
    expect([...mapRings([[3, 4]], turnAbout(180, 1, 1))[0]!]).toEqual([-1, -2]);
  });

  it('should undo itself', () => {
    const both = compose(turnAbout(-37, 8, 9), turnAbout(37, 8, 9));
    both.forEach((v, i) => expect(v).toBeCloseTo([1, 0, 0, 1, 0, 0][i]!, 12));
  });
});

describe('placeRings', () => {
  it('should put the centre of the box where it is told, scaled and turned', () => {
    // A 20 × 10 box with its corner at (100, 100); at half size, a quarter turn: 5 wide, 10 high.
    const box = [100, 100, 120, 100, 120, 110, 100, 110];
    const placed = placeRings([box], { xMm: 50, yMm: 60, turnDeg: 90, scale: 0.5 });
    expect(shapeBounds(placed)).toEqual({ xMm: 47.5, yMm: 55, widthMm: 5, heightMm: 10 });
    // The top left corner goes to the top right.
    expect(Array.from(placed[0]!.subarray(0, 2))).toEqual([52.5, 55]);
    expect(ringArea(placed[0]!)).toBeCloseTo(50, 9);
  });
});
