import type { LaneCode, Lanes } from '../base/lanes/lane-code.ts';
import { COS_30, COS_6, COS_63, POW25_7, SIN_30, SIN_6, SIN_63 } from './delta-e.ts';

// The steps of `compare` in delta-e.ts, in its order, as lane code: what delta-e-lanes.ts and near-lanes.ts share.

/** L, a, b and √(a² + b²) */
export type LaneLab = readonly [l: Lanes, a: Lanes, b: Lanes, chroma: Lanes];
/** Of two colours a′, b and C′. */
export type LanePair = [a1: Lanes, b1: Lanes, c1: Lanes, a2: Lanes, b2: Lanes, c2: Lanes];
/** Cosine and sine of the mean hue, ΔH′, mean chroma and ΔC′; the cosine is no number where they are not sure. */
export type MeanHue = [cos: Lanes, sin: Lanes, hue: Lanes, mean: Lanes, dC: Lanes];

/** a′ and C′ */
export function stretched(code: LaneCode, [, a1, b1, chroma1]: LaneLab, [, a2, b2, chroma2]: LaneLab): LanePair {
  const meanC = code.mul(code.add(chroma1, chroma2), code.number(0.5));
  const g = code.sub(code.number(1.5), code.mul(code.number(0.5), seventhShare(code, meanC)));
  const [aOne, aTwo] = [code.mul(g, a1), code.mul(g, a2)];
  return [aOne, b1, chroma(code, aOne, b1), aTwo, b2, chroma(code, aTwo, b2)];
}

/**
 * The mean hue and what lies about it.
 * @param grey products of chromas up to this are greys, which have no hue
 * @param hair hues that are opposite to this, as a share of the product of their chromas, have no sure mean
 */
export function meanHue(code: LaneCode, [a1, b1, c1, a2, b2, c2]: LanePair, grey: number, hair = 0): MeanHue {
  const { add, sub, mul, div } = arithmetic(code);
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
  const oneWay = code.choose(near, near, code.above(code.abs(across), hair === 0 ? code.number(0) : mul(both, code.number(hair))));
  const sure = code.and(code.above(both, code.number(grey)), oneWay);
  return [
    code.choose(sure, mul(cos, perLength), code.number(Number.NaN)),
    mul(sin, perLength),
    mul(mul(hue, root), perLength),
    mul(add(c1, c2), code.number(0.5)),
    sub(c2, c1),
  ];
}

/**
 * ΔE00², by rounding a hair below zero at times; no number where the mean hue is not sure.
 * @param turn of the blues by the mean hue: see `turnOfBlues`
 */
export function squareDifference(code: LaneCode, [l1, l2]: [Lanes, Lanes], [cos, sin, hue, mean, chromaStep]: MeanHue, turn: Lanes): Lanes {
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
  const rotation = mul(mul(n(-2), seventhShare(code, mean)), turn);
  return add(add(add(mul(dL, dL), mul(dC, dC)), mul(dH, dH)), mul(mul(rotation, dC), dH));
}

/** Its arithmetic, as functions. */
export function arithmetic(code: LaneCode): Record<'add' | 'sub' | 'mul' | 'div', (a: Lanes, b: Lanes) => Lanes> {
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
