import { f64, u32 } from '../base/at.ts';
import { LaneCode, type Lanes, type Whole } from '../base/lanes/lane-code.ts';
import { type LaneFunction, LaneRoom } from '../base/lanes/lane-room.ts';
import { COS_30, COS_6, COS_63, GREY, POW25_7, SIN_30, SIN_6, SIN_63, deltaE2000At } from './delta-e.ts';
import { BLUE_TURN, COS_122, COS_275, PIECES_PER_ONE, SIN_275, TERMS } from './rotation.ts';

/** Bytes of a number and of a colour. */
const NUMBER = 8;
const COLOUR = 3 * NUMBER;
/** Pairs at a time, two a step, so that what one loop hands to the next stays in the processor's nearest memory. */
const PAIRS = 256;
/** Bytes of a piece of `BLUE_TURN`, which lies at the beginning; then come, in bytes, what a step hands on, pairs, differences, colours. */
const PIECE = TERMS * NUMBER;
const HELD = { at: BLUE_TURN.byteLength, step: 10 * NUMBER };
const PAIR = { at: HELD.at + (PAIRS / 2) * HELD.step, step: 16 };
const OUT = { at: PAIR.at + PAIRS * 8, step: 16 };
const COLOURS = OUT.at + PAIRS * NUMBER;

/**
 * ΔE00 of many pairs of a list of colours, two pairs at a time where the machine can: the same numbers, to the last bit, as
 * deltaE2000At gives one by one. Holds its buffers, for many lists.
 */
export class DeltaELanes {
  private readonly room: LaneRoom;
  private readonly run: LaneFunction | null;
  private colours = new Float64Array(0);
  private chunk = new Uint32Array(0);
  private found = new Float64Array(0);
  private out = new Float64Array(64);

  /** @param plain one by one, as on machines without WebAssembly */
  constructor(plain = false) {
    this.room = new LaneRoom(plain);
    this.run = this.room.load(deltaECode());
  }

  /**
   * Takes the colours whose differences are asked next, three numbers each.
   * @param lab as many colours as it may hold
   * @param count how many of them there are
   * @param more further colours; they are numbered after these
   */
  hold(lab: Float64Array, count: number, more?: Float64Array): void {
    const numbers = count * 3 + (more?.length ?? 0);
    if (this.room.fit(COLOURS + numbers * NUMBER) || this.chunk.length === 0) {
      const { buffer } = this.room;
      new Float64Array(buffer).set(BLUE_TURN);
      this.chunk = new Uint32Array(buffer, PAIR.at, PAIRS * 2);
      this.found = new Float64Array(buffer, OUT.at, PAIRS);
      this.colours = new Float64Array(buffer, COLOURS);
    }
    this.colours.set(lab.length > count * 3 ? lab.subarray(0, count * 3) : lab);
    if (more !== undefined) this.colours.set(more, count * 3);
  }

  /**
   * @param pairs two of the colours a pair, by their number
   * @param count of pairs
   * @returns ΔE00 a pair, in a buffer of this object's that may be longer
   */
  differences(pairs: Uint32Array, count: number): Float64Array {
    if (this.out.length < count) this.out = new Float64Array(count * 2);
    for (let from = 0; from < count; from += PAIRS) this.some(pairs, from, Math.min(PAIRS, count - from));
    return this.out;
  }

  private some(pairs: Uint32Array, from: number, count: number): void {
    const { colours, out, chunk, found } = this;
    if (this.run !== null) {
      for (let i = 0; i < count * 2; i++) chunk[i] = u32(pairs, from * 2 + i);
      // The last step takes a pair more where their number is odd.
      if (count < PAIRS) chunk.fill(0, count * 2, count * 2 + 2);
      this.run((count + 1) >> 1);
    } else found.fill(Number.NaN, 0, count);
    for (let i = 0, pair = from * 2; i < count; i++, pair += 2) {
      const deltaE = f64(found, i);
      // Greys, and hues that are opposite to the last bit, are left to the one that knows them.
      out[from + i] = deltaE >= 0 ? deltaE : deltaE2000At(colours, u32(pairs, pair) * 3, colours, u32(pairs, pair + 1) * 3);
    }
  }
}

/**
 * Called with the number of steps of two pairs. They are those of `compare` in delta-e.ts, cut into three loops: from the
 * colours to ΔE00 every step waits for the one before, and a processor looks ahead far enough to work on several pairs
 * only where that chain is short.
 */
function deltaECode(): Uint8Array<ArrayBuffer> {
  const code = new LaneCode(1);
  const place = ({ at, step: bytes }: { at: number; step: number }, step: Whole): Whole => code.offset(code.variable(at), step, bytes);
  const each = (body: (colour: (n: number) => LaneLab, at: Whole, step: Whole) => void): void => {
    const step = code.variable(0);
    code.loop(step, [code.param(0), 1], () => {
      const pair = place(PAIR, step);
      const colour = (bytes: number): Whole => place({ at: COLOURS, step: COLOUR }, code.wholeAt(pair, bytes));
      const lab = (n: number): LaneLab => {
        const [first, second] = [colour(n * 4), colour(n * 4 + 8)];
        return [0, 1, 2].map((k) => code.gather(first, second, k)) as LaneLab;
      };
      body(lab, place(HELD, step), step);
    });
  };
  each((lab, at) => code.store(at, 0, aStretch(code, lab(0), lab(1))));
  each((lab, at) => meanHue(code, [lab(0), lab(1)], code.load(at, 0)).forEach((value, i) => code.store(at, i * 2, value)));
  each((lab, at, step) => {
    const hue = [0, 1, 2, 3, 4].map((i) => code.load(at, i * 2)) as MeanHue;
    code.store(place(OUT, step), 0, difference(code, [lab(0)[0], lab(1)[0]], hue));
  });
  return code.module();
}

type LaneLab = [Lanes, Lanes, Lanes];

/** Cosine and sine of the mean hue, ΔH′, mean chroma and ΔC′; the cosine is no number where they are not sure. */
type MeanHue = [cos: Lanes, sin: Lanes, hue: Lanes, mean: Lanes, dC: Lanes];

/** a′ ÷ a */
function aStretch(code: LaneCode, [, a1, b1]: LaneLab, [, a2, b2]: LaneLab): Lanes {
  const meanC = code.mul(code.add(chroma(code, a1, b1), chroma(code, a2, b2)), code.number(0.5));
  return code.sub(code.number(1.5), code.mul(code.number(0.5), seventhShare(code, meanC)));
}

function meanHue(code: LaneCode, [[, aOne, b1], [, aTwo, b2]]: [LaneLab, LaneLab], g: Lanes): MeanHue {
  const { add, sub, mul, div } = arithmetic(code);
  const [a1, a2] = [mul(g, aOne), mul(g, aTwo)];
  const [c1, c2] = [chroma(code, a1, b1), chroma(code, a2, b2)];
  const both = mul(c1, c2);
  const along = add(mul(a1, a2), mul(b1, b2));
  const across = sub(mul(a1, b2), mul(a2, b1));
  const twice = mul(add(both, code.abs(along)), code.number(2));
  const root = code.sqrt(both);
  const perLength = div(code.number(1), mul(code.sqrt(twice), root));
  const near = code.atLeast(along, code.number(0));
  const turned = (value: Lanes): Lanes => code.flip(value, across);
  const cos = code.choose(near, add(mul(c2, a1), mul(c1, a2)), turned(sub(mul(c1, b2), mul(c2, b1))));
  const sin = code.choose(near, add(mul(c2, b1), mul(c1, b2)), turned(sub(mul(c2, a1), mul(c1, a2))));
  const hue = code.choose(near, mul(across, code.number(2)), turned(twice));
  const oneWay = code.choose(near, near, code.above(code.abs(across), code.number(0)));
  const sure = code.and(code.above(both, code.number(GREY)), oneWay);
  return [
    code.choose(sure, mul(cos, perLength), code.number(Number.NaN)),
    mul(sin, perLength),
    mul(mul(hue, root), perLength),
    mul(add(c1, c2), code.number(0.5)),
    sub(c2, c1),
  ];
}

/** ΔE00; no number where the mean hue is not sure. */
function difference(code: LaneCode, [l1, l2]: [Lanes, Lanes], [cos, sin, hue, mean, chromaStep]: MeanHue): Lanes {
  const n = (value: number): Lanes => code.number(value);
  const { add, sub, mul, div } = arithmetic(code);
  const mid = sub(mul(add(l1, l2), n(0.5)), n(50));
  const midSquare = mul(mid, mid);
  const width = code.sqrt(add(n(20), midSquare));
  const sL = add(width, mul(n(0.015), midSquare));
  const sC = add(n(1), mul(n(0.045), mean));
  const sH = add(n(1), mul(mul(n(0.015), mean), hueWeight(code, cos, sin)));
  const per = div(n(1), mul(mul(sL, sC), sH));
  const dL = mul(mul(mul(sub(l2, l1), width), mul(sC, sH)), per);
  const dC = mul(mul(chromaStep, mul(sL, sH)), per);
  const dH = mul(mul(hue, mul(sL, sC)), per);
  const rotation = mul(mul(n(-2), seventhShare(code, mean)), turnOfBlues(code, cos, sin));
  const square = add(add(add(mul(dL, dL), mul(dC, dC)), mul(dH, dH)), mul(mul(rotation, dC), dH));
  return code.sqrt(code.choose(code.above(n(0), square), n(0), square));
}

function arithmetic(code: LaneCode): Record<'add' | 'sub' | 'mul' | 'div', (a: Lanes, b: Lanes) => Lanes> {
  return {
    add: (a, b) => code.add(a, b),
    sub: (a, b) => code.sub(a, b),
    mul: (a, b) => code.mul(a, b),
    div: (a, b) => code.div(a, b),
  };
}

function chroma(code: LaneCode, a: Lanes, b: Lanes): Lanes {
  return code.sqrt(code.add(code.mul(a, a), code.mul(b, b)));
}

function seventhShare(code: LaneCode, c: Lanes): Lanes {
  const c2 = code.mul(c, c);
  const c7 = code.mul(code.mul(code.mul(c2, c2), c2), c);
  return code.sqrt(code.div(c7, code.add(c7, code.number(POW25_7))));
}

function hueWeight(code: LaneCode, c1: Lanes, s1: Lanes): Lanes {
  const n = (value: number): Lanes => code.number(value);
  const { add, sub, mul } = arithmetic(code);
  const c2 = sub(mul(c1, c1), mul(s1, s1));
  const s2 = mul(mul(n(2), s1), c1);
  const c3 = sub(mul(c2, c1), mul(s2, s1));
  const s3 = add(mul(s2, c1), mul(c2, s1));
  const c4 = sub(mul(c2, c2), mul(s2, s2));
  const s4 = mul(mul(n(2), s2), c2);
  const first = sub(n(1), mul(n(0.17), add(mul(c1, n(COS_30)), mul(s1, n(SIN_30)))));
  const third = mul(n(0.32), sub(mul(c3, n(COS_6)), mul(s3, n(SIN_6))));
  const fourth = mul(n(0.2), add(mul(c4, n(COS_63)), mul(s4, n(SIN_63))));
  return sub(add(add(first, mul(n(0.24), c2)), third), fourth);
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
