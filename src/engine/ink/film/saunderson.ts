/** What the surface of a print does to light, as shares. */
export interface Surface {
  /** Reflected outside before it enters, as far as the instrument sees it. */
  k1: number;
  /** Of the light that comes back from inside, thrown back inside. */
  k2: number;
}

/**
 * What an instrument reads of a film or paper that has a surface.
 * @param r reflectance inside, 0–1
 * Source: Saunderson (1942), J. Opt. Soc. Am. 32(12), 727–736: Rm = k1 + (1−k1)(1−k2)R / (1−k2R).
 */
export function readThrough(r: number, { k1, k2 }: Surface): number {
  return k1 + ((1 - k1) * (1 - k2) * r) / (1 - k2 * r);
}

/** The reflectance inside of what an instrument reads, the inverse of readThrough; 0 for less than the surface alone. */
export function insideOf(read: number, { k1, k2 }: Surface): number {
  const through = Math.max(0, read - k1);
  return through / ((1 - k1) * (1 - k2) + k2 * through);
}

/** insideOf in every band; the readings themselves, copied, where there is no surface. */
export function curveInside(read: ArrayLike<number>, surface: Surface | undefined): Float64Array {
  return surface === undefined ? Float64Array.from(read) : Float64Array.from(read, (r) => insideOf(r, surface));
}
