import { entryAt, f64 } from '../../base/at.ts';
import { EngineError } from '../../base/error.ts';
import { K2, TRAPPING, within } from '../../base/limits.ts';
import { deltaE2000 } from '../../colour/delta-e.ts';
import { leastSquares } from './least-squares.ts';
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

/**
 * Fits films, trapping and surface to squares, then again without each overprint.
 * @yields after each of these fits
 * @throws EngineError 'fit.samples', 'fit.trapping', 'fit.surface' in one sentence
 */
export function* fitSquares(read: ReadSamples): Generator<void, SquaresFit> {
  const { squares } = read;
  const before: Beforehand = { curved: read.curves.map((curve) => curve !== null), stacked: squares.some(({ stack }) => stack.length > 1) };
  const model = new StackModel(read);
  const x = startOf(model.size, before);
  fit({ model, squares, before }, x);
  const misses = squares.map(({ stack, lab }) => deltaE2000(lab, model.lab(stack)));
  check(misses, model, read);
  const left: (number | null)[] = [];
  const without = new StackModel(read);
  for (const [n, square] of squares.entries()) {
    yield;
    left.push(missWithout(n, square, { read, before, model: without, x }));
  }
  const known = left.filter((miss) => miss !== null);
  return { model, misses, left, looMean: mean(known) };
}

interface Fit {
  model: StackModel;
  squares: readonly ReadStack[];
  before: Beforehand;
}

function fit({ model, squares, before }: Fit, x: Float64Array): void {
  const run = leastSquares(new StackProblem(model, squares, before), x);
  while (!run.next().done);
  // A hair beyond what can be is noise; more is told.
  const at = x.length - K2_FROM_END;
  const k2 = Math.min(K2.most, Math.max(K2.least, f64(x, at)));
  if (Math.abs(k2 - f64(x, at)) < K2_NOISE) x[at] = k2;
  model.set(x);
}

/** ΔE00 of an overprint that was left out; the fit begins where the whole one ended. */
function missWithout(
  n: number,
  { stack, lab }: ReadStack,
  whole: Omit<Fit, 'squares'> & { read: ReadSamples; x: Float64Array },
): number | null {
  const { read, before, model, x } = whole;
  const others = read.squares.filter((_, i) => i !== n);
  const inksOf = (square: Pick<ReadStack, 'stack'>): number[] => square.stack.map((kind) => entryAt(read.kinds, kind).ink);
  const known = inksOf({ stack }).every((ink) => read.alone[ink] && others.some((other) => inksOf(other).includes(ink)));
  // The curve of an ink that was never read alone comes from its overprints, this one perhaps.
  if (stack.length < 2 || !known) return null;
  const stacked = others.some((other) => other.stack.length > 1);
  const start = stacked ? x.slice() : startOf(x.length, { ...before, stacked });
  fit({ model, squares: others, before: { ...before, stacked } }, start);
  return deltaE2000(lab, model.lab(stack));
}

function check(misses: readonly number[], model: StackModel, read: ReadSamples): void {
  const worst = entryAt(read.squares, misses.indexOf(Math.max(...misses)));
  if (mean(misses) > MOST_MISS) {
    throw new EngineError(
      'fit.samples',
      `The squares contradict each other, ${nameOf(worst, read)} the most; look whether films are listed first down first, and read them again.`,
    );
  }
  const { trapping, k2 } = model.result();
  if (!within(TRAPPING, trapping)) {
    throw new EngineError(
      'fit.trapping',
      `On another film a film would be ${trapping.toFixed(2)} times as thick, and only ${TRAPPING.least} to ${TRAPPING.most} happens on a press; look whether films are listed first down first.`,
    );
  }
  if (!within(K2, k2)) {
    throw new EngineError(
      'fit.surface',
      `The surface would throw back ${k2.toFixed(2)} of the light inside, and only ${K2.least} to ${K2.most} happens on prints; look whether films are listed first down first, and read the darkest squares again.`,
    );
  }
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}
