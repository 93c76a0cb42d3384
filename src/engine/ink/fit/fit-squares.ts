import { entryAt, f64, num } from '../../base/at.ts';
import { EngineError } from '../../base/error.ts';
import { K2, TRAPPING, within } from '../../base/limits.ts';
import { deltaE2000 } from '../../colour/delta-e.ts';
import { say } from '../../words/en/ink/fit.ts';
import { fixed } from '../../words/language.ts';
import { leastSquares } from './least-squares.ts';
import { leftOutMisses, noiseOf } from './left-out.ts';
import { StackModel } from './stack-model.ts';
import { type Beforehand, type ReadStack, StackProblem, startOf } from './stack-problem.ts';
import { nameOf, type ReadSamples } from './stack-samples.ts';

/** A fit to squares, and what it misses. */
export interface SquaresFit {
  model: StackModel;
  /** ΔE00 of each square, in the order given. */
  misses: number[];
  /** The same of a fit without it; null for squares of one film, whose curves come from them. */
  left: (number | null)[];
  looMean: number;
}

/** A mean miss beyond this is no noise, ΔE00. */
const MOST_MISS = 8;
/** The last unknowns are k2 and k1. */
const K2_FROM_END = 2;
const K2_NOISE = 0.05;

/** So many overprints are left out by a fit of its own each; of more, all are left out at once, linearised. */
const MOST_REFITS = 24;

/**
 * Fits films, trapping and surface to squares, then again without each overprint.
 * @yields the share of the work that is done, 0–1, after each round of the fit and each fit without a square
 * @throws EngineError 'fit.samples', 'fit.trapping', 'fit.surface' in one sentence
 */
export function* fitSquares(read: ReadSamples): Generator<number, SquaresFit> {
  const { squares } = read;
  const usual: Beforehand = {
    curved: read.curves.map((curve) => curve !== null),
    stacked: squares.some(({ stack }) => stack.length > 1),
    pairs: read.pairs.length,
    noise: 1,
  };
  const model = new StackModel(read);
  const x = startOf(model.size, usual);
  const run = wholeFit({ model, squares, before: usual }, x);
  let round = run.next();
  for (let n = 1; !round.done; n++, round = run.next()) yield (WHOLE * n) / (n + SLOW);
  const before = { ...usual, noise: round.value };
  const misses = squares.map(({ stack, lab }) => deltaE2000(lab, model.lab(stack)));
  check(misses, model, read);
  const whole: Whole = { read, before, x };
  const overprints = squares.flatMap((square, n) => (canLeaveOut(n, square, read) ? [n] : []));
  const left: (number | null)[] = squares.map(() => null);
  const put = (n: number, miss: number | null): void => void (left[n] = miss);
  if (overprints.length > MOST_REFITS) {
    leftOutMisses(new StackProblem(new StackModel(read), squares, before), x, overprints).forEach((miss, i) =>
      put(num(overprints, i), miss),
    );
  } else {
    const without = new StackModel(read);
    for (const [done, n] of overprints.entries()) {
      yield WHOLE + ((1 - WHOLE) * done) / overprints.length;
      put(n, missWithout(n, whole, without));
    }
  }
  return { model, misses, left, looMean: mean(left.filter((miss) => miss !== null)) };
}

/** The share of the work that the fit to all squares is thought to be, and after how many rounds half of it is done. */
const WHOLE = 0.5;
const SLOW = 10;

interface Fit {
  model: StackModel;
  squares: readonly ReadStack[];
  before: Beforehand;
}

/** A fit to all squares that has been done. */
interface Whole {
  read: ReadSamples;
  before: Beforehand;
  x: Float64Array;
}

function fit(of: Fit, x: Float64Array): void {
  const run = rounds(of, x);
  while (!run.next().done);
}

/** How often squares are asked how good they are, and how many rows told what is usual before. */
const NOISE_TIMES = 3;
const USUAL = 3;

/** Fits with squares as good as is usual, then as good as they prove to be. */
function* wholeFit(of: Fit, x: Float64Array): Generator<number, number> {
  let { noise } = of.before;
  yield* rounds(of, x);
  for (let time = 0; time < NOISE_TIMES; time++) {
    const here = new StackProblem(of.model, of.squares, { ...of.before, noise });
    noise = Math.min(1, noise * noiseOf(here, x, of.squares.length, USUAL / noise ** 2));
    yield* rounds({ ...of, before: { ...of.before, noise } }, x);
  }
  return noise;
}

function* rounds({ model, squares, before }: Fit, x: Float64Array): Generator<number, void> {
  yield* leastSquares(new StackProblem(model, squares, before), x);
  // A hair beyond what can be is noise; more is told.
  const at = x.length - K2_FROM_END;
  const k2 = Math.min(K2.most, Math.max(K2.least, f64(x, at)));
  if (Math.abs(k2 - f64(x, at)) < K2_NOISE) x[at] = k2;
  model.set(x);
}

/** Whether a fit without an overprint can still tell its colour: the curve of an ink that was never read alone may come from this very one. */
function canLeaveOut(n: number, { stack }: ReadStack, read: ReadSamples): boolean {
  const inksOf = (square: Pick<ReadStack, 'stack'>): number[] => square.stack.map((kind) => entryAt(read.kinds, kind).ink);
  return (
    stack.length > 1 &&
    inksOf({ stack }).every((ink) => read.alone[ink] && read.squares.some((other, i) => i !== n && inksOf(other).includes(ink)))
  );
}

/** ΔE00 of an overprint that was left out; the fit begins where the whole one ended. */
function missWithout(n: number, { read, before, x }: Whole, model: StackModel): number {
  const { stack, lab } = entryAt(read.squares, n);
  const squares = read.squares.filter((_, i) => i !== n);
  const stacked = squares.some((other) => other.stack.length > 1);
  const start = stacked ? x.slice() : startOf(x.length, { ...before, stacked });
  fit({ model, squares, before: { ...before, stacked } }, start);
  return deltaE2000(lab, model.lab(stack));
}

function check(misses: readonly number[], model: StackModel, read: ReadSamples): void {
  const worst = entryAt(read.squares, misses.indexOf(Math.max(...misses)));
  if (mean(misses) > MOST_MISS) {
    throw new EngineError('fit.samples', say.squaresContradictEachOther(nameOf(worst, read)));
  }
  const { trapping, k2 } = model.result();
  if (!within(TRAPPING, trapping)) {
    throw new EngineError('fit.trapping', say.onAnotherFilmFilm(fixed(trapping, 2), TRAPPING.least, TRAPPING.most));
  }
  if (!within(K2, k2)) {
    throw new EngineError('fit.surface', say.surfaceWouldThrowBack(fixed(k2, 2), K2.least, K2.most));
  }
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}
