import { defined } from '../../engine/base/at.ts';
import { type FirstDraw, FirstDraws } from '../../engine/explore/search/first-draw.ts';
import type { ExploreInput, Variant } from '../../engine/explore/types.ts';
import type { WallLook } from '../api/wall-api.ts';
import { StudioPictures } from '../jobs/pictures.ts';
import { type DrawnTile, WallPainter } from '../jobs/wall-painter.ts';

/** What a helper gets before a wall. */
export interface HelperOrder extends WallLook {
  input: ExploreInput;
}

/** Draws candidates and prints of one wall after another, for the search that it helps. */
export class WallHelper {
  private first: FirstDraws | null = null;
  private painter: WallPainter | null = null;

  begin({ input, rows, relative }: HelperOrder): void {
    this.first = new FirstDraws(input);
    this.painter = new WallPainter(new StudioPictures(input.drawer), { rows, relative });
  }

  /** First attempts at candidates from a number on. */
  draw(from: number, count: number): (FirstDraw | null)[] {
    return Array.from({ length: count }, (_, i) => defined(this.first).of(from + i));
  }

  paint(variants: readonly Variant[]): DrawnTile[] {
    return variants.map(({ pulls }) => defined(this.painter).tile(pulls));
  }
}
