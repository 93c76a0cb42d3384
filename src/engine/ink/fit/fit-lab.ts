import { entryAt, f64, num } from '../../base/at.ts';
import { labD50, type Lab } from '../../colour/lab.ts';
import { BANDS } from '../../colour/weights.ts';
import { hold } from './fit-bands.ts';
import { filmAt, FitFilms, LOWEST_UNKNOWN, type SquareSlopes } from './fit-films.ts';
import { labSlopes, rulerAt } from './lab-ruler.ts';
import { leastSquares, type NormalEquations, type SquareSum } from './least-squares.ts';

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
  const problem = new ColourProblem({ squares, start, unknowns, paper });
  yield* leastSquares(problem, x);
  problem.sum(x, null);
}

/** Humps that sum to 1 everywhere: linear between evenly spaced knots. */
function humps(terms: number): Float64Array[] {
  return Array.from({ length: terms }, (_, term) =>
    Float64Array.from({ length: BANDS }, (_, band) => Math.max(0, 1 - Math.abs((band * (terms - 1)) / (BANDS - 1) - term))),
  );
}

/** What fitLab fits to. */
interface ColourFit {
  squares: readonly ColourSquare[];
  /** Where the unknowns began. */
  start: Float64Array;
  /** The unknowns as last tried. */
  unknowns: Float64Array;
  /** Reflectance, 36 bands. */
  paper: ArrayLike<number>;
}

/** All squares with a colour alone: an ink has a factor for each hump of its absorption and scattering. */
class ColourProblem implements SquareSum {
  readonly size: number;
  readonly lowest = -Infinity;
  private readonly fit: ColourFit;
  private readonly inks: number;
  private readonly films: FitFilms;
  private readonly shapes = [...humps(K_TERMS), ...humps(S_TERMS)];
  private readonly rulers: readonly Lab[][];
  private readonly origin: Float64Array;
  private readonly out: SquareSlopes = { r: 0, firstK: 0, firstS: 0, overK: 0, overS: 0 };
  private readonly reflectance = new Float64Array(BANDS);
  /** Change of the reflectance with K and S of the first film, then of the one over it, by band. */
  private readonly perBand = [0, 1, 2, 3].map(() => new Float64Array(BANDS));
  /** Change of the three parts of a miss with each term of the square's inks. */
  private readonly rows = [0, 1, 2].map(() => new Float64Array(2 * TERMS));
  private readonly place = new Float64Array(2 * TERMS);

  constructor(fit: ColourFit) {
    this.fit = fit;
    this.inks = fit.start.length / (2 * BANDS);
    this.size = this.inks * TERMS;
    this.films = new FitFilms(this.inks);
    this.rulers = fit.squares.map(({ lab }) => rulerAt(lab));
    this.origin = new Float64Array(this.size);
  }

  sum(x: Float64Array, into: NormalEquations | null): number {
    this.setFilms(x, into !== null);
    let total = 0;
    this.fit.squares.forEach((square, n) => {
      this.show(square, into !== null);
      const { lab } = square;
      const shown = labD50(this.reflectance);
      const ruler = entryAt(this.rulers, n);
      const miss = ruler.map((row) => row[0] * (shown[0] - lab[0]) + row[1] * (shown[1] - lab[1]) + row[2] * (shown[2] - lab[2]));
      for (const part of miss) total += part * part;
      if (into === null) return;
      const used = this.changes(square, ruler);
      this.gather(miss, used, into);
    });
    return total + hold(x, this.origin, HOLD_DELTA_E, into);
  }

  /** Sets the unknowns and the films of all inks to the factors x. */
  private setFilms(x: Float64Array, withSlopes: boolean): void {
    const { shapes } = this;
    const { start, unknowns } = this.fit;
    for (let ink = 0; ink < this.inks; ink++) {
      for (let band = 0; band < BANDS; band++) {
        let k = f64(start, 2 * ink * BANDS + band);
        let s = f64(start, (2 * ink + 1) * BANDS + band);
        for (let t = 0; t < K_TERMS; t++) k += f64(x, ink * TERMS + t) * f64(entryAt(shapes, t), band);
        for (let t = K_TERMS; t < TERMS; t++) s += f64(x, ink * TERMS + t) * f64(entryAt(shapes, t), band);
        k = Math.max(LOWEST_UNKNOWN, k);
        s = Math.max(LOWEST_UNKNOWN, s);
        unknowns[2 * ink * BANDS + band] = k;
        unknowns[(2 * ink + 1) * BANDS + band] = s;
        this.films.set(filmAt(ink, band), k, s, withSlopes);
      }
    }
  }

  /** Fills the reflectance of a square, and its changes where they are wanted. */
  private show({ first, over }: ColourSquare, withSlopes: boolean): void {
    const { films, out, reflectance, perBand } = this;
    const { paper } = this.fit;
    for (let band = 0; band < BANDS; band++) {
      const ground = num(paper, band);
      if (!withSlopes) {
        reflectance[band] = films.reflectance(filmAt(first, band), filmAt(over, band), ground);
        continue;
      }
      films.slopes(filmAt(first, band), filmAt(over, band), ground, out);
      reflectance[band] = out.r;
      entryAt(perBand, 0)[band] = out.firstK;
      entryAt(perBand, 1)[band] = out.firstS;
      entryAt(perBand, 2)[band] = out.overK;
      entryAt(perBand, 3)[band] = out.overS;
    }
  }

  /** Fills `rows` and `place` for a square that was shown with slopes; how many of them count. */
  private changes({ first, over }: ColourSquare, ruler: readonly Lab[]): number {
    const { perBand, shapes, rows, place } = this;
    const byBand = labSlopes(this.reflectance);
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
    return used;
  }

  private gather(miss: readonly number[], used: number, { normal, slope }: NormalEquations): void {
    const { rows, place, size } = this;
    for (let part = 0; part < 3; part++) {
      const row = entryAt(rows, part);
      for (let i = 0; i < used; i++) {
        const at = f64(place, i);
        slope[at] = f64(slope, at) + f64(row, i) * num(miss, part);
        for (let j = 0; j < used; j++) {
          const entry = at * size + f64(place, j);
          normal[entry] = f64(normal, entry) + f64(row, i) * f64(row, j);
        }
      }
    }
  }
}
