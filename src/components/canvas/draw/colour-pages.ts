import { defined } from '../../../engine/base/at.ts';
import { TexelPage } from './texel-page.ts';

/** Texels a row; a colour's number splits into row and column by shift and mask in the shader. */
const COLOUR_WIDTH = 1024;
const COLOUR_HEIGHT = 256;
const CAPACITY = COLOUR_WIDTH * COLOUR_HEIGHT;

/** Where a print's colours lie: a page, and the texel of its cell 0. */
export interface ColourPlace {
  page: TexelPage;
  offset: number;
}

/** The colours of every print's cells, one after another. */
export class ColourPages {
  private readonly pages: TexelPage[] = [];
  private used = 0;
  private dirtyFrom = 0;

  /** Copies a print's colours; `upload` sends them on. */
  add(colours: Uint32Array): ColourPlace {
    if (this.pages.length === 0 || this.used + colours.length > CAPACITY) {
      this.upload();
      this.pages.push(new TexelPage(COLOUR_WIDTH, COLOUR_HEIGHT, 'single'));
      this.used = 0;
      this.dirtyFrom = 0;
    }
    const page = defined(this.pages.at(-1));
    const offset = this.used;
    page.bytes.set(new Uint8Array(colours.buffer, colours.byteOffset, colours.byteLength), offset * 4);
    this.used += colours.length;
    return { page, offset };
  }

  upload(): void {
    const page = this.pages.at(-1);
    if (page === undefined || this.used === this.dirtyFrom) return;
    // Whole rows: a range that starts within a row would go over in three parts.
    const from = Math.floor(this.dirtyFrom / COLOUR_WIDTH) * COLOUR_WIDTH;
    const to = Math.ceil(this.used / COLOUR_WIDTH) * COLOUR_WIDTH;
    page.update(from, to);
    this.dirtyFrom = this.used;
  }

  destroy(): void {
    for (const page of this.pages) page.destroy();
  }
}
