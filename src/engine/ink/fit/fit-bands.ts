import { f64, num } from '../../base/at.ts';
import { BANDS } from '../../colour/weights.ts';
import { filmAt, FitFilms, LOWEST_UNKNOWN, type SquareSlopes } from './fit-films.ts';
import { leastSquares, type NormalEquations, type SquareSum } from './least-squares.ts';

/** A square with its curve, inks as indexes, over −1 for none. */
export interface CurveSquare {
  first: number;
  over: number;
  reflectance: ArrayLike<number>;
}

// Compared as cube roots, as the eye does, softened where readings are noise.
const SOFT = 0.01;
// How much a fitted ink may leave its start for nothing: one reading's noise of 0.5 % weighs as much as
// a change by a factor e. It settles what the squares leave open, such as K against S of a film that
// was pulled on white alone.
const HOLD = 2e-3;

/**
 * Fits the unknowns band by band to squares with curves.
 * @param unknowns 2 · BANDS an ink: absorption of all bands, then scattering; changed in place
 * @param paper 36 bands
 * Yields after every round of every band.
 */
export function* fitBands(squares: readonly CurveSquare[], unknowns: Float64Array, paper: ArrayLike<number>): Generator<number, void> {
  const inks = unknowns.length / (2 * BANDS);
  for (let band = 0; band < BANDS; band++) {
    const x = new Float64Array(2 * inks);
    for (let i = 0; i < x.length; i++) x[i] = f64(unknowns, i * BANDS + band);
    yield* leastSquares(new BandProblem(squares, x.slice(), band, num(paper, band)), x);
    for (let i = 0; i < x.length; i++) unknowns[i * BANDS + band] = f64(x, i);
  }
}

/** One band of all squares: the unknowns are each ink's absorption, then its scattering, there. */
class BandProblem implements SquareSum {
  readonly size: number;
  readonly lowest = LOWEST_UNKNOWN;
  private readonly squares: readonly CurveSquare[];
  private readonly films: FitFilms;
  private readonly start: Float64Array;
  private readonly band: number;
  private readonly ground: number;
  private readonly wanted: readonly number[];
  private readonly out: SquareSlopes = { r: 0, firstK: 0, firstS: 0, overK: 0, overS: 0 };
  private readonly places = [0, 0, 0, 0];
  private readonly changes = [0, 0, 0, 0];

  /**
   * @param start the unknowns to hold to
   * @param ground reflectance of the paper in the band
   */
  constructor(squares: readonly CurveSquare[], start: Float64Array, band: number, ground: number) {
    this.squares = squares;
    this.size = start.length;
    this.films = new FitFilms(start.length / 2);
    this.start = start;
    this.band = band;
    this.ground = ground;
    this.wanted = squares.map(({ reflectance }) => Math.cbrt(Math.max(0, num(reflectance, band)) + SOFT));
  }

  sum(x: Float64Array, into: NormalEquations | null): number {
    const { films, band, ground } = this;
    for (let ink = 0; ink < this.size / 2; ink++) films.set(filmAt(ink, band), f64(x, 2 * ink), f64(x, 2 * ink + 1), into !== null);
    let total = 0;
    this.squares.forEach((square, n) => {
      const wanted = num(this.wanted, n);
      const first = filmAt(square.first, band);
      const over = filmAt(square.over, band);
      if (into === null) {
        const miss = Math.cbrt(films.reflectance(first, over, ground) + SOFT) - wanted;
        total += miss * miss;
        return;
      }
      films.slopes(first, over, ground, this.out);
      const root = Math.cbrt(this.out.r + SOFT);
      const miss = root - wanted;
      total += miss * miss;
      this.gather(square, miss, 1 / (3 * root * root), into);
    });
    return total + hold(x, this.start, HOLD, into);
  }

  /** Adds what one square pulls at, from its slopes in `out`. */
  private gather({ first, over }: CurveSquare, miss: number, scale: number, { normal, slope }: NormalEquations): void {
    const { out, places, changes, size } = this;
    places[0] = 2 * first;
    places[1] = 2 * first + 1;
    changes[0] = out.firstK * scale;
    changes[1] = out.firstS * scale;
    const used = over < 0 ? 2 : 4;
    if (used === 4) {
      places[2] = 2 * over;
      places[3] = 2 * over + 1;
      changes[2] = out.overK * scale;
      changes[3] = out.overS * scale;
    }
    for (let i = 0; i < used; i++) {
      const row = num(places, i);
      slope[row] = f64(slope, row) + num(changes, i) * miss;
      for (let j = 0; j < used; j++) {
        const at = row * size + num(places, j);
        normal[at] = f64(normal, at) + num(changes, i) * num(changes, j);
      }
    }
  }
}

/** Adds what it costs to leave the start. */
export function hold(x: Float64Array, start: Float64Array, weight: number, into: NormalEquations | null): number {
  let total = 0;
  for (let i = 0; i < x.length; i++) {
    const away = weight * (f64(x, i) - f64(start, i));
    total += away * away;
    if (into === null) continue;
    const { normal, slope } = into;
    slope[i] = f64(slope, i) + weight * away;
    normal[i * x.length + i] = f64(normal, i * x.length + i) + weight * weight;
  }
  return total;
}
