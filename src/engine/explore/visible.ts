import { deltaE2000, labD50, WEIGHTS_D50 } from '../colour/index.ts';
import type { FilmBands } from '../ink/index.ts';
import type { CellMap } from '../stack/types.ts';

/** What of a stack can be seen: where films above would hide black from white, nothing below counts. */
export interface Visible {
  /** Area in which each pull can be seen, mm², by position. */
  areaMm2: Float64Array;
  /** [upper · pulls + lower]: area in which both lie and the upper one can be seen, mm², by position. */
  pairMm2: Float64Array;
}

/** Bands that are bounded together. */
const GROUP = 4;
/** L rises at least so much with Y (0–1): 116 / 3, at white (CIE 1976). */
const LEAST_L_SLOPE = 116 / 3;
/** S_L is never above this (CIE 142-2001), so ΔE00 is at least ΔL over it. */
const MOST_SL = 1.748;

/** Asks which films can be seen. */
export class Sight {
  private readonly film: (id: number) => FilmBands;
  private readonly leastDeltaE: number;
  private readonly least = new Map<number, Float64Array>();
  private readonly pile = new Pile();

  /**
   * @param film the film of a number
   * @param leastDeltaE black and white below films that differ by less than this count as hidden, ΔE00
   */
  constructor(film: (id: number) => FilmBands, leastDeltaE: number) {
    this.film = film;
    this.leastDeltaE = leastDeltaE;
  }

  /**
   * What of a stack can be seen.
   * @param films number of the film of each pull, first down first
   * @param bits placed screen of the map that each pull prints, first down first
   * Cost O(cells × pulls) and, in each cell, the pairs of pulls over it.
   */
  of(map: CellMap, films: readonly number[], bits: readonly number[]): Visible {
    const pulls = films.length;
    const areaMm2 = new Float64Array(pulls);
    const pairMm2 = new Float64Array(pulls * pulls);
    const words = bits.map((bit) => bit >> 5);
    const masks = bits.map((bit) => 1 << (bit & 31));
    const bands = films.map((film) => this.film(film));
    const shares = films.map((film) => this.leastShares(film));
    const { pile, leastDeltaE } = this;
    const over: number[] = [];
    for (let cell = 1; cell < map.cells; cell++) {
      const area = map.areaMm2[cell];
      if (!(area > 0)) continue;
      over.length = 0;
      pile.clear();
      let hidden = false;
      for (let at = pulls - 1; at >= 0; at--) {
        if ((map.cover[cell * map.words + words[at]] & masks[at]) === 0) continue;
        for (const upper of over) pairMm2[upper * pulls + at] += area;
        if (hidden) continue;
        areaMm2[at] += area;
        over.push(at);
        hidden = pile.hidesBelow(bands[at], shares[at], leastDeltaE);
      }
    }
    return { areaMm2, pairMm2 };
  }

  private leastShares(film: number): Float64Array {
    let found = this.least.get(film);
    if (found === undefined) this.least.set(film, (found = leastShares(this.film(film))));
    return found;
  }
}

/** Films from the top down, and whether they hide what is below; used again for every cell. */
class Pile {
  private readonly films: FilmBands[] = [];
  /** Films that are in the product below. */
  private multiplied = 0;
  /** Least share of a difference below that is left above, by groups of bands. */
  private readonly left = new Float64Array(GROUPS);
  /** The product of the films' matrices [a, b, c, d], a value a band. */
  private a = new Float64Array(0);
  private b = new Float64Array(0);
  private c = new Float64Array(0);
  private d = new Float64Array(0);
  private white = new Float64Array(0);
  private black = new Float64Array(0);

  clear(): void {
    this.films.length = 0;
    this.multiplied = 0;
    this.left.fill(1);
  }

  /** Lays one more film below the others. */
  hidesBelow(film: FilmBands, shares: Float64Array, leastDeltaE: number): boolean {
    this.films.push(film);
    let leastY = 0;
    for (let group = 0; group < GROUPS; group++) {
      this.left[group] *= shares[group];
      leastY += this.left[group] * Y_SHARES[group];
    }
    // Mostly it is plain that black and white can be told apart.
    return LEAST_L_SLOPE * leastY <= MOST_SL * leastDeltaE && this.gap() < leastDeltaE;
  }

  /** ΔE00 between the films over perfect white and over perfect black. */
  private gap(): number {
    const bands = this.films[0].r0.length;
    if (this.a.length !== bands) {
      this.a = new Float64Array(bands);
      this.b = new Float64Array(bands);
      this.c = new Float64Array(bands);
      this.d = new Float64Array(bands);
      this.white = new Float64Array(bands);
      this.black = new Float64Array(bands);
    }
    const { a, b, c, d, white, black } = this;
    if (this.multiplied === 0) {
      a.fill(1);
      b.fill(0);
      c.fill(0);
      d.fill(1);
    }
    for (; this.multiplied < this.films.length; this.multiplied++) {
      const { r0, q } = this.films[this.multiplied];
      for (let band = 0; band < bands; band++) {
        const [upA, upC] = [a[band], c[band]];
        a[band] = upA * q[band] - b[band] * r0[band];
        b[band] += upA * r0[band];
        c[band] = upC * q[band] - d[band] * r0[band];
        d[band] += upC * r0[band];
      }
    }
    for (let band = 0; band < bands; band++) {
      white[band] = (a[band] + b[band]) / (c[band] + d[band]);
      black[band] = b[band] / d[band];
    }
    return deltaE2000(labD50(white), labD50(black));
  }
}

const GROUPS = WEIGHTS_D50.y.length / GROUP;
/** Share of Y that each group of bands has. */
const Y_SHARES = Float64Array.from({ length: GROUPS }, (_, group) =>
  WEIGHTS_D50.y.slice(group * GROUP, (group + 1) * GROUP).reduce((sum, weight) => sum + weight / 100, 0),
);

/**
 * The least share of a difference below a film that is left above it, by groups of bands: the film's
 * map R = (q·g + r0) / (1 − r0·g) rises by (q + r0²) / (1 − r0·g)², least over black.
 */
function leastShares({ q, r0 }: FilmBands): Float64Array {
  const out = new Float64Array(GROUPS).fill(1);
  for (let band = 0; band < q.length; band++) {
    const group = Math.floor(band / GROUP);
    out[group] = Math.min(out[group], Math.max(0, q[band] + r0[band] * r0[band]));
  }
  return out;
}
