import { differentPlaces, outlineCells } from '../../engine/order/groups/where-different.ts';
import { mapOverlaps } from '../../engine/order/map-overlaps.ts';
import { colourCells, createCellColours, stateColours, type CellColours } from '../../engine/stack/appearance.ts';
import { CellMapBuilder } from '../../engine/stack/cell-map.ts';
import { stackLayers } from '../../engine/stack/layers.ts';
import type { PlaceReading } from '../../engine/stack/look/read-place.ts';
import { paintThumbnail } from '../../engine/stack/paint.ts';
import { SpanCache } from '../../engine/stack/screen-spans.ts';
import type { CellMap, PlacedSpans, Pull, Stack } from '../../engine/stack/types.ts';
import { paintView, ViewCache } from '../../engine/stack/view.ts';
import type { Studio } from '../../engine/studio/studio.ts';
import type {
  DifferenceRequest,
  DifferenceResult,
  OverlapEdge,
  Picture,
  PlaceRequest,
  SheetRequest,
  ViewRequest,
} from '../api/picture-api.ts';

/** Of the two lines round what differs: one of them shows on any ground. */
const [LIGHT, DARK] = [0xffffffff, 0xff181b1d];

/** A studio in a worker, with what was worked out for its pictures. */
export class StudioPictures {
  readonly studio: Studio;
  private readonly spans: SpanCache;
  private readonly views = new ViewCache();
  private readonly builder = new CellMapBuilder();
  private readonly placed: PlacedSpans[] = [];
  private readonly colours: CellColours = createCellColours();
  private readonly states: CellColours[] = [];

  /** @param before a studio with the same shapes and screens, whose scanned outlines are used again */
  constructor(studio: Studio, before?: StudioPictures) {
    this.studio = studio;
    this.spans = before?.spans.serves(studio) === true ? before.spans : new SpanCache(studio);
    this.views.spans = this.spans;
  }

  /** Any part of the sheet at any zoom. */
  view({ pulls, ...view }: ViewRequest): Picture {
    return {
      widthPx: view.widthPx,
      heightPx: view.heightPx,
      pixels: paintView(this.studio, { pulls }, view, this.views),
    };
  }

  /** What lies at a place of the sheet. */
  async readPlace({ pulls, ...at }: PlaceRequest): Promise<PlaceReading> {
    const { readPlace } = await import('../../engine/stack/look/read-place.ts');
    return readPlace(this.studio, { pulls }, at, this.spans);
  }

  /** The pairs of pulls that overlap, of one look at the sheet. */
  mapOverlaps(pulls: readonly Pull[]): OverlapEdge[] {
    return mapOverlaps({ pulls }, this.studio, this.spans);
  }

  /** The whole sheet at a height. */
  thumbnail({ pulls, heightPx, relative }: SheetRequest): Picture {
    const stack = { pulls };
    const map = this.map(stack, heightPx);
    colourCells(map, stackLayers(stack, this.studio), this.studio.paper.reflectance, this.colours, relative);
    return this.paint(map, this.colours);
  }

  /** The whole sheet after each pull, bare paper first. */
  allStates({ pulls, heightPx, relative }: SheetRequest): Picture[] {
    const stack = { pulls };
    const map = this.map(stack, heightPx);
    const states = stateColours(map, stackLayers(stack, this.studio), this.studio.paper.reflectance, this.states, relative);
    return states.map((colours) => this.paint(map, colours));
  }

  /** Many stacks of the same placed screens: one map, a colouring for each. */
  reordered(stacks: readonly (readonly Pull[])[], { heightPx, relative }: Omit<SheetRequest, 'pulls'>): Picture[] {
    const [first] = stacks;
    if (first === undefined) return [];
    const base: Stack = { pulls: first };
    const map = this.map(base, heightPx);
    return stacks.map((pulls) => {
      colourCells(map, stackLayers({ pulls }, this.studio, base), this.studio.paper.reflectance, this.colours, relative);
      return this.paint(map, this.colours);
    });
  }

  /** Where two orders of the same pulls differ, and lines round it. */
  difference({ pulls, other, minDeltaE, heightPx }: DifferenceRequest): DifferenceResult {
    const map = this.map({ pulls }, heightPx);
    const { places, cells } = differentPlaces(map, this.studio, [pulls, other], minDeltaE);
    const widthPx = columnsOf(this.studio, heightPx);
    const linePx = Math.max(2, Math.round(heightPx / 260));
    const pixels = outlineCells(map, cells, { widthPx, linePx, inner: LIGHT, outer: DARK });
    return { places, outline: { widthPx, heightPx: map.rows, pixels } };
  }

  /** The map of a stack on the whole sheet; valid until the next is built. */
  map(stack: Stack, rows: number): CellMap {
    const { widthMm, heightMm } = this.studio.paper;
    const grid = { widthMm, heightMm, rows };
    return this.builder.build(this.spans.place(stack, grid, this.placed), grid);
  }

  private paint(map: CellMap, colours: CellColours): Picture {
    const widthPx = columnsOf(this.studio, map.rows);
    const pixels = new Uint8ClampedArray(widthPx * map.rows * 4);
    paintThumbnail(map, colours, widthPx, pixels);
    return { widthPx, heightPx: map.rows, pixels };
  }
}

/** Pixels across a sheet that is so many rows high. */
export function columnsOf(studio: Studio, rows: number): number {
  return Math.max(1, Math.round((rows * studio.paper.widthMm) / studio.paper.heightMm));
}
