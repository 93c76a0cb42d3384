import { sketchOf } from '../../src/engine/explore/look/sketch.ts';
import type { VariantMeasures } from '../../src/engine/explore/measure/variant-measures.ts';
import { createExplorer } from '../../src/engine/explore/search/explorer.ts';
import type { ExploreInput, Variant } from '../../src/engine/explore/types.ts';
import { StudioPictures } from '../../src/workers/jobs/pictures.ts';
import { WallPainter } from '../../src/workers/jobs/wall-painter.ts';

/** A print of a wall with what the wall knows of it. */
export interface WallPrint {
  variant: Variant;
  measures: VariantMeasures;
  sketch: Float32Array;
}

/** The prints of a wall, measured and sketched as the wall does it, on maps of 96 rows. */
export function wallPrints(input: ExploreInput): WallPrint[] {
  const explorer = createExplorer(input);
  const painter = new WallPainter(new StudioPictures(input.drawer), { rows: 96, relative: true });
  const variants: Variant[] = [];
  while (!explorer.done) variants.push(...explorer.step(20));
  return variants.map((variant) => {
    const { measures, small } = painter.tile(variant.pulls);
    return { variant, measures, sketch: sketchOf(small) };
  });
}
