import { f64, i32, num } from '../base/at.ts';
import type { CodeRoom } from '../base/code/code-room.ts';
import { LaneCode, type Lanes, type Whole } from '../base/lanes/lane-code.ts';
import type { LaneFunction } from '../base/lanes/lane-room.ts';
import { type LaneLab, type LanePair, type MeanHue, arithmetic, meanHue, squareDifference, stretched } from './delta-e-code.ts';
import { deltaE2000At } from './delta-e.ts';
import { COS_275, SIN_275, turnPolynomial } from './rotation.ts';

/** What single precision may miss a difference by: this, and this share of it. Reckoned below at NearLanes. */
const MISS = 0.004;
const MISS_SHARE = 0.004;
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
/** Bytes that a step hands on. */
const HELD = 8 * 16;

/** Where lists lie in memory; the first two only serve. */
export interface NearPlaces {
  /** NEAR_ROOM's numbers, in bytes. */
  held: number;
  open: number;
  /** Two whole numbers a pair, and STEP pairs more. */
  pairs: number;
  /** −1 or 0 a pair, and STEP more. */
  near: number;
  /** Three numbers a colour. */
  lab: number;
  /** The same in single precision, and chroma. */
  colours: number;
}

/** How many whole numbers `held` and `open` take. */
export const NEAR_ROOM = { held: (PAIRS / STEP) * (HELD / 4), open: 3 + PAIRS };

/**
 * Tells of many pairs of a list of colours which are within a difference: the same answer as of deltaE2000At, which is worked out
 * only where single precision leaves it open. Works in memory of others, where the colours and the pairs are.
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
  private readonly room: CodeRoom<string>;
  private readonly run: LaneFunction | null;

  constructor(room: CodeRoom<string>) {
    this.room = room;
    this.run = room.load(nearCode());
  }

  /** Whether the machine can run it. */
  get works(): boolean {
    return this.run !== null;
  }

  /**
   * Tells which pairs are at most so far apart.
   * @param at where lists lie, in numbers of their kind
   * @param count of pairs
   * @param deltaE ΔE00, 0 or more
   */
  within(at: NearPlaces, count: number, deltaE: number): void {
    const { ints, singles } = this.room;
    // The last step takes more pairs where their number is not a multiple of a step's.
    ints.fill(0, at.pairs + count * 2, at.pairs + (count + STEP) * 2);
    const sure = deltaE - MISS - deltaE * MISS_SHARE;
    singles[at.open] = sure > 0 ? sure * sure : -1;
    singles[at.open + 1] = (deltaE + MISS + deltaE * MISS_SHARE) ** 2;
    for (let from = 0; from < count; from += PAIRS) {
      const [pairs, near] = [at.pairs + from * 2, at.near + from];
      const steps = Math.ceil(Math.min(PAIRS, count - from) / STEP);
      this.run?.(steps, at.held * 4, at.open * 4, pairs * 4, near * 4, at.colours * 4);
      const end = i32(ints, at.open + 2) / 4;
      for (let open = at.open + 3; open < end; open++) this.decide(at, from + i32(ints, open), deltaE);
    }
  }

  private decide(at: NearPlaces, pair: number, deltaE: number): void {
    const { ints, reals } = this.room;
    const [one, other] = [i32(ints, at.pairs + pair * 2), i32(ints, at.pairs + pair * 2 + 1)];
    ints[at.near + pair] = deltaE2000At(reals, at.lab + one * 3, reals, at.lab + other * 3) <= deltaE ? -1 : 0;
  }
}

/** Puts down L, a, b and chroma of colours that lie in another list from a place on. */
export function putColours(lab: Float64Array, from: number, count: number, [out, at]: readonly [Float32Array, number]): void {
  for (let i = from, to = at; i < from + count * 3; i += 3, to += 4) {
    const a = f64(lab, i + 1);
    const b = f64(lab, i + 2);
    out[to] = f64(lab, i);
    out[to + 1] = a;
    out[to + 2] = b;
    out[to + 3] = Math.sqrt(a * a + b * b);
  }
}

/**
 * Called with the number of steps of four pairs and the addresses of what is handed on, of what is left open, of pairs, answers and colours;
 * the loops are those of `deltaECode` in delta-e-lanes.ts. What is left open: the squares below which a difference is within for sure, and above which it is not, the end of the list, and the list.
 */
function nearCode(): Uint8Array<ArrayBuffer> {
  const code = new LaneCode(6, true);
  const [steps, handedOn, open, pairs, answers, colours] = [0, 1, 2, 3, 4, 5].map((i) => code.param(i)) as [
    ...[Whole, Whole, Whole],
    ...[Whole, Whole, Whole],
  ];
  const each = (body: (held: Whole, step: Whole) => void): void => {
    const step = code.variable(0);
    code.loop(step, [steps, 1], () => body(code.offset(handedOn, step, HELD), step));
  };
  const keep = (held: Whole, values: readonly Lanes[]): void => values.forEach((value, i) => code.store(held, i * STEP, value));
  const kept = (held: Whole, count: number): Lanes[] => Array.from({ length: count }, (_, i) => code.load(held, i * STEP));
  each((held, step) => {
    const pair = code.offset(pairs, step, STEP * 8);
    const fours = (bytes: number): LaneLab =>
      code.fours([0, 8, 16, 24].map((next) => code.offset(colours, code.wholeAt(pair, next + bytes), COLOUR)));
    const [one, two] = [fours(0), fours(4)];
    keep(held, [...stretched(code, one, two), one[0], two[0]]);
  });
  each((held) => keep(held, meanHue(code, kept(held, 6) as LanePair, GREYISH, HAIR)));
  const [one, end] = [code.variable(1), code.offset(open, code.variable(3), 4)];
  each((held, step) => {
    const hue = kept(held, 5) as MeanHue;
    const lightness: [Lanes, Lanes] = [code.load(held, 6 * STEP), code.load(held, 7 * STEP)];
    const square = squareDifference(code, lightness, hue, roughTurn(code, hue[0], hue[1]));
    const near = code.above(code.spread(open, 0), square);
    const sure = code.choose(near, near, code.above(square, code.spread(open, 1)));
    code.store(code.offset(answers, step, STEP * 4), 0, near);
    for (let lane = 0; lane < STEP; lane++) {
      code.storeWhole(end, 0, code.offset(code.variable(lane), step, STEP));
      code.put(end, code.offset(code.offset(end, one, 4), code.isSet(sure, lane), -4));
    }
  });
  code.storeWhole(open, 8, end);
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
