import { Path2D, createCanvas } from '@napi-rs/canvas';
import { srgbHexFromLinear } from '../../src/engine/colour/screen-colour.ts';
import { linearSrgbFromReflectance } from '../../src/engine/colour/srgb.ts';
import { stackReflectance } from '../../src/engine/ink/film/film.ts';
import { screenRings } from '../../src/engine/shapes/place/placed.ts';
import { colourCells, createCellColours } from '../../src/engine/stack/appearance.ts';
import { CellMapBuilder } from '../../src/engine/stack/cell-map.ts';
import { stackLayers } from '../../src/engine/stack/layers.ts';
import type { Layer } from '../../src/engine/stack/layers.ts';
import { paintThumbnail } from '../../src/engine/stack/paint.ts';
import { SpanCache } from '../../src/engine/stack/screen-spans.ts';
import type { PlacedSpans, Stack } from '../../src/engine/stack/types.ts';
import type { ThumbnailCase } from './thumbnail-cases.ts';

/** Paints one variant and returns its pixels (which the next call may overwrite). */
export type Painter = (variant: Stack) => Uint32Array | Uint8ClampedArray;

/** Skia by @napi-rs/canvas: paths in pixels made beforehand, RGB multiply, pixels read back. */
export function skia(test: ThumbnailCase, widthPx: number, rows: number): Painter {
  const { drawer } = test;
  const scale = rows / drawer.paper.heightMm;
  const paths = new Map<string, Path2D>();
  for (const screen of drawer.screens) {
    const path = new Path2D();
    for (const ring of screenRings(screen, drawer.shapes).rings) {
      path.moveTo(ring[0]! * scale, ring[1]! * scale);
      for (let i = 2; i < ring.length; i += 2) path.lineTo(ring[i]! * scale, ring[i + 1]! * scale);
      path.closePath();
    }
    paths.set(screen.id, path);
  }
  const white = Array.from({ length: 36 }, () => 1);
  const colours = new Map<string, string>();
  for (const ink of drawer.inks) {
    const [r, g, b] = linearSrgbFromReflectance(stackReflectance([ink], white), new Float64Array(3));
    colours.set(ink.id, srgbHexFromLinear(r!, g!, b!));
  }
  const context = createCanvas(widthPx, rows).getContext('2d');
  return (variant) => {
    context.setTransform(1, 0, 0, 1, 0, 0);
    context.globalCompositeOperation = 'source-over';
    context.fillStyle = '#fff';
    context.fillRect(0, 0, widthPx, rows);
    context.globalCompositeOperation = 'multiply';
    for (const pull of variant.pulls) {
      context.fillStyle = colours.get(pull.ink)!;
      context.setTransform(1, 0, 0, 1, pull.dxMm * scale, pull.dyMm * scale);
      context.fill(paths.get(pull.screen)!, 'nonzero');
    }
    return context.getImageData(0, 0, widthPx, rows).data;
  };
}

/** Ours for variants of the same placed screens: films, colours of all cells, pixels. */
export function pullstackReorder(test: ThumbnailCase, widthPx: number, rows: number): Painter & { cells: number } {
  const { drawer, base } = test;
  const grid = { widthMm: drawer.paper.widthMm, heightMm: drawer.paper.heightMm, rows };
  const map = new CellMapBuilder().build(new SpanCache(drawer).place(base, grid), grid);
  const layers: Layer[] = [];
  const colours = createCellColours();
  const pixels = new Uint32Array(widthPx * rows);
  const paint = (variant: Stack): Uint32Array => {
    stackLayers(variant, drawer, base, layers);
    colourCells(map, layers, drawer.paper.reflectance, colours);
    return paintThumbnail(map, colours, widthPx, pixels);
  };
  return Object.assign(paint, { cells: map.cells });
}

/** Ours for shifted screens: shifted spans, a new map, films, colours, pixels. */
export function pullstackOffsets(test: ThumbnailCase, widthPx: number, rows: number): Painter {
  const { drawer } = test;
  const grid = { widthMm: drawer.paper.widthMm, heightMm: drawer.paper.heightMm, rows };
  const cache = new SpanCache(drawer);
  const builder = new CellMapBuilder();
  const placed: PlacedSpans[] = [];
  const layers: Layer[] = [];
  const colours = createCellColours();
  const pixels = new Uint32Array(widthPx * rows);
  return (variant) => {
    const map = builder.build(cache.place(variant, grid, placed), grid);
    stackLayers(variant, drawer, variant, layers);
    colourCells(map, layers, drawer.paper.reflectance, colours);
    return paintThumbnail(map, colours, widthPx, pixels);
  };
}
