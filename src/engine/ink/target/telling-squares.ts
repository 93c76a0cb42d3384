import { entryAt, f64, num } from '../../base/at.ts';
import { labD50 } from '../../colour/lab.ts';
import { BANDS } from '../../colour/weights.ts';
import { type FilmCurves, stackReflectance } from '../film/film.ts';
import { USUAL_SURFACE, USUAL_TRAPPING } from '../film/printing.ts';
import { rulerAt } from '../fit/lab-ruler.ts';
import type { Ink, Paper } from '../types.ts';

/** How many squares are chosen unless something else is asked for. */
export const FEW_SQUARES = 12;
/** With more inks, piles of three are too many to look through. */
const MOST_FOR_THREES = 8;
const STEP = 1e-3;

// What is open of an ink: ln K and ln S at knots evenly spaced over the bands; of the press: ln of trapping,
// and k2. How far each is thought to be off before any square is read: chosen, and from memory.
const K_KNOTS = 6;
const S_KNOTS = 2;
const INK_TERMS = K_KNOTS + S_KNOTS;
const PRESS_TERMS = 2;
const K_SPREAD = 0.5;
const S_SPREAD = 1.5;
const PRESS_SPREADS = [0.15, 0.15];
/** S·X that any film may have unseen. */
const UNSEEN_S = 0.015;
/** What a model is expected to miss a square by, ΔE: one film, more films. */
const MISS_ALONE = 0.4;
const MISS = 1.2;

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
  const size = inks.length * INK_TERMS + PRESS_TERMS;
  const slopes = (stack: readonly number[]): Float64Array[] => slopesOf(inks, paper.reflectance, stack, size);
  let left = pilesOf(inks.length).map((stack): Candidate => ({ stack, rows: slopes(stack) }));
  const open = openBefore(inks.length, size);
  for (const stack of chosen) learn(open, slopes(stack));
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

/** Variances before any square is read. */
function openBefore(inks: number, size: number): Float64Array {
  const open = new Float64Array(size * size);
  for (let i = 0; i < size; i++) {
    const press = i - inks * INK_TERMS;
    const spread = press >= 0 ? num(PRESS_SPREADS, press) : i % INK_TERMS < K_KNOTS ? K_SPREAD : S_SPREAD;
    open[i * size + i] = spread * spread;
  }
  return open;
}

function slopesOf(inks: readonly Ink[], paper: ArrayLike<number>, stack: readonly number[], size: number): Float64Array[] {
  const press = size - PRESS_TERMS;
  const lab = labOf(inks, paper, stack, { at: -1, press });
  const ruler = rulerAt(lab);
  const rows = ruler.map(() => new Float64Array(size));
  const expected = stack.length === 1 ? MISS_ALONE : MISS;
  for (const at of unknownsOf(stack, size)) {
    const moved = labOf(inks, paper, stack, { at, press });
    const change = moved.map((value, axis) => (value - num(lab, axis)) / STEP / expected);
    ruler.forEach((row, i) => {
      entryAt(rows, i)[at] = row.reduce((sum, weight, axis) => sum + weight * num(change, axis), 0);
    });
  }
  return rows;
}

/** The colour of a pile with one unknown moved by a step; −1 for none. */
function labOf(inks: readonly Ink[], paper: ArrayLike<number>, stack: readonly number[], { at, press }: { at: number; press: number }) {
  const films = stack.map((ink) => movedFilm(entryAt(inks, ink), at < press && Math.floor(at / INK_TERMS) === ink ? at % INK_TERMS : -1));
  const trapping = { factor: USUAL_TRAPPING * (at === press ? Math.exp(STEP) : 1) };
  const surface = { k1: USUAL_SURFACE.k1, k2: USUAL_SURFACE.k2 + (at === press + 1 ? STEP : 0) };
  return labD50(stackReflectance(films, paper, { surface, trapping }));
}

function movedFilm({ kx, sx }: FilmCurves, term: number): FilmCurves {
  if (term < 0) return { kx, sx };
  const hump = (knots: number, knot: number, band: number): number =>
    Math.exp(STEP * Math.max(0, 1 - Math.abs((band * (knots - 1)) / (BANDS - 1) - knot)));
  if (term < K_KNOTS) return { kx: Float64Array.from(kx, (k, band) => k * hump(K_KNOTS, term, band)), sx };
  return { kx, sx: Float64Array.from(sx, (s, band) => (s + UNSEEN_S) * hump(S_KNOTS, term - K_KNOTS, band) - UNSEEN_S) };
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
