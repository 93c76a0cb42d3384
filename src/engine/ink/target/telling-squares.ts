import { entryAt, f64, num } from '../../base/at.ts';
import { stackReflectance } from '../film/film.ts';
import { rulerAt } from '../fit/lab-ruler.ts';
import { INK_TERMS, PRESS_TERMS, StackModel } from '../fit/stack-model.ts';
import { expectedMiss, StackProblem, startOf } from '../fit/stack-problem.ts';
import type { Ink, Paper } from '../types.ts';

/** How many squares are chosen unless something else is asked for. */
export const FEW_SQUARES = 12;
/** With more inks, piles of three are too many to look through. */
const MOST_FOR_THREES = 8;
const STEP = 1e-4;

/** A pile that could be pulled, inks as places in the list, and what a reading of it would tell. */
interface Candidate {
  stack: number[];
  /** Slopes of its three colour differences with each unknown, in expected misses. */
  rows: Float64Array[];
}

/**
 * The few squares of a target that tell most about inks, trapping and surface: every ink alone, then the
 * overprints that shrink what is left open the most, one after the other.
 * @param inks that are to be found, as they are thought to be
 * @param count squares in all; at least one for each ink
 * @returns ids, first down first; fewer than asked for when there are no more to choose from
 * Source: greedy D-optimal design, Fedorov (1972): each square maximises the determinant of the information.
 */
export function tellingSquares(inks: readonly Ink[], paper: Pick<Paper, 'reflectance'>, count: number = FEW_SQUARES): string[][] {
  const chosen = inks.map((_, ink) => [ink]);
  const curves = inks.map((ink) => Float64Array.from(stackReflectance([ink], paper.reflectance)));
  const model = new StackModel(Float64Array.from(paper.reflectance), curves);
  const before = { alone: inks.map(() => true), stacked: true };
  const x = startOf(model.size, before);
  let left = pilesOf(inks.length).map((stack): Candidate => ({ stack, rows: slopesOf(model, x, stack) }));
  const open = inverseOf(priorOf(model, x, before), model.size);
  for (const [ink] of chosen) if (ink !== undefined) learn(open, slopesOf(model, x, [ink]));
  while (chosen.length < count && left.length > 0) {
    const gains = left.map(({ rows }) => gainOf(open, rows));
    const best = entryAt(left, gains.indexOf(Math.max(...gains)));
    learn(open, best.rows);
    chosen.push(best.stack);
    left = left.filter((one) => one !== best);
  }
  return chosen.map((stack) => stack.map((ink) => entryAt(inks, ink).id));
}

/** Every ink over every other and itself; of few inks also every three different ones. */
function pilesOf(inks: number): number[][] {
  const all = Array.from({ length: inks }, (_, ink) => ink);
  const pairs = all.flatMap((first) => all.map((over) => [first, over]));
  if (inks > MOST_FOR_THREES) return pairs;
  const apart = pairs.filter(([first, over]) => first !== over);
  return [...pairs, ...apart.flatMap((pair) => all.filter((ink) => !pair.includes(ink)).map((ink) => [...pair, ink]))];
}

function priorOf(model: StackModel, x: Float64Array, before: { alone: readonly boolean[]; stacked: boolean }): Float64Array {
  const normal = new Float64Array(x.length * x.length);
  new StackProblem(model, [], before).sum(x, { normal, slope: new Float64Array(x.length) });
  // What is held by nothing would have no inverse.
  for (let i = 0; i < x.length; i++) normal[i * x.length + i] = f64(normal, i * x.length + i) + 1e-6;
  return normal;
}

function slopesOf(model: StackModel, x: Float64Array, stack: readonly number[]): Float64Array[] {
  model.set(x);
  const lab = model.lab(stack);
  const ruler = rulerAt(lab);
  const rows = ruler.map(() => new Float64Array(x.length));
  const moved = x.slice();
  for (const i of unknownsOf(stack, x.length)) {
    moved[i] = f64(x, i) + STEP;
    model.set(moved);
    moved[i] = f64(x, i);
    const after = model.lab(stack);
    const change = after.map((value, axis) => (value - num(lab, axis)) / STEP / expectedMiss(stack.length, false));
    ruler.forEach((row, at) => {
      entryAt(rows, at)[i] = row.reduce((sum, weight, axis) => sum + weight * num(change, axis), 0);
    });
  }
  return rows;
}

/** Those of the pile's inks, and of the press. */
function unknownsOf(stack: readonly number[], size: number): number[] {
  const inks = [...new Set(stack)].flatMap((ink) => Array.from({ length: INK_TERMS }, (_, term) => ink * INK_TERMS + term));
  return [...inks, ...Array.from({ length: PRESS_TERMS }, (_, term) => size - PRESS_TERMS + term)];
}

/** ln of how many times smaller the open volume gets by a reading: of det(1 + J·C·Jᵀ). */
function gainOf(open: Float64Array, rows: readonly Float64Array[]): number {
  const size = entryAt(rows, 0).length;
  const seen = new Float64Array(open);
  let gain = 0;
  for (const row of rows) gain += Math.log(takeRow(seen, row, size));
  return gain;
}

function learn(open: Float64Array, rows: readonly Float64Array[]): void {
  for (const row of rows) takeRow(open, row, row.length);
}

/** Takes one reading into what is left open, by Sherman and Morrison. @returns 1 + row·C·rowᵀ */
function takeRow(open: Float64Array, row: Float64Array, size: number): number {
  const used = [...row.keys()].filter((i) => row[i] !== 0);
  const spread = new Float64Array(size);
  for (let i = 0; i < size; i++) for (const j of used) spread[i] = f64(spread, i) + f64(open, i * size + j) * f64(row, j);
  const factor = used.reduce((sum, j) => sum + f64(row, j) * f64(spread, j), 1);
  for (let i = 0; i < size; i++) {
    const share = f64(spread, i) / factor;
    if (share !== 0) for (let j = 0; j < size; j++) open[i * size + j] = f64(open, i * size + j) - share * f64(spread, j);
  }
  return factor;
}

/** Inverse of a positive definite matrix, by Gauss and Jordan. */
function inverseOf(matrix: Float64Array, size: number): Float64Array {
  const left = matrix.slice();
  const out = new Float64Array(size * size);
  for (let i = 0; i < size; i++) out[i * size + i] = 1;
  for (let pivot = 0; pivot < size; pivot++) {
    const scale = f64(left, pivot * size + pivot);
    for (const each of [left, out]) for (let j = 0; j < size; j++) each[pivot * size + j] = f64(each, pivot * size + j) / scale;
    for (let i = 0; i < size; i++) {
      const factor = f64(left, i * size + pivot);
      if (i === pivot || factor === 0) continue;
      for (const each of [left, out])
        for (let j = 0; j < size; j++) each[i * size + j] = f64(each, i * size + j) - factor * f64(each, pivot * size + j);
    }
  }
  return out;
}
