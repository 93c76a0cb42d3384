import { u32 } from '../../../base/at.ts';
import { CodeRoom } from '../../../base/code/code-room.ts';
import type { LaneFunction } from '../../../base/lanes/lane-room.ts';
import type { Lab } from '../../../colour/lab.ts';
import { NEAR_ROOM, NearLanes, type NearPlaces, putColours } from '../../../colour/near-lanes.ts';
import { OVERPRINT_COLOUR_DELTA_E } from '../../../ink/film/overprint-colour.ts';
import { findCode, findSwatchCode } from './find-code.ts';
import { MOST_DELTA_E } from './reach-code.ts';
import { putSwatches } from './swatch-blocks.ts';
import { writeToldCode } from './told-code.ts';
import * as names from './told-names.ts';

/** Cells that are asked about together at first: few while most are new colours, which each other must know of, then more. */
const FIRST_ASKED = 16;
const MOST_ASKED = 256;
/** Reaches are those of this difference at least. */
const LEAST_REACHED = 0.1;

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
 * told after that. Tells as well which cells are near swatches. Holds its buffers, for many prints.
 */
export class ToldRoom {
  private readonly room = new CodeRoom(names.TOLD_NAMES, writeToldCode);
  private readonly find = this.room.load(findCode());
  private readonly findSwatches = this.room.load(findSwatchCode(OVERPRINT_COLOUR_DELTA_E));
  private readonly lanes = new NearLanes(this.room);
  private pairsRoom = 65_536;
  private blocksRoom = 1024;
  private swatchRoom = 32;
  /** How many blocks hold something; 0 when any may. */
  private usedBlocks = 0;
  private at = {
    ...{ asked: 0, state: 0, deltaE: 0, asks: 0, ends: 0, first: 0, filled: 0, blocks: 0 },
    ...{ parts: 0, swatchBlocks: 0, far: 0, list: 0, colourOf: 0, cellOf: 0 },
  };
  private near: NearPlaces = { held: 0, open: 0, pairs: 0, near: 0, lab: 0, colours: 0 };
  /** The swatches that lie there. */
  private swatches: readonly Lab[] = [];
  private lab: Float64Array = new Float64Array(0);
  private cells = 0;

  /**
   * Takes the colours of which something is asked next.
   * @param lab three numbers each, of so many cells
   */
  hold(lab: Float64Array, cells: number): void {
    this.lab = lab;
    this.cells = cells;
    if (!this.works) return;
    this.lay();
    const { near } = this;
    const { reals, singles } = this.room;
    reals.set(lab.length > cells * 3 ? lab.subarray(0, cells * 3) : lab, near.lab);
    putColours(reals, near.lab, cells, [singles, near.colours]);
  }

  /**
   * Tells the colours apart that it holds.
   * @param list of cells, each once at most
   * @returns lists that hold until the next colours are taken; null when they must be found by other means
   */
  tell(list: Uint32Array, deltaE: number): ToldColours | null {
    if (!this.works || deltaE > MOST_DELTA_E) return null;
    while (!this.askAll(list, deltaE)) {
      this.pairsRoom *= 2;
      this.blocksRoom *= 2;
      this.holdElsewhere();
    }
    const { at } = this;
    const { words } = this.room;
    const count = u32(words, at.state + names.COUNT);
    this.usedBlocks = u32(words, at.state + names.BLOCKS);
    return {
      count,
      colourOf: words.subarray(at.colourOf, at.colourOf + list.length),
      cellOf: words.subarray(at.cellOf, at.cellOf + count),
    };
  }

  /**
   * Tells which colours that it holds are further than OVERPRINT_COLOUR_DELTA_E from each swatch.
   * @param list of cells, each once at most
   * @param swatches darkest first
   * @returns those of the list, which hold until the next; null when they must be found by other means
   */
  farFrom(list: Uint32Array, swatches: readonly Lab[]): Uint32Array | null {
    if (!this.works || (swatches.length + 4) * MOST_ASKED > this.pairsRoom) return null;
    if (swatches.length > this.swatchRoom) {
      this.swatchRoom = swatches.length * 2;
      this.holdElsewhere();
    }
    const { near, at, room, lanes } = this;
    this.layOut(swatches);
    room.words.set(list, at.list);
    room.ints[at.state + names.FARS] = 0;
    for (let from = 0; from < list.length; from += MOST_ASKED) {
      const to = Math.min(from + MOST_ASKED, list.length);
      this.call([from, to, names.TO_SWATCHES]);
      lanes.within(near, this.pair(this.findSwatches, to - from), OVERPRINT_COLOUR_DELTA_E);
      this.call([from, to, names.LIST_FAR]);
    }
    return room.words.subarray(at.far, at.far + u32(room.words, at.state + names.FARS));
  }

  /** Puts swatches down before the cells, and their blocks where these lie no more. */
  private layOut(swatches: readonly Lab[]): void {
    const { near, room } = this;
    const { reals, singles } = room;
    const count = swatches.length;
    swatches.forEach((swatch, i) => reals.set(swatch, near.lab - (i + 1) * 3));
    putColours(reals, near.lab - count * 3, count, [singles, near.colours - count * 4]);
    if (swatches === this.swatches) return;
    putSwatches(swatches, room, this.at);
    this.swatches = swatches;
  }

  private get works(): boolean {
    return this.room.works && this.find !== null && this.findSwatches !== null && this.lanes.works;
  }

  /** Holds the same with other rooms: what stays from print to print lies elsewhere then. */
  private holdElsewhere(): void {
    this.usedBlocks = 0;
    this.swatches = [];
    this.hold(this.lab, this.cells);
  }

  /** @returns false where there was no room enough */
  private askAll(list: Uint32Array, deltaE: number): boolean {
    this.begin(list, deltaE);
    const end = list.length;
    for (let from = 0, most = FIRST_ASKED; from < end; from += most, most = Math.min(most * 2, MOST_ASKED)) {
      const to = Math.min(from + most, end);
      if (!this.call([from, to, names.TELL])) return false;
      this.lanes.within(this.near, this.pair(this.find, to - from), deltaE);
      this.call([from, to, names.JOIN]);
      this.lanes.within(this.near, u32(this.room.words, this.at.state + names.PAIRS), deltaE);
    }
    return this.call([end, end, names.TELL]);
  }

  private call(asked: readonly [from: number, to: number, what: number]): boolean {
    const { at, room } = this;
    room.ints.set(asked, at.asked);
    // No bin holds more than all colours; of its last block all four are put down.
    return room.call() === names.DONE && (u32(room.words, at.state + names.COUNT) + 4) * MOST_ASKED < this.pairsRoom;
  }

  /** Pairs what is asked with what it may be near. @returns how many pairs there are */
  private pair(find: LaneFunction | null, asked: number): number {
    const { at, room } = this;
    find?.(asked, at.asks * 4, at.ends * 4, this.near.pairs * 4);
    return u32(room.words, at.ends + asked - 1);
  }

  private begin(list: Uint32Array, deltaE: number): void {
    const { at } = this;
    const { ints, words, reals } = this.room;
    ints.fill(0, at.state, at.state + names.STATES);
    ints.fill(0, at.first, at.first + names.BINS);
    ints.fill(0, at.filled, at.filled + names.BINS);
    ints.fill(0, at.blocks, at.blocks + (this.usedBlocks > 0 ? this.usedBlocks : this.blocksRoom) * names.BLOCK);
    reals[at.deltaE] = Math.max(deltaE, LEAST_REACHED);
    words.set(list, at.list);
  }

  private lay(): void {
    const { room, at, near, cells, pairsRoom, blocksRoom, swatchRoom } = this;
    room.begin();
    room.int('blocksRoom', blocksRoom);
    at.asked = room.intList('asked', 3);
    at.state = room.intList('state', names.STATES);
    at.deltaE = room.realList('deltaE', 1);
    at.asks = room.intList('asks', MOST_ASKED * names.ASK);
    at.ends = room.intList('ends', MOST_ASKED);
    room.intList('unknown', MOST_ASKED);
    near.held = room.intList('held', NEAR_ROOM.held);
    near.open = room.intList('open', NEAR_ROOM.open);
    at.first = room.intList('first', names.BINS);
    room.intList('last', names.BINS);
    at.filled = room.intList('filled', names.BINS);
    // Blocks lie where they lay before, so that only those that were used are emptied, and those of swatches stay.
    at.blocks = room.intList('blocks', blocksRoom * names.BLOCK);
    at.parts = room.intList('parts', names.PARTS);
    at.swatchBlocks = room.intList('swatchBlocks', names.PARTS * Math.ceil(swatchRoom / 4) * names.BLOCK);
    near.pairs = room.intList('pairs', pairsRoom * 2);
    near.near = room.intList('near', pairsRoom);
    // Swatches lie before the cells, by numbers below 0.
    near.lab = room.realList('labs', (swatchRoom + cells) * 3) + swatchRoom * 3;
    room.int('lab', near.lab * 8);
    near.colours = room.intList('colours', (swatchRoom + cells) * 4) + swatchRoom * 4;
    at.list = room.intList('list', cells);
    at.colourOf = room.intList('colourOf', cells);
    at.far = room.intList('far', cells + 1);
    room.intList('numberOf', cells);
    at.cellOf = room.intList('cellOf', cells);
    room.fit();
  }
}

/** Colours that were told apart latest are held still: see `overprintColourArea`. */
export const toldRoom = new ToldRoom();
