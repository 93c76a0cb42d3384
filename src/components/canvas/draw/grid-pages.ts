import { entryAt } from '../../../engine/base/at.ts';
import { TexelPage, type Texel } from './texel-page.ts';

const PAGE_WIDTH = 1024;
const PAGE_HEIGHT = 1024;

/** A grid of numbers or colours, row by row. */
export type Grid = Uint8Array | Uint16Array | Uint32Array;

/** Where a grid lies: its page and the texel of its top left corner. */
export interface GridPlace {
  page: TexelPage;
  x: number;
  y: number;
}

/**
 * Grids of one size, packed in pages. A page is uploaded shelf by shelf, so a grid that arrives late
 * costs its own shelf only.
 */
export class GridPages {
  readonly columns: number;
  readonly rows: number;
  /** Texels of a page. */
  readonly width: number;
  readonly height: number;
  private readonly texel: Texel;
  private readonly pages: TexelPage[] = [];
  private readonly across: number;
  private readonly perPage: number;
  private count = 0;
  private readonly touched = new Map<number, { from: number; to: number }>();

  constructor(columns: number, rows: number, texel: Texel) {
    this.columns = columns;
    this.rows = rows;
    this.texel = texel;
    this.width = Math.max(PAGE_WIDTH, columns);
    this.height = Math.max(PAGE_HEIGHT, rows);
    this.across = Math.floor(this.width / columns);
    this.perPage = this.across * Math.floor(this.height / rows);
  }

  /** Copies a grid to the next free place; `upload` sends it on. */
  add(grid: Grid): GridPlace {
    const slot = this.count % this.perPage;
    const number = Math.floor(this.count / this.perPage);
    this.count++;
    const page = (this.pages[number] ??= new TexelPage(this.width, this.height, this.texel));
    const place = { page, x: (slot % this.across) * this.columns, y: Math.floor(slot / this.across) * this.rows };
    this.write(grid, place);
    const range = this.touched.get(number) ?? { from: place.y, to: 0 };
    this.touched.set(number, { from: Math.min(range.from, place.y), to: Math.max(range.to, place.y + this.rows) });
    return place;
  }

  /** Sends on what was added since. */
  upload(): void {
    for (const [page, { from, to }] of this.touched) entryAt(this.pages, page).update(from * this.width, to * this.width);
    this.touched.clear();
  }

  private write(grid: Grid, { page, x, y }: GridPlace): void {
    const { buffer } = page.bytes;
    const texels =
      this.texel === 'byte' ? new Uint8Array(buffer) : this.texel === 'word' ? new Uint16Array(buffer) : new Uint32Array(buffer);
    for (let row = 0; row < this.rows; row++) {
      texels.set(grid.subarray(row * this.columns, (row + 1) * this.columns), (y + row) * this.width + x);
    }
  }

  destroy(): void {
    for (const page of this.pages) page.destroy();
  }
}
