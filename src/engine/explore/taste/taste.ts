import { f64 } from '../../base/at.ts';
import { say } from '../../words/en/explore/taste.ts';
import { type ChosenPair, pairsOf, type TasteChoice, type TastePrint } from './choices.ts';
import { fitPairs, type LogisticFit, type Pairs, varianceOf } from './logistic.ts';
import { type Scale, scaleOf, SIZE, standardised } from './scale.ts';
import { type TasteFacts, sketchOfText, TRAITS } from './traits.ts';

/** What is known of a weight before any choice, as 1 ÷ its variance; chosen on simulated tastes, see the tests. */
const RIDGE = 1;
const SQUARE_RIDGE = 4;
const WAVE_RIDGE = 2;
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

function factsOf({ measures, sketch }: TastePrint): TasteFacts {
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
function ridgeOf(i: number): number {
  if (i < TRAITS.length) return RIDGE;
  return i < 2 * TRAITS.length ? SQUARE_RIDGE : WAVE_RIDGE;
}

function fitted(pairs: Pairs): LogisticFit {
  const ridge = Float64Array.from({ length: SIZE }, (_, i) => ridgeOf(i));
  const fit = fitPairs(pairs, ridge);
  // With a ridge there always is one.
  if (fit === null) throw new RangeError(say.tasteCouldNotBe);
  return fit;
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
  const pairs = pairsOf(choices);
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

/** Parts into which choices are cut to see whether those left out are foretold. */
const PARTS = 5;
/** With fewer choices a part holds too little. */
const LEAST_CHOICES = 10;

/** How many choices were foretold by a taste that was learnt without them. */
export interface Foretold {
  right: number;
  of: number;
}

/**
 * Holds out a fifth of the choices after another, and counts those whose chosen print scores above the mean of what
 * it was chosen over.
 * @returns null with fewer than ten choices
 */
export function foretold(choices: readonly TasteChoice[], wall: readonly TasteFacts[]): Foretold | null {
  const pairs = pairsOf(choices);
  if (new Set(pairs.map(({ of }) => of)).size < LEAST_CHOICES) return null;
  const scale = scaleOf(wall);
  const margins = new Map<number, number>();
  for (let part = 0; part < PARTS; part++) {
    const held = pairs.filter(({ of }) => of % PARTS === part);
    const others = pairs.filter(({ of }) => of % PARTS !== part);
    const { weights } = fitted(numbersOf(others, scale));
    const { differences } = numbersOf(held, scale);
    held.forEach(({ of, count }, pair) => {
      let margin = 0;
      for (let i = 0; i < SIZE; i++) margin += f64(differences, pair * SIZE + i) * f64(weights, i);
      margins.set(of, (margins.get(of) ?? 0) + count * Math.round(margin * STEPS));
    });
  }
  return { right: [...margins.values()].filter((margin) => margin > 0).length, of: margins.size };
}
