import { entryAt, u8 } from '../../base/at.ts';
import type { Grey } from './grey.ts';

/** Tiles across the longer side, in each of which the lightest grey stands for the paper. */
const TILES = 32;
/** A tile so much darker than the light around it has no paper in it. */
const NO_PAPER = 0.9;
const ROUNDS = 8;
/** Below this the paper is too dark to tell it from ink. */
const DARKEST_PAPER = 16;

interface Tile {
  /** Middle, from −1 to 1 across and down. */
  x: number;
  y: number;
  light: number;
}

/**
 * A picture as if the light on its paper were even. The light is a surface of second degree through the
 * lightest grey of each of 32 tiles across; tiles that lie wholly in a shape fall below it and are left out.
 * @returns greys of the same size; the paper is white
 */
export function evenLight(grey: Grey): Grey {
  const light = surfaceOver(paperTiles(grey));
  const { width, height, values } = grey;
  const even = new Uint8Array(values.length);
  for (let row = 0, i = 0; row < height; row++) {
    const y = (2 * (row + 0.5)) / height - 1;
    for (let column = 0; column < width; column++, i++) {
      const x = (2 * (column + 0.5)) / width - 1;
      const paper = Math.max(DARKEST_PAPER, valueAt(light, x, y));
      even[i] = Math.min(255, Math.round((255 * u8(values, i)) / paper));
    }
  }
  return { width, height, values: even };
}

function paperTiles({ width, height, values }: Grey): Tile[] {
  const side = Math.max(1, Math.ceil(Math.max(width, height) / TILES));
  const tiles: Tile[] = [];
  for (let top = 0; top < height; top += side) {
    for (let left = 0; left < width; left += side) {
      const [right, bottom] = [Math.min(width, left + side), Math.min(height, top + side)];
      // The lightest but for a fiftieth, which may be glare and noise.
      const counts = new Uint32Array(256);
      for (let y = top; y < bottom; y++) {
        for (let x = left; x < right; x++) {
          const grey = u8(values, y * width + x);
          counts[grey] = (counts[grey] ?? 0) + 1;
        }
      }
      let glare = Math.floor(((right - left) * (bottom - top)) / 50);
      let light = 255;
      while (light > 0 && (counts[light] ?? 0) <= glare) glare -= counts[light--] ?? 0;
      tiles.push({ x: (left + right) / width - 1, y: (top + bottom) / height - 1, light });
    }
  }
  return tiles;
}

const TERMS: readonly ((x: number, y: number) => number)[] = [
  () => 1,
  (x) => x,
  (_, y) => y,
  (x) => x * x,
  (x, y) => x * y,
  (_, y) => y * y,
];

/** The sum of the terms, written out: it is asked for at every pixel. */
function valueAt([level = 0, across = 0, down = 0, bowl = 0, twist = 0, trough = 0]: readonly number[], x: number, y: number): number {
  return level + across * x + down * y + bowl * x * x + twist * x * y + trough * y * y;
}

/** Fitted again and again without the tiles below it, until none is left to leave out. */
function surfaceOver(tiles: readonly Tile[]): number[] {
  let paper = tiles;
  let surface = fit(paper);
  for (let round = 0; round < ROUNDS; round++) {
    const above = paper.filter(({ x, y, light }) => light >= NO_PAPER * valueAt(surface, x, y));
    if (above.length === paper.length || above.length < 4 * TERMS.length) break;
    paper = above;
    surface = fit(paper);
  }
  return surface;
}

/** Least squares by the normal equations; a touch of ridge keeps a picture of few tiles solvable. */
function fit(tiles: readonly Tile[]): number[] {
  const size = TERMS.length;
  const rows: number[][] = TERMS.map((_, i) => Array.from({ length: size + 1 }, (_unused, j) => (i === j && i > 0 ? 1e-6 : 0)));
  for (const { x, y, light } of tiles) {
    const terms = TERMS.map((term) => term(x, y));
    rows.forEach((row, i) => {
      for (let j = 0; j < size; j++) row[j] = entryAt(row, j) + entryAt(terms, i) * entryAt(terms, j);
      row[size] = entryAt(row, size) + entryAt(terms, i) * light;
    });
  }
  for (let i = 0; i < size; i++) {
    const pivot = entryAt(rows, i);
    const by = entryAt(pivot, i);
    for (let k = 0; k < size; k++) {
      if (k === i) continue;
      const row = entryAt(rows, k);
      const times = entryAt(row, i) / by;
      for (let j = i; j <= size; j++) row[j] = entryAt(row, j) - times * entryAt(pivot, j);
    }
  }
  return rows.map((row, i) => entryAt(row, size) / entryAt(row, i));
}
