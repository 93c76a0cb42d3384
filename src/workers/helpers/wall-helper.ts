import { defined } from '../../engine/base/at.ts';
import { type FirstDraw, FirstDraws } from '../../engine/explore/search/first-draw.ts';
import type { ExploreInput, Variant } from '../../engine/explore/types.ts';
import type { WallMap, WallTile } from '../api/engine-api.ts';
import { StudioPictures, WallPainter } from '../jobs/pictures.ts';

/** A print as drawn for the wall. */
export type DrawnTile = Omit<WallTile, 'variant' | 'look'> & { fresh: WallMap | null };

/** What a helper is told before a wall. */
export interface HelperOrder {
  input: ExploreInput;
  /** Height of a print, pixels. */
  rows: number;
  relative: boolean;
}

/** Draws candidates and prints of one wall after another, for the search that helpers it work. */
export class WallHelper {
  private first: FirstDraws | null = null;
  private painter: WallPainter | null = null;

  begin({ input, rows, relative }: HelperOrder): void {
    this.first = new FirstDraws(input);
    this.painter = new WallPainter(new StudioPictures(input.drawer), rows, relative);
  }

  /** First attempts at candidates from a number on. */
  draw(from: number, count: number): (FirstDraw | null)[] {
    return Array.from({ length: count }, (_, i) => defined(this.first).of(from + i));
  }

  paint(variants: readonly Variant[]): DrawnTile[] {
    return variants.map(({ pulls }) => defined(this.painter).tile(pulls));
  }
}
