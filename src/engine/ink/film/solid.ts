import { f64, num } from '../../base/at.ts';

/**
 * Every colour that bands of fixed weights can add up to when each is between 0 and its full
 * weight: the object-colour solid, here a zonotope, so that the question has an exact answer.
 */
export interface Solid {
  /** Weights, 3 a band: [3 · band + coordinate]. */
  readonly weights: Float64Array;
  /** Middle of the solid: half of all the weights. */
  readonly centre: readonly [number, number, number];
  /** 4 a facet pair: its normal and the distance from the centre, same scale; all facets. */
  readonly facets: Float64Array;
}

/**
 * The solid of all colours under the given weights.
 * @param weights 3 a band, ≥ 0
 * Cost: bands³ / 2. Facet normals of a zonotope are the cross products of its generators:
 * Ziegler, Lectures on Polytopes (1995), 7.3.
 */
export function solidOf(weights: Float64Array): Solid {
  const n = weights.length / 3;
  const centre: [number, number, number] = [0, 0, 0];
  for (let i = 0; i < weights.length; i++) centre[i % 3] = num(centre, i % 3) + f64(weights, i) / 2;
  const facets = new Float64Array(2 * n * (n - 1));
  let used = 0;
  for (let i = 0; i < n; i++) {
    for (let j = i + 1; j < n; j++) {
      const x = f64(weights, 3 * i + 1) * f64(weights, 3 * j + 2) - f64(weights, 3 * i + 2) * f64(weights, 3 * j + 1);
      const y = f64(weights, 3 * i + 2) * f64(weights, 3 * j) - f64(weights, 3 * i) * f64(weights, 3 * j + 2);
      const z = f64(weights, 3 * i) * f64(weights, 3 * j + 1) - f64(weights, 3 * i + 1) * f64(weights, 3 * j);
      const length = Math.sqrt(x * x + y * y + z * z);
      // Two bands of the same colour span no facet.
      if (!(length > 1e-14)) continue;
      let reach = 0;
      for (let b = 0; b < n; b++) {
        reach += Math.abs(x * f64(weights, 3 * b) + y * f64(weights, 3 * b + 1) + z * f64(weights, 3 * b + 2));
      }
      facets.set([x / length, y / length, z / length, reach / 2 / length], used);
      used += 4;
    }
  }
  return { weights, centre, facets: facets.subarray(0, used) };
}

/**
 * How far out a colour lies: 0 in the middle of the solid, 1 on its surface, more outside.
 * @param xyz in the same scale as the weights
 */
export function reachIn(solid: Solid, xyz: Readonly<[number, number, number]>): number {
  const { facets, centre } = solid;
  const x = xyz[0] - centre[0];
  const y = xyz[1] - centre[1];
  const z = xyz[2] - centre[2];
  let reach = 0;
  for (let i = 0; i < facets.length; i += 4) {
    const along = Math.abs(f64(facets, i) * x + f64(facets, i + 1) * y + f64(facets, i + 2) * z);
    const share = along / f64(facets, i + 3);
    if (!(share <= reach)) reach = share;
  }
  return reach;
}
