import { f64, u32 } from '../../base/at.ts';
import type { CellMap } from '../../stack/types.ts';
import { edgeLengths } from './lines/edge-lengths.ts';
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
  return { edges: edgeLengths(map), bySize: cellsBySize(map), moments: momentsOf(map) };
}

/** More cells than a map may have. */
const NUMBERS = 2 ** 20;

/** Cells that take some of the sheet, largest first, the lower number first of equals. */
export function cellsBySize({ cells, areaMm2 }: Pick<CellMap, 'cells' | 'areaMm2'>): Uint32Array {
  // Plain numbers sort many times as fast as what a function compares. So a cell's number takes the
  // place of the last bits of its area; what these would have decided is put right afterwards.
  const keys = new Float64Array(cells);
  const words = new Uint32Array(keys.buffer);
  const low = new Uint8Array(new Uint32Array([1]).buffer)[0] === 1 ? 0 : 1;
  let count = 0;
  for (let cell = 0; cell < cells; cell++) {
    if (!(f64(areaMm2, cell) > 0)) continue;
    keys[count] = f64(areaMm2, cell);
    const word = count++ * 2 + low;
    words[word] = u32(words, word) - (u32(words, word) % NUMBERS) + cell;
  }
  keys.subarray(0, count).sort();
  const sorted = new Uint32Array(count);
  for (let i = 0; i < count; i++) {
    const cell = u32(words, (count - 1 - i) * 2 + low) % NUMBERS;
    const area = f64(areaMm2, cell);
    let at = i;
    for (; at > 0; at--) {
      const before = u32(sorted, at - 1);
      if (f64(areaMm2, before) > area || (f64(areaMm2, before) === area && before < cell)) break;
      sorted[at] = before;
    }
    sorted[at] = cell;
  }
  return sorted;
}

function momentsOf(map: CellMap): Float64Array {
  const { rows, rowStart, runEndMm, runCell } = map;
  const rowHeightMm = map.heightMm / rows;
  const moments = new Float64Array(map.cells * 3);
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
