import { f64 } from '../base/at.ts';
import type { LaneCode, Lanes } from '../base/lanes/lane-code.ts';
import { arithmetic } from './delta-e-code.ts';
import { EPSILON, KAPPA, WHITE_D50 } from './lab.ts';

/**
 * The cube root of a share of the white begins as a polynomial of its fourth root u: u^(4/3) from EPSILON to 1.25, at the zeros of a
 * Chebyshev polynomial, right to 3.5·10⁻⁵. One step of Halley's method leaves less than 10⁻¹³ of it.
 */
const ROOT = [-0.05470878, 0.2537578, -0.5306834, 0.83740134, 0.50911314, -0.01487683] as const;
const [SLOPE, FOOT] = [KAPPA / 116, 16 / 116];

/** CIELAB in the place of D50 tristimulus values in a list; Y = 100 for a perfect white. Source: CIE 15:2004, 8.2.1. */
export function toLab(list: Float64Array, at: number): void {
  const fx = curve(f64(list, at) * (1 / WHITE_D50[0]));
  const fy = curve(f64(list, at + 1) * (1 / WHITE_D50[1]));
  const fz = curve(f64(list, at + 2) * (1 / WHITE_D50[2]));
  list[at] = 116 * fy - 16;
  list[at + 1] = 500 * (fx - fy);
  list[at + 2] = 200 * (fy - fz);
}

/** The same as code, in the same steps. */
export function labCode(code: LaneCode, [x, y, z]: readonly [Lanes, Lanes, Lanes]): [l: Lanes, a: Lanes, b: Lanes] {
  const n = (value: number): Lanes => code.number(value);
  const { sub, mul } = arithmetic(code);
  const [fx, fy, fz] = [x, y, z].map((value, i) => curveCode(code, mul(value, n(1 / (WHITE_D50[i] ?? 0))))) as [Lanes, Lanes, Lanes];
  return [sub(mul(n(116), fy), n(16)), mul(n(500), sub(fx, fy)), mul(n(200), sub(fy, fz))];
}

function curve(x: number): number {
  if (!(x > EPSILON)) return SLOPE * x + FOOT;
  const fourth = Math.sqrt(Math.sqrt(x));
  let root: number = ROOT[0];
  for (let i = 1; i < ROOT.length; i++) root = root * fourth + (ROOT[i] ?? 0);
  const cube = root * root * root;
  return (root * (cube + 2 * x)) / (2 * cube + x);
}

function curveCode(code: LaneCode, x: Lanes): Lanes {
  const n = (value: number): Lanes => code.number(value);
  const { add, mul, div } = arithmetic(code);
  const fourth = code.sqrt(code.sqrt(x));
  const root = ROOT.slice(1).reduce((sum, factor) => add(mul(sum, fourth), n(factor)), n(ROOT[0]));
  const cube = mul(mul(root, root), root);
  const curved = div(mul(root, add(cube, mul(n(2), x))), add(mul(n(2), cube), x));
  return code.choose(code.above(x, n(EPSILON)), curved, add(mul(n(SLOPE), x), n(FOOT)));
}
