import { f64, num, u32 } from '../../base/at.ts';
import { deltaE2000Values } from '../../colour/delta-e.ts';
import { cellLab } from '../../stack/appearance.ts';
import { stackLayers } from '../../stack/layers.ts';
import { paintThumbnail } from '../../stack/paint.ts';
import type { CellMap, Pull } from '../../stack/types.ts';
import type { Studio } from '../../studio/studio.ts';

/** A part of the sheet that looks different in two orders. */
export interface DifferentPlace {
  /** Ids of the pulls that lie there, as in the first order. */
  pulls: string[];
  areaMm2: number;
  /** ΔE00 between the two. */
  deltaE: number;
}

/** Where two orders of the same pulls differ. */
export interface Differences {
  /** Largest area first. */
  places: DifferentPlace[];
  /** Cells of the map, 1 where they differ. */
  cells: Uint8Array;
}

/**
 * Where two prints of the same placed screens differ by more than a ΔE00.
 * @param map of the first order
 * @param orders the same pulls twice, first down first
 * @throws EngineError as stackLayers and cellLab
 */
export function differentPlaces(
  map: CellMap,
  studio: Studio,
  [one, other]: readonly [readonly Pull[], readonly Pull[]],
  minDeltaE: number,
): Differences {
  const base = { pulls: one };
  const labOf = (pulls: readonly Pull[]): Float64Array => cellLab(map, stackLayers({ pulls }, studio, base), studio.paper.reflectance);
  const [a, b] = [labOf(one), labOf(other)];
  const cells = new Uint8Array(map.cells);
  const places: DifferentPlace[] = [];
  for (let cell = 1; cell < map.cells; cell++) {
    const at = cell * 3;
    const deltaE = deltaE2000Values(f64(a, at), f64(a, at + 1), f64(a, at + 2), f64(b, at), f64(b, at + 1), f64(b, at + 2));
    if (!(deltaE > minDeltaE)) continue;
    cells[cell] = 1;
    const pulls = one.filter((_, bit) => (u32(map.cover, cell * map.words + (bit >> 5)) & (1 << (bit & 31))) !== 0).map(({ id }) => id);
    places.push({ pulls, areaMm2: f64(map.areaMm2, cell), deltaE });
  }
  return { places: places.sort((x, y) => y.areaMm2 - x.areaMm2), cells };
}

/** Two lines round what differs, so that one of them shows on any ground. */
export interface OutlineLook {
  widthPx: number;
  /** Each line is so many pixels wide. */
  linePx: number;
  /** Nearest the place, and outside of that: words as CellColours packs them. */
  inner: number;
  outer: number;
}

/**
 * Draws lines round the cells that are marked, outside of them, on nothing.
 * @param map whose rows the picture has
 * @returns RGBA, row by row
 */
export function outlineCells(
  map: CellMap,
  cells: Uint8Array,
  { widthPx, linePx, inner, outer }: OutlineLook,
): Uint8ClampedArray<ArrayBuffer> {
  const pixels = new Uint8ClampedArray(widthPx * map.rows * 4);
  const packed = Uint32Array.from(cells, (marked) => (marked === 1 ? 0xffffffff : 0xff000000));
  const linear = Float64Array.from({ length: map.cells * 3 }, (_, i) => num(cells, Math.floor(i / 3)));
  paintThumbnail(map, { cells: map.cells, packed, linear, outside: new Uint8Array(map.cells) }, widthPx, pixels);
  const words = new Uint32Array(pixels.buffer);
  // White on black: a pixel counts that is covered by a fifth, whatever its code is.
  const reached = Uint8Array.from(words, (word) => ((word & 255) > 127 ? 1 : 0));
  words.fill(0);
  let edge: number[] = [];
  reached.forEach((mark, at) => {
    if (mark === 1) edge.push(at);
  });
  for (let ring = 0; ring < 2 * linePx; ring++) {
    edge = grow(reached, edge, widthPx);
    for (const at of edge) words[at] = ring < linePx ? inner : outer;
  }
  return pixels;
}

/** Marks the neighbours of pixels, across a corner too. @returns those that were not marked before */
function grow(marks: Uint8Array, from: readonly number[], width: number): number[] {
  const rows = marks.length / width;
  const fresh: number[] = [];
  for (const at of from) {
    const column = at % width;
    const row = (at - column) / width;
    for (const [dx, dy] of NEIGHBOURS) {
      const [x, y] = [column + dx, row + dy];
      const next = y * width + x;
      if (x < 0 || y < 0 || x >= width || y >= rows || num(marks, next) !== 0) continue;
      marks[next] = 1;
      fresh.push(next);
    }
  }
  return fresh;
}

const NEIGHBOURS: readonly (readonly [number, number])[] = [[-1, 0], [1, 0], [0, -1], [0, 1], [-1, -1], [1, -1], [-1, 1], [1, 1]]; // oxfmt-ignore
