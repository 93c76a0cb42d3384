import { u32 } from '../../engine/base/at.ts';
import { hash128 } from '../../engine/explore/look/picture-key.ts';
import { VariantMeter } from '../../engine/explore/measure/variant-measures.ts';
import { colourCells, createCellColours, stateColours, type CellColours } from '../../engine/stack/appearance.ts';
import { CellMapBuilder, type PlacedSpans } from '../../engine/stack/cell-map.ts';
import { type CellRaster, rasterCells } from '../../engine/stack/cell-raster.ts';
import { stackLayers } from '../../engine/stack/layers.ts';
import { paintThumbnail } from '../../engine/stack/paint.ts';
import { placementKey } from '../../engine/stack/placement.ts';
import { SpanCache } from '../../engine/stack/screen-spans.ts';
import { smallPicture } from '../../engine/stack/small-picture.ts';
import type { CellMap, Pull, Stack } from '../../engine/stack/types.ts';
import { paintView, ViewCache } from '../../engine/stack/view.ts';
import type { Studio } from '../../engine/studio/studio.ts';
import type { Picture, ViewRequest, WallMap, WallTile } from '../api/engine-api.ts';

/** A drawer in a worker, with what was worked out for its pictures. */
export class StudioPictures {
  readonly drawer: Studio;
  private readonly spans: SpanCache;
  private readonly views = new ViewCache();
  private readonly builder = new CellMapBuilder();
  private readonly placed: PlacedSpans[] = [];
  private readonly colours: CellColours = createCellColours();
  private readonly states: CellColours[] = [];

  /** @param before a drawer with the same shapes and screens, whose scanned outlines are used again */
  constructor(drawer: Studio, before?: StudioPictures) {
    this.drawer = drawer;
    this.spans = before?.spans.serves(drawer) === true ? before.spans : new SpanCache(drawer);
    this.views.spans = this.spans;
  }

  /** Any part of the sheet at any zoom. */
  view(request: ViewRequest): Picture {
    const { pulls, ...view } = request;
    return {
      widthPx: view.widthPx,
      heightPx: view.heightPx,
      pixels: paintView(this.drawer, { pulls }, view, this.views),
    };
  }

  /** The whole sheet at a height. */
  thumbnail(pulls: readonly Pull[], heightPx: number, relative: boolean): Picture {
    const stack = { pulls };
    const map = this.map(stack, heightPx);
    colourCells(map, stackLayers(stack, this.drawer), this.drawer.paper.reflectance, this.colours, relative);
    return this.paint(map, this.colours);
  }

  /** The whole sheet after each pull, bare paper first. */
  allStates(pulls: readonly Pull[], heightPx: number, relative: boolean): Picture[] {
    const stack = { pulls };
    const map = this.map(stack, heightPx);
    const states = stateColours(map, stackLayers(stack, this.drawer), this.drawer.paper.reflectance, this.states, relative);
    return states.map((colours) => this.paint(map, colours));
  }

  /** Many stacks of the same placed screens: one map, a colouring for each. */
  reordered(stacks: readonly (readonly Pull[])[], heightPx: number, relative: boolean): Picture[] {
    const [first] = stacks;
    if (first === undefined) return [];
    const base: Stack = { pulls: first };
    const map = this.map(base, heightPx);
    return stacks.map((pulls) => {
      colourCells(map, stackLayers({ pulls }, this.drawer, base), this.drawer.paper.reflectance, this.colours, relative);
      return this.paint(map, this.colours);
    });
  }

  /** The map of a stack on the whole sheet; valid until the next is built. */
  map(stack: Stack, rows: number): CellMap {
    const { widthMm, heightMm } = this.drawer.paper;
    const grid = { widthMm, heightMm, rows };
    return this.builder.build(this.spans.place(stack, grid, this.placed), grid);
  }

  private paint(map: CellMap, colours: CellColours): Picture {
    const widthPx = columnsOf(this.drawer, map.rows);
    const pixels = new Uint8ClampedArray(widthPx * map.rows * 4);
    paintThumbnail(map, colours, widthPx, pixels);
    return { widthPx, heightPx: map.rows, pixels };
  }
}

/** Pixels across a sheet that is so many rows high. */
function columnsOf(drawer: Studio, rows: number): number {
  return Math.max(1, Math.round((rows * drawer.paper.widthMm) / drawer.paper.heightMm));
}

/** Columns and rows of a map that make one field of the picture seen from far. */
const SMALLER = 4;

/** Turns the stacks of one wall into maps and colour rows; screens that lie alike share a map. */
export class WallPainter {
  private readonly pictures: StudioPictures;
  private readonly meter: VariantMeter;
  private readonly rows: number;
  private readonly relative: boolean;
  /** Maps that were handed over, by name. */
  private readonly known = new Set<string>();
  private last: { key: string; map: CellMap; raster: CellRaster } | null = null;
  private readonly colours = createCellColours();

  constructor(pictures: StudioPictures, rows: number, relative: boolean) {
    // Pictures of its own with the same outlines: other pictures that are asked for while a wall is
    // hung would write over the map that is kept for the next stack.
    this.pictures = new StudioPictures(pictures.drawer, pictures);
    this.meter = new VariantMeter(pictures.drawer);
    this.rows = rows;
    this.relative = relative;
  }

  /** @returns the stack's colours, the name of its map, the map if it is new, and its measures */
  tile(pulls: readonly Pull[]): Omit<WallTile, 'variant' | 'look'> & { fresh: WallMap | null } {
    const { drawer } = this.pictures;
    // In one order for all orders, so that the same placed screens give the same cell numbers.
    const base: Stack = { pulls: [...pulls].sort((a, b) => (a.id < b.id ? -1 : 1)) };
    const key = hash128(placementKey(base));
    const { map, raster } = this.mapOf(key, base);
    const name = `${this.rows} ${key}`;
    let fresh: WallMap | null = null;
    if (!this.known.has(name)) {
      this.known.add(name);
      // A copy: the map goes to the page, the raster stays for the next stack.
      fresh = { name, columns: raster.columns, rows: raster.rows, cells: raster.indexes.slice() };
    }
    const layers = stackLayers({ pulls }, drawer, base);
    colourCells(map, layers, drawer.paper.reflectance, this.colours, this.relative);
    const { packed } = this.colours;
    const colours = Uint32Array.from(raster.cells, (cell) => u32(packed, cell));
    return {
      map: name,
      fresh,
      colours,
      small: smallPicture({ ...raster, cells: raster.indexes }, colours, SMALLER),
      measures: this.meter.measure(map, layers, pulls, key),
    };
  }

  private mapOf(key: string, base: Stack): { map: CellMap; raster: CellRaster } {
    if (this.last === null || this.last.key !== key) {
      const map = this.pictures.map(base, this.rows);
      this.last = { key, map, raster: rasterCells(map, columnsOf(this.pictures.drawer, this.rows)) };
    }
    return this.last;
  }
}
