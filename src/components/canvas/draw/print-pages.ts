import { defined } from '../../../engine/base/at.ts';
import type { WallBatch, WallMap } from '../../../workers/api/wall-api.ts';
import { say } from '../../words/en/canvas/draw.ts';
import { ColourPages, type ColourPlace } from './colour-pages.ts';
import { GridPages, type GridPlace } from './grid-pages.ts';

/** Where what a print is drawn from lies. */
export interface PrintPlaces {
  map: GridPlace;
  colours: ColourPlace;
  small: GridPlace;
}

/** Grids of one wall: all its maps have one size, and all its small pictures. */
class WallGrids {
  readonly rows: number;
  readonly smallRows: number;
  readonly columns: number;
  readonly smalls: GridPages;
  private readonly bytes: GridPages;
  private readonly words: GridPages;
  private readonly maps = new Map<string, GridPlace>();

  constructor({ columns, rows }: WallMap, small: { columns: number; rows: number }) {
    this.columns = columns;
    this.rows = rows;
    this.smallRows = small.rows;
    this.bytes = new GridPages(columns, rows, 'byte');
    this.words = new GridPages(columns, rows, 'word');
    this.smalls = new GridPages(small.columns, small.rows, 'colour');
  }

  /** Keeps a map unless one of its name is here. */
  addMap({ name, columns, rows, cells }: WallMap): void {
    if (this.maps.has(name)) return;
    if (columns !== this.columns || rows !== this.rows) throw new Error(say.wallHoldsMapsOf(this.columns, this.rows, columns, rows));
    this.maps.set(name, (cells instanceof Uint8Array ? this.bytes : this.words).add(cells));
  }

  map(name: string): GridPlace {
    return defined(this.maps.get(name));
  }

  upload(): void {
    for (const pages of [this.bytes, this.words, this.smalls]) pages.upload();
  }

  destroy(): void {
    for (const pages of [this.bytes, this.words, this.smalls]) pages.destroy();
  }
}

/** What was put aside of a wall, to hang again. */
export interface PagesAside {
  grids: WallGrids | null;
  colours: ColourPages;
  prints: Map<number, PrintPlaces>;
}

/** What the prints of a wall are drawn from, in pages as the graphics card takes them. */
export class PrintPages {
  private grids: WallGrids | null = null;
  private colours = new ColourPages();
  private prints = new Map<number, PrintPlaces>();

  /** Rows of the maps, 0 before any came. */
  get mapRows(): number {
    return this.grids?.rows ?? 0;
  }

  /** Rows of the small pictures, 0 before any came. */
  get smallRows(): number {
    return this.grids?.smallRows ?? 0;
  }

  /** Texels across and down of a map, of a small picture and of a page of those; null before any came. */
  get sizes(): { map: [number, number]; small: [number, number]; smallPage: [number, number] } | null {
    const { grids } = this;
    if (grids === null) return null;
    const { smalls } = grids;
    return { map: [grids.columns, grids.rows], small: [smalls.columns, smalls.rows], smallPage: [smalls.width, smalls.height] };
  }

  /** How many prints hang. */
  get count(): number {
    return this.prints.size;
  }

  has(index: number): boolean {
    return this.prints.has(index);
  }

  /** Where a print lies, by its number. */
  placesOf(index: number): PrintPlaces {
    return defined(this.prints.get(index));
  }

  /**
   * Takes in the prints of a batch under their numbers.
   * @throws Error when a map has another size than those of the wall
   */
  add({ maps, tiles }: WallBatch): void {
    const [map] = maps;
    const [tile] = tiles;
    if (this.grids === null && map !== undefined && tile !== undefined) this.grids = new WallGrids(map, tile.small);
    const { grids } = this;
    if (grids === null) return;
    for (const each of maps) grids.addMap(each);
    for (const { variant, map: name, colours, small } of tiles)
      this.prints.set(variant.index, { map: grids.map(name), colours: this.colours.add(colours), small: grids.smalls.add(small.words) });
    grids.upload();
    this.colours.upload();
  }

  /** Forgets all prints and what they were drawn from. */
  clear(): void {
    dropAside(this.putAside());
  }

  /** Takes all prints down, and gives what they were drawn from: it goes to `hangAgain` or `dropAside`. */
  putAside(): PagesAside {
    const { grids, colours, prints } = this;
    this.grids = null;
    this.colours = new ColourPages();
    this.prints = new Map();
    return { grids, colours, prints };
  }

  /** Hangs prints that were put aside in the place of all others. */
  hangAgain(aside: PagesAside): void {
    this.clear();
    Object.assign(this, aside);
  }
}

/** Forgets what was put aside. */
export function dropAside({ grids, colours }: PagesAside): void {
  grids?.destroy();
  colours.destroy();
}
