import { describe, expect, it } from 'vitest';
import { deltaE2000 } from '../../../../src/engine/colour/delta-e.ts';
import { differenceOf, shareOver } from '../../../../src/engine/explore/look/difference.ts';
import { sketchOf } from '../../../../src/engine/explore/look/sketch.ts';
import { cellLab } from '../../../../src/engine/stack/appearance.ts';
import { buildCellMap } from '../../../../src/engine/stack/cell-map.ts';
import { rasterCells } from '../../../../src/engine/stack/cell-raster.ts';
import { stackLayers } from '../../../../src/engine/stack/layers.ts';
import { placedSpans } from '../../../../src/engine/stack/screen-spans.ts';
import type { Pull } from '../../../../src/engine/stack/types.ts';
import { smallProject } from '../../../helpers/small-project.ts';

const { drawer, bench } = smallProject();
const ROWS = 240;
const COLUMNS = 200;

/** Lab of a grid of points of one print, on a map of its own. */
function points(pulls: readonly Pull[]): [number, number, number][] {
  const grid = { widthMm: drawer.paper.widthMm, heightMm: drawer.paper.heightMm, rows: ROWS };
  const stack = { pulls };
  const map = buildCellMap(placedSpans(stack, drawer, grid), grid);
  const lab = cellLab(map, stackLayers(stack, drawer), drawer.paper.reflectance);
  const { indexes, cells } = rasterCells(map, COLUMNS);
  return Array.from(indexes, (index) => {
    const cell = cells[index]! * 3;
    return [lab[cell]!, lab[cell + 1]!, lab[cell + 2]!];
  });
}

describe('differenceOf', () => {
  it('should be nothing between a print and itself, whatever its pulls are called', () => {
    const again = bench.map((pull, i) => ({ ...pull, id: `other ${i}` }));
    const found = differenceOf(drawer, bench, again, ROWS);
    expect(found.mean).toBe(0);
    expect(shareOver(found, 0)).toBe(0);
  });

  it('should agree with counting points of two prints, each on its own map', () => {
    const other = bench.toReversed().map((pull, i) => (i % 3 === 0 ? { ...pull, dxMm: pull.dxMm + 7.3 } : pull));
    const found = differenceOf(drawer, bench, other, ROWS);
    const a = points(bench);
    const b = points(other);
    const each = a.map((lab, i) => deltaE2000(lab, b[i]!));
    const mean = each.reduce((sum, value) => sum + value, 0) / each.length;
    expect(mean).toBeGreaterThan(0.2);
    expect(Math.abs(found.mean / mean - 1)).toBeLessThan(0.01);
    expect(Math.abs(shareOver(found, 3) - each.filter((value) => value > 3).length / each.length)).toBeLessThan(0.01);
    expect(found.greatest).toBeGreaterThanOrEqual(found.mean);
  });

  it('should be the same either way round', () => {
    const other = bench.toReversed();
    expect(differenceOf(drawer, other, bench, ROWS).mean).toBeCloseTo(differenceOf(drawer, bench, other, ROWS).mean, 6);
  });
});

describe('sketchOf', () => {
  it('should give one colour everywhere for a plain sheet', () => {
    const sketch = sketchOf({ columns: 10, rows: 12, words: new Uint32Array(120).fill(0xffffffff) });
    // White is L = 1, a = b = 0 (Ottosson 2020).
    for (let i = 0; i < sketch.length; i += 3) {
      expect(sketch[i]).toBeCloseTo(1, 4);
      expect(sketch[i + 1]).toBeCloseTo(0, 4);
    }
  });

  it('should tell top from bottom', () => {
    const words = Uint32Array.from({ length: 120 }, (_, i) => (i < 60 ? 0xff000000 : 0xffffffff));
    const sketch = sketchOf({ columns: 10, rows: 12, words });
    expect(sketch[0]).toBeCloseTo(0, 4);
    expect(sketch.at(-3)).toBeCloseTo(1, 4);
  });
});
