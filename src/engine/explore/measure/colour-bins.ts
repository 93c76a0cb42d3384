import { f32, f64, i32 } from '../../base/at.ts';
import { LaneCode, type Lanes } from '../../base/lanes/lane-code.ts';
import { type LaneFunction, LaneRoom } from '../../base/lanes/lane-room.ts';
import type { WithinDeltaE } from '../../colour/within-delta-e.ts';

/** Widths of a bin in L, and in a and b. */
const L_WIDTH = 6;
const AB_WIDTH = 24;
/** Bins in L, and in a and in b; what lies beyond is in the first and the last. */
const L_BINS = 18;
const AB_BINS = 12;
const BINS = L_BINS * AB_BINS * AB_BINS;

/** Colours that are asked about together at most. */
export const MOST_ASKED = 128;
/** Bytes of a number; all other places are told in numbers. */
const NUMBER = 4;
/** A colour that is asked about: L, a, b, the address of its bin's first block, its name. */
const ASK = 8;
/** A colour: L, a, b, the shares of squares of differences that `add` reckons, in L, in a and b, and where one is bluish; its name. */
const COLOUR = 8;
/** A block of a bin: the addresses of four colours and of the next block. */
const BLOCK = 5;
const NAME = 6;
const NEXT = 4;
/** Where the answers to each asked end, and where colours and blocks begin; a colour that is near none comes first. */
const ENDS = MOST_ASKED * ASK;
const NOWHERE = ENDS + MOST_ASKED;
const START = NOWHERE + COLOUR;
/**
 * Above this a sum of two squares is more than 1 for sure. Single precision holds L, a and b up to 2,000 to 6·10⁻⁵, so that the
 * differences of which the sum is made up are right to 2·10⁻³ of a reach of 0.1 or more.
 */
const MORE_THAN_1 = 1.01;
/** Further away in L than any colour. */
const FAR = 1e18;

/**
 * Named colours, found by bins of Lab: a colour lies in each bin where something may be within a difference of it, so that
 * one bin holds all that a colour can be within it of, in the order in which they came. Bins are chains of blocks of four, of which
 * lanes leave out at once what cannot be near. Holds its buffers, for many lists.
 */
export class ColourBins {
  /** Names of colours that may be near, each with that of the colour asked about, one colour asked after another. */
  pairs = new Uint32Array(0);
  private readonly room: LaneRoom;
  private readonly run: LaneFunction | null;
  /** By bin the first block, the last and how many colours it holds. */
  private readonly first = new Int32Array(BINS);
  private readonly last = new Int32Array(BINS);
  private readonly filled = new Int32Array(BINS);
  private numbers = new Float32Array(0);
  private wholes = new Int32Array(0);
  /** Where the next colour or block comes, and the most answers to what is asked. */
  private free = START;
  private answers = 0;
  private within: WithinDeltaE | null = null;

  /** @param plain one by one, as on machines without WebAssembly */
  constructor(plain = false) {
    this.room = new LaneRoom(plain);
    this.run = this.room.load(findCode());
  }

  /** @param within of 0.1 or more */
  start(within: WithinDeltaE): void {
    this.within = within;
    this.first.fill(0);
    this.filled.fill(0);
    this.free = START;
    this.fit(START);
    this.numbers.set([FAR, 0, 0, 1, 0, 0], NOWHERE);
  }

  /** Puts a colour in. @param at where its L lies, a and b behind it */
  add(lab: Float64Array, at: number, name: number): void {
    if (this.within === null) return;
    const l = f64(lab, at);
    const a = f64(lab, at + 1);
    const b = f64(lab, at + 2);
    const far = this.within.reachAb(a, b, true);
    // Where nothing below b = 0 is within reach, what is within lies nearer.
    const near = this.within.reachAb(a, b, false);
    const reach = b >= far ? near : far;
    const reachL = this.within.reachL(l);
    const colour = this.take(COLOUR);
    const { numbers } = this;
    numbers[colour] = l;
    numbers[colour + 1] = a;
    numbers[colour + 2] = b;
    numbers[colour + 3] = 1 / (reachL * reachL);
    numbers[colour + 4] = 1 / (near * near);
    numbers[colour + 5] = 1 / (far * far);
    this.wholes[colour + NAME] = name;
    const fromB = binAb(b - reach);
    const toB = binAb(b + reach);
    const toA = binAb(a + reach);
    const toL = binL(l + reachL);
    for (let inL = binL(l - reachL); inL <= toL; inL++) {
      for (let inA = binAb(a - reach); inA <= toA; inA++) {
        const row = (inL * AB_BINS + inA) * AB_BINS;
        for (let bin = row + fromB; bin <= row + toB; bin++) this.enter(bin, colour * NUMBER);
      }
    }
  }

  /** Asks about a colour. @param place below MOST_ASKED, one after another from 0 */
  ask(place: number, lab: Float64Array, at: number, name: number): void {
    const { numbers, wholes } = this;
    const bin = binL(f64(lab, at)) * AB_BINS * AB_BINS + binAb(f64(lab, at + 1)) * AB_BINS + binAb(f64(lab, at + 2));
    const to = place * ASK;
    if (place === 0) this.answers = 0;
    numbers[to] = f64(lab, at);
    numbers[to + 1] = f64(lab, at + 1);
    numbers[to + 2] = f64(lab, at + 2);
    wholes[to + 3] = i32(this.first, bin) * NUMBER;
    wholes[to + 4] = name;
    this.answers += (i32(this.filled, bin) + 3) & ~3;
  }

  /**
   * Finds what may be near the colours that were asked about at the places from 0.
   * @returns of each, where its answers end in `pairs`; in a buffer of this object's
   */
  find(count: number): Uint32Array {
    this.fit(this.free + (this.answers + 1) * 2);
    const { buffer } = this.room;
    this.pairs = new Uint32Array(buffer, this.free * NUMBER, this.answers * 2);
    const ends = new Uint32Array(buffer, ENDS * NUMBER, count);
    if (this.run !== null) this.run(count, this.free * NUMBER);
    else for (let place = 0, end = 0; place < count; place++) ends[place] = end = this.findOne(place, end);
    return ends;
  }

  private enter(bin: number, colour: number): void {
    const place = i32(this.filled, bin) & 3;
    this.filled[bin] = i32(this.filled, bin) + 1;
    if (place > 0) {
      this.wholes[i32(this.last, bin) + place] = colour;
      return;
    }
    const block = this.take(BLOCK);
    const { wholes } = this;
    wholes[block] = colour;
    wholes[block + 1] = wholes[block + 2] = wholes[block + 3] = NOWHERE * NUMBER;
    wholes[block + NEXT] = 0;
    if (i32(this.first, bin) === 0) this.first[bin] = block;
    else wholes[i32(this.last, bin) + NEXT] = block * NUMBER;
    this.last[bin] = block;
  }

  /** Where so many further numbers may lie. */
  private take(numbers: number): number {
    const from = this.free;
    this.free += numbers;
    this.fit(this.free);
    return from;
  }

  /** The steps are those of `findCode`. */
  private findOne(place: number, from: number): number {
    const { numbers, wholes, pairs } = this;
    const [l, a, b] = [f32(numbers, place * ASK), f32(numbers, place * ASK + 1), f32(numbers, place * ASK + 2)];
    let end = from;
    for (let block = i32(wholes, place * ASK + 3) / NUMBER; block > 0; block = i32(wholes, block + NEXT) / NUMBER) {
      for (let i = block; i < block + 4; i++) {
        const colour = i32(wholes, i) / NUMBER;
        const [dl, da, db] = [f32(numbers, colour) - l, f32(numbers, colour + 1) - a, f32(numbers, colour + 2) - b];
        const shareAb = f32(numbers, colour + (b >= 0 && f32(numbers, colour + 2) >= 0 ? 4 : 5));
        if (dl * dl * f32(numbers, colour + 3) + (da * da + db * db) * shareAb > MORE_THAN_1) continue;
        pairs[end * 2] = i32(wholes, colour + NAME);
        pairs[end++ * 2 + 1] = i32(wholes, place * ASK + 4);
      }
    }
    return end;
  }

  /** Makes room for so many numbers. */
  private fit(numbers: number): void {
    if (this.numbers.length >= numbers) return;
    this.room.fit(numbers * 2 * NUMBER);
    this.numbers = new Float32Array(this.room.buffer);
    this.wholes = new Int32Array(this.room.buffer);
  }
}

function binL(l: number): number {
  return Math.max(0, Math.min(L_BINS - 1, Math.floor(l / L_WIDTH)));
}

function binAb(value: number): number {
  return Math.max(0, Math.min(AB_BINS - 1, Math.floor(value / AB_WIDTH) + AB_BINS / 2));
}

/**
 * Called with how many colours are asked about and the address of the answers. Every colour of a block is put down and what
 * may not be near written over, as branches that cannot be foreseen would cost more.
 */
function findCode(): Uint8Array<ArrayBuffer> {
  const code = new LaneCode(2, true);
  const [step, none] = [code.variable(0), code.variable(0)];
  const [start, end] = [code.param(1), code.offset(code.param(1), none, 0)];
  code.loop(step, [code.param(0), 1], () => {
    const asked = code.offset(none, step, ASK * NUMBER);
    const [l, a, b] = [0, 1, 2].map((i) => code.spread(asked, i)) as [Lanes, Lanes, Lanes];
    const name = code.wholeAt(asked, 4 * NUMBER);
    const block = code.wholeAt(asked, 3 * NUMBER);
    code.chase(block, () => {
      const colours = [0, 1, 2, 3].map((i) => code.wholeAt(block, i * NUMBER));
      const [otherL, otherA, otherB, shareL] = code.fours(colours);
      const [shareNear, shareFar] = code.fours(colours, 4);
      const [dl, da, db] = [code.sub(otherL, l), code.sub(otherA, a), code.sub(otherB, b)];
      const warm = code.and(code.atLeast(b, code.number(0)), code.atLeast(otherB, code.number(0)));
      const inAb = code.mul(code.add(code.mul(da, da), code.mul(db, db)), code.choose(warm, shareNear, shareFar));
      const sum = code.add(code.mul(code.mul(dl, dl), shareL), inAb);
      const near = code.atLeast(code.number(MORE_THAN_1), sum);
      colours.forEach((colour, lane) => {
        code.storeWhole(end, 0, code.wholeAt(colour, NAME * NUMBER));
        code.storeWhole(end, NUMBER, name);
        code.put(end, code.offset(end, code.isSet(near, lane), 2 * NUMBER));
      });
      return code.wholeAt(block, NEXT * NUMBER);
    });
    code.storeWhole(code.offset(none, step, NUMBER), ENDS * NUMBER, code.share(code.offset(end, start, -1), 3));
  });
  return code.module();
}
