import { Resvg } from '@resvg/resvg-js';
import { describe, expect, it } from 'vitest';
import { outlineArea } from '../../../../src/engine/geometry/booleans.ts';
import { type DrawPoint, FLAT_MM, lineThrough } from '../../../../src/engine/shapes/draw/curve.ts';
import { kindOf, ofKind, pulled, withHandle } from '../../../../src/engine/shapes/draw/handles.ts';
import { drawnShape } from '../../../../src/engine/shapes/draw/shape-of.ts';

const HEAD = { id: 'new', name: 'New' };

/** Area that another renderer fills of a path, mm², of a page of 100 mm at 20 pixels a mm. */
function renderedMm2(d: string): number {
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 100 100"><rect width="100" height="100" fill="#fff"/><path d="${d}"/></svg>`;
  const { pixels } = new Resvg(svg, { fitTo: { mode: 'width', value: 2000 } }).render();
  let dark = 0;
  for (let i = 0; i < pixels.length; i += 4) dark += 255 - pixels[i]!;
  return dark / 255 / 400;
}

/** Four points of a circle about 50, 50 with the handles of the cubic that stands for a quarter of it. */
function circle(radius: number): DrawPoint[] {
  // (4/3) tan(π/8), within 0.027 % of the radius: Riškus (2006), Information Technology and Control 35(4), from memory.
  const arm = (4 / 3) * Math.tan(Math.PI / 8) * radius;
  const ways = [[1, 0], [0, 1], [-1, 0], [0, -1]] as const;
  return ways.map(([x, y]) => ({
    xMm: 50 + radius * x,
    yMm: 50 + radius * y,
    round: true,
    handles: { into: [y * arm, -x * arm], out: [-y * arm, x * arm] },
  }));
}

describe('curves with handles', () => {
  it('should run round as a circle of four points does, to 0.03 % of its radius', () => {
    const [ring] = drawnShape(circle(30), HEAD).shape.rings;
    for (let i = 0; i < ring!.length; i += 2) {
      const off = Math.hypot(ring![i]! - 50, ring![i + 1]! - 50) - 30;
      expect(off).toBeGreaterThan(-FLAT_MM - 0.001);
      expect(off).toBeLessThan(0.00028 * 30 + 0.001);
    }
  });

  it('should fill what another renderer fills of the same cubics, with loops, corners and a straight side', () => {
    const points: DrawPoint[] = [
      { xMm: 20, yMm: 30, round: true, handles: { into: [-12, 20], out: [9, -15] } },
      { xMm: 70, yMm: 15, round: false, handles: { into: [-10, 25], out: [20, 5] } },
      { xMm: 80, yMm: 80, round: false },
      { xMm: 30, yMm: 80, round: false },
    ];
    // From a corner without handles a curve leaves along its chord, by a third of it.
    const d =
      'M20 30C29 15 60 40 70 15C90 20 76.666667 58.333333 80 80L30 80C26.666667 63.333333 8 50 20 30Z';
    expect(Math.abs(outlineArea(drawnShape(points, HEAD).shape) - renderedMm2(d))).toBeLessThan(0.5);
  });

  it('should enclose an area with two points, and refuse one', () => {
    const lens: DrawPoint[] = [
      { xMm: 20, yMm: 50, round: false, handles: { into: [20, 20], out: [20, -20] } },
      { xMm: 80, yMm: 50, round: false, handles: { into: [-20, -20], out: [-20, 20] } },
    ];
    expect(Math.abs(outlineArea(drawnShape(lens, HEAD).shape) - renderedMm2('M20 50C40 30 60 30 80 50C60 70 40 70 20 50Z'))).toBeLessThan(0.5);
    expect(() => drawnShape(lens.slice(0, 1), HEAD)).toThrow(/at least three points/);
  });

  it('should pull both handles out of a point, turn one with the other, or leave it', () => {
    const point = pulled({ xMm: 10, yMm: 20, round: false }, [3, 4]);
    expect(point).toEqual({ xMm: 10, yMm: 20, round: true, handles: { into: [-3, -4], out: [3, 4] } });
    // The other keeps its length of 5 mm and lies opposite.
    expect(withHandle(point, 'out', [0, 10]).handles).toEqual({ into: [0, -5], out: [0, 10] });
    expect(withHandle(point, 'into', [2, 0]).handles).toEqual({ into: [2, 0], out: [-5, 0] });
    expect(withHandle({ ...point, round: false }, 'out', [0, 10]).handles).toEqual({ into: [-3, -4], out: [0, 10] });
    expect(withHandle(point, 'out', [0, 0]).handles).toEqual({ into: [-3, -4], out: [0, 0] });
  });

  it('should keep the outline as it is when a round point gets handles, and go through all kinds', () => {
    const points: DrawPoint[] = [[20, 20], [80, 25], [70, 80], [25, 70]].map(([xMm, yMm]) => ({ xMm: xMm!, yMm: yMm!, round: true }));
    const smooth = points.with(1, ofKind(points, 1, 'smooth'));
    const area = (of: readonly DrawPoint[]): number => outlineArea(drawnShape(of, HEAD).shape);
    expect(Math.abs(area(smooth) - area(points))).toBeLessThan(0.5);
    expect(smooth.map(kindOf)).toEqual(['round', 'smooth', 'round', 'round']);
    const { handles } = smooth[1]!;
    expect(handles!.into[0] * handles!.out[1] - handles!.into[1] * handles!.out[0]).toBeLessThan(0.5);
    expect(kindOf(ofKind(smooth, 1, 'cusp'))).toBe('cusp');
    expect(ofKind(smooth, 1, 'cusp').handles).toEqual(handles);
    expect(ofKind(smooth, 1, 'corner')).toEqual({ xMm: 80, yMm: 25, round: false });
    expect(kindOf(ofKind(smooth, 1, 'round'))).toBe('round');
  });

  it('should run open from the first point to the last', () => {
    expect(lineThrough([{ xMm: 0, yMm: 0, round: false }, { xMm: 10, yMm: 5, round: false }])).toEqual([0, 0, 10, 5]);
    const bent = lineThrough([pulled({ xMm: 0, yMm: 0, round: false }, [0, 10]), { xMm: 10, yMm: 0, round: false }]);
    expect(bent.slice(-2)).toEqual([10, 0]);
    expect(bent.length).toBeGreaterThan(10);
  });
});
