import { BufferImageSource } from 'pixi.js';
import type { WallMap } from '../../workers/wire.ts';

const PAGE_WIDTH = 1024;
const PAGE_HEIGHT = 1024;

/** Where a map lies: its page and the texel of its top left corner. */
export interface MapPlace {
  page: number;
  x: number;
  y: number;
}

/**
 * Cell-index maps of one size, packed in pages of two bytes a texel. A page is uploaded shelf by
 * shelf, so a map that arrives late costs its own shelf only.
 */
export class MapPages {
  readonly columns: number;
  readonly rows: number;
  readonly pages: BufferImageSource[] = [];
  private readonly places = new Map<number, MapPlace>();
  private readonly across: number;
  private readonly perPage: number;
  private readonly width: number;
  private readonly height: number;
  private count = 0;

  constructor(columns: number, rows: number) {
    this.columns = columns;
    this.rows = rows;
    this.width = Math.max(PAGE_WIDTH, columns);
    this.height = Math.max(PAGE_HEIGHT, rows);
    this.across = Math.floor(this.width / columns);
    this.perPage = this.across * Math.floor(this.height / rows);
  }

  find(id: number): MapPlace | undefined {
    return this.places.get(id);
  }

  /** Puts maps in their places and uploads what they touch. */
  add(maps: readonly WallMap[]): void {
    const touched = new Map<number, { from: number; to: number }>();
    for (const map of maps) {
      if (this.places.has(map.id) || map.columns !== this.columns || map.rows !== this.rows) continue;
      const slot = this.count % this.perPage;
      const page = Math.floor(this.count / this.perPage);
      const place = {
        page,
        x: (slot % this.across) * this.columns,
        y: Math.floor(slot / this.across) * this.rows,
      };
      this.count++;
      this.places.set(map.id, place);
      this.write(map, place);
      const range = touched.get(page);
      const to = place.y + this.rows;
      if (range === undefined) touched.set(page, { from: place.y, to });
      else {
        range.from = Math.min(range.from, place.y);
        range.to = Math.max(range.to, to);
      }
    }
    for (const [page, { from, to }] of touched) {
      this.pages[page]!.update(from * this.width, to * this.width);
    }
  }

  private write(map: WallMap, place: MapPlace): void {
    const source = (this.pages[place.page] ??= this.newPage());
    // The shader takes the first byte for the low one: so do all machines that browsers run on.
    const cells = new Uint16Array((source.resource as Uint8Array).buffer);
    for (let row = 0; row < this.rows; row++) {
      const from = row * this.columns;
      cells.set(map.cells.subarray(from, from + this.columns), (place.y + row) * this.width + place.x);
    }
  }

  private newPage(): BufferImageSource {
    return new BufferImageSource({
      resource: new Uint8Array(this.width * this.height * 2),
      width: this.width,
      height: this.height,
      format: 'rg8unorm',
      scaleMode: 'nearest',
      alphaMode: 'no-premultiply-alpha',
      autoGarbageCollect: false,
    });
  }

  destroy(): void {
    for (const page of this.pages) page.destroy();
  }
}
