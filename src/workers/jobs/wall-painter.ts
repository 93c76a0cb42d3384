import { u32 } from '../../engine/base/at.ts';
import { hash128 } from '../../engine/explore/look/picture-key.ts';
import { VariantMeter } from '../../engine/explore/measure/variant-measures.ts';
import { colourCells, createCellColours } from '../../engine/stack/appearance.ts';
import { type CellRaster, rasterCells } from '../../engine/stack/cell-raster.ts';
import { stackLayers } from '../../engine/stack/layers.ts';
import { mergedRaster } from '../../engine/stack/merged-raster.ts';
import { placementKey } from '../../engine/stack/placement.ts';
import { smallPicture } from '../../engine/stack/small-picture.ts';
import type { CellMap, Pull, Stack } from '../../engine/stack/types.ts';
import type { WallLook, WallMap, WallTile } from '../api/wall-api.ts';
import { columnsOf, StudioPictures } from './pictures.ts';

/** Columns and rows of a map that make one field of the picture seen from far. */
const SMALLER = 4;

/** Where more prints than this share of them lie as none before, a map of its own is smaller than one that might be shared; seen after the first few. */
const OWN_SHARE = 0.75;
const FEW = 8;

/** A print as drawn for the wall, with its map when it is the first that needs it. */
export type DrawnTile = Omit<WallTile, 'variant' | 'look'> & { fresh: WallMap | null };

/** Turns the stacks of one wall into maps and colour rows; screens that lie alike share a map. */
export class WallPainter {
  private readonly pictures: StudioPictures;
  private readonly meter: VariantMeter;
  private readonly rows: number;
  private readonly relative: boolean;
  /** Maps that were handed over, by name. */
  private readonly known = new Set<string>();
  /** How many prints were painted, and how many of them lay as none before. */
  private painted = 0;
  private placements = 0;
  private last: { key: string; map: CellMap; raster: CellRaster } | null = null;
  private readonly colours = createCellColours();

  constructor(pictures: StudioPictures, { rows, relative }: WallLook) {
    // Pictures of its own with the same outlines: other pictures that are asked for while a wall is
    // hung would write over the map that is kept for the next stack.
    this.pictures = new StudioPictures(pictures.studio, pictures);
    this.meter = new VariantMeter(pictures.studio);
    this.rows = rows;
    this.relative = relative;
  }

  /** @returns the stack's colours, the name of its map, the map if it is new, and its measures */
  tile(pulls: readonly Pull[]): DrawnTile {
    const { studio } = this.pictures;
    // In one order for all orders, so that the same placed screens give the same cell numbers.
    const base: Stack = { pulls: [...pulls].sort((a, b) => (a.id < b.id ? -1 : 1)) };
    const key = hash128(placementKey(base));
    const { map, raster } = this.mapOf(key, base);
    const layers = stackLayers({ pulls }, studio, base);
    colourCells(map, layers, studio.paper.reflectance, this.colours, this.relative);
    const { packed } = this.colours;
    const colours = new Uint32Array(raster.cells.length);
    for (let cell = 0; cell < colours.length; cell++) colours[cell] = u32(packed, u32(raster.cells, cell));
    return {
      ...this.drawn(pulls, `${this.rows} ${key}`, raster, colours),
      small: smallPicture({ ...raster, cells: raster.indexes }, colours, SMALLER),
      measures: this.meter.measure(map, layers, pulls, key),
    };
  }

  /** A print by a map that others may have too; by one of its own where hardly any print shares its map. */
  private drawn(
    pulls: readonly Pull[],
    name: string,
    raster: CellRaster,
    colours: Uint32Array<ArrayBuffer>,
  ): Pick<DrawnTile, 'map' | 'fresh' | 'colours'> {
    this.painted++;
    if (this.known.has(name)) return { map: name, fresh: null, colours };
    this.placements++;
    const { columns, rows } = raster;
    if (this.painted > FEW && this.placements > this.painted * OWN_SHARE) {
      const own = mergedRaster(raster, colours);
      const map = hash128([name, ...pulls.map(({ id, ink, strokes }) => `${id} ${ink} ${strokes}`)].join());
      return { map, fresh: { name: map, columns, rows, cells: own.indexes }, colours: own.colours };
    }
    this.known.add(name);
    // A copy: the map goes to the page, the raster stays for the next stack.
    return { map: name, fresh: { name, columns, rows, cells: raster.indexes.slice() }, colours };
  }

  private mapOf(key: string, base: Stack): { map: CellMap; raster: CellRaster } {
    if (this.last === null || this.last.key !== key) {
      const map = this.pictures.map(base, this.rows);
      this.last = { key, map, raster: rasterCells(map, columnsOf(this.pictures.studio, this.rows)) };
    }
    return this.last;
  }
}
