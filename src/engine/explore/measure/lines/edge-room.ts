import { i32, u32 } from '../../../base/at.ts';
import { CodeRoom } from '../../../base/code/code-room.ts';
import type { CellMap } from '../../../stack/types.ts';
import { writeEdgeCode } from './edge-code.ts';
import { DONE, EDGE_NAMES, MORE_PAIRS } from './edge-names.ts';
import type { EdgeLengths } from './edge-tally.ts';

/** Maps of more runs, and of more pairs of cells, are left to plain code: they would keep much memory for ever. */
const MOST_RUNS = 400_000;
const MOST_PAIRS = 400_000;

/** Finds the lengths of edges in memory of its own, see `EdgeCode`. */
export class EdgeRoom {
  private readonly room = new CodeRoom(EDGE_NAMES, writeEdgeCode);
  private pairsRoom = 4096;

  /** @returns lists that hold until the next are found; null when they must be found by other means */
  lengths(map: CellMap): EdgeLengths | null {
    const runs = u32(map.rowStart, map.rows);
    if (!this.room.works || runs > MOST_RUNS) return null;
    for (;;) {
      const at = this.lay(map, runs);
      const given = this.room.call();
      if (given === DONE) {
        const { ints, words, reals } = this.room;
        const pairs = i32(ints, at.found);
        return {
          cells: words.subarray(at.pairCells, at.pairCells + pairs * 2),
          lengthMm: reals.subarray(at.lengthMm, at.lengthMm + pairs),
        };
      }
      if (given !== MORE_PAIRS || this.pairsRoom >= MOST_PAIRS) return null;
      this.pairsRoom *= 2;
    }
  }

  private lay({ rows, heightMm, rowStart, runEndMm, runCell }: CellMap, runs: number) {
    const { room, pairsRoom } = this;
    const slots = pairsRoom * 2;
    room.begin();
    room.int('rows', rows);
    room.int('pairsRoom', pairsRoom);
    room.int('slotMask', slots - 1);
    const sheet = room.realList('sheet', 1);
    const at = {
      found: room.intList('found', 1),
      pairCells: room.intList('pairCells', pairsRoom * 2),
      lengthMm: room.realList('lengthMm', pairsRoom),
    };
    const slotsAt = room.intList('slots', slots);
    const starts = room.intList('rowStart', rows + 1);
    const ends = room.realList('runEndMm', runs);
    const cells = room.intList('runCell', runs);
    room.intList('edgeOf', runs);
    room.fit();
    const { ints, words, reals } = room;
    reals[sheet] = heightMm / rows;
    ints.fill(-1, slotsAt, slotsAt + slots);
    words.set(rowStart.subarray(0, rows + 1), starts);
    reals.set(runEndMm.subarray(0, runs), ends);
    words.set(runCell.subarray(0, runs), cells);
    return at;
  }
}
