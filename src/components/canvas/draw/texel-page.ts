/** What one texel is: a cell number in one byte or two, a colour that blends with its neighbours, or one that stands for itself. */
export type Texel = 'byte' | 'word' | 'colour' | 'single';

const BYTES: Record<Texel, number> = { byte: 1, word: 2, colour: 4, single: 4 };

/** What follows a page: a copy of it on the graphics card. */
export interface PageFollower {
  /** Texels were written. @param to the first that was not */
  update(from: number, to: number): void;
  destroy(): void;
}

/** A page of texels, row by row, that is read here and can be followed on the graphics card. */
export class TexelPage {
  readonly width: number;
  readonly height: number;
  readonly texel: Texel;
  readonly bytes: Uint8Array<ArrayBuffer>;
  follower: PageFollower | null = null;

  constructor(width: number, height: number, texel: Texel) {
    this.width = width;
    this.height = height;
    this.texel = texel;
    this.bytes = new Uint8Array(width * height * BYTES[texel]);
  }

  /** Says that texels were written. @param to the first that was not */
  update(from: number, to: number): void {
    this.follower?.update(from, to);
  }

  destroy(): void {
    this.follower?.destroy();
    this.follower = null;
  }
}
