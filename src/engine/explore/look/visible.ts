import { defined, entryAt, f64, num, u32 } from '../../base/at.ts';
import { deltaE2000 } from '../../colour/delta-e.ts';
import { labD50 } from '../../colour/lab.ts';
import { BANDS, WEIGHTS_D50 } from '../../colour/weights.ts';
import type { FilmBands } from '../../ink/film/film.ts';
import type { CellMap } from '../../stack/types.ts';

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

const Y_WEIGHTS = Float64Array.from(WEIGHTS_D50.y, (weight) => weight / 100);
/** Below this L is linear in Y, and steeper than anywhere above (CIE 1976). */
const Y_OF_LINEAR_L = (6 / 29) ** 3;
const GROUPS = WEIGHTS_D50.y.length / GROUP;
/** Share of Y that each group of bands has. */
const Y_SHARES = Float64Array.from({ length: GROUPS }, (_, group) =>
  WEIGHTS_D50.y.slice(group * GROUP, (group + 1) * GROUP).reduce((sum, weight) => sum + weight / 100, 0),
);

/** Asks which films can be seen. */
export class Sight {
  private readonly film: (id: number) => FilmBands;
  private readonly leastDeltaE: number;
  private readonly least = new Map<number, Float64Array>();
  private readonly pile = new Pile();
  private cells = new Uint32Array(0);

  /**
   * @param film the film of a number, where it is thinnest: what lies below it makes it thinner too
   * @param leastDeltaE black and white below films that differ by less than this count as hidden, ΔE00
   */
  constructor(film: (id: number) => FilmBands, leastDeltaE: number) {
    this.film = film;
    this.leastDeltaE = leastDeltaE;
  }

  /**
   * What of a stack can be seen. Cells are parted by the topmost pull, then each part by the next, so
   * that films over many cells are looked at once.
   * @param films number of the film of each pull, first down first
   * @param bits placed screen of the map that each pull prints, first down first
   * Cost O(cells × pulls).
   */
  of(map: CellMap, films: readonly number[], bits: readonly number[]): Visible {
    const pulls = films.length;
    const visible = { areaMm2: new Float64Array(pulls), pairMm2: new Float64Array(pulls * pulls) };
    const bands = films.map((film) => this.film(film));
    const shares = films.map((film) => this.leastShares(film));
    if (this.cells.length < map.cells) this.cells = new Uint32Array(map.cells * 2);
    const { cells } = this;
    let count = 0;
    for (let cell = 1; cell < map.cells; cell++) if (f64(map.areaMm2, cell) > 0) cells[count++] = cell;

    new Look({ map, bits, bands, shares, cells, pile: this.pile, leastDeltaE: this.leastDeltaE }, visible).down(
      pulls - 1,
      0,
      count,
      NOTHING,
    );
    return visible;
  }

  private leastShares(film: number): Float64Array {
    let found = this.least.get(film);
    if (found === undefined) this.least.set(film, (found = leastShares(this.film(film))));
    return found;
  }
}

/** What a look at a stack needs. */
interface Sighted {
  map: CellMap;
  bits: readonly number[];
  bands: readonly FilmBands[];
  shares: readonly Float64Array[];
  /** Cells of the map, sorted again by every step. */
  cells: Uint32Array;
  pile: Pile;
  leastDeltaE: number;
}

/** Pulls over what is looked at, and whether their films hide it. */
interface Above {
  pulls: readonly number[];
  hide: boolean;
}

const NOTHING: Above = { pulls: [], hide: false };

/** Looks at a stack from the top down. */
class Look {
  private readonly of: Sighted;
  private readonly visible: Visible;

  constructor(of: Sighted, visible: Visible) {
    this.of = of;
    this.visible = visible;
  }

  /** Looks at the pulls from `top` down in a range of cells, which all lie under the same pulls. */
  down(top: number, first: number, end: number, above: Above): void {
    for (let at = top, from = first; at >= 0 && from < end; at--) from = this.under(at, from, end, above);
  }

  /** Parts a range of cells by a pull, looks below it where it lies, and says where the others begin. */
  private under(at: number, first: number, end: number, above: Above): number {
    const { map, bits, cells } = this.of;
    const { words, cover, areaMm2 } = map;
    const word = num(bits, at) >> 5;
    const mask = 1 << (num(bits, at) & 31);
    let under = first;
    let area = 0;
    for (let i = first; i < end; i++) {
      const cell = u32(cells, i);
      if ((u32(cover, cell * words + word) & mask) === 0) continue;
      area += f64(areaMm2, cell);
      cells[i] = num(cells, under);
      cells[under++] = cell;
    }
    if (under > first) this.down(at - 1, first, under, this.seen(at, area, above));
    return under;
  }

  /** Counts an area of a pull as seen, as far as what lies above lets it be. */
  private seen(at: number, area: number, above: Above): Above {
    const { bits, pile, bands, shares, leastDeltaE } = this.of;
    const { areaMm2, pairMm2 } = this.visible;
    for (const upper of above.pulls) pairMm2[upper * bits.length + at] = f64(pairMm2, upper * bits.length + at) + area;
    if (above.hide) return above;
    areaMm2[at] = f64(areaMm2, at) + area;
    const hide = pile.hidesBelow(above.pulls.length, entryAt(bands, at), entryAt(shares, at), leastDeltaE);
    return { pulls: [...above.pulls, at], hide };
  }
}

/** One film of a pile, with what is known of all from the topmost down to it. */
class Level {
  film: FilmBands | null = null;
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

/** Films from the top down, and whether they hide what is below. */
class Pile {
  private readonly levels = [new Level()];
  private readonly white = new Float64Array(BANDS);
  private readonly black = new Float64Array(BANDS);

  /**
   * Puts a film below the topmost ones, in the place of what lay there.
   * @param depth how many lie above it
   */
  hidesBelow(depth: number, film: FilmBands, shares: Float64Array, leastDeltaE: number): boolean {
    const above = entryAt(this.levels, depth);
    const level = (this.levels[depth + 1] ??= new Level());
    level.film = film;
    level.slope = above.slope;
    level.multiplied = false;
    let leastY = 0;
    for (let group = 0; group < GROUPS; group++) leastY += level.left[group] = f64(above.left, group) * f64(shares, group);
    // Mostly it is plain that black and white can be told apart.
    if (level.slope * leastY > MOST_SL * leastDeltaE) return false;
    this.multiply(depth + 1);
    return this.alike(level, leastDeltaE);
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
  private alike(level: Level, leastDeltaE: number): boolean {
    const { white, black } = this;
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
    return deltaE2000(labD50(white), labD50(black)) < leastDeltaE;
  }
}

/**
 * The least share of a difference below a film that is left above it, by groups of bands: the film's
 * map R = (q·g + r0) / (1 + back·g) rises by (q − r0·back) / (1 + back·g)², least over black or over white.
 */
function leastShares({ q, r0, back }: FilmBands): Float64Array {
  const out = new Float64Array(GROUPS).fill(1);
  for (let band = 0; band < q.length; band++) {
    const group = Math.floor(band / GROUP);
    const steepest = Math.max(1, 1 + f64(back, band));
    const share = (f64(q, band) - f64(r0, band) * f64(back, band)) / (steepest * steepest);
    out[group] = Math.min(f64(out, group), Math.max(0, share));
  }
  return out;
}
