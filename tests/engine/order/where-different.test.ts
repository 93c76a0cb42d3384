import { describe, expect, it } from 'vitest';
import { differentPlaces, outlineCells } from '../../../src/engine/order/groups/where-different.ts';
import { buildCellMap } from '../../../src/engine/stack/cell-map.ts';
import { placedSpans } from '../../../src/engine/stack/screen-spans.ts';
import { printColours } from '../../published/order/raster.ts';
import { pull, rectDrawer } from './drawer.ts';

// Two squares that meet on 20 × 20 mm, and a third that meets none of them.
const studio = rectDrawer([
  [10, 10, 40, 40],
  [30, 30, 40, 40],
  [120, 20, 30, 30],
]);
const one = [pull(0, 'tar'), pull(1, 'foam'), pull(2, 'rust')];
const other = [one[1]!, one[2]!, one[0]!];
const grid = { widthMm: 200, heightMm: 100, rows: 100 };
const map = buildCellMap(placedSpans({ pulls: one }, studio, grid), grid);

describe('differentPlaces', () => {
  it('should name the pulls of the place, its area, and the ΔE00 that another print model gives', () => {
    const { places } = differentPlaces(map, studio, [one, other], 1);
    expect(places.map(({ pulls, areaMm2 }) => ({ pulls, areaMm2 }))).toEqual([{ pulls: ['p0', 'p1'], areaMm2: 400 }]);
    // By Kubelka's hyperbolic form and culori's ΔE00.
    expect(places[0]!.deltaE).toBeCloseTo(printColours(one, studio)([0, 1], [1, 0]), 4);
  });

  it('should find nothing where films only absorb, and nothing between an order and itself', () => {
    const clear = [pull(0, 'weed'), pull(1, 'dusk')];
    expect(
      differentPlaces(buildCellMap(placedSpans({ pulls: clear }, studio, grid), grid), studio, [clear, clear.toReversed()], 0.001).places,
    ).toEqual([]);
    expect(differentPlaces(map, studio, [one, one], 0.001).places).toEqual([]);
  });
});

describe('outlineCells', () => {
  it('should draw two lines round the place and nothing on it', () => {
    const { cells } = differentPlaces(map, studio, [one, other], 1);
    const pixels = new Uint32Array(outlineCells(map, cells, { widthPx: 200, linePx: 1, inner: 0xffffffff, outer: 0xff000000 }).buffer);
    const at = (x: number, y: number): number => pixels[y * 200 + x]!;
    expect([at(40, 40), at(29, 40), at(28, 40), at(27, 40), at(135, 35)]).toEqual([0, 0xffffffff, 0xff000000, 0, 0]);
    // 20 × 20 pixels: the lines are squares of 22 and 24 about it.
    expect(pixels.filter((word) => word === 0xffffffff)).toHaveLength(22 ** 2 - 20 ** 2);
    expect(pixels.filter((word) => word === 0xff000000)).toHaveLength(24 ** 2 - 22 ** 2);
  });
});
