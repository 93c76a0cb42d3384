import { createCanvas } from '@napi-rs/canvas';
import { describe, expect, it } from 'vitest';
import { linearFromSrgb } from '../../../src/engine/colour/encode.ts';
import { intersectionArea } from '../../../src/engine/geometry/booleans.ts';
import { colourCells } from '../../../src/engine/stack/appearance.ts';
import { buildCellMap } from '../../../src/engine/stack/cell-map.ts';
import { stackLayers } from '../../../src/engine/stack/layers.ts';
import { paintThumbnail } from '../../../src/engine/stack/paint.ts';
import { placedSpans } from '../../../src/engine/stack/screen-spans.ts';
import type { Pull } from '../../../src/engine/stack/types.ts';
import { ViewCache, paintView } from '../../../src/engine/stack/view.ts';
import type { View } from '../../../src/engine/stack/view.ts';
import type { Studio } from '../../../src/engine/studio/studio.ts';
import { PAPER, blobRing, blobStack, numbersFrom, sheetShape, stackOf } from './fixtures.ts';

const WHOLE: View = { xMm: 0, yMm: 0, widthMm: 560, heightMm: 760, widthPx: 140, heightPx: 190 };

function thumbnail(studio: Studio, pulls: Pull[], widthPx: number, rows: number): Uint8ClampedArray {
  const grid = { widthMm: PAPER.widthMm, heightMm: PAPER.heightMm, rows };
  const map = buildCellMap(placedSpans({ pulls }, studio, grid), grid);
  const colours = colourCells(map, stackLayers({ pulls }, studio), PAPER.reflectance);
  return paintThumbnail(map, colours, widthPx, new Uint8ClampedArray(widthPx * rows * 4));
}

/** One black blob on white: the ink absorbs all light. */
function blackBlob(): { studio: Studio; pulls: Pull[]; ring: number[] } {
  const ring = blobRing(numbersFrom('black'), 280, 380, 190, 150);
  const { studio, pulls } = stackOf([sheetShape('blob', [ring])], numbersFrom('ink'), 1);
  studio.inks[0]!.kx.fill(60);
  studio.inks[0]!.sx.fill(0);
  return { studio, pulls, ring };
}

/** White share of each pixel of a canvas drawing of a black ring (Skia's anti-aliasing, 8 bit). */
function skiaWhite(ring: number[], widthPx: number, heightPx: number, view: View = WHOLE): Uint8ClampedArray {
  const context = createCanvas(widthPx, heightPx).getContext('2d');
  context.fillStyle = '#fff';
  context.fillRect(0, 0, widthPx, heightPx);
  context.scale(widthPx / view.widthMm, heightPx / view.heightMm);
  context.translate(-view.xMm, -view.yMm);
  context.fillStyle = '#000';
  context.beginPath();
  for (let i = 0; i < ring.length; i += 2) context.lineTo(ring[i]!, ring[i + 1]!);
  context.fill();
  return new Uint8ClampedArray(context.getImageData(0, 0, widthPx, heightPx).data);
}

/** Mean and greatest difference of the white share, ours in linear light, the canvas's in shares. */
function differences(ours: Uint8ClampedArray, canvas: Uint8ClampedArray): { mean: number; most: number } {
  let sum = 0;
  let most = 0;
  for (let i = 0; i < ours.length; i += 4) {
    const gap = Math.abs(linearFromSrgb(ours[i]! / 255) - canvas[i]! / 255);
    sum += gap;
    most = Math.max(most, gap);
  }
  return { mean: (sum * 4) / ours.length, most };
}

describe('paintThumbnail', () => {
  it('should cover pixels as Skia does, but for one row of crossings a pixel', () => {
    const { studio, pulls, ring } = blackBlob();
    const gap = differences(thumbnail(studio, pulls, 140, 190), skiaWhite(ring, 140, 190));
    // One sample down can miss half a pixel where an edge is level; in the mean it misses little.
    expect(gap.most).toBeLessThanOrEqual(0.6);
    expect(gap.mean).toBeLessThan(0.003);
  });

  it('should be exact across for upright edges', () => {
    const { studio, pulls } = stackOf([sheetShape('bar', [[101, 0, 301.4, 0, 301.4, 760, 101, 760]])], numbersFrom('bar'), 1);
    studio.inks[0]!.kx.fill(60);
    studio.inks[0]!.sx.fill(0);
    const pixels = thumbnail(studio, pulls, 140, 19);
    const white = (px: number): number => linearFromSrgb(pixels[(7 * 140 + px) * 4]! / 255);
    expect([white(24), white(26), white(74), white(76)]).toEqual([1, 0, 0, 1]);
    expect(white(25)).toBeCloseTo(0.25, 2);
    expect(white(75)).toBeCloseTo(0.65, 2);
  });

  it('should refuse a picture that does not fit', () => {
    const { studio, pulls } = blackBlob();
    expect(() => thumbnail(studio, pulls, 0, 10)).toThrow(/does not fit/);
  });
});

describe('paintView', () => {
  it('should cover pixels as Skia does, at any zoom', () => {
    const { studio, pulls, ring } = blackBlob();
    const close: View = { xMm: 250, yMm: 120, widthMm: 56, heightMm: 76, widthPx: 140, heightPx: 190 };
    for (const view of [WHOLE, close]) {
      const ours = paintView(studio, { pulls }, { ...view, subRows: 16 });
      const gap = differences(ours, skiaWhite(ring, view.widthPx, view.heightPx, view));
      // Skia's own shares are off by up to about 0.13 (see the exact areas below).
      expect(gap.most).toBeLessThan(0.15);
      expect(gap.mean).toBeLessThan(0.0015);
    }
  });

  it('should cover edge pixels by their exact areas to one of its rows', () => {
    const { studio, pulls, ring } = blackBlob();
    const outline = { rings: [ring], fillRule: 'nonzero' as const };
    const pixels = paintView(studio, { pulls }, { ...WHOLE, subRows: 16 });
    let edges = 0;
    for (let i = 0; i < pixels.length; i += 4 * 7) {
      const white = linearFromSrgb(pixels[i]! / 255);
      if (white === 0 || white === 1) continue;
      edges++;
      const [x, y] = [((i / 4) % 140) * 4, Math.floor(i / 4 / 140) * 4];
      const pixel = { rings: [[x, y, x + 4, y, x + 4, y + 4, x, y + 4]], fillRule: 'nonzero' as const };
      // clipper2-ts is the outside reference.
      expect(Math.abs(1 - white - intersectionArea(outline, pixel) / 16)).toBeLessThan(1 / 16);
    }
    expect(edges).toBeGreaterThan(40);
  });

  it('should average to the thumbnail of the same part', () => {
    const { studio, pulls } = blobStack('zoom', 20);
    const small = paintView(studio, { pulls }, { ...WHOLE, widthPx: 70, heightPx: 95, subRows: 32 });
    const large = paintView(studio, { pulls }, { ...WHOLE, widthPx: 560, heightPx: 760 });
    let most = 0;
    for (let y = 0; y < 95; y++) {
      for (let x = 0; x < 70; x++) {
        let sum = 0;
        for (let i = 0; i < 64; i++) sum += linearFromSrgb(large[((y * 8 + (i >> 3)) * 560 + x * 8 + (i & 7)) * 4]! / 255);
        most = Math.max(most, Math.abs(sum / 64 - linearFromSrgb(small[(y * 70 + x) * 4]! / 255)));
      }
    }
    // Both have 32 rows of crossings to a small pixel; what is left is rounding to 8 bits.
    expect(most).toBeLessThan(0.01);
  });

  it('should equal the thumbnail when it has its rows', () => {
    const { studio, pulls } = blobStack('same', 12);
    const laid = pulls.map((pull, i) => ({ ...pull, dxMm: i / 10, dyMm: -i / 5, turnDeg: i % 3 === 0 ? 20 : 0 }));
    const view = paintView(studio, { pulls: laid }, { ...WHOLE, subRows: 1 });
    const small = thumbnail(studio, laid, 140, 190);
    let most = 0;
    for (let i = 0; i < view.length; i++) most = Math.max(most, Math.abs(view[i]! - small[i]!));
    expect(most).toBeLessThanOrEqual(1);
  });

  it('should leave what is outside the sheet transparent', () => {
    const { studio, pulls } = blobStack('outside', 12);
    const pixels = paintView(studio, { pulls }, { xMm: -100, yMm: -100, widthMm: 760, heightMm: 960, widthPx: 76, heightPx: 96 });
    const alpha = (x: number, y: number): number => pixels[(y * 76 + x) * 4 + 3]!;
    for (let y = 0; y < 96; y++) {
      for (let x = 0; x < 76; x++) expect(alpha(x, y)).toBe(x >= 10 && x < 66 && y >= 10 && y < 86 ? 255 : 0);
    }
    const half = paintView(studio, { pulls }, { xMm: -105, yMm: -105, widthMm: 760, heightMm: 960, widthPx: 76, heightPx: 96 });
    expect(half[(40 * 76 + 10) * 4 + 3]).toBe(128);
    expect(half[(10 * 76 + 40) * 4 + 3]).toBe(128);
  });

  it('should paint the same with a kept map as without, after reorders, moves and other states', () => {
    const { studio, pulls } = blobStack('kept', 10);
    const cache = new ViewCache();
    const moved = pulls.map((pull, i) => (i === 4 ? { ...pull, dxMm: 12 } : pull));
    for (const stack of [pulls, [...pulls].reverse(), moved, pulls.slice(2), pulls]) {
      for (const upToPull of [undefined, 3]) {
        const view = { ...WHOLE, upToPull };
        expect(paintView(studio, { pulls: stack }, view, cache)).toEqual(paintView(studio, { pulls: stack }, view));
      }
    }
    const map = cache.map;
    paintView(studio, { pulls: [...pulls].reverse() }, WHOLE, cache);
    expect(cache.map).toBe(map);
  });

  it('should refuse a view without size', () => {
    const { studio, pulls } = blobStack('view', 2);
    for (const bad of [{ widthMm: 0 }, { widthPx: 1.5 }, { xMm: NaN }, { subRows: 0 }, { heightPx: 1e7, widthPx: 1e7 }]) {
      expect(() => paintView(studio, { pulls }, { ...WHOLE, ...bad })).toThrow(/A view needs/);
    }
  });
});
