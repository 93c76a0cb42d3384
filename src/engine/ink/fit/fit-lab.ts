import { entryAt, f64, num } from '../../base/at.ts';
import { labD50, xyzD50, type Lab, WHITE_D50 } from '../../colour/lab.ts';
import { BANDS, WEIGHTS_D50 } from '../../colour/weights.ts';
import { hold } from './fit-bands.ts';
import { FitFilms, LOWEST_UNKNOWN, type SquareSlopes } from './fit-films.ts';
import { leastSquares, type SquareSum } from './least-squares.ts';

/** A square with its colour, inks as indexes, over −1 for none. */
export interface ColourSquare {
  first: number;
  over: number;
  lab: Lab;
}

// A colour cannot tell 36 bands apart: absorption is scaled by five smooth humps, scattering by three.
const K_TERMS = 5;
const S_TERMS = 3;
const TERMS = K_TERMS + S_TERMS;
// A change by a factor e costs as much as a miss of ΔE 0.2.
const HOLD_DELTA_E = 0.2;

/**
 * Fits smooth changes of the unknowns to squares of which only the colour is known.
 * @param unknowns 2 · BANDS an ink: absorption of all bands, then scattering; changed in place
 * @param paper 36 bands
 * Yields after every round.
 */
export function* fitLab(squares: readonly ColourSquare[], unknowns: Float64Array, paper: ArrayLike<number>): Generator<number, void> {
  const inks = unknowns.length / (2 * BANDS);
  const start = unknowns.slice();
  const x = new Float64Array(inks * TERMS);
  const problem = colourProblem(squares, start, unknowns, paper);
  yield* leastSquares(problem, x);
  problem.sum(x, null, null);
}

/** Humps that sum to 1 everywhere: linear between evenly spaced knots. */
function humps(terms: number): Float64Array[] {
  return Array.from({ length: terms }, (_, term) =>
    Float64Array.from({ length: BANDS }, (_, band) => Math.max(0, 1 - Math.abs((band * (terms - 1)) / (BANDS - 1) - term))),
  );
}

function colourProblem(squares: readonly ColourSquare[], start: Float64Array, unknowns: Float64Array, paper: ArrayLike<number>): SquareSum {
  const inks = start.length / (2 * BANDS);
  const size = inks * TERMS;
  const films = new FitFilms(inks);
  const shapes = [...humps(K_TERMS), ...humps(S_TERMS)];
  const rulers = squares.map(({ lab }) => rulerAt(lab));
  const origin = new Float64Array(size);
  const out: SquareSlopes = { r: 0, firstK: 0, firstS: 0, overK: 0, overS: 0 };
  const reflectance = new Float64Array(BANDS);
  const perBand = [0, 1, 2, 3].map(() => new Float64Array(BANDS));
  const rows = [0, 1, 2].map(() => new Float64Array(2 * TERMS));
  const place = new Float64Array(2 * TERMS);

  const setFilms = (x: Float64Array, withSlopes: boolean): void => {
    for (let ink = 0; ink < inks; ink++) {
      for (let band = 0; band < BANDS; band++) {
        let k = f64(start, 2 * ink * BANDS + band);
        let s = f64(start, (2 * ink + 1) * BANDS + band);
        for (let t = 0; t < K_TERMS; t++) k += f64(x, ink * TERMS + t) * f64(entryAt(shapes, t), band);
        for (let t = K_TERMS; t < TERMS; t++) s += f64(x, ink * TERMS + t) * f64(entryAt(shapes, t), band);
        k = Math.max(LOWEST_UNKNOWN, k);
        s = Math.max(LOWEST_UNKNOWN, s);
        unknowns[2 * ink * BANDS + band] = k;
        unknowns[(2 * ink + 1) * BANDS + band] = s;
        films.set(ink, band, k, s, withSlopes);
      }
    }
  };

  return {
    size,
    lowest: -Infinity,
    sum(x, normal, slope) {
      setFilms(x, normal !== null);
      let total = 0;
      squares.forEach(({ first, over, lab }, n) => {
        for (let band = 0; band < BANDS; band++) {
          if (normal === null) reflectance[band] = films.reflectance(first, over, band, num(paper, band));
          else {
            films.slopes(first, over, band, num(paper, band), out);
            reflectance[band] = out.r;
            entryAt(perBand, 0)[band] = out.firstK;
            entryAt(perBand, 1)[band] = out.firstS;
            entryAt(perBand, 2)[band] = out.overK;
            entryAt(perBand, 3)[band] = out.overS;
          }
        }
        const shown = labD50(reflectance);
        const ruler = entryAt(rulers, n);
        const miss = ruler.map((row) => row[0] * (shown[0] - lab[0]) + row[1] * (shown[1] - lab[1]) + row[2] * (shown[2] - lab[2]));
        for (const part of miss) total += part * part;
        if (normal === null || slope === null) return;
        const byBand = labSlopes(reflectance);
        const used = over < 0 ? TERMS : 2 * TERMS;
        for (let i = 0; i < used; i++) {
          const term = i % TERMS;
          const change = entryAt(perBand, (i < TERMS ? 0 : 2) + (term < K_TERMS ? 0 : 1));
          place[i] = (i < TERMS ? first : over) * TERMS + term;
          let [dl, da, db] = [0, 0, 0];
          for (let band = 0; band < BANDS; band++) {
            const moved = f64(change, band) * f64(entryAt(shapes, term), band);
            dl += f64(byBand, 3 * band) * moved;
            da += f64(byBand, 3 * band + 1) * moved;
            db += f64(byBand, 3 * band + 2) * moved;
          }
          ruler.forEach((row, part) => (entryAt(rows, part)[i] = row[0] * dl + row[1] * da + row[2] * db));
        }
        for (let part = 0; part < 3; part++) {
          const row = entryAt(rows, part);
          for (let i = 0; i < used; i++) {
            slope[f64(place, i)] = f64(slope, f64(place, i)) + f64(row, i) * num(miss, part);
            for (let j = 0; j < used; j++)
              normal[f64(place, i) * size + f64(place, j)] = f64(normal, f64(place, i) * size + f64(place, j)) + f64(row, i) * f64(row, j);
          }
        }
      });
      return total + hold(x, origin, HOLD_DELTA_E, normal, slope);
    },
  };
}

/**
 * Three directions in which differences from a colour are measured: lightness, chroma and hue, each
 * divided by its CIEDE2000 weight there. The rotation of blues is left out.
 */
function rulerAt([l, a, b]: Lab): Lab[] {
  const c7 = Math.hypot(a, b) ** 7;
  const stretch = 1.5 - 0.5 * Math.sqrt(c7 / (c7 + 25 ** 7));
  const chroma = Math.hypot(a * stretch, b);
  const hue = Math.atan2(b, a * stretch);
  const degrees = (angle: number, from: number): number => Math.cos(angle * hue + (from * Math.PI) / 180);
  const t = 1 - 0.17 * degrees(1, -30) + 0.24 * degrees(2, 0) + 0.32 * degrees(3, 6) - 0.2 * degrees(4, -63);
  const sl = 1 + (0.015 * (l - 50) ** 2) / Math.sqrt(20 + (l - 50) ** 2);
  const sc = 1 + 0.045 * chroma;
  const sh = 1 + 0.015 * chroma * t;
  const [cos, sin] = [Math.cos(hue), Math.sin(hue)];
  return [
    [1 / sl, 0, 0],
    [0, (stretch * cos) / sc, sin / sc],
    [0, (-stretch * sin) / sh, cos / sh],
  ];
}

/** Change of L, a, b with the reflectance of each band, 3 a band. */
function labSlopes(reflectance: Float64Array): Float64Array {
  const xyz = xyzD50(reflectance);
  const [fx, fy, fz] = xyz.map((value, i) => {
    const ratio = value / num(WHITE_D50, i);
    const rise = ratio > 216 / 24389 ? 1 / (3 * Math.cbrt(ratio) ** 2) : 24389 / 27 / 116;
    return rise / num(WHITE_D50, i);
  }) as [number, number, number];
  const out = new Float64Array(3 * BANDS);
  for (let band = 0; band < BANDS; band++) {
    const x = fx * num(WEIGHTS_D50.x, band);
    const y = fy * num(WEIGHTS_D50.y, band);
    const z = fz * num(WEIGHTS_D50.z, band);
    out[3 * band] = 116 * y;
    out[3 * band + 1] = 500 * (x - y);
    out[3 * band + 2] = 200 * (y - z);
  }
  return out;
}
