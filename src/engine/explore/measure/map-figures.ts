import { f64, u32 } from '../../base/at.ts';
import type { CellMap } from '../../stack/types.ts';
import type { EdgeLengths } from './lines/edge-tally.ts';
import { walkEdges } from './lines/edge-walk.ts';
import { FigureRoom, type MapFigures } from './lines/figure-room.ts';

const room = new FigureRoom();

/** Works out what all prints of one map share. Cost O(runs). */
export function mapFigures(map: CellMap): MapFigures {
  const { edges, bySize, moments } = passingFigures(map);
  return { edges: { cells: edges.cells.slice(), lengthMm: edges.lengthMm.slice() }, bySize: bySize.slice(), moments: moments.slice() };
}

/** As `mapFigures`, but they only hold until those of any other map are worked out or a map is built: nothing is allocated for them. */
export function passingFigures(map: CellMap): MapFigures {
  return room.figures(map) ?? plainFigures(map);
}

/** As `mapFigures`, by plain code: the same bits. */
export function plainFigures(map: CellMap): MapFigures {
  return { edges: walkEdges(map), bySize: cellsBySize(map), moments: momentsOf(map) };
}

/**
 * Lengths of all edges of a map. Between the middles of two rows an edge that goes on
 * from one to the other between the same two cells counts by its slant; where areas differ from row
 * to row otherwise, by the stretch that differs. Exact for upright and level edges on row
 * boundaries; curves are as fine as the rows.
 * Cost O(runs).
 */
export function edgeLengths(map: CellMap): EdgeLengths {
  return mapFigures(map).edges;
}

function cellsBySize({ cells, areaMm2 }: CellMap): Uint32Array {
  const all = Uint32Array.from({ length: cells }, (_, cell) => cell);
  return all.filter((cell) => f64(areaMm2, cell) > 0).sort((a, b) => f64(areaMm2, b) - f64(areaMm2, a) || a - b);
}

function momentsOf({ heightMm, rows, cells, rowStart, runEndMm, runCell }: CellMap): Float64Array {
  const rowMm = heightMm / rows;
  const moments = new Float64Array(cells * 2);
  let yMm = rowMm / 2;
  for (let row = 0, run = 0; row < rows; row++, yMm += rowMm) {
    let fromMm = 0;
    for (const end = u32(rowStart, row + 1); run < end; run++) {
      const toMm = f64(runEndMm, run);
      const lengthMm = toMm - fromMm;
      const at = u32(runCell, run) * 2;
      moments[at] = f64(moments, at) + lengthMm * (fromMm + toMm) * 0.5;
      moments[at + 1] = f64(moments, at + 1) + lengthMm * yMm;
      fromMm = toMm;
    }
  }
  return moments;
}
