import { describe, expect, it } from 'vitest';
import { placeRings, shapeBounds } from '../../../../src/engine/geometry/rings.ts';
import { placeByPage, samePage, spreadOver } from '../../../../src/engine/shapes/place/lay-out.ts';
import { reachBeyondMm } from '../../../../src/engine/shapes/place/new-screen.ts';
import { readShapes } from '../../../../src/engine/shapes/read/read-shapes.ts';

const SHEET = { widthMm: 560, heightMm: 760 };
const PRINTABLE = { xMm: 30, yMm: 30, widthMm: 500, heightMm: 700 };

function read(svg: string) {
  const [shape] = readShapes(svg, 'layer.svg').shapes;
  return { ...shape!, id: 's', rings: shape!.rings.map((ring) => [...ring]) };
}

function page(width: string, height: string, rect: string): string {
  return `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}"><rect ${rect}/></svg>`;
}

describe('readShapes', () => {
  it('should tell the size of the page, none where the file gives none', () => {
    expect(read(page('210mm', '29.7cm', 'width="10" height="10"')).page).toEqual({ widthMm: expect.closeTo(210, 6), heightMm: expect.closeTo(297, 6) });
    expect(read('<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 96 192"><rect width="10" height="10"/></svg>').page).toEqual({
      widthMm: expect.closeTo(25.4, 6),
      heightMm: expect.closeTo(50.8, 6),
    });
    expect(read('<svg xmlns="http://www.w3.org/2000/svg"><rect width="10" height="10"/></svg>').page).toBeNull();
  });
});

describe('placeByPage', () => {
  it('should print a page as large as the sheet exactly where it was drawn', () => {
    const shape = read(page('560mm', '760mm', 'x="50mm" y="600mm" width="100mm" height="80mm"'));
    const box = shapeBounds(placeRings(shape.rings, placeByPage(shape, shape.page!, SHEET)));
    expect(box).toEqual({ xMm: expect.closeTo(50, 1), yMm: expect.closeTo(600, 1), widthMm: expect.closeTo(100, 2), heightMm: expect.closeTo(80, 2) });
  });

  it('should put a smaller page in the middle and keep two of them in register', () => {
    const below = read(page('200mm', '200mm', 'x="0" y="0" width="100mm" height="200mm"'));
    const above = read(page('200mm', '200mm', 'x="100mm" y="0" width="100mm" height="50mm"'));
    const [a, b] = [below, above].map((shape) => shapeBounds(placeRings(shape.rings, placeByPage(shape, shape.page!, SHEET))));
    expect(a!.xMm).toBeCloseTo(180, 1);
    expect(a!.yMm).toBeCloseTo(280, 1);
    expect(b!.xMm).toBeCloseTo(a!.xMm + a!.widthMm, 1);
    expect(b!.yMm).toBeCloseTo(a!.yMm, 1);
  });

  it('should shrink a page that is larger than the sheet', () => {
    const shape = read(page('1120mm', '1000mm', 'width="1120mm" height="1000mm"'));
    const place = placeByPage(shape, shape.page!, SHEET);
    expect(place).toMatchObject({ xMm: 280, yMm: 380, scale: 0.5 });
  });
});

describe('samePage', () => {
  it('should not mind rounding but tell sizes apart', () => {
    expect(samePage(SHEET, { widthMm: 560.2, heightMm: 759.8 })).toBe(true);
    expect(samePage(SHEET, { widthMm: 561, heightMm: 760 })).toBe(false);
  });
});

describe('spreadOver', () => {
  const rect = (id: string, widthMm: number, heightMm: number) => ({ id, widthMm, heightMm, rings: [[0, 0, widthMm, 0, widthMm, heightMm, 0, heightMm]] });

  it('should lie within the printable part, at one factor, whatever the sizes', () => {
    for (const size of [0.5, 20, 3000]) {
      const shapes = Array.from({ length: 25 }, (_, i) => rect(`s${i}`, size * (1 + (i % 5)), size * (1 + (i % 3))));
      const places = spreadOver(shapes, PRINTABLE);
      expect(new Set(places.map(({ scale }) => scale)).size).toBe(1);
      shapes.forEach((shape, i) => expect(reachBeyondMm(shape, places[i]!, PRINTABLE)).toBeLessThan(0.06));
    }
  });

  it('should keep true sizes when they fit, however many there are, and else shrink all alike', () => {
    const true25 = Array.from({ length: 25 }, (_, i) => rect(`s${i}`, 300 + i, 400));
    expect(spreadOver(true25, PRINTABLE).every(({ scale }) => scale === 1)).toBe(true);
    // 500 mm of printable width for 1000 mm.
    expect(spreadOver([rect('a', 1000, 100), rect('b', 10, 10)], PRINTABLE).map(({ scale }) => scale)).toEqual([0.5, 0.5]);
  });

  it('should reach into every quarter and make some overlap', () => {
    const shapes = Array.from({ length: 12 }, (_, i) => rect(`s${i}`, 160, 190));
    const places = spreadOver(shapes, PRINTABLE);
    expect(new Set(places.map(({ xMm, yMm }) => `${xMm < 280} ${yMm < 380}`)).size).toBe(4);
    const [width, height] = [160 * places[0]!.scale, 190 * places[0]!.scale];
    const meet = places.flatMap((a, i) => places.slice(i + 1).filter((b) => Math.abs(a.xMm - b.xMm) < width && Math.abs(a.yMm - b.yMm) < height));
    expect(meet.length).toBeGreaterThan(5);
  });
});
