import { entryAt } from '../../base/at.ts';
import { CodeRoom } from '../../base/code/code-room.ts';
import type { CellMap, PlacedSpans } from '../types.ts';
import { writeMapCode } from './map-code.ts';
import { DONE, MAP_NAMES, MORE_CELLS, PAD } from './map-names.ts';

/** Maps of more crossings, rows, cells or words of a cover are left to plain code: they would keep much memory for ever, and long functions. */
const MOST_CROSSINGS = 400_000;
const MOST_ROWS = 10_000;
const MOST_CELLS = 100_000;
const MOST_WORDS = 8;

/** Builds cell maps in memory of its own, see `writeMapCode`. */
class MapRoom {
  readonly room = new CodeRoom(MAP_NAMES, writeMapCode);
  /** How many cells the map may have that is being built. */
  private cellsRoom = 1024;
  private hashes: ArrayLike<number> = [];
  /** Where in memory the lists of the latest map begin. */
  private at = { rowStart: 0, runEndMm: 0, runCell: 0, cover: 0, areaMm2: 0 };
  private latest: CellMap | null = null;

  /**
   * Builds a map of a grid whose size, rows, screens and words are in `map`; `copyTo` gives it the lists.
   * @param bitHashes at least one number a screen
   * @returns how many runs it has; −1 when it must be built by other means
   */
  build(map: CellMap, placed: readonly PlacedSpans[], bitHashes: ArrayLike<number>): number {
    this.latest = null;
    if (!this.room.works || map.rows > MOST_ROWS || map.words > MOST_WORDS) return -1;
    let crossings = 0;
    for (let i = 0; i < placed.length; i++) crossings += entryAt(placed, i).spans.xMm.length;
    if (crossings > MOST_CROSSINGS) return -1;
    this.hashes = bitHashes;
    for (;;) {
      const found = this.lay(map, placed, crossings);
      const given = this.room.call();
      if (given === DONE) {
        map.cells = this.room.ints[found] ?? 0;
        return this.room.ints[this.at.rowStart + map.rows] ?? 0;
      }
      if (given !== MORE_CELLS || this.cellsRoom >= MOST_CELLS) return -1;
      this.cellsRoom *= 2;
    }
  }

  /** Copies the lists of the map that was built latest. */
  copyTo(map: CellMap, runs: number): void {
    const { at } = this;
    const { words, reals } = this.room;
    this.latest = map;
    map.rowStart.set(words.subarray(at.rowStart, at.rowStart + map.rows + 1));
    map.runEndMm.set(reals.subarray(at.runEndMm, at.runEndMm + runs));
    map.runCell.set(words.subarray(at.runCell, at.runCell + runs));
    map.cover.set(words.subarray(at.cover, at.cover + map.cells * map.words));
    map.areaMm2.set(reals.subarray(at.areaMm2, at.areaMm2 + map.cells));
  }

  /** Where lists of a map begin in memory, in bytes; null when others lie there. */
  placesOf(map: CellMap): Record<'rowStart' | 'runEndMm' | 'runCell' | 'areaMm2', number> | null {
    const { rowStart, runEndMm, runCell, areaMm2 } = this.at;
    return map === this.latest ? { rowStart: rowStart * 4, runEndMm: runEndMm * 8, runCell: runCell * 4, areaMm2: areaMm2 * 8 } : null;
  }

  /** Lays all lists out and fills those that the function reads. @returns where it tells the number of cells */
  private lay(map: CellMap, placed: readonly PlacedSpans[], crossings: number): number {
    const { room, at, cellsRoom } = this;
    const screens = placed.length;
    const { rows, words } = map;
    const slots = cellsRoom * 2;
    room.begin(words);
    room.int('rows', rows);
    room.int('cellsRoom', cellsRoom);
    room.int('slotMask', slots - 1);
    const sheet = room.realList('sheet', 2);
    const found = room.intList('found', 1);
    const ofScreens = this.layScreens(screens, rows);
    let rowsOfAll = 0;
    for (let i = 0; i < screens; i++) rowsOfAll += entryAt(placed, i).spans.starts.length;
    const starts = room.intList('starts', rowsOfAll);
    const xMm = room.realList('xMm', crossings);
    const events = crossings + 1;
    room.realList('x', events);
    room.realList('newX', events);
    const bit = room.intList('bit', events);
    room.intList('aboveBit', events);
    room.intList('newBit', events);
    room.intList('left', events);
    const cells = room.intList('cells', events + 2 * PAD);
    const aboveCells = room.intList('aboveCells', events + 2 * PAD);
    at.rowStart = room.intList('rowStart', rows + 1);
    at.runEndMm = room.realList('runEndMm', crossings + rows);
    at.runCell = room.intList('runCell', crossings + rows);
    at.cover = room.intList('cover', cellsRoom * words);
    at.areaMm2 = room.realList('areaMm2', cellsRoom);
    const hashOf = room.intList('hashOf', cellsRoom);
    const slotsAt = room.intList('slots', slots);
    room.fit();
    const { ints, reals } = room;
    reals[sheet] = map.widthMm;
    reals[sheet + 1] = map.heightMm / rows;
    ints[bit] = -1;
    ints.fill(-1, cells, cells + 2 * PAD + 1);
    ints.fill(-1, aboveCells, aboveCells + 2 * PAD + 1);
    // The cell of bare paper.
    ints.fill(0, at.cover, at.cover + words);
    reals[at.areaMm2] = 0;
    ints[hashOf] = 0;
    ints.fill(-1, slotsAt, slotsAt + slots);
    ints[slotsAt] = 0;
    this.fill(placed, rows, { ...ofScreens, starts, xMm });
    return found;
  }

  private layScreens(screens: number, rows: number) {
    const { room } = this;
    return {
      firstIn: room.intList('firstIn', rows),
      nextIn: room.intList('nextIn', screens),
      here: room.intList('here', screens),
      firstRow: room.intList('firstRow', screens),
      rowCount: room.intList('rowCount', screens),
      startAt: room.intList('startAt', screens),
      xAt: room.intList('xAt', screens),
      had: room.intList('had', screens),
      next: room.intList('next', screens),
      bitHash: room.intList('bitHash', screens),
      dxMm: room.realList('dxMm', screens),
    };
  }

  private fill(
    placed: readonly PlacedSpans[],
    rows: number,
    at: ReturnType<MapRoom['layScreens']> & { starts: number; xMm: number },
  ): void {
    const { ints, words, reals } = this.room;
    ints.fill(-1, at.firstIn, at.firstIn + rows);
    let start = 0;
    let x = 0;
    for (let bit = 0; bit < placed.length; bit++) {
      const { spans, dxMm, rowShift } = entryAt(placed, bit);
      const first = rowShift + spans.firstRow;
      const row = first > 0 ? first : 0;
      ints[at.firstRow + bit] = first;
      ints[at.rowCount + bit] = spans.rows;
      ints[at.startAt + bit] = start;
      ints[at.xAt + bit] = x;
      reals[at.dxMm + bit] = dxMm;
      ints[at.had + bit] = 0;
      ints[at.bitHash + bit] = this.hashes[bit] ?? 0;
      words.set(spans.starts, at.starts + start);
      reals.set(spans.xMm, at.xMm + x);
      start += spans.starts.length;
      x += spans.xMm.length;
      if (row >= rows || first + spans.rows <= row) continue;
      ints[at.nextIn + bit] = ints[at.firstIn + row] ?? -1;
      ints[at.firstIn + row] = bit;
    }
  }
}

/** All builders share it: what it finds is copied out. */
export const mapRoom = new MapRoom();
