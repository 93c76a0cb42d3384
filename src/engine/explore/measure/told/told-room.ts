import { u32 } from '../../../base/at.ts';
import { CodeRoom } from '../../../base/code/code-room.ts';
import { NearLanes } from '../../../colour/near-lanes.ts';
import { findCode } from './find-code.ts';
import { MOST_DELTA_E } from './reach-code.ts';
import { writeToldCode } from './told-code.ts';
import * as names from './told-names.ts';

/** Cells that are asked about together at first: few while most are new colours, which each other must know of, then more. */
const FIRST_ASKED = 8;
const MOST_ASKED = 128;
/** Reaches are those of this difference at least. */
const LEAST_REACHED = 0.1;

/** Holds the colours that were told apart latest. */
export const heldLanes = new NearLanes();

/** Colours of cells that were told apart. */
export interface ToldColours {
  count: number;
  /** By place in the list of cells the colour that each is of. */
  colourOf: Uint32Array;
  /** By colour the cell that it is of. */
  cellOf: Uint32Array;
}

/**
 * Tells colours of cells apart: cells join the first colour that they are within a difference of, in the order of a list, or are a new one.
 * A colour lies in each bin of Lab where something may be within the difference of it, so that one bin holds all that a cell can be near, in
 * the order in which they came; what is left is compared by `NearLanes`. What is new among cells that are asked about together is
 * told after that. Holds its buffers, for many prints.
 */
export class ToldRoom {
  private readonly room = new CodeRoom(names.TOLD_NAMES, writeToldCode);
  private readonly find = this.room.load(findCode());
  private pairsRoom = 32_768;
  private blocksRoom = 1024;
  /** How many blocks hold something; 0 when any may. */
  private usedBlocks = 0;
  private at = { asked: 0, state: 0, asks: 0, ends: 0, pairs: 0, near: 0 };
  private deltaE = 0;

  /**
   * @param lab cells × 3, of so many cells
   * @param list of cells
   * @returns lists that hold until the next are found; null when they must be found by other means
   */
  tell(lab: Float64Array, cells: number, list: Uint32Array, deltaE: number): ToldColours | null {
    heldLanes.hold(lab, cells);
    if (!this.room.works || this.find === null || deltaE > MOST_DELTA_E) return null;
    this.deltaE = deltaE;
    for (;;) {
      const { colourOf, cellOf } = this.lay(lab, cells, list);
      if (this.askAll(list.length)) {
        const { words } = this.room;
        const count = u32(words, this.at.state + names.COUNT);
        this.usedBlocks = u32(words, this.at.state + names.BLOCKS);
        return { count, colourOf: words.subarray(colourOf, colourOf + list.length), cellOf: words.subarray(cellOf, cellOf + count) };
      }
      this.pairsRoom *= 2;
      this.blocksRoom *= 2;
      this.usedBlocks = 0;
    }
  }

  /** @returns false where there was no room enough */
  private askAll(end: number): boolean {
    for (let from = 0, most = FIRST_ASKED; from < end; from += most, most = Math.min(most * 2, MOST_ASKED)) {
      const to = Math.min(from + most, end);
      if (!this.call([from, to, 0])) return false;
      this.compare(this.pair(to - from));
      this.call([from, to, 1]);
      this.compare(u32(this.room.words, this.at.state + names.PAIRS));
    }
    return this.call([end, end, 0]);
  }

  private call(asked: readonly [from: number, to: number, joins: number]): boolean {
    const { at, room } = this;
    room.ints.set(asked, at.asked);
    // No bin holds more than all colours; of its last block all four are put down.
    return room.call() === names.DONE && (u32(room.words, at.state + names.COUNT) + 4) * MOST_ASKED < this.pairsRoom;
  }

  /** Pairs what is asked with what it may be near. @returns how many pairs there are */
  private pair(asked: number): number {
    const { at, room } = this;
    this.find?.(asked, at.asks * 4, at.ends * 4, at.pairs * 4);
    return u32(room.words, at.ends + asked - 1);
  }

  private compare(pairs: number): void {
    const { at, room } = this;
    if (pairs > 0) room.bytes.set(heldLanes.within(room.words, pairs, this.deltaE, at.pairs).subarray(0, pairs), at.near * 4);
  }

  private lay(lab: Float64Array, cells: number, list: Uint32Array) {
    const { room, at, pairsRoom, blocksRoom } = this;
    room.begin();
    room.int('blocksRoom', blocksRoom);
    at.asked = room.intList('asked', 3);
    at.state = room.intList('state', 4);
    const deltaE = room.realList('deltaE', 1);
    at.asks = room.intList('asks', MOST_ASKED * names.ASK);
    at.ends = room.intList('ends', MOST_ASKED);
    room.intList('unknown', MOST_ASKED);
    const first = room.intList('first', names.BINS);
    room.intList('last', names.BINS);
    const filled = room.intList('filled', names.BINS);
    // Blocks lie where they lay before, so that only those that were used are emptied.
    const blocks = room.intList('blocks', blocksRoom * names.BLOCK);
    at.pairs = room.intList('pairs', pairsRoom * 2);
    at.near = room.intList('near', pairsRoom / 4);
    const labAt = room.realList('lab', cells * 3);
    const listAt = room.intList('list', list.length);
    const colourOf = room.intList('colourOf', list.length);
    room.intList('numberOf', cells);
    const cellOf = room.intList('cellOf', cells);
    room.fit();
    const { ints, reals, words } = room;
    ints.fill(0, blocks, blocks + (this.usedBlocks > 0 ? this.usedBlocks : blocksRoom) * names.BLOCK);
    ints.fill(0, at.state, at.state + 4);
    ints.fill(0, first, first + names.BINS);
    ints.fill(0, filled, filled + names.BINS);
    reals[deltaE] = Math.max(this.deltaE, LEAST_REACHED);
    reals.set(lab.length > cells * 3 ? lab.subarray(0, cells * 3) : lab, labAt);
    words.set(list, listAt);
    return { colourOf, cellOf };
  }
}
