import { DeltaELanes } from '../../colour/delta-e-lanes.ts';
import type { CellMap } from '../../stack/types.ts';
import type { EdgeLengths } from './lines/edge-tally.ts';
import { edgeLengths } from './map-figures.ts';

/** Edges between areas of different colour. */
export interface EdgeMeasure {
  /** Length of all edges that show, mm. */
  lengthMm: number;
  /** Length × ΔE00 across the edge, ΔE·mm. */
  contrast: number;
}

/** Edges with less contrast than this do not show, ΔE00; rounding stays far below. */
const LEAST_DELTA_E = 0.01;

const lanes = new DeltaELanes(LEAST_DELTA_E);

/**
 * Length and contrast of all edges of a print.
 * @param lab cells × 3, what each cell shows
 * @param edges of this map, when they are known already
 */
export function edgeMeasure(map: CellMap, lab: Float64Array, edges: EdgeLengths = edgeLengths(map)): EdgeMeasure {
  lanes.hold(lab, map.cells);
  const [lengthMm, contrast] = lanes.weigh(edges.cells, edges.lengthMm);
  return { lengthMm, contrast };
}
