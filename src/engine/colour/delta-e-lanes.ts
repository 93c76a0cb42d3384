import { f64, u32 } from '../base/at.ts';
import { LaneCode, type Lanes, type Whole } from '../base/lanes/lane-code.ts';
import { type LaneFunction, LaneRoom } from '../base/lanes/lane-room.ts';
import { type LanePair, type MeanHue, arithmetic, meanHue, squareDifference, stretched } from './delta-e-code.ts';
import { GREY, deltaE2000At } from './delta-e.ts';
import { BLUE_TURN, COS_122, COS_275, PIECES_PER_ONE, SIN_275, TERMS } from './rotation.ts';

/** Bytes of a number and of a colour: L, a, b and chroma. */
const NUMBER = 8;
const COLOUR = 4 * NUMBER;
/** Pairs at a time, two a step, so that what one loop hands to the next stays in the processor's nearest memory. */
const PAIRS = 256;
/** Bytes of a piece of `BLUE_TURN`, which lies at the beginning; then come, in bytes, what a step hands on, differences, sums, colours, and all pairs and weights. */
const PIECE = TERMS * NUMBER;
const HELD = { at: BLUE_TURN.byteLength, step: 16 * NUMBER };
const OUT = { at: HELD.at + (PAIRS / 2) * HELD.step, step: 16 };
/** Two sums of weights, two of weighted differences, and where all differences were found. */
const SUMS = { at: OUT.at + PAIRS * NUMBER, step: 3 * 16 };
const COLOURS = SUMS.at + SUMS.step;

/** What pairs weigh that are apart, and the sum of their weights × ΔE00. */
export type WeighedPairs = [weight: number, weighted: number];

/**
 * ΔE00 of many pairs of a list of colours, summed up; two pairs at a time where the machine can: the same sums, to the last bit, as of what
 * deltaE2000At gives one by one. Holds its buffers, for many lists.
 */
export class DeltaELanes {
  private readonly room: LaneRoom;
  private readonly run: LaneFunction | null;
  private readonly least: number;
  private count = 0;
  private colours = new Float64Array(0);
  private found = new Float64Array(0);
  private sums = new Float64Array(0);
  private allFound = new Int32Array(0);

  /**
   * @param least what is less apart is not counted, ΔE00
   * @param plain one by one, as on machines without WebAssembly
   */
  constructor(least: number, plain = false) {
    this.least = least;
    this.room = new LaneRoom(plain);
    this.run = this.room.load(deltaECode(least));
  }

  /**
   * Takes the colours whose differences are asked next, three numbers each.
   * @param lab as many colours as it may hold
   * @param count how many of them there are
   */
  hold(lab: Float64Array, count: number): void {
    this.count = count;
    this.fit(0);
    putColours(lab, count, this.colours);
  }

  /**
   * @param pairs two of the colours a pair, by their number
   * @param weights one a pair
   */
  weigh(pairs: Uint32Array, weights: Float64Array): WeighedPairs {
    const { length } = weights;
    this.fit(length);
    const { sums } = this;
    const [pairsAt, weightsAt] = this.places(length);
    const [asked, weighs] = [new Uint32Array(this.room.buffer, pairsAt), new Float64Array(this.room.buffer, weightsAt)];
    asked.set(pairs);
    weighs.set(weights);
    // The last step takes a pair more where their number is odd.
    asked.fill(0, length * 2, length * 2 + 2);
    weighs[length] = 0;
    const all: WeighedPairs = [0, 0];
    for (let from = 0; from < length; from += PAIRS) {
      const count = Math.min(PAIRS, length - from);
      if (this.run === null) this.found.fill(Number.NaN);
      else this.run((count + 1) >> 1, pairsAt + from * 8, weightsAt + from * NUMBER);
      if (this.run === null || this.allFound.includes(0)) this.sumUp(pairs, weights, [from, from + count]);
      all[0] += f64(sums, 0) + f64(sums, 1);
      all[1] += f64(sums, 2) + f64(sums, 3);
    }
    return all;
  }

  /** The sums where some differences are left open: greys, and hues that are opposite to the last bit. In the order of lanes. */
  private sumUp(pairs: Uint32Array, weights: Float64Array, [from, to]: readonly [number, number]): void {
    const { colours, found, sums } = this;
    sums.fill(0);
    for (let pair = from; pair < to; pair++) {
      const i = pair - from;
      const ready = f64(found, i);
      const deltaE = ready >= 0 ? ready : deltaE2000At(colours, u32(pairs, pair * 2) * 4, colours, u32(pairs, pair * 2 + 1) * 4);
      if (deltaE < this.least) continue;
      sums[i & 1] = f64(sums, i & 1) + f64(weights, pair);
      sums[2 + (i & 1)] = f64(sums, 2 + (i & 1)) + f64(weights, pair) * deltaE;
    }
  }

  /** Where so many pairs and weights lie, and the end of them. */
  private places(pairs: number): [pairs: number, weights: number, end: number] {
    const at = COLOURS + this.count * COLOUR;
    const weights = at + (pairs + 1) * 8;
    return [at, weights, weights + (pairs + 1) * NUMBER];
  }

  private fit(pairs: number): void {
    if (!this.room.fit(this.places(pairs)[2]) && this.found.length > 0) return;
    const { buffer } = this.room;
    new Float64Array(buffer).set(BLUE_TURN);
    this.found = new Float64Array(buffer, OUT.at, PAIRS);
    this.sums = new Float64Array(buffer, SUMS.at, 4);
    this.allFound = new Int32Array(buffer, SUMS.at + 32, 4);
    this.colours = new Float64Array(buffer, COLOURS);
  }
}

/** Puts down L, a, b and chroma of colours. */
function putColours(lab: Float64Array, count: number, out: Float64Array): void {
  for (let i = 0, to = 0; i < count * 3; i += 3, to += 4) {
    const a = f64(lab, i + 1);
    const b = f64(lab, i + 2);
    out[to] = f64(lab, i);
    out[to + 1] = a;
    out[to + 2] = b;
    out[to + 3] = Math.sqrt(a * a + b * b);
  }
}

/**
 * Called with the number of steps of two pairs and the addresses of these and of their weights. They are those of `compare` in delta-e.ts, cut into three loops: from the
 * colours to ΔE00 every step waits for the one before, and a processor looks ahead far enough to work on several pairs
 * only where that chain is short.
 */
function deltaECode(least: number): Uint8Array<ArrayBuffer> {
  const code = new LaneCode(3);
  const place = ({ at, step: bytes }: { at: number; step: number }, step: Whole): Whole => code.offset(code.variable(at), step, bytes);
  const each = (body: (held: Whole, step: Whole) => void): void => {
    const step = code.variable(0);
    code.loop(step, [code.param(0), 1], () => body(place(HELD, step), step));
  };
  const keep = (held: Whole, values: readonly Lanes[]): void => values.forEach((value, i) => code.store(held, i * 2, value));
  const sums = code.variable(SUMS.at);
  const none = code.number(0);
  [none, none, code.above(code.number(1), none)].forEach((value, i) => code.store(sums, i * 2, value));
  const sumUp = (i: number, value: Lanes): void => code.store(sums, i * 2, code.add(code.load(sums, i * 2), value));
  const kept = (held: Whole, count: number): Lanes[] => Array.from({ length: count }, (_, i) => code.load(held, i * 2));
  each((held, step) => {
    const pair = code.offset(code.param(1), step, 16);
    const colour = (bytes: number): Whole => place({ at: COLOURS, step: COLOUR }, code.wholeAt(pair, bytes));
    const [one, two] = [code.fours([colour(0), colour(8)]), code.fours([colour(4), colour(12)])];
    keep(held, [...stretched(code, one, two), one[0], two[0]]);
  });
  each((held) => keep(held, meanHue(code, kept(held, 6) as LanePair, GREY)));
  each((held, step) => {
    const hue = kept(held, 5) as MeanHue;
    const square = squareDifference(code, [code.load(held, 12), code.load(held, 14)], hue, turnOfBlues(code, hue[0], hue[1]));
    const deltaE = code.sqrt(code.choose(code.above(none, square), none, square));
    code.store(place(OUT, step), 0, deltaE);
    code.store(sums, 4, code.and(code.load(sums, 4), code.atLeast(deltaE, none)));
    const weight = code.choose(code.atLeast(deltaE, code.number(least)), code.load(code.offset(code.param(2), step, 16), 0), none);
    sumUp(0, weight);
    sumUp(1, code.mul(weight, deltaE));
  });
  return code.module();
}

/** Where the cosine is no number, this is none either. */
function turnOfBlues(code: LaneCode, cos: Lanes, sin: Lanes): Lanes {
  const n = (value: number): Lanes => code.number(value);
  const { add, sub, mul } = arithmetic(code);
  const at = mul(sub(n(1), add(mul(cos, n(COS_275)), mul(sin, n(SIN_275)))), n(PIECES_PER_ONE));
  const { first, second, numbers } = code.truncate(at);
  const x = sub(mul(sub(at, numbers), n(2)), n(1));
  const table = code.variable(0);
  const [piece, other] = [code.offset(table, first, PIECE), code.offset(table, second, PIECE)];
  let sum = code.gather(piece, other, TERMS - 1);
  for (let term = TERMS - 2; term >= 0; term--) sum = add(mul(sum, x), code.gather(piece, other, term));
  return code.choose(code.and(code.atLeast(sin, n(0)), code.above(cos, n(COS_122))), n(0), sum);
}
