import { MOST_PULLS } from '../../base/limits.ts';
import type { Lab } from '../../colour/lab.ts';
import { cellLab } from '../../stack/appearance.ts';
import { CellMapBuilder } from '../../stack/cell-map.ts';
import { stackLayers, type Layer } from '../../stack/layers.ts';
import type { SpanCache } from '../../stack/screen-spans.ts';
import type { CellMap, Pull, RowGrid } from '../../stack/types.ts';
import type { Studio } from '../../studio/studio.ts';
import { inksMeet } from '../measure/inks-meet.ts';
import { pullSwatches } from '../measure/overprint-colours.ts';
import { type LimitedPrint, type ShareLimit, sharesAsked, withinCounts } from '../settings/limits.ts';
import type { ExploreSettings } from '../types.ts';
import { MIN_AREA_MM2 } from './layout.ts';

/** A print on its sheet; colours are worked out when a limit first asks for them. */
class SheetPrint implements LimitedPrint {
  readonly map: CellMap;
  private readonly studio: Studio;
  private readonly pulls: readonly Pull[];
  private found: readonly Layer[] | null = null;

  constructor(map: CellMap, pulls: readonly Pull[], studio: Studio) {
    this.map = map;
    this.pulls = pulls;
    this.studio = studio;
  }

  private get layers(): readonly Layer[] {
    return (this.found ??= stackLayers({ pulls: this.pulls }, this.studio));
  }

  get lab(): Float64Array {
    return cellLab(this.map, this.layers, this.studio.paper.reflectance);
  }

  get swatches(): Lab[] {
    return pullSwatches(
      this.layers.map(({ film }) => film),
      this.studio.paper.reflectance,
    );
  }
}

/** Sees whether prints keep to the limits, have the screens they must, and keep inks apart. */
export class LimitKeeper {
  private readonly studio: Studio;
  private readonly settings: ExploreSettings;
  private readonly spans: SpanCache;
  private readonly grid: RowGrid;
  private readonly builder = new CellMapBuilder();
  private readonly shares: readonly { limit: ShareLimit; most: number }[];

  constructor(studio: Studio, settings: ExploreSettings, spans: SpanCache, grid: RowGrid) {
    this.studio = studio;
    this.settings = settings;
    this.spans = spans;
    this.grid = grid;
    this.shares = sharesAsked(settings);
  }

  /** What is seen from the pulls alone, in any order. */
  countsKept(pulls: readonly Pull[]): boolean {
    const { mustScreens = [] } = this.settings;
    // What is pulled again or brought in may not make more of them than a stack takes: nobody could keep it.
    if (pulls.length > MOST_PULLS) return false;
    return withinCounts(pulls, this.settings) && mustScreens.every((screen) => pulls.some((pull) => pull.screen === screen));
  }

  /** All of it, also what asks for the sheet itself. */
  kept(pulls: readonly Pull[]): boolean {
    const { apart = [] } = this.settings;
    if (!this.countsKept(pulls)) return false;
    if (apart.length === 0 && this.shares.length === 0) return true;
    const map = this.builder.build(this.spans.place({ pulls }, this.grid), this.grid);
    const inks = pulls.map((pull) => pull.ink);
    if (apart.length > 0 && inksMeet(map, inks, apart, MIN_AREA_MM2)) return false;
    const print = new SheetPrint(map, pulls, this.studio);
    return this.shares.every(({ limit, most }) => limit.measure(print) <= most);
  }
}
