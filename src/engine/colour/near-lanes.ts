import { f32, num, u32 } from '../base/at.ts';
import { LaneCode, type Lanes, type Whole } from '../base/lanes/lane-code.ts';
import { type LaneFunction, LaneRoom } from '../base/lanes/lane-room.ts';
import { type LanePair, type MeanHue, arithmetic, meanHue, squareDifference, stretched } from './delta-e-code.ts';
import { putColours } from './delta-e-lanes.ts';
import { deltaE2000At } from './delta-e.ts';
import { COS_275, SIN_275, turnPolynomial } from './rotation.ts';

/** What single precision may miss a difference by: this, and this share of it. Reckoned below at NearLanes. */
const MISS = 0.005;
const MISS_SHARE = 0.008;
/** Hues that are opposite to this have no sure mean; greys have no sure hue. */
const HAIR = 1e-5;
const GREYISH = 1e-10;
/** Where the turn of the blues is held to end, in 1 − cos(h̄′ − 275°): beyond it is below 6 · 10⁻⁵. */
const BLUE_END = 0.8;
const BLUE_TERMS = 14;

/** Bytes of a colour: L, a, b and chroma. */
const COLOUR = 16;
/** Pairs at a time, four a step. */
const PAIRS = 256;
export const STEP = 4;
/** Where things lie, in bytes: what a step hands on, pairs, differences, colours. */
const HELD = { at: 0, step: 8 * 16 };
const PAIR = { at: (PAIRS / STEP) * HELD.step, step: STEP * 8 };
const OUT = { at: PAIR.at + PAIRS * 8, step: STEP * 4 };
const COLOURS = OUT.at + PAIRS * 4;

/**
 * Tells of many pairs of a list of colours which are within a difference: the same answer as of deltaE2000At, which is worked out
 * only where single precision leaves it open. Holds its buffers, for many lists.
 *
 * How far single precision may miss, with u = 2⁻²⁴ and L up to 1,000: a′, b and C′ are right to 15 u of themselves. ΔC′
 * is then right to 30 u of the mean chroma, and S_C at least 0.045 of it, so ΔC′ ÷ S_C to 5·10⁻⁵. a₁b₂ − a₂b₁ is right to
 * 16 u of C₁C₂, and S_H at least 0.015 · 0.07 of the mean chroma (T lies between 0.07 and 1.93), so ΔH′ ÷ S_H to 1.3·10⁻³
 * and, as cosine and sine of the mean hue are right to 7·10⁻⁶ and T to 4·10⁻⁵, to 6·10⁻⁴ of itself. Where hues are so
 * nearly opposite that rounding may turn the mean about, or there is hardly any chroma, nothing is said. ΔL ÷ S_L is right to
 * 1.2·10⁻⁴. ΔE00 is a length, of which R_T ≥ −√3 makes ΔH′ ÷ S_H at most 2.74 ΔE00 and a miss at most 1.37 times as long; R_T
 * is right to 4·10⁻⁴, which makes at most 7.5·10⁻⁴ of ΔE00. Together below 0.003 and 0.003 of ΔE00.
 */
export class NearLanes {
  private readonly room: LaneRoom;
  private readonly run: LaneFunction | null;
  private readonly runRows: LaneFunction | null;
  private colours = new Float32Array(0);
  private exact = new Float64Array(0);
  private chunk = new Uint32Array(0);
  private squares = new Float32Array(0);
  private out = new Uint8Array(64);

  /** @param plain one by one, as on machines without WebAssembly */
  constructor(plain = false) {
    this.room = new LaneRoom(plain);
    this.run = this.room.load(nearCode(false));
    this.runRows = this.room.load(nearCode(true));
  }

  /**
   * Takes the colours whose pairs are asked next, three numbers each.
   * @param count how many of them there are; the list may hold more
   * @param from how many of those held before stay, which come first
   */
  hold(lab: Float64Array, count: number, from = 0): void {
    const all = from + count;
    // What memory held stays when it grows.
    if (this.room.fit(COLOURS + all * COLOUR) || this.chunk.length === 0) {
      const { buffer } = this.room;
      this.chunk = new Uint32Array(buffer, PAIR.at, PAIRS * 2);
      this.squares = new Float32Array(buffer, OUT.at, PAIRS);
      this.colours = new Float32Array(buffer, COLOURS);
    }
    if (this.exact.length < all * 3) {
      const longer = new Float64Array(all * 6);
      longer.set(this.exact);
      this.exact = longer;
    }
    this.exact.set(lab.length > count * 3 ? lab.subarray(0, count * 3) : lab, from * 3);
    putColours(lab, count, this.colours, from);
  }

  /**
   * @param pairs two of the colours a pair, by their number
   * @param count of pairs
   * @param deltaE ΔE00, 0 or more
   * @param at where the pairs begin
   * @returns 1 for each pair that is at most so far apart, 0 for the others, in a buffer of this object's that may be longer
   */
  within(pairs: Uint32Array, count: number, deltaE: number, at = 0): Uint8Array {
    if (this.out.length < count) this.out = new Uint8Array(count * 2);
    for (let from = 0; from < count; from += PAIRS) this.some(pairs, [at, from, Math.min(PAIRS, count - from)], deltaE);
    return this.out;
  }

  private some(pairs: Uint32Array, [begin, from, count]: readonly [number, number, number], deltaE: number): void {
    const { out, chunk, squares } = this;
    const [least, most] = sureSquares(deltaE);
    const at = begin + from * 2;
    if (this.run === null) squares.fill(Number.NaN, 0, count);
    else {
      chunk.set(pairs.subarray(at, at + count * 2));
      // The last step takes more pairs where their number is not a multiple of a step's.
      chunk.fill(0, count * 2);
      this.run(Math.ceil(count / STEP));
    }
    for (let i = 0; i < count; i++) {
      const square = f32(squares, i);
      if (square < least) out[from + i] = 1;
      else if (square > most) out[from + i] = 0;
      else out[from + i] = this.differenceOf(u32(pairs, at + i * 2), u32(pairs, at + i * 2 + 1)) <= deltaE ? 1 : 0;
    }
  }

  /**
   * Asks of colours whether any of STEP further ones, which lie side by side, is within a difference.
   * @param rows a colour and the first of those it is compared with a row, by their numbers
   * @param count of rows
   * @returns 1 or 0 for each row, in a buffer of this object's that may be longer
   */
  anyWithin(rows: Uint32Array, count: number, deltaE: number): Uint8Array {
    if (this.out.length < count) this.out = new Uint8Array(count * 2);
    const { out, chunk, squares } = this;
    const [least, most] = sureSquares(deltaE);
    for (let from = 0; from < count; from += PAIRS / STEP) {
      const to = Math.min(count, from + PAIRS / STEP);
      chunk.set(rows.subarray(from * 2, to * 2));
      if (this.runRows === null) squares.fill(Number.NaN);
      else this.runRows(to - from);
      for (let row = from, at = 0; row < to; row++, at += STEP) {
        let any = 0;
        for (let place = 0; place < STEP && any === 0; place++) {
          const square = f32(squares, at + place);
          if (square > most) continue;
          if (square < least || this.differenceOf(u32(rows, row * 2), u32(rows, row * 2 + 1) + place) <= deltaE) any = 1;
        }
        out[row] = any;
      }
    }
    return out;
  }

  private differenceOf(one: number, other: number): number {
    return deltaE2000At(this.exact, one * 3, this.exact, other * 3);
  }
}

/** Squares below which a difference is within for sure, and above which it is not. */
function sureSquares(deltaE: number): [least: number, most: number] {
  const sure = deltaE - MISS - deltaE * MISS_SHARE;
  return [sure > 0 ? sure * sure : -1, (deltaE + MISS + deltaE * MISS_SHARE) ** 2];
}

/**
 * Called with the number of steps of four pairs; the loops are those of `deltaECode` in delta-e-lanes.ts.
 * @param rows a step is a colour and the first of four that lie side by side
 */
function nearCode(rows: boolean): Uint8Array<ArrayBuffer> {
  const code = new LaneCode(1, true);
  const place = ({ at, step: bytes }: { at: number; step: number }, step: Whole): Whole => code.offset(code.variable(at), step, bytes);
  const each = (body: (held: Whole, step: Whole) => void): void => {
    const step = code.variable(0);
    code.loop(step, [code.param(0), 1], () => body(place(HELD, step), step));
  };
  const keep = (held: Whole, values: readonly Lanes[]): void => values.forEach((value, i) => code.store(held, i * STEP, value));
  const kept = (held: Whole, count: number): Lanes[] => Array.from({ length: count }, (_, i) => code.load(held, i * STEP));
  each((held, step) => {
    const pair = place(rows ? { ...PAIR, step: 8 } : PAIR, step);
    const colour = (bytes: number): Whole => place({ at: COLOURS, step: COLOUR }, code.wholeAt(pair, bytes));
    const colours = (bytes: number): Whole[] => {
      if (!rows) return [0, 8, 16, 24].map((next) => colour(next + bytes));
      const first = colour(bytes);
      return [0, 1, 2, 3].map((next) => code.offset(first, code.variable(next), bytes === 0 ? 0 : COLOUR));
    };
    const [one, two] = [code.fours(colours(0)), code.fours(colours(4))];
    keep(held, [...stretched(code, one, two), one[0], two[0]]);
  });
  each((held) => keep(held, meanHue(code, kept(held, 6) as LanePair, GREYISH, HAIR)));
  each((held, step) => {
    const hue = kept(held, 5) as MeanHue;
    const lightness: [Lanes, Lanes] = [code.load(held, 6 * STEP), code.load(held, 7 * STEP)];
    code.store(place(OUT, step), 0, squareDifference(code, lightness, hue, roughTurn(code, hue[0], hue[1])));
  });
  return code.module();
}

/** The turn of the blues to 2 · 10⁻⁴. */
function roughTurn(code: LaneCode, cos: Lanes, sin: Lanes): Lanes {
  const { add, sub, mul } = arithmetic(code);
  const n = (value: number): Lanes => code.number(value);
  const away = sub(n(1), add(mul(cos, n(COS_275)), mul(sin, n(SIN_275))));
  const at = sub(mul(away, n(2 / BLUE_END)), n(1));
  const terms = turnPolynomial(BLUE_END / 2, BLUE_END / 2, BLUE_TERMS);
  let sum = n(num(terms, BLUE_TERMS - 1));
  for (let term = BLUE_TERMS - 2; term >= 0; term--) sum = add(mul(sum, at), n(num(terms, term)));
  return code.choose(code.above(n(BLUE_END), away), sum, n(0));
}
