import { deltaE2000Values } from '../../../../src/engine/colour/delta-e.ts';
import { cellLab } from '../../../../src/engine/stack/appearance.ts';
import { CellMapBuilder } from '../../../../src/engine/stack/cell-map.ts';
import { stackLayers } from '../../../../src/engine/stack/layers.ts';
import { SpanCache } from '../../../../src/engine/stack/screen-spans.ts';
import type { Pull } from '../../../../src/engine/stack/types.ts';
import type { Studio } from '../../../../src/engine/studio/studio.ts';

/** Fields a side in which prints are compared, and points a side of each field. */
const FIELDS = 16;
const POINTS = 3;

/** A print as neither descriptor sees it: mean Lab of 16 × 16 fields, and which of 48 × 48 points bear ink. */
export interface Raster {
  lab: Float64Array;
  inked: Uint8Array;
}

/** Rasters of prints, sampled at points. */
export function rasters(prints: readonly (readonly Pull[])[], studio: Studio): Raster[] {
  const side = FIELDS * POINTS;
  const grid = { widthMm: studio.paper.widthMm, heightMm: studio.paper.heightMm, rows: side };
  const spans = new SpanCache(studio);
  const builder = new CellMapBuilder();
  return prints.map((pulls) => {
    const map = builder.build(spans.place({ pulls }, grid), grid);
    const lab = cellLab(map, stackLayers({ pulls }, studio), studio.paper.reflectance);
    const sums = new Float64Array(FIELDS * FIELDS * 3);
    const inked = new Uint8Array(side * side);
    for (let y = 0; y < side; y++) {
      let run = map.rowStart[y]!;
      for (let x = 0; x < side; x++) {
        while (map.runEndMm[run]! < ((x + 0.5) * grid.widthMm) / side) run++;
        const cell = map.runCell[run]!;
        const field = Math.floor(y / POINTS) * FIELDS + Math.floor(x / POINTS);
        for (let i = 0; i < 3; i++) sums[field * 3 + i]! += lab[cell * 3 + i]! / POINTS ** 2;
        inked[y * side + x] = cell === 0 ? 0 : 1;
      }
    }
    return { lab: sums, inked };
  });
}

/** Mean ΔE00 over the fields of two prints. */
export function deltaE({ lab: a }: Raster, { lab: b }: Raster): number {
  let sum = 0;
  for (let i = 0; i < a.length; i += 3) sum += deltaE2000Values(a[i]!, a[i + 1]!, a[i + 2]!, b[i]!, b[i + 1]!, b[i + 2]!);
  return (sum * 3) / a.length;
}

/** 1 − intersection over union of the inked areas (Jaccard's distance). */
export function silhouette({ inked: a }: Raster, { inked: b }: Raster): number {
  let both = 0;
  let either = 0;
  a.forEach((ink, i) => {
    both += ink & b[i]!;
    either += ink | b[i]!;
  });
  return either === 0 ? 0 : 1 - both / either;
}

/** Mean over all pairs. */
export function meanPair<T>(of: readonly T[], distance: (a: T, b: T) => number): number {
  let sum = 0;
  of.forEach((a, i) => {
    for (const b of of.slice(i + 1)) sum += distance(a, b);
  });
  return (sum * 2) / (of.length * (of.length - 1));
}

/** Mean distance of each to its nearest. */
export function meanNearest<T>(of: readonly T[], distance: (a: T, b: T) => number): number {
  const nearest = of.map(() => Infinity);
  of.forEach((a, i) => {
    for (let k = i + 1; k < of.length; k++) {
      const away = distance(a, of[k]!);
      nearest[i] = Math.min(nearest[i]!, away);
      nearest[k] = Math.min(nearest[k]!, away);
    }
  });
  return nearest.reduce((sum, away) => sum + away, 0) / of.length;
}
