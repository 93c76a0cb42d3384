import { i32, u32 } from '../../../base/at.ts';
import { CodeRoom } from '../../../base/code/code-room.ts';
import { mapRoom } from '../../../stack/rows/map-room.ts';
import type { CellMap } from '../../../stack/types.ts';
import { writeFigureCode } from './edge-code.ts';
import { DONE, EDGE_NAMES, MORE_NOTES } from './edge-names.ts';
import type { EdgeLengths } from './edge-tally.ts';
import { DIGITS } from './size-code.ts';

/** Maps of more runs, and of more notes, are left to plain code: they would keep much memory for ever. */
const MOST_RUNS = 400_000;
const MOST_NOTES = 400_000;

/** What all prints of one map share, whatever their orders and inks. */
export interface MapFigures {
  edges: EdgeLengths;
  /** Cells that take some of the sheet, largest first, the lower number first of equals. */
  bySize: Uint32Array;
  /** Two a cell: its area ÷ row height × the x of its middle, and × the y, mm². */
  moments: Float64Array;
}

/** Finds what all prints of one map share, see `writeFigureCode`: beside the maps, so that the one built latest is read where it lies. */
export class FigureRoom {
  private readonly room = new CodeRoom(EDGE_NAMES, writeFigureCode, { beside: mapRoom.room });
  private notesRoom = 8192;

  /** @returns lists that hold until the next are found or the next map is built; null when they must be found by other means */
  figures(map: CellMap): MapFigures | null {
    const runs = u32(map.rowStart, map.rows);
    if (!this.room.works || runs > MOST_RUNS) return null;
    for (;;) {
      const at = this.lay(map, runs);
      const given = this.room.call();
      if (given === DONE) {
        const { ints, words, reals } = this.room;
        const pairs = i32(ints, at.found);
        return {
          edges: {
            cells: words.subarray(at.pairCells, at.pairCells + pairs * 2),
            lengthMm: reals.subarray(at.lengthMm, at.lengthMm + pairs),
          },
          bySize: words.subarray(at.bySize, at.bySize + i32(ints, at.found + 1)),
          moments: reals.subarray(at.moments, at.moments + map.cells * 2),
        };
      }
      if (given !== MORE_NOTES || this.notesRoom >= MOST_NOTES) return null;
      this.notesRoom *= 2;
    }
  }

  private lay(map: CellMap, runs: number) {
    const { rows, heightMm, cells } = map;
    const { room, notesRoom } = this;
    room.begin();
    room.int('rows', rows);
    room.int('cells', cells);
    room.int('notesRoom', notesRoom);
    const sheet = room.realList('sheet', 1);
    const at = {
      found: room.intList('found', 2),
      pairCells: room.intList('pairCells', notesRoom * 2 + 2),
      lengthMm: room.realList('lengthMm', notesRoom + 1),
      moments: room.realList('moments', cells * 2),
      bySize: room.intList('bySize', cells),
    };
    room.intList('noteCells', notesRoom * 2);
    room.realList('noteMm', notesRoom);
    room.intList('order', notesRoom);
    const ofCell = room.intList('ofCell', cells);
    const pairOf = room.intList('pairOf', cells);
    room.intList('edgeOf', runs);
    const copy = this.layMap(map, runs);
    for (const name of ['sizes', 'half', 'halfSizes'] as const) room.intList(name, cells);
    const digits = [room.intList('lower', DIGITS), room.intList('upper', DIGITS)];
    room.fit();
    const { ints, reals } = room;
    reals[sheet] = heightMm / rows;
    ints.fill(0, ofCell, ofCell + cells);
    ints.fill(-1, pairOf, pairOf + cells);
    for (const digit of digits) ints.fill(0, digit, digit + DIGITS);
    reals.fill(0, at.moments, at.moments + cells * 2);
    copy?.();
    return at;
  }

  /** @returns what copies the map's lists when there is room, where they do not lie in memory already */
  private layMap(map: CellMap, runs: number): (() => void) | null {
    const { room } = this;
    const known = mapRoom.placesOf(map);
    const places = known ?? {
      rowStart: room.intList('ownStarts', map.rows + 1) * 4,
      runEndMm: room.realList('ownEnds', runs) * 8,
      runCell: room.intList('ownCells', runs) * 4,
      areaMm2: room.realList('ownAreas', map.cells) * 8,
    };
    for (const name of ['rowStart', 'runEndMm', 'runCell', 'areaMm2'] as const) room.int(name, places[name]);
    if (known !== null) return null;
    return () => {
      const { words, reals } = room;
      words.set(map.rowStart.subarray(0, map.rows + 1), places.rowStart / 4);
      reals.set(map.runEndMm.subarray(0, runs), places.runEndMm / 8);
      words.set(map.runCell.subarray(0, runs), places.runCell / 4);
      reals.set(map.areaMm2.subarray(0, map.cells), places.areaMm2 / 8);
    };
  }
}
