import { f64, num } from '../../base/at.ts';
import { BANDS } from '../../colour/weights.ts';
import { FitFilms, LOWEST_UNKNOWN, type SquareSlopes } from './fit-films.ts';
import { leastSquares, type SquareSum } from './least-squares.ts';

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
  const films = new FitFilms(inks);
  for (let band = 0; band < BANDS; band++) {
    const x = new Float64Array(2 * inks);
    for (let i = 0; i < x.length; i++) x[i] = f64(unknowns, i * BANDS + band);
    yield* leastSquares(bandProblem(squares, films, x.slice(), band, num(paper, band)), x);
    for (let i = 0; i < x.length; i++) unknowns[i * BANDS + band] = f64(x, i);
  }
}

function bandProblem(squares: readonly CurveSquare[], films: FitFilms, start: Float64Array, band: number, ground: number): SquareSum {
  const size = start.length;
  const out: SquareSlopes = { r: 0, firstK: 0, firstS: 0, overK: 0, overS: 0 };
  const wanted = squares.map(({ reflectance }) => Math.cbrt(Math.max(0, num(reflectance, band)) + SOFT));
  const places = [0, 0, 0, 0];
  const changes = [0, 0, 0, 0];
  return {
    size,
    lowest: LOWEST_UNKNOWN,
    sum(x, normal, slope) {
      for (let ink = 0; ink < size / 2; ink++) films.set(ink, band, f64(x, 2 * ink), f64(x, 2 * ink + 1), normal !== null);
      let total = 0;
      squares.forEach(({ first, over }, n) => {
        if (normal === null || slope === null) {
          const miss = Math.cbrt(films.reflectance(first, over, band, ground) + SOFT) - num(wanted, n);
          total += miss * miss;
          return;
        }
        films.slopes(first, over, band, ground, out);
        const root = Math.cbrt(out.r + SOFT);
        const miss = root - num(wanted, n);
        total += miss * miss;
        const scale = 1 / (3 * root * root);
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
          slope[num(places, i)] = f64(slope, num(places, i)) + num(changes, i) * miss;
          for (let j = 0; j < used; j++)
            normal[num(places, i) * size + num(places, j)] =
              f64(normal, num(places, i) * size + num(places, j)) + num(changes, i) * num(changes, j);
        }
      });
      return total + hold(x, start, HOLD, normal, slope);
    },
  };
}

/** Adds what it costs to leave the start. */
export function hold(
  x: Float64Array,
  start: Float64Array,
  weight: number,
  normal: Float64Array | null,
  slope: Float64Array | null,
): number {
  let total = 0;
  for (let i = 0; i < x.length; i++) {
    const gone = weight * (f64(x, i) - f64(start, i));
    total += gone * gone;
    if (normal === null || slope === null) continue;
    slope[i] = f64(slope, i) + weight * gone;
    normal[i * x.length + i] = f64(normal, i * x.length + i) + weight * weight;
  }
  return total;
}
