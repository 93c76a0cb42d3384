import { u32 } from '../../base/at.ts';
import { colourCells, createCellColours } from '../../stack/appearance.ts';
import { CellMapBuilder } from '../../stack/cell-map.ts';
import { rasterCells } from '../../stack/cell-raster.ts';
import { stackLayers } from '../../stack/layers.ts';
import { SpanCache } from '../../stack/screen-spans.ts';
import { smallPicture } from '../../stack/small-picture.ts';
import type { Pull } from '../../stack/types.ts';
import type { Studio } from '../../studio/studio.ts';
import { sketchOf } from '../look/sketch.ts';
import { VariantMeter } from '../measure/variant-measures.ts';
import type { TasteFacts } from './traits.ts';

/** Rows of the map that a print is measured on: what a taste tells apart differs little from finer ones. */
const ROWS = 96;
/** Rows of the map to one of the sketch's picture. */
const SMALLER = 4;

/** Sees of stacks what a taste knows of prints. */
export class TasteEye {
  private readonly studio: Studio;
  private readonly relative: boolean;
  private readonly columns: number;
  private readonly spans: SpanCache;
  private readonly meter: VariantMeter;
  private readonly builder = new CellMapBuilder();
  private readonly colours = createCellColours();

  /** @param relative whether the paper is seen as white */
  constructor(studio: Studio, relative: boolean) {
    const { widthMm, heightMm } = studio.paper;
    this.studio = studio;
    this.relative = relative;
    this.columns = Math.max(1, Math.round((ROWS * widthMm) / heightMm));
    this.spans = new SpanCache(studio);
    this.meter = new VariantMeter(studio);
  }

  /** @throws EngineError as stackLayers */
  facts(pulls: readonly Pull[]): TasteFacts {
    const { widthMm, heightMm, reflectance } = this.studio.paper;
    const grid = { widthMm, heightMm, rows: ROWS };
    const map = this.builder.build(this.spans.place({ pulls }, grid), grid);
    const layers = stackLayers({ pulls }, this.studio);
    const { packed } = colourCells(map, layers, reflectance, this.colours, this.relative);
    const raster = rasterCells(map, this.columns);
    const words = Uint32Array.from(raster.cells, (cell) => u32(packed, cell));
    const sketch = sketchOf(smallPicture({ ...raster, cells: raster.indexes }, words, SMALLER));
    return { measures: this.meter.measure(map, layers, pulls), sketch };
  }
}
