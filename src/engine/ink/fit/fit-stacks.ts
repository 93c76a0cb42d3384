import { entryAt } from '../../base/at.ts';
import { EngineError } from '../../base/error.ts';
import { deltaE2000 } from '../../colour/delta-e.ts';
import type { Lab } from '../../colour/lab.ts';
import { leastSquares } from './least-squares.ts';
import { type FoundFilm, StackModel } from './stack-model.ts';
import { type Beforehand, type ReadStack, StackProblem, startOf } from './stack-problem.ts';
import { type FilmSample, nameOf, type Reading, readSamples, type ReadSamples } from './stack-samples.ts';

/** What films are fitted to. */
export interface FitFilmsInput {
  /** Squares of any stacks of films: at least two, of two inks or more. */
  samples: readonly FilmSample[];
  /** The bare paper. */
  paper: Reading;
  /** Kept with the fit; the same samples give the same films under every seed. */
  seed?: string | undefined;
}

/** Films that samples show. */
export interface FittedFilms {
  /**
   * The colour of a stack, D50/2°, as the instrument would read it; the paper for no films.
   * @param films names as in the samples, first down first
   * @throws EngineError 'fit.unknown-film'
   */
  predict(films: readonly string[]): Lab;
  /** How thick a film is on another film, as a share of what it is on the paper. */
  trapping: number;
  /** Saunderson's shares: reflected outside, and thrown back inside. */
  k1: number;
  k2: number;
  /**
   * Mean ΔE00 of the overprints, each predicted by a fit without it; NaN where none can be left out.
   * Squares of one film are never left out: a film's curve comes from them.
   */
  looMean: number;
  /** K·X and S·X of one film on the paper, 36 bands. */
  films: Record<string, FoundFilm>;
}

/** Trapping outside this is no press, but squares in another order, or of other inks. */
const TRAPPING_RANGE = [0.3, 1.2] as const;
/** A mean miss beyond this is no noise, ΔE00. */
const MOST_MISS = 8;

/**
 * Films, their trapping and their surface from any stacks that were read.
 * @returns see FittedFilms; deterministic
 * @throws EngineError 'fit.samples', 'fit.reading', 'fit.trapping' in one sentence
 * Films by Kubelka and Munk; the surface by Saunderson (1942); trapping as a factor on the thickness of
 * every film that lies on a film. The paper's and an ink's own curve are the smoothest of their colour
 * where no curve was read. Unknowns are held to what is expected beforehand, and leave it as far as the
 * squares tell (least squares with a ridge). Takes about 0.1 s a square.
 */
export function fitFilms({ samples, paper }: FitFilmsInput): FittedFilms {
  const read = readSamples(samples, paper);
  const { names, squares } = read;
  const before: Beforehand = { alone: read.alone, stacked: squares.some(({ stack }) => stack.length > 1) };
  const model = new StackModel(read.paper, read.curves);
  const x = startOf(model.size, before);
  fit(model, squares, before, x);
  const { films, ...press } = model.result();
  check(squares, model, read);
  return {
    predict: (stack) => model.lab(stack.map((name) => placeOf(name, names))),
    ...press,
    looMean: leaveOneOut(read, before, x),
    films: Object.fromEntries(names.map((name, i) => [name, entryAt(films, i)])),
  };
}

function fit(model: StackModel, squares: readonly ReadStack[], before: Beforehand, x: Float64Array): void {
  const run = leastSquares(new StackProblem(model, squares, before), x);
  while (!run.next().done);
  model.set(x);
}

/** Mean ΔE00 of overprints that were left out; each fit begins where the whole one ended. */
function leaveOneOut(read: ReadSamples, before: Beforehand, x: Float64Array): number {
  const { squares } = read;
  const misses: number[] = [];
  const model = new StackModel(read.paper, read.curves);
  squares.forEach((square, n) => {
    const others = squares.filter((_, i) => i !== n);
    const known = square.stack.every((ink) => others.some(({ stack }) => stack.includes(ink)));
    // The curve of an ink that was never read alone comes from its overprints, this one perhaps.
    if (square.stack.length < 2 || !known || !square.stack.every((ink) => read.alone[ink])) return;
    const stacked = others.some(({ stack }) => stack.length > 1);
    const start = stacked ? x.slice() : startOf(x.length, { ...before, stacked });
    fit(model, others, { ...before, stacked }, start);
    misses.push(deltaE2000(square.lab, model.lab(square.stack)));
  });
  return misses.reduce((sum, miss) => sum + miss, 0) / misses.length;
}

function check(squares: readonly ReadStack[], model: StackModel, { names }: ReadSamples): void {
  const misses = squares.map(({ stack, lab }) => deltaE2000(lab, model.lab(stack)));
  const worst = entryAt(squares, misses.indexOf(Math.max(...misses)));
  if (misses.reduce((sum, miss) => sum + miss, 0) / misses.length > MOST_MISS) {
    throw new EngineError(
      'fit.samples',
      `The squares contradict each other, ${nameOf(worst, names)} the most; look whether films are listed first down first, and read them again.`,
    );
  }
  const { trapping } = model.result();
  if (!(trapping >= TRAPPING_RANGE[0] && trapping <= TRAPPING_RANGE[1])) {
    throw new EngineError(
      'fit.trapping',
      `On another film a film would be ${trapping.toFixed(2)} times as thick, and only ${TRAPPING_RANGE.join(' to ')} happens on a press; look whether films are listed first down first.`,
    );
  }
}

function placeOf(name: string, names: readonly string[]): number {
  const at = names.indexOf(name);
  if (at < 0) throw new EngineError('fit.unknown-film', `“${name}” is in no square; the films are ${names.join(', ')}.`);
  return at;
}
