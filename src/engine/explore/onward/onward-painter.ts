import { entryAt } from '../../base/at.ts';
import { coloursOfReflectance } from '../../stack/appearance.ts';
import { stackLayers } from '../../stack/layers.ts';
import { paintThumbnail } from '../../stack/paint.ts';
import { SpanCache } from '../../stack/screen-spans.ts';
import type { CellMap, Pull, RowGrid } from '../../stack/types.ts';
import type { Studio } from '../../studio/studio.ts';
import { type Ground, groundOf, type OnwardMeasures, Under } from './ground.ts';

/** Paints prints that begin with the same pulls: what is down once, then only what comes over it. */
export class OnwardPainter {
  private readonly studio: Studio;
  private readonly spans: SpanCache;
  private readonly grid: RowGrid;
  private readonly ground: Ground;
  private readonly relative: boolean;
  readonly widthPx: number;

  /**
   * @param spans what is known of the studio's screens already
   * @throws what groundOf throws
   */
  constructor(
    pulls: readonly Pull[],
    studio: Studio,
    { heightPx, relative }: { heightPx: number; relative: boolean },
    spans = new SpanCache(studio),
  ) {
    const { widthMm, heightMm } = studio.paper;
    this.studio = studio;
    this.relative = relative;
    this.spans = spans;
    this.grid = { widthMm, heightMm, rows: heightPx };
    this.widthPx = Math.max(1, Math.round((heightPx * widthMm) / heightMm));
    this.ground = groundOf(pulls, studio, { spans: this.spans, grid: this.grid });
  }

  /**
   * The sheet with further pulls: its picture as RGBA bytes, row by row, and what it is like beside the sheet as it
   * stands.
   * @param more first down first; none for the sheet as it stands
   */
  paint(more: readonly Pull[]): { pixels: Uint8ClampedArray<ArrayBuffer>; measures: OnwardMeasures } {
    let { ground } = this;
    for (const pull of more) {
      const under = new Under(ground, entryAt(this.spans.place({ pulls: [pull] }, this.grid), 0));
      ground = under.with(entryAt(stackLayers({ pulls: [pull] }, this.studio), 0).laid);
    }
    return { pixels: this.picture(ground.cells.map, ground.cells.reflectance), measures: ground.measures };
  }

  private picture(map: CellMap, reflectance: Float64Array): Uint8ClampedArray<ArrayBuffer> {
    const colours = coloursOfReflectance(reflectance, this.studio.paper.reflectance, undefined, this.relative);
    return paintThumbnail(map, colours, this.widthPx, new Uint8ClampedArray(this.widthPx * map.rows * 4));
  }
}
