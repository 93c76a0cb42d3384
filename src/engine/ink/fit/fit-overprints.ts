import { defined, entryAt, f64, num } from '../../base/at.ts';
import { EngineError, type Problem } from '../../base/error.ts';
import { deltaE2000 } from '../../colour/delta-e.ts';
import { labD50, type Lab } from '../../colour/lab.ts';
import { BANDS } from '../../colour/weights.ts';
import { say } from '../../words/en/ink/fit.ts';
import { MOST_REFLECTANCE } from '../cgats/scale.ts';
import { CARD_BLACK, CARD_WHITE } from '../characterise/card.ts';
import { coloursOn } from '../characterise/characterise.ts';
import { stackReflectance, type FilmCurves } from '../film/film.ts';
import type { Ink, Paper } from '../types.ts';
import { fitBands } from './fit-bands.ts';
import { unknownOf, valueOf } from './fit-films.ts';
import { fitLab } from './fit-lab.ts';

/** A square of a pulled target as measured: one ink, or one over another, a stroke each, on the paper. */
export interface PulledSquare {
  /** Id of the ink that went down first. */
  first: string;
  /** Id of the ink over it; null for a single film. */
  over: string | null;
  /** 36 bands, 0–1; counts before a Lab. */
  reflectance?: ArrayLike<number> | undefined;
  /** D50/2°. */
  lab?: Lab | undefined;
}

/** How well one square is met, ΔE00 between model and measurement. */
interface SquareFit {
  first: string;
  over: string | null;
  beforeDeltaE: number;
  afterDeltaE: number;
}

/** What a fit gives. */
export interface OverprintFit {
  /** K·X and S·X of every ink that a square holds, 36 bands; others stay as they are. */
  inks: { id: string; kx: Float64Array; sx: Float64Array }[];
  /** In the order given. */
  squares: SquareFit[];
  /** Mean and largest ΔE00 over the squares; neither mean nor root mean square is ever larger after. */
  before: { meanDeltaE: number; maxDeltaE: number };
  after: { meanDeltaE: number; maxDeltaE: number };
}

/** How far a fit is, for showing and for stopping between two rounds. */
export interface FitProgress {
  rounds: number;
}

const MOST_REFITS = 8;

/**
 * What keeps squares from being fitted.
 * @returns codes 'fit.no-squares', 'fit.unknown-ink', 'fit.no-colour', 'fit.bad-reflectance',
 *   'fit.bad-colour'; where is the index of the square
 */
export function checkSquares(squares: readonly PulledSquare[], inks: readonly Pick<Ink, 'id'>[]): Problem[] {
  if (squares.length === 0) return [{ code: 'fit.no-squares', message: say.noSquareIsMeasured, where: '' }];
  const known = new Set(inks.map(({ id }) => id));
  return squares.flatMap(({ first, over, reflectance, lab }, i) => {
    const called = say.square(i + 1);
    const problem = (code: string, rest: string): Problem => ({ code, message: `${called} ${rest}`, where: String(i) });
    const unknown = [first, over].find((id) => id !== null && !known.has(id));
    if (unknown) return [problem('fit.unknown-ink', say.isOfInkWhich(unknown))];
    if (reflectance) {
      const sound = reflectance.length === BANDS && Array.from(reflectance).every((value) => value >= 0 && value <= MOST_REFLECTANCE);
      return sound ? [] : [problem('fit.bad-reflectance', say.needsReflectancesFrom0(BANDS, MOST_REFLECTANCE))];
    }
    if (!lab) return [problem('fit.no-colour', say.hasNeitherCurveNor)];
    const sound = lab.length === 3 && lab.every(Number.isFinite) && lab[0] >= 0 && lab[0] <= 100;
    return sound ? [] : [problem('fit.bad-colour', say.needsLFrom0)];
  });
}

/**
 * Absorption and scattering that meet the squares of a pulled target best, all squares together, from
 * the inks as they are. Squares with curves are fitted band by band, squares with a colour alone by
 * smooth changes of the curves.
 * @param squares measured; any of the target's, the more the better; overprints tell scattering
 * @param inks all that squares name; one stroke
 * @param paper that the target was pulled on
 * @throws EngineError with the code of the first of checkSquares
 * Yields after every round so that it can be stopped. Source: least squares, see leastSquares.
 */
export function* fitOverprintSteps(
  squares: readonly PulledSquare[],
  inks: readonly (FilmCurves & Pick<Ink, 'id'>)[],
  paper: Pick<Paper, 'reflectance'>,
): Generator<FitProgress, OverprintFit> {
  const [problem] = checkSquares(squares, inks);
  if (problem) throw new EngineError(problem.code, problem.message, { details: { where: problem.where } });
  const ground = paper.reflectance;
  const used = inks.filter(({ id }) => squares.some(({ first, over }) => first === id || over === id));
  const index = new Map(used.map(({ id }, i) => [id, i]));
  const wanted = squares.map(({ first, over, reflectance, lab }): WantedSquare => ({
    first: defined(index.get(first)),
    over: over === null ? -1 : defined(index.get(over)),
    reflectance,
    lab: reflectance ? labD50(reflectance) : defined(lab),
  }));
  const start = unknownsOf(used);
  const unknowns = start.slice();
  let rounds = 0;
  for (const run of fitRuns(wanted, unknowns, ground)) {
    for (let next = run.next(); !next.done; next = run.next()) yield { rounds: ++rounds };
  }

  const before = misses(wanted, used, ground);
  let films: FilmCurves[] = [...used];
  let after = before;
  // Least squares of curves is not least ΔE: should it be worse, part of the way may still be better.
  for (let way = 1, i = 0; i < MOST_REFITS; way /= 2, i++) {
    const tried = used.map((_, ink) => filmOf(start, unknowns, ink, way));
    const reached = misses(wanted, tried, ground);
    if (mean(reached) <= mean(before) && meanSquare(reached) <= meanSquare(before)) {
      films = tried;
      after = reached;
      break;
    }
  }
  return {
    inks: used.map(({ id }, i) => ({ id, kx: Float64Array.from(entryAt(films, i).kx), sx: Float64Array.from(entryAt(films, i).sx) })),
    squares: squares.map(({ first, over }, i) => ({ first, over, beforeDeltaE: num(before, i), afterDeltaE: num(after, i) })),
    before: { meanDeltaE: mean(before), maxDeltaE: Math.max(...before) },
    after: { meanDeltaE: mean(after), maxDeltaE: Math.max(...after) },
  };
}

/** A square to be met: inks as places in the list of those used, over −1 for none. */
interface WantedSquare {
  first: number;
  over: number;
  reflectance: ArrayLike<number> | undefined;
  /** Of the curve, where there is one. */
  lab: Lab;
}

function unknownsOf(inks: readonly FilmCurves[]): Float64Array {
  const start = new Float64Array(inks.length * 2 * BANDS);
  inks.forEach(({ kx, sx }, i) => {
    for (let band = 0; band < BANDS; band++) {
      start[2 * i * BANDS + band] = unknownOf(num(kx, band));
      start[(2 * i + 1) * BANDS + band] = unknownOf(num(sx, band));
    }
  });
  return start;
}

/** One after the other: squares with curves band by band, then all squares by their colour if some have no curve. */
function* fitRuns(
  wanted: readonly WantedSquare[],
  unknowns: Float64Array,
  ground: ArrayLike<number>,
): Generator<Generator<number, void>, void> {
  const curves = wanted.flatMap(({ first, over, reflectance }) => (reflectance ? [{ first, over, reflectance }] : []));
  if (curves.length > 0) yield fitBands(curves, unknowns, ground);
  if (curves.length < wanted.length) yield fitLab(wanted, unknowns, ground);
}

/** ΔE00 of every square with such films. */
function misses(wanted: readonly WantedSquare[], films: readonly FilmCurves[], ground: ArrayLike<number>): number[] {
  return wanted.map(({ first, over, lab }) => {
    const stack = over < 0 ? [entryAt(films, first)] : [entryAt(films, first), entryAt(films, over)];
    return deltaE2000(lab, labD50(stackReflectance(stack, ground)));
  });
}

/** fitOverprintSteps in one go. */
export function fitOverprints(
  squares: readonly PulledSquare[],
  inks: readonly (FilmCurves & Pick<Ink, 'id'>)[],
  paper: Pick<Paper, 'reflectance'>,
): OverprintFit {
  const run = fitOverprintSteps(squares, inks, paper);
  let next = run.next();
  while (!next.done) next = run.next();
  return next.value;
}

/**
 * An ink with the curves that a fit found, or itself when no square held it.
 * @returns basis 'measured', colours those on the standard card
 */
export function fittedInk(ink: Ink, fit: Pick<OverprintFit, 'inks'>): Ink {
  const found = fit.inks.find(({ id }) => id === ink.id);
  if (!found) return ink;
  return { ...ink, basis: 'measured', ...coloursOn(found, CARD_WHITE, CARD_BLACK), kx: Array.from(found.kx), sx: Array.from(found.sx) };
}

function filmOf(start: Float64Array, end: Float64Array, ink: number, way: number): FilmCurves {
  const curve = (from: number): Float64Array =>
    Float64Array.from({ length: BANDS }, (_, band) =>
      valueOf(f64(start, from + band) + way * (f64(end, from + band) - f64(start, from + band))),
    );
  return { kx: curve(2 * ink * BANDS), sx: curve((2 * ink + 1) * BANDS) };
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}

function meanSquare(values: readonly number[]): number {
  return mean(values.map((value) => value * value));
}
