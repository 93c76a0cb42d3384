import { defined } from '../base/at.ts';
import { EngineError } from '../base/error.ts';
import type { Box } from '../geometry/types.ts';
import type { Studio } from '../studio/studio.ts';
import { say } from '../words/en/stack/stack.ts';
import { colourCells, createCellColours } from './appearance.ts';
import type { CellColours } from './appearance.ts';
import { CellMapBuilder } from './cell-map.ts';
import { stackLayers } from './layers.ts';
import type { Layer } from './layers.ts';
import { hatchOutside, outsideAsWhite } from './look/outside-marks.ts';
import { findBits } from './placement.ts';
import { SpanCache } from './screen-spans.ts';
import type { CellMap, Stack } from './types.ts';
import { paintBox } from './view-paint.ts';

/** A part of the sheet as a picture. */
export interface View extends Box {
  widthPx: number;
  heightPx: number;
  /** Rows of crossings a pixel row; 4 when left out. */
  subRows?: number | undefined;
  /** Shows the paper as white; true when left out. */
  relative?: boolean | undefined;
  /** Paints the state after so many pulls; all when left out. */
  upToPull?: number | undefined;
  /** Hatches what the screen cannot show; not when left out. */
  marked?: boolean | undefined;
}

/** A picture above this is refused: 200 million pixels. */
const MAX_PIXELS = 200_000_000;

/** What a painter keeps between pictures: spans of the studio, and the map of the last view. */
export class ViewCache {
  spans: SpanCache | null = null;
  map: CellMap | null = null;
  mapStack: Stack | null = null;
  view: View | null = null;
  readonly builder = new CellMapBuilder();
  readonly colours: CellColours = createCellColours();
  readonly layers: Layer[] = [];
  readonly bits: number[] = [];
}

/**
 * Paints any part of a stack's sheet at any zoom: exact shares across, `subRows` rows of crossings
 * down, blended in linear light. What lies outside the sheet is transparent.
 * @param stack the pulls, first down first
 * @param view the part, mm from the sheet's top left, and the picture's size
 * @param cache kept from picture to picture; while the view and the placed screens stay the same, a
 *   reorder, recolour or another state only computes colours and paints
 * @returns RGBA bytes, row by row, not premultiplied, a new array
 * @throws EngineError 'stack.bad-view', and what `stackLayers` and `SpanCache` throw
 */
export function paintView(studio: Studio, stack: Stack, view: View, cache: ViewCache = new ViewCache()): Uint8ClampedArray<ArrayBuffer> {
  checkView(view);
  const map = viewMap(studio, stack, view, cache);
  const layers = stackLayers(stack, studio, defined(cache.mapStack), cache.layers);
  if (view.upToPull !== undefined) layers.length = Math.max(0, Math.min(layers.length, view.upToPull));
  colourCells(map, layers, studio.paper.reflectance, cache.colours, view.relative ?? true);
  const pixels = paintBox(map, cache.colours, view, studio.paper);
  if (view.marked === true) hatchOutside(pixels, paintBox(map, outsideAsWhite(cache.colours), view, studio.paper), view);
  return pixels;
}

/** The map of the view, from the cache when its view and placed screens are still the same. */
function viewMap(studio: Studio, stack: Stack, view: View, cache: ViewCache): CellMap {
  if (cache.spans === null || !cache.spans.serves(studio)) {
    cache.spans = new SpanCache(studio);
    cache.map = null;
  }
  const rows = view.heightPx * (view.subRows ?? 4);
  const held =
    cache.map !== null &&
    sameBox(defined(cache.view), view) &&
    cache.map.rows === rows &&
    findBits(stack, defined(cache.mapStack), cache.bits) < 0;
  if (held) return defined(cache.map);
  cache.map = null;
  const placed = cache.spans.placeInBox(stack, view, rows);
  const map = cache.builder.build(placed, { widthMm: view.widthMm, heightMm: view.heightMm, rows });
  cache.map = map;
  cache.mapStack = { pulls: [...stack.pulls] };
  cache.view = { ...view };
  return map;
}

function sameBox(a: Box, b: Box): boolean {
  return a.xMm === b.xMm && a.yMm === b.yMm && a.widthMm === b.widthMm && a.heightMm === b.heightMm;
}

function checkView(view: View): void {
  const subRows = view.subRows ?? 4;
  const sizes = Number.isInteger(view.widthPx) && Number.isInteger(view.heightPx) && Number.isInteger(subRows);
  const place = Number.isFinite(view.xMm) && Number.isFinite(view.yMm);
  const extent = view.widthMm > 0 && view.heightMm > 0 && Number.isFinite(view.widthMm + view.heightMm);
  const least = Math.min(view.widthPx, view.heightPx, subRows) >= 1 && subRows <= 64;
  if (!sizes || !place || !extent || !least || view.widthPx * view.heightPx > MAX_PIXELS) {
    throw new EngineError(
      'stack.bad-view',
      say.viewNeedsPartOf(MAX_PIXELS) +
        say.mmAtAs({ widthMm: view.widthMm, heightMm: view.heightMm, xMm: view.xMm, yMm: view.yMm, widthPx: view.widthPx }) +
        say.pixelsWithRowsEach(view.heightPx, subRows),
    );
  }
}
