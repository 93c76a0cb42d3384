import { f64, num, u32 } from '../../base/at.ts';
import { randomFrom } from '../../base/random.ts';
import { choleskyFactor, solveFactored } from '../../ink/fit/least-squares.ts';
import { fitPairs, type Pairs } from './logistic.ts';

/** So many times all choices are made anew, by chance. */
const TRIALS = 499;
/** Chances of an option are whole numbers of so many parts. */
const PARTS = 1_000_000;
/** How clear something is is compared in hundredths, so that every machine finds the same. */
const STEPS = 100;
/** What is left of a column's square beside what is known, below which it tells nothing of its own. */
const OF_ITS_OWN = 0.1;
/** What is known before of a weight, as 1 ÷ its variance. */
const RIDGE = 0.5;

/** Choices, as pairs in which one was chosen over the other. */
export interface Choices {
  pairs: Pairs;
  /** Which choice each pair is of, in rising order. */
  of: readonly number[];
}

/** A column of the pairs' numbers that choices may go by. */
export interface Candidate {
  column: number;
  /** Only less of it counts, and it must be clearer by this, in squared standard deviations; 0 for both ways. */
  lessOnly: number;
}

/** The clearest of some columns. */
export interface Clearest {
  /** Number of the candidate. */
  at: number;
  /** Whether more of it is chosen, rather than less. */
  more: boolean;
  /** How often choices by chance make one of the candidates as clear, 0–1. */
  chance: number;
}

/** Options of all choices, the chosen one of each first, as numbers of a few columns. */
interface Options {
  /** Options × columns. */
  values: Float64Array;
  columns: number;
}

/**
 * By which of some columns choices were made most clearly, beside columns by which they are known to be made.
 * Every choice is made anew many times, as it would be by what is known alone (by the toss of a coin where nothing
 * is), and it is counted how often the clearest candidate is then as clear: with many candidates chance makes some one
 * clear often. Differences count the less the larger they are, as one who always takes the lighter print takes it at
 * any difference.
 * @param known columns of the pairs' numbers
 * @param upTo a chance above which it need not be known how large it is
 * @returns null when no candidate tells anything
 * Source: score test of a logistic model; p of the greatest of many, P. H. Westfall and S. S. Young (1993),
 * Resampling-Based Multiple Testing, 2.3.
 */
export function clearest(
  { pairs, of }: Choices,
  known: readonly number[],
  candidates: readonly Candidate[],
  upTo: number,
): Clearest | null {
  const starts = startsOf(of);
  const chances = chancesOf(optionsOf(pairs, starts, known), starts, weightsOf(pairs, known));
  const columns = candidates.map(({ column }) => column);
  const options = centred(saturated(optionsOf(pairs, starts, columns), starts), starts, chances);
  const whole = squaresOf(options, chances);
  withoutKnown(options, centred(optionsOf(pairs, starts, known), starts, chances), chances);
  const squares = squaresOf(options, chances).map((square, i) => (square < OF_ITS_OWN * f64(whole, i) ? 0 : square));
  const found = best(
    sumsOf(options, starts, () => 0),
    squares,
    candidates,
  );
  if (found === null) return null;
  const random = randomFrom(`by chance ${of.length}`);
  let asClear = 1;
  for (let trial = 0; trial < TRIALS && asClear <= upTo * (TRIALS + 1); trial++) {
    const sums = sumsOf(options, starts, (from, to) => drawn(chances, from, to, random.int(PARTS)));
    if ((best(sums, squares, candidates)?.clear ?? -Infinity) >= found.clear) asClear++;
  }
  return { at: found.at, more: found.more, chance: asClear / (TRIALS + 1) };
}

/** Where the options of each choice begin, and where the last ends: a choice has an option for each of its pairs, and one more. */
function startsOf(of: readonly number[]): Uint32Array {
  const starts = [0];
  of.forEach((choice, pair) => {
    if (pair === 0 || choice !== of[pair - 1]) starts.push(num(starts, starts.length - 1) + 1);
    starts[starts.length - 1] = num(starts, starts.length - 1) + 1;
  });
  return Uint32Array.from(starts);
}

function eachOption(starts: Uint32Array, act: (from: number, to: number, choice: number) => void): void {
  for (let choice = 0; choice + 1 < starts.length; choice++) act(u32(starts, choice), u32(starts, choice + 1), choice);
}

/** What each option is more than the chosen one. */
function optionsOf({ differences, size }: Pairs, starts: Uint32Array, columns: readonly number[]): Options {
  const values = new Float64Array(u32(starts, starts.length - 1) * columns.length);
  eachOption(starts, (from, to, choice) => {
    for (let option = from + 1; option < to; option++) {
      const pair = option - choice - 1;
      columns.forEach((column, i) => (values[option * columns.length + i] = -f64(differences, pair * size + column)));
    }
  });
  return { values, columns: columns.length };
}

/** The sum of what an option is more than each other of its choice, large differences shortened. */
function saturated({ values, columns }: Options, starts: Uint32Array): Options {
  const out = new Float64Array(values.length);
  eachOption(starts, (from, to) => {
    for (let one = from; one < to; one++) {
      for (let other = from; other < to; other++) {
        for (let i = 0; i < columns; i++) {
          const more = f64(values, one * columns + i) - f64(values, other * columns + i);
          out[one * columns + i] = f64(out, one * columns + i) + (2 * more) / Math.sqrt(1 + more * more) / (to - from);
        }
      }
    }
  });
  return { values: out, columns };
}

function weightsOf({ differences, counts, size }: Pairs, known: readonly number[]): Float64Array {
  const own = known.length;
  const part = Float64Array.from({ length: counts.length * own }, (_, at) =>
    f64(differences, Math.floor(at / own) * size + num(known, at % own)),
  );
  const ridge = new Float64Array(own).fill(RIDGE);
  return fitPairs({ size: own, differences: part, counts }, ridge)?.weights ?? new Float64Array(own);
}

/** How likely each option is by the weights, in parts that make a whole for each choice. */
function chancesOf({ values, columns }: Options, starts: Uint32Array, weights: Float64Array): Float64Array {
  const chances = new Float64Array(u32(starts, starts.length - 1));
  eachOption(starts, (from, to) => {
    let sum = 0;
    for (let option = from; option < to; option++) {
      let worth = 0;
      for (let i = 0; i < columns; i++) worth += f64(weights, i) * f64(values, option * columns + i);
      chances[option] = Math.exp(worth);
      sum += f64(chances, option);
    }
    for (let option = from; option < to; option++) chances[option] = Math.round((PARTS * f64(chances, option)) / sum) / PARTS;
  });
  return chances;
}

/** Takes from each column its mean over each choice's options. @returns the same options */
function centred(options: Options, starts: Uint32Array, chances: Float64Array): Options {
  const { values, columns } = options;
  eachOption(starts, (from, to) => {
    for (let i = 0; i < columns; i++) {
      let [mean, sum] = [0, 0];
      for (let option = from; option < to; option++) {
        mean += f64(chances, option) * f64(values, option * columns + i);
        sum += f64(chances, option);
      }
      for (let option = from; option < to; option++) values[option * columns + i] = f64(values, option * columns + i) - mean / sum;
    }
  });
  return options;
}

/** Takes from each column what goes with what is known, so that this is not told of twice. */
function withoutKnown({ values, columns }: Options, known: Options, chances: Float64Array): void {
  const size = known.columns;
  if (size === 0) return;
  const normal = new Float64Array(size * size);
  const sides = Array.from({ length: columns }, () => new Float64Array(size));
  chances.forEach((chance, option) => {
    for (let i = 0; i < size; i++) {
      const at = chance * f64(known.values, option * size + i);
      for (let k = 0; k <= i; k++) normal[i * size + k] = f64(normal, i * size + k) + at * f64(known.values, option * size + k);
      sides.forEach((side, c) => (side[i] = f64(side, i) + at * f64(values, option * columns + c)));
    }
  });
  if (!choleskyFactor(normal, size)) return;
  sides.forEach((side, c) => {
    solveFactored(normal, side, size);
    for (let option = 0; option < chances.length; option++) {
      let goes = 0;
      for (let i = 0; i < size; i++) goes += f64(side, i) * f64(known.values, option * size + i);
      values[option * columns + c] = f64(values, option * columns + c) - goes;
    }
  });
}

function squaresOf({ values, columns }: Options, chances: Float64Array): Float64Array {
  const squares = new Float64Array(columns);
  chances.forEach((chance, option) => {
    for (let i = 0; i < columns; i++) squares[i] = f64(squares, i) + chance * f64(values, option * columns + i) ** 2;
  });
  return squares;
}

/** The sum of each column over one option of every choice. @param take which, of those from a number to another */
function sumsOf({ values, columns }: Options, starts: Uint32Array, take: (from: number, to: number) => number): Float64Array {
  const sums = new Float64Array(columns);
  eachOption(starts, (from, to) => {
    const base = (from + take(from, to)) * columns;
    for (let i = 0; i < columns; i++) sums[i] = f64(sums, i) + f64(values, base + i);
  });
  return sums;
}

function drawn(chances: Float64Array, from: number, to: number, part: number): number {
  let left = part;
  for (let option = from; option < to - 1; option++) {
    left -= Math.round(f64(chances, option) * PARTS);
    if (left < 0) return option - from;
  }
  return to - 1 - from;
}

function best(
  sums: Float64Array,
  squares: Float64Array,
  candidates: readonly Candidate[],
): { at: number; more: boolean; clear: number } | null {
  let found: { at: number; more: boolean; clear: number } | null = null;
  candidates.forEach(({ lessOnly }, at) => {
    const [sum, square] = [f64(sums, at), f64(squares, at)];
    if (square === 0 || (lessOnly > 0 && sum > 0)) return;
    const clear = Math.round(STEPS * ((sum * sum) / square - lessOnly));
    if (clear > (found?.clear ?? -Infinity)) found = { at, more: sum > 0, clear };
  });
  return found;
}
