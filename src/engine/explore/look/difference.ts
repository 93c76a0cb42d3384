import { f64 } from '../../base/at.ts';
import { deltaE2000Values } from '../../colour/delta-e.ts';
import { cellLab } from '../../stack/appearance.ts';
import { CellMapBuilder } from '../../stack/cell-map.ts';
import { stackLayers } from '../../stack/layers.ts';
import { samePlacement } from '../../stack/placement.ts';
import { SpanCache } from '../../stack/screen-spans.ts';
import type { CellMap, Pull } from '../../stack/types.ts';
import type { Studio } from '../../studio/studio.ts';

/** Where two prints differ, and by how much. */
export interface Difference {
  /** One map for both prints. */
  map: CellMap;
  /** ΔE00 of each of its cells. */
  deltaE: Float64Array;
  /** Mean over the sheet, by area. */
  mean: number;
  /** The greatest of any area. */
  greatest: number;
}

/**
 * The difference of two prints of one drawer, by the areas of the cells that both make together.
 * @param a first down first
 * @param rows rows of crossings over the sheet; more are finer
 * @throws EngineError as stackLayers and SpanCache
 */
export function differenceOf(studio: Studio, a: readonly Pull[], b: readonly Pull[], rows: number): Difference {
  const { widthMm, heightMm } = studio.paper;
  const both = together(a, b);
  const grid = { widthMm, heightMm, rows };
  const base = { pulls: both.base };
  const map = new CellMapBuilder().build(new SpanCache(studio).place(base, grid), grid);
  const labA = cellLab(map, stackLayers({ pulls: both.a }, studio, base), studio.paper.reflectance);
  const labB = cellLab(map, stackLayers({ pulls: both.b }, studio, base), studio.paper.reflectance);
  const deltaE = new Float64Array(map.cells);
  let sum = 0;
  let area = 0;
  let greatest = 0;
  for (let cell = 0; cell < map.cells; cell++) {
    const i = cell * 3;
    deltaE[cell] = deltaE2000Values(f64(labA, i), f64(labA, i + 1), f64(labA, i + 2), f64(labB, i), f64(labB, i + 1), f64(labB, i + 2));
    const cellArea = f64(map.areaMm2, cell);
    if (cellArea <= 0) continue;
    sum += f64(deltaE, cell) * cellArea;
    area += cellArea;
    greatest = Math.max(greatest, f64(deltaE, cell));
  }
  return { map, deltaE, mean: area > 0 ? sum / area : 0, greatest };
}

/** Share of the sheet that differs by more than a ΔE00, 0–1. */
export function shareOver({ map, deltaE }: Difference, limit: number): number {
  let over = 0;
  let all = 0;
  for (let cell = 0; cell < map.cells; cell++) {
    const area = f64(map.areaMm2, cell);
    all += area;
    if (f64(deltaE, cell) > limit) over += area;
  }
  return all > 0 ? over / all : 0;
}

/** Both stacks in the pulls of one map: what lies alike in both is placed once. */
function together(a: readonly Pull[], b: readonly Pull[]): { base: Pull[]; a: Pull[]; b: Pull[] } {
  const base = a.map((pull, i) => ({ ...pull, id: `a${i}` }));
  const free = new Set(base);
  const renamed = b.map((pull, i) => {
    const like = [...free].find((other) => samePlacement(pull, other));
    if (like !== undefined) {
      free.delete(like);
      return { ...pull, id: like.id };
    }
    const fresh = { ...pull, id: `b${i}` };
    base.push(fresh);
    return fresh;
  });
  return { base, a: base.slice(0, a.length), b: renamed };
}
