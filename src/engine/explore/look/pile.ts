import { defined, entryAt, f64, u8 } from '../../base/at.ts';
import { PairNumbers } from '../../base/pair-numbers.ts';
import { deltaE2000At } from '../../colour/delta-e.ts';
import { labFromXyzD50 } from '../../colour/lab.ts';
import { BANDS, WEIGHTS_D50 } from '../../colour/weights.ts';
import type { FilmBands } from '../../ink/film/film.ts';

/** Bands that are bounded together. */
const GROUP = 4;
/** L rises at least so much with Y (0–1): 116 / 3, at white (CIE 1976). */
const LEAST_L_SLOPE = 116 / 3;
/** S_L is never above this (CIE 142-2001), so ΔE00 is at least ΔL over it. */
const MOST_SL = 1.748;

const Y_WEIGHTS = Float64Array.from(WEIGHTS_D50.y, (weight) => weight / 100);
/** Below this L is linear in Y, and steeper than anywhere above (CIE 1976). */
const Y_OF_LINEAR_L = (6 / 29) ** 3;
const GROUPS = WEIGHTS_D50.y.length / GROUP;
/** Share of Y that each group of bands has. */
const Y_SHARES = Float64Array.from({ length: GROUPS }, (_, group) =>
  WEIGHTS_D50.y.slice(group * GROUP, (group + 1) * GROUP).reduce((sum, weight) => sum + weight / 100, 0),
);

/** X, Y and Z of a band, one after another; a list of one kind, so that nothing is put on the heap number by number. */
const XYZ_WEIGHTS = Float64Array.from({ length: BANDS * 3 }, (_, i) => {
  const { x, y, z } = WEIGHTS_D50;
  return defined([x, y, z][i % 3])[Math.floor(i / 3)] ?? Number.NaN;
});
/** Piles that are remembered at most; of more, all are forgotten. */
const MOST_PILES = 1 << 15;

/** One film of a pile, with what is known of all from the topmost down to it. */
class Level {
  film: FilmBands | null = null;
  shares: Float64Array = Y_SHARES;
  /** Whether what is below is known for this film: mostly a pile was met before, and is not asked for it. */
  bounded = true;
  /** Least difference in Y above that a difference of 1 below makes, by groups of bands. */
  readonly left = Float64Array.from(Y_SHARES);
  /** How much L rises with Y at least: white below yet more films is never lighter. */
  slope = LEAST_L_SLOPE;
  /** Whether the product of the films' matrices [a, b, c, d] is worked out. */
  multiplied = true;
  readonly a = new Float64Array(BANDS).fill(1);
  readonly b = new Float64Array(BANDS);
  readonly c = new Float64Array(BANDS);
  readonly d = new Float64Array(BANDS).fill(1);
  /** a · d − b · c. */
  readonly determinant = new Float64Array(BANDS).fill(1);
}

/** What is asked of a film below others. */
export interface Laid {
  id: number;
  film: FilmBands;
  shares: Float64Array;
}

/**
 * Films from the top down, and whether they hide what is below. The prints of a wall lay few films in many orders, so
 * that most piles were met before: each gets a number, by that of the pile above its lowest film and that film.
 */
export class Pile {
  private readonly leastDeltaE: number;
  private readonly levels = [new Level()];
  private readonly white = new Float64Array(BANDS);
  private readonly black = new Float64Array(BANDS);
  private readonly lab = new Float64Array(6);
  /** Piles by that of the films above the lowest, and the lowest; 0 is no films at all. */
  private readonly known = new PairNumbers(MOST_PILES);
  private readonly hides = new Uint8Array(MOST_PILES + 1);

  /** @param leastDeltaE black and white below films that differ by less than this count as hidden, ΔE00 */
  constructor(leastDeltaE: number) {
    this.leastDeltaE = leastDeltaE;
  }

  /** Makes room for the piles of a print, whose numbers hold until the next is begun. @returns the number of no films */
  begin(): number {
    // A print meets some hundreds.
    if (this.known.size > MOST_PILES / 2) this.known.clear();
    return 0;
  }

  /**
   * Puts a film below the topmost ones, in the place of what lay there.
   * @param depth how many lie above it
   * @param above the number of the pile of these
   * @returns the number of the pile with it; below zero, −1 − number, when it hides what is below
   */
  lay(depth: number, above: number, laid: Laid): number {
    const level = (this.levels[depth + 1] ??= new Level());
    level.film = laid.film;
    level.shares = laid.shares;
    level.bounded = false;
    const known = this.known.of(above, laid.id) + 1;
    if (known > 0) return u8(this.hides, known) === 1 ? -1 - known : known;
    const hides = this.hidesBelow(depth + 1);
    // Of a print with more piles than there is room for, the last are looked at anew whenever they are met.
    const pile = this.known.size < MOST_PILES - 1 ? this.known.add(above, laid.id) + 1 : MOST_PILES;
    this.hides[pile] = hides ? 1 : 0;
    return hides ? -1 - pile : pile;
  }

  private hidesBelow(depth: number): boolean {
    const level = this.bound(depth);
    let leastY = 0;
    for (let group = 0; group < GROUPS; group++) leastY += f64(level.left, group);
    // Mostly it is plain that black and white can be told apart.
    if (level.slope * leastY > MOST_SL * this.leastDeltaE) return false;
    this.multiply(depth);
    return this.alike(level);
  }

  private bound(depth: number): Level {
    const level = entryAt(this.levels, depth);
    if (level.bounded) return level;
    const above = this.bound(depth - 1);
    for (let group = 0; group < GROUPS; group++) level.left[group] = f64(above.left, group) * f64(level.shares, group);
    level.slope = above.slope;
    level.multiplied = false;
    level.bounded = true;
    return level;
  }

  private multiply(depth: number): void {
    const level = entryAt(this.levels, depth);
    if (level.multiplied) return;
    this.multiply(depth - 1);
    const above = entryAt(this.levels, depth - 1);
    const { r0, q, back } = defined(level.film);
    for (let band = 0; band < BANDS; band++) {
      level.a[band] = f64(above.a, band) * f64(q, band) + f64(above.b, band) * f64(back, band);
      level.b[band] = f64(above.a, band) * f64(r0, band) + f64(above.b, band);
      level.c[band] = f64(above.c, band) * f64(q, band) + f64(above.d, band) * f64(back, band);
      level.d[band] = f64(above.c, band) * f64(r0, band) + f64(above.d, band);
      level.determinant[band] = f64(above.determinant, band) * (f64(q, band) - f64(r0, band) * f64(back, band));
    }
    level.multiplied = true;
  }

  /** Whether perfect white and perfect black below the films look alike. */
  private alike(level: Level): boolean {
    const { white, black, lab, leastDeltaE } = this;
    const { a, b, c, d, determinant, left } = level;
    let whiteY = 0;
    let blackY = 0;
    left.fill(0);
    for (let band = 0; band < BANDS; band++) {
      white[band] = (f64(a, band) + f64(b, band)) / (f64(c, band) + f64(d, band));
      black[band] = f64(b, band) / f64(d, band);
      whiteY += f64(Y_WEIGHTS, band) * f64(white, band);
      blackY += f64(Y_WEIGHTS, band) * f64(black, band);
      // The films' map rises least over black, or over white where a surface throws more back than they scatter.
      const steepest = Math.max(f64(d, band), f64(c, band) + f64(d, band));
      left[(band / GROUP) | 0] = f64(left, (band / GROUP) | 0) + f64(Y_WEIGHTS, band) * (f64(determinant, band) / (steepest * steepest));
    }
    // Between two lightnesses L rises at least as fast as it does at the lighter one.
    level.slope = LEAST_L_SLOPE / Math.max(Y_OF_LINEAR_L, whiteY) ** (2 / 3);
    if (level.slope * (whiteY - blackY) > MOST_SL * leastDeltaE) return false;
    setLab(lab, 0, white);
    setLab(lab, 3, black);
    return deltaE2000At(lab, 0, lab, 3) < leastDeltaE;
  }
}

/** The same as labD50, into a list. */
function setLab(out: Float64Array, at: number, reflectance: Float64Array): void {
  let x = 0;
  let y = 0;
  let z = 0;
  for (let band = 0, i = 0; band < BANDS; band++, i += 3) {
    const r = f64(reflectance, band);
    x += f64(XYZ_WEIGHTS, i) * r;
    y += f64(XYZ_WEIGHTS, i + 1) * r;
    z += f64(XYZ_WEIGHTS, i + 2) * r;
  }
  [out[at], out[at + 1], out[at + 2]] = labFromXyzD50(x, y, z);
}

/**
 * The least share of a difference below a film that is left above it, by groups of bands: the film's
 * map R = (q·g + r0) / (1 + back·g) rises by (q − r0·back) / (1 + back·g)², least over black or over white.
 */
export function leastShares({ q, r0, back }: FilmBands): Float64Array {
  const out = new Float64Array(GROUPS).fill(1);
  for (let band = 0; band < q.length; band++) {
    const group = Math.floor(band / GROUP);
    const steepest = Math.max(1, 1 + f64(back, band));
    const share = (f64(q, band) - f64(r0, band) * f64(back, band)) / (steepest * steepest);
    out[group] = Math.min(f64(out, group), Math.max(0, share));
  }
  return out;
}
