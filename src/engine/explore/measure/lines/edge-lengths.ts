import type { CellMap } from '../../../stack/types.ts';
import { EdgeRoom } from './edge-room.ts';
import type { EdgeLengths } from './edge-tally.ts';
import { walkEdges } from './edge-walk.ts';

const room = new EdgeRoom();

/**
 * Lengths of all edges of a map. Between the middles of two rows an edge that goes on
 * from one to the other between the same two cells counts by its slant; where areas differ from row
 * to row otherwise, by the stretch that differs. Exact for upright and level edges on row
 * boundaries; curves are as fine as the rows.
 * Cost O(runs).
 */
export function edgeLengths(map: CellMap): EdgeLengths {
  const { cells, lengthMm } = passingEdges(map);
  return { cells: cells.slice(), lengthMm: lengthMm.slice() };
}

/** As `edgeLengths`, but the lists only hold until those of any other map are found. */
export function passingEdges(map: CellMap): EdgeLengths {
  return room.lengths(map) ?? walkEdges(map);
}
