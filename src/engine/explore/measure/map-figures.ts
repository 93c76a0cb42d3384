import { f64, u32 } from '../../base/at.ts';
import type { CellMap } from '../../stack/types.ts';
import { cellsBySize } from './cells-by-size.ts';
import { passingEdges } from './lines/edge-lengths.ts';
import type { EdgeLengths } from './lines/edge-tally.ts';

/** What all prints of one map share, whatever their orders and inks. */
export interface MapFigures {
  edges: EdgeLengths;
  /** Cells that take some of the sheet, largest first, the lower number first of equals. */
  bySize: Uint32Array;
  /** Three a cell: its area ÷ row height, that × the x of its middle, that × the y, all in mm. */
  moments: Float64Array;
}

/** Works them out. Cost O(runs). */
export function mapFigures(map: CellMap): MapFigures {
  const { edges, bySize, moments } = passingFigures(map);
  return { edges: { cells: edges.cells.slice(), lengthMm: edges.lengthMm.slice() }, bySize: bySize.slice(), moments: moments.slice() };
}

/** As `mapFigures`, but they only hold until those of any other map are worked out: nothing is allocated for them. */
export function passingFigures(map: CellMap): MapFigures {
  return { edges: passingEdges(map), bySize: cellsBySize(map), moments: momentsOf(map) };
}

let momentsRoom = new Float64Array(3 * 1024);

function momentsOf(map: CellMap): Float64Array {
  const { rows, rowStart, runEndMm, runCell } = map;
  const rowHeightMm = map.heightMm / rows;
  if (momentsRoom.length < map.cells * 3) momentsRoom = new Float64Array(map.cells * 6);
  const moments = momentsRoom.subarray(0, map.cells * 3).fill(0);
  for (let row = 0; row < rows; row++) {
    const yMm = (row + 0.5) * rowHeightMm;
    const end = u32(rowStart, row + 1);
    let fromMm = 0;
    for (let run = u32(rowStart, row); run < end; run++) {
      const toMm = f64(runEndMm, run);
      const at = u32(runCell, run) * 3;
      moments[at] = f64(moments, at) + (toMm - fromMm);
      moments[at + 1] = f64(moments, at + 1) + ((toMm - fromMm) * (fromMm + toMm)) / 2;
      moments[at + 2] = f64(moments, at + 2) + (toMm - fromMm) * yMm;
      fromMm = toMm;
    }
  }
  return moments;
}
