import { defined, f64 } from '../../base/at.ts';
import { say } from '../../words/en/explore/taste.ts';
import { type ChosenPair, pairsOf, type TasteChoice, type TastePrint } from './choices.ts';
import { evidenceOf, fitPairs, type LogisticFit, type Pairs, varianceOf } from './logistic.ts';
import { type Scale, scaleOf, SIZE, standardised } from './scale.ts';
import { type TasteFacts, sketchOfText, TRAITS } from './traits.ts';

/** What is known of a weight before any choice, as 1 ÷ its variance; chosen on simulated tastes, see the tests. */
const RIDGE = 5;
const WAVE_RIDGE = 40;
/** Whether the middle of a trait, or both its ends, are liked at all is left to the choices: one of these is likeliest. */
const SQUARE_RIDGES = [5, 20, 80];
/** Scores are whole numbers of so many steps, so that every machine arranges alike. */
export const STEPS = 1000;

/** A taste as it was learnt from choices. */
export interface Taste {
  scale: Scale;
  /** What was chosen over what, in traits of that scale. */
  pairs: Pairs;
  /** The same, as prints. */
  chosen: readonly ChosenPair[];
  fit: LogisticFit;
}

/** What a taste knows of a print that was chosen, or passed over. */
export function factsOf({ measures, sketch }: TastePrint): TasteFacts {
  return { measures, sketch: sketchOfText(sketch) };
}

function numbersOf(pairs: readonly ChosenPair[], scale: Scale): Pairs {
  const known = new Map<string, Float64Array>();
  const numbers = (print: TastePrint): Float64Array => {
    const found = known.get(print.key) ?? standardised(factsOf(print), scale);
    known.set(print.key, found);
    return found;
  };
  const differences = new Float64Array(pairs.length * SIZE);
  pairs.forEach(({ chosen, other }, pair) => {
    const [a, b] = [numbers(chosen), numbers(other)];
    for (let i = 0; i < SIZE; i++) differences[pair * SIZE + i] = f64(a, i) - f64(b, i);
  });
  return { size: SIZE, differences, counts: Float64Array.from(pairs, ({ count }) => count) };
}

/** Traits come first, then their squares, then waves. */
function ridgeWith(squares: number): Float64Array {
  return Float64Array.from({ length: SIZE }, (_, i) => (i < TRAITS.length ? RIDGE : i < 2 * TRAITS.length ? squares : WAVE_RIDGE));
}

function fitted(pairs: Pairs): LogisticFit {
  let best: LogisticFit | null = null;
  let most = -Infinity;
  for (const squares of SQUARE_RIDGES) {
    const ridge = ridgeWith(squares);
    const fit = fitPairs(pairs, ridge);
    // With a ridge there always is one.
    if (fit === null) throw new RangeError(say.tasteCouldNotBe);
    const evidence = Math.round(STEPS * evidenceOf(pairs, ridge, fit));
    if (evidence <= most) continue;
    most = evidence;
    best = fit;
  }
  return defined(best ?? undefined);
}

/**
 * Learns a taste from choices.
 * @param wall prints by which traits are scaled: those that are to be told apart
 * @returns null when the choices say nothing: no print was chosen over another
 */
export function learnTaste(choices: readonly TasteChoice[], wall: readonly TasteFacts[]): Taste | null {
  return pairsOf(choices).length === 0 ? null : learnOnScale(choices, scaleOf(wall));
}

/** The same on a scale that is known. */
export function learnOnScale(choices: readonly TasteChoice[], scale: Scale): Taste | null {
  return learnPairs(pairsOf(choices), scale);
}

/** The same of the pairs that choices say. */
export function learnPairs(pairs: readonly ChosenPair[], scale: Scale): Taste | null {
  if (pairs.length === 0) return null;
  const numbers = numbersOf(pairs, scale);
  return { scale, pairs: numbers, chosen: pairs, fit: fitted(numbers) };
}

/** A print as a taste sees it. */
export interface TasteView {
  /** How much it is liked, in steps; only differences mean something: 1,000 more is chosen e times as often as not. */
  score: number;
  /** Standard deviation of the score, in the same steps. */
  doubt: number;
  numbers: Float64Array;
}

/** How a taste sees a print. */
export function viewOf({ scale, fit }: Taste, facts: TasteFacts): TasteView {
  const numbers = standardised(facts, scale);
  let score = 0;
  for (let i = 0; i < SIZE; i++) score += f64(numbers, i) * f64(fit.weights, i);
  return { score: Math.round(score * STEPS), doubt: Math.round(Math.sqrt(varianceOf(fit, numbers)) * STEPS), numbers };
}
