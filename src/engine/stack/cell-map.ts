import { entryAt, f64, i32, u32 } from '../base/at.ts';
import { EngineError } from '../base/error.ts';
import { say } from '../words/en/stack/stack.ts';
import { roomForCells, roomForRuns } from './map-limits.ts';
import { RowEvents } from './row-events.ts';
import { mapRoom } from './rows/map-room.ts';
import type { CellMap, PlacedSpans, RowGrid } from './types.ts';

/**
 * Which placed screens cover which part of the sheet.
 * @param placed spans per placed screen; bit i of a cell's cover is `placed[i]`; any number
 * @param grid the sheet in rows of equal height, the height that the spans were taken at
 * @returns a map of its own, arrays cut to length
 * @throws EngineError 'stack.bad-grid' when the sheet has no size or no whole number of rows,
 *   'stack.too-many-cells' above 400,000 cells
 * Cost O(crossings × crossings in a row). For many maps keep a `CellMapBuilder`.
 */
export function buildCellMap(placed: readonly PlacedSpans[], grid: RowGrid): CellMap {
  return copyCellMap(new CellMapBuilder().build(placed, grid));
}

/** A copy that no builder writes to again, its arrays cut to length (for keeping or transferring). */
export function copyCellMap(map: CellMap): CellMap {
  const runs = u32(map.rowStart, map.rows);
  return {
    ...map,
    cover: map.cover.slice(0, map.cells * map.words),
    areaMm2: map.areaMm2.slice(0, map.cells),
    rowStart: map.rowStart.slice(0, map.rows + 1),
    runEndMm: map.runEndMm.slice(0, runs),
    runCell: map.runCell.slice(0, runs),
  };
}

/** Builds one cell map after another in the same buffers. */
export class CellMapBuilder {
  private readonly plain: boolean;
  private readonly events = new RowEvents();
  // The cells found so far: open addressing on the hash, verified on the cover words.
  private slots = new Int32Array(1024).fill(-1);
  private cellHash = new Int32Array(512);
  // Hash of `now` at the row's left edge.
  private hash = 0;
  private zobrist = new Int32Array(0);
  private now = new Uint32Array(1);
  private readonly map: CellMap = {
    widthMm: 0,
    heightMm: 0,
    rows: 0,
    screens: 0,
    cells: 0,
    words: 1,
    cover: new Uint32Array(512),
    areaMm2: new Float64Array(512),
    rowStart: new Uint32Array(257),
    runEndMm: new Float64Array(4096),
    runCell: new Uint32Array(4096),
  };

  /** @param plain always by plain code, as on machines that cannot run another, and as maps that are too large are built; the map is the same */
  constructor(plain = false) {
    this.plain = plain;
  }

  /**
   * As `buildCellMap`, but in this builder's own buffers: the map holds until the next `build`, and
   * its arrays are longer than the map (`cells`, `words` and `rowStart[rows]` say how far to read).
   * Allocates only when a map is larger than all before it.
   */
  build(placed: readonly PlacedSpans[], grid: RowGrid): CellMap {
    const { widthMm, heightMm, rows } = grid;
    if (!(widthMm > 0 && widthMm < Infinity && heightMm > 0 && heightMm < Infinity) || !(rows >= 1) || !Number.isInteger(rows)) {
      throw new EngineError('stack.bad-grid', say.cellMapNeedsSheet(widthMm, heightMm, rows));
    }
    const map = this.map;
    map.widthMm = widthMm;
    map.heightMm = heightMm;
    map.rows = rows;
    map.screens = placed.length;
    this.reset(placed.length, rows);
    const found = this.plain ? -1 : mapRoom.build(map, placed, this.zobrist);
    if (found >= 0) {
      this.fit(found);
      mapRoom.copyTo(map, found);
      return map;
    }
    return this.buildPlain(placed, grid);
  }

  private buildPlain(placed: readonly PlacedSpans[], { widthMm, heightMm, rows }: RowGrid): CellMap {
    const { map } = this;
    const rowHeightMm = heightMm / rows;
    let runs = 0;
    for (let row = 0; row < rows; row++) {
      map.rowStart[row] = runs;
      this.now.fill(0);
      this.gather(placed, row, widthMm);
      this.events.sort();
      runs = this.emit(runs, widthMm, rowHeightMm);
    }
    map.rowStart[rows] = runs;
    return map;
  }

  private reset(screens: number, rows: number): void {
    const map = this.map;
    map.words = Math.max(1, (screens + 31) >> 5);
    if (this.now.length !== map.words) this.now = new Uint32Array(map.words);
    if (this.zobrist.length < screens) this.zobrist = Int32Array.from({ length: screens * 2 }, (_, i) => mix(i + 1));
    if (map.rowStart.length < rows + 1) map.rowStart = new Uint32Array(rows + 1);
    if (map.cover.length < map.words * map.areaMm2.length) map.cover = new Uint32Array(map.words * map.areaMm2.length);
    this.slots.fill(-1);
    map.cells = 1;
    map.areaMm2[0] = 0;
    map.cover.fill(0, 0, map.words);
    this.cellHash[0] = 0;
    this.slots[0] = 0;
  }

  /** Collects the row's events inside the sheet; what begins left of it goes into `now` at once. */
  private gather(placed: readonly PlacedSpans[], row: number, widthMm: number): void {
    let hash = 0;
    const { events, now, zobrist } = this;
    events.count = 0;
    for (let bit = 0; bit < placed.length; bit++) {
      const { spans, dxMm, rowShift } = entryAt(placed, bit);
      const own = row - rowShift - spans.firstRow;
      if (own < 0 || own >= spans.rows) continue;
      const end = u32(spans.starts, own + 1);
      let at = u32(spans.starts, own);
      if (events.count + end - at > events.x.length) events.fit(end - at);
      const eventX = events.x;
      const eventBit = events.bit;
      let count = events.count;
      const xMm = spans.xMm;
      for (; at < end; at++) {
        const x = f64(xMm, at) + dxMm;
        if (x <= 0) {
          now[bit >> 5] = u32(now, bit >> 5) ^ (1 << (bit & 31));
          hash ^= i32(zobrist, bit);
        } else if (x < widthMm) {
          eventX[count] = x;
          eventBit[count++] = bit;
        } else break;
      }
      events.count = count;
    }
    this.hash = hash;
  }

  private emit(firstRun: number, widthMm: number, rowHeightMm: number): number {
    const map = this.map;
    const { x: eventX, bit: eventBit, count: events } = this.events;
    if (firstRun + events + 1 > map.runEndMm.length) this.growRuns(firstRun + events + 1);
    const { runEndMm, runCell } = map;
    const { zobrist, now } = this;
    let hash = this.hash;
    let run = firstRun;
    let fromMm = 0;
    let at = 0;
    for (;;) {
      const toMm = at < events ? f64(eventX, at) : widthMm;
      const cell = this.cellOf(hash);
      // A run of the cell before it is that run going on (two edges that cancelled out).
      if (run > firstRun && runCell[run - 1] === cell) run--;
      runCell[run] = cell;
      runEndMm[run++] = toMm;
      map.areaMm2[cell] = f64(map.areaMm2, cell) + (toMm - fromMm) * rowHeightMm;
      if (at === events) return run;
      do {
        const bit = i32(eventBit, at++);
        now[bit >> 5] = u32(now, bit >> 5) ^ (1 << (bit & 31));
        hash ^= i32(zobrist, bit);
      } while (at < events && toMm === eventX[at]);
      fromMm = toMm;
    }
  }

  /** The cell whose cover is `now`, made when new. */
  private cellOf(hash: number): number {
    const { map, now } = this;
    const words = map.words;
    const mask = this.slots.length - 1;
    let slot = hash & mask;
    for (;;) {
      const cell = i32(this.slots, slot);
      if (cell < 0) break;
      if (this.cellHash[cell] === hash) {
        let word = 0;
        while (word < words && map.cover[cell * words + word] === now[word]) word++;
        if (word === words) return cell;
      }
      slot = (slot + 1) & mask;
    }
    const cell = map.cells++;
    if (cell >= map.areaMm2.length) this.growCells();
    for (let word = 0; word < words; word++) map.cover[cell * words + word] = u32(now, word);
    map.areaMm2[cell] = 0;
    this.cellHash[cell] = hash;
    this.slots[slot] = cell;
    if (map.cells * 2 > this.slots.length) this.rehash();
    return cell;
  }

  /** Makes room for the lists of a map that is known. */
  private fit(runs: number): void {
    const { map } = this;
    if (runs > map.runEndMm.length) this.growRuns(runs);
    while (map.cells > map.areaMm2.length) this.growCells();
  }

  private growRuns(wanted: number): void {
    const room = roomForRuns(wanted);
    const runEndMm = new Float64Array(room);
    const runCell = new Uint32Array(room);
    runEndMm.set(this.map.runEndMm);
    runCell.set(this.map.runCell);
    this.map.runEndMm = runEndMm;
    this.map.runCell = runCell;
  }

  private growCells(): void {
    const map = this.map;
    const capacity = roomForCells(map.areaMm2.length);
    const areaMm2 = new Float64Array(capacity);
    const cover = new Uint32Array(capacity * map.words);
    const cellHash = new Int32Array(capacity);
    areaMm2.set(map.areaMm2);
    cover.set(map.cover.subarray(0, Math.min(map.cells - 1, map.areaMm2.length) * map.words));
    cellHash.set(this.cellHash);
    map.areaMm2 = areaMm2;
    map.cover = cover;
    this.cellHash = cellHash;
  }

  private rehash(): void {
    const slots = new Int32Array(this.slots.length * 2).fill(-1);
    const mask = slots.length - 1;
    for (let cell = 0; cell < this.map.cells; cell++) {
      let slot = i32(this.cellHash, cell) & mask;
      while (i32(slots, slot) >= 0) slot = (slot + 1) & mask;
      slots[slot] = cell;
    }
    this.slots = slots;
  }
}

/**
 * Spreads a small integer over 32 bits, the same on every machine.
 * Source: the 32-bit finaliser of MurmurHash3 (A. Appleby, public domain), from memory.
 */
function mix(value: number): number {
  let h = Math.imul(value, 0x9e3779b9);
  h = Math.imul(h ^ (h >>> 16), 0x85ebca6b);
  h = Math.imul(h ^ (h >>> 13), 0xc2b2ae35);
  return h ^ (h >>> 16);
}
