import { Resvg } from '@resvg/resvg-js';
import DxfReader from 'dxf-parser';
import { describe, expect, it } from 'vitest';
import { intersectionArea, outlineArea } from '../../../src/engine/geometry/booleans.ts';
import { grownRings } from '../../../src/engine/geometry/offset.ts';
import { ringParts } from '../../../src/engine/geometry/parts.ts';
import { ringArea, shapeBounds } from '../../../src/engine/geometry/rings.ts';
import { WorkBudget } from '../../../src/engine/geometry/work.ts';
import type { FilmScreen } from '../../../src/engine/output/film/ways.ts';
import { withBridges } from '../../../src/engine/output/plate/bridges.ts';
import { nest } from '../../../src/engine/output/plate/nest.ts';
import { plateDxf, plateSvg } from '../../../src/engine/output/plate/plate-files.ts';
import { type PlateAsked, plates } from '../../../src/engine/output/plate/plates.ts';

const square = (side: number, at = 0): number[] => [at, at, at + side, at, at + side, at + side, at, at + side];
const film = (rings: number[][], side: number): FilmScreen => ({
  key: '7',
  screen: {
    number: 7,
    name: 'Kelp',
    placed: [{ shape: 's', xMm: 60, yMm: 50, turnDeg: 0, scale: 1 }],
    mesh: { threadsPerCm: 90, threadUm: 48 },
  },
  shapes: [{ id: 's', name: 'S', rings, fillRule: 'evenodd', widthMm: side, heightMm: side }],
  paper: { widthMm: 120, heightMm: 100 },
});
const FRAME = [square(40), square(20, 10)];
const asked: PlateAsked = { kind: 'relief', kerfMm: 0.2, sheetWidthMm: 100, sheetHeightMm: 80, gapMm: 2, bridgeMm: 2, leastMm: 1 };
const outline = (rings: readonly Float64Array[]) => ({ rings, fillRule: 'nonzero' as const });

describe('plates', () => {
  it('should keep their size when the cut takes half a kerf on either side', () => {
    const { sheets, pieces } = plates([film(FRAME, 40)], asked);
    expect([sheets.length, pieces]).toEqual([1, 1]);
    const [inner, outer] = sheets[0]!.rings as [Float64Array, Float64Array];
    // The hole is cut first, 0.1 mm inside its edge; the outside 0.1 mm outside.
    expect(shapeBounds([inner]).widthMm).toBeCloseTo(19.8, 3);
    expect(shapeBounds([outer]).widthMm).toBeCloseTo(40.2, 3);
  });

  it('should be mirrored, as what they print is mirrored again', () => {
    // An arrow to the right: its tip on the right is on the left of the plate.
    const { sheets } = plates([film([[0, 10, 40, 20, 0, 30]], 40)], { ...asked, kerfMm: 0 });
    const ring = sheets[0]!.rings[0]!;
    const box = shapeBounds([ring]);
    const wide = (x: number): number => {
      const ys = Array.from(ring.filter((_, i) => i % 2 === 1 && Math.abs(ring[i - 1]! - x) < 0.5));
      return Math.max(...ys) - Math.min(...ys);
    };
    expect(box.widthMm === 40 ? wide(box.xMm) : Infinity).toBeLessThan(1);
  });

  it('should be read back by another reader of DXF as closed contours of the same area, y upwards', () => {
    const { sheets } = plates([film(FRAME, 40)], asked);
    const dxf = new DxfReader().parseSync(plateDxf(sheets[0]!))!;
    expect(dxf.header).toMatchObject({ $ACADVER: 'AC1009', $INSUNITS: 4 });
    const read = dxf.entities as unknown as { type: string; layer: string; shape: boolean; vertices: { x: number; y: number }[] }[];
    expect(read.map(({ type, layer, shape }) => [type, layer, shape])).toEqual([
      ['POLYLINE', 'CUT', true],
      ['POLYLINE', 'CUT', true],
    ]);
    const areas = read.map(({ vertices }) => Math.abs(ringArea(vertices.flatMap(({ x, y }) => [x, y]))));
    sheets[0]!.rings.forEach((ring, i) => expect(areas[i]).toBeCloseTo(Math.abs(ringArea(ring)), 2));
    expect(Math.max(...read.flatMap(({ vertices }) => vertices.map(({ y }) => y)))).toBeCloseTo(80 - shapeBounds(sheets[0]!.rings).yMm, 3);
  });

  it('should be hairlines in an SVG of the same size, in the eyes of another renderer (resvg)', () => {
    const svg = plateSvg(plates([film(FRAME, 40)], asked).sheets[0]!);
    expect(svg).toContain('width="100mm" height="80mm"');
    // Filled, to be measured, at 10 pixels a millimetre: 40.2² without 19.8².
    const filled = svg.replace('<g fill="none"', '<g fill="#000" stroke-opacity="0"').replace(/"\/>\n<path d="/, '');
    const { pixels } = new Resvg(filled.replace('fill="#000"', 'fill="#000" fill-rule="evenodd"'), {
      fitTo: { mode: 'width', value: 1000 },
    }).render();
    const alpha = pixels.filter((_, i) => i % 4 === 3);
    expect(Math.abs(alpha.reduce((sum, value) => sum + value / 255, 0) / 100 - (40.2 ** 2 - 19.8 ** 2))).toBeLessThan(1.2);
  });

  it('should leave bridges in a stencil, so that nothing falls out: no opening has a hole', () => {
    const { sheets, islands, bridges } = plates([film(FRAME, 40)], { ...asked, kind: 'stencil', kerfMm: 0 });
    expect([islands, bridges]).toEqual([1, 2]);
    const cut = sheets[0]!.rings.slice(0, -1);
    expect(ringParts(cut).map((part) => part.length)).toEqual([1, 1]);
    // Two bridges of 2 mm across openings of 10 mm.
    expect(outlineArea(outline(cut))).toBeCloseTo(1600 - 400 - 2 * 2 * 10, 1);
    // Not mirrored: the sheet's edge comes last, the openings where they print.
    expect(shapeBounds(cut)).toMatchObject({ xMm: 40, yMm: 30 });
  });

  it('should bridge islands within islands, and many side by side', () => {
    const rings = (sides: number[]): Float64Array[] =>
      sides.map((side, i) => {
        const ring = square(side, (100 - side) / 2);
        return Float64Array.from(i % 2 === 0 ? ring : [0, 3, 2, 1].flatMap((at) => ring.slice(2 * at, 2 * at + 2)));
      });
    const { rings: open, islands } = withBridges(rings([100, 80, 60, 40]), 2, new WorkBudget());
    expect(islands).toBe(2);
    expect(ringParts(open).every((part) => part.length === 1)).toBe(true);
  });

  it.each([
    [
      'plate.large',
      film([square(90)], 90),
      asked,
      /^A piece of screen 7, Kelp is 90 × 90 mm, larger than a sheet of 100 × 80 mm with 2 mm free about it; take larger sheets\.$/,
    ],
    [
      'plate.kerf',
      film([square(1)], 1),
      { ...asked, kind: 'stencil' as const, kerfMm: 2 },
      /^A kerf of 2 mm with bridges of 2 mm leaves nothing to cut/,
    ],
    [
      'film.empty',
      { ...film([square(1)], 1), screen: { ...film([square(1)], 1).screen, placed: [] } },
      asked,
      /^There is nothing on screen 7, Kelp/,
    ],
  ])('should be refused in a sentence: %s', (code, one, how, message) => {
    expect(() => plates([one], how)).toThrow(expect.objectContaining({ code, message: expect.stringMatching(message) as string }));
  });
});

describe('plates of several screens', () => {
  const other = { ...film([square(30)], 30), key: '8 b' };

  it('should have sheets of their own, a screen each, all counted', () => {
    const found = plates([film(FRAME, 40), other], asked);
    expect(found.sheets.map(({ name, screens }) => [name, screens])).toEqual([
      ['screen 7 Kelp plate', undefined],
      ['screen 8 b Kelp plate', undefined],
    ]);
    expect(found.pieces).toBe(2);
  });

  it('should share sheets when asked to, no piece over another, each on the layer of its screen', () => {
    const { sheets, pieces } = plates([film(FRAME, 40), other], { ...asked, kerfMm: 0, together: true });
    expect([sheets.length, pieces, sheets[0]!.name]).toEqual([1, 2, '2 screens plate']);
    expect([...sheets[0]!.screens!].sort()).toEqual(['7', '7', '8 b']);
    // 40² without 20², and 30²: none lies over another.
    expect(outlineArea(outline(sheets[0]!.rings))).toBeCloseTo(1600 - 400 + 900, 1);
    const dxf = new DxfReader().parseSync(plateDxf(sheets[0]!))!;
    const read = dxf.entities as unknown as { layer: string; vertices: { x: number; y: number }[] }[];
    const areaOn = (layer: string): number[] =>
      read
        .filter((one) => one.layer === layer)
        .map(({ vertices }) => Math.round(Math.abs(ringArea(vertices.flatMap(({ x, y }) => [x, y])))));
    expect(areaOn('CUT_7').sort((a, b) => a - b)).toEqual([400, 1600]);
    expect(areaOn('CUT_8-b')).toEqual([900]);
    expect(
      plateSvg(sheets[0]!)
        .match(/class="screen-[^"]+"/g)!
        .sort(),
    ).toEqual(['class="screen-7"', 'class="screen-7"', 'class="screen-8-b"']);
  });

  it('should cut what lies in a hole before what is about it', () => {
    const small = { ...film([square(10)], 10), key: '9' };
    // A hole of 76 mm takes the small piece, as the sheet has no room beside the frame.
    const { sheets } = plates([film([square(90), square(76, 7)], 90), small], {
      ...asked,
      kerfMm: 0,
      sheetWidthMm: 96,
      sheetHeightMm: 96,
      together: true,
    });
    expect(sheets.map(({ screens }) => screens)).toEqual([['9', '7', '7']]);
  });

  it('should be stencils, one a screen, and name the screen that is empty or too large', () => {
    expect(plates([film(FRAME, 40), other], { ...asked, kind: 'stencil', together: true }).sheets.map(({ name }) => name)).toEqual([
      'screen 7 Kelp stencil',
      'screen 8 b Kelp stencil',
    ]);
    expect(() => plates([film(FRAME, 40), { ...film([square(90)], 90), key: '8' }], { ...asked, together: true })).toThrow(
      /^A piece of screen 8, Kelp is 90/,
    );
  });
});

describe('pieces on a sheet', () => {
  it('should lie inside it, none over another nor nearer than the gap, each once, the same every time', () => {
    const pieces = Array.from({ length: 24 }, (_, i) => {
      const corners = 3 + (i % 5);
      const r = 6 + ((i * 7) % 11);
      return [
        Float64Array.from(
          Array.from({ length: corners }, (_, k) => [
            r * Math.cos((2 * Math.PI * k) / corners),
            r * Math.sin((2 * Math.PI * k) / corners),
          ]).flat(),
        ),
      ];
    });
    const sheet = { widthMm: 120, heightMm: 80, gapMm: 2 };
    const { nested, misfits } = nest(pieces, sheet, new WorkBudget());
    expect(misfits).toEqual([]);
    expect(nested.map(({ piece }) => piece).sort((a, b) => a - b)).toEqual(pieces.map((_, i) => i));
    for (const { rings } of nested) {
      const { xMm, yMm, widthMm, heightMm } = shapeBounds(rings);
      expect(Math.min(xMm, yMm, 120 - xMm - widthMm, 80 - yMm - heightMm)).toBeGreaterThanOrEqual(0.99);
    }
    for (const [i, a] of nested.entries())
      for (const b of nested.slice(i + 1)) {
        if (a.sheet !== b.sheet) continue;
        // Half the gap about each, less the chords of its corners.
        const [one, other] = [a, b].map(({ rings }) => outline(grownRings(rings, 0.99, new WorkBudget())));
        expect(intersectionArea(one!, other!)).toBe(0);
      }
    expect(nest(pieces, sheet, new WorkBudget())).toEqual({ nested, misfits });
    expect(Math.max(...nested.map(({ sheet: at }) => at))).toBeLessThanOrEqual(1);
  });

  it('should use the room in a bay, where boxes would not', () => {
    const bay = Float64Array.from([0, 0, 60, 0, 60, 10, 10, 10, 10, 50, 60, 50, 60, 60, 0, 60]);
    const small = Float64Array.from(square(20));
    const { nested } = nest([[bay], [small]], { widthMm: 66, heightMm: 66, gapMm: 2 }, new WorkBudget());
    expect(nested.map(({ sheet }) => sheet)).toEqual([0, 0]);
    expect(intersectionArea(outline(nested[0]!.rings), outline(nested[1]!.rings))).toBe(0);
  });
});
