import { entryAt, num } from '../../base/at.ts';
import { EngineError } from '../../base/error.ts';
import { deltaE2000 } from '../../colour/delta-e.ts';
import { labD50, type Lab } from '../../colour/lab.ts';
import { BANDS } from '../../colour/weights.ts';
import { curveFromColour, nearestPossible } from '../film/curves.ts';
import type { ReadStack } from './stack-problem.ts';

/** A colour as read: Lab (D50, 2°), or reflectance (36 bands, 0–1), or both. */
export interface Reading {
  lab?: readonly [number, number, number] | undefined;
  reflectance?: ArrayLike<number> | undefined;
}

/** A square of a target: the films that lie on the paper, first down first, and what it reads. */
export interface FilmSample extends Reading {
  films: readonly string[];
}

/** Samples that were read and agree with each other. */
export interface ReadSamples {
  /** Names of the films, as they first appear. */
  names: string[];
  squares: ReadStack[];
  /** As read, 36 bands; where only a colour was read, the smoothest that has it. */
  paper: Float64Array;
  /** Of each film: what it shows alone on the paper, or what comes nearest to that. */
  curves: Float64Array[];
  /** Of each film: whether it was read alone. */
  alone: boolean[];
}

/** Two readings of one stack that differ by more cannot both be right, ΔE00. */
const SAME_STACK = 6;
const BRIGHTEST = 1.2;

/**
 * Brings samples into order.
 * @throws EngineError 'fit.samples' for too few, for one ink only, for squares that contradict each
 *   other; 'fit.reading' for a reading that is no colour; in one sentence
 */
export function readSamples(samples: readonly FilmSample[], paper: Reading): ReadSamples {
  if (!(samples?.length >= 2)) {
    throw refuse('One square cannot tell films apart; give at least two, of two inks or more.');
  }
  const names = [...new Set(samples.flatMap(({ films }, i) => checkedFilms(films, i)))];
  if (names.length < 2) throw refuse(`All squares are of one ink, ${names[0] ?? ''}; add squares of another ink.`);
  const squares = samples.map(({ films, ...reading }, i): ReadStack => {
    const where = `Square ${i + 1} (${films.join(' + ')})`;
    return { stack: films.map((film) => names.indexOf(film)), lab: labOf(reading, where), reflectance: reading.reflectance };
  });
  squares.forEach((square, i) => {
    const other = squares.findIndex(
      ({ stack, lab }, j) => j < i && stack.join() === square.stack.join() && deltaE2000(lab, square.lab) > SAME_STACK,
    );
    if (other >= 0) {
      throw refuse(
        `Squares ${other + 1} and ${i + 1} are both ${nameOf(square, names)} but differ too much; read them again and leave one out.`,
      );
    }
  });
  labOf(paper ?? {}, 'The paper');
  const own = names.map((_, ink) => ownSquare(squares, ink));
  return {
    names,
    squares,
    paper: curveOf(paper),
    curves: own.map(curveOf),
    alone: own.map(({ stack }) => stack.length === 1),
  };
}

/** A stack in words: its films with a plus between them. */
export function nameOf({ stack }: Pick<ReadStack, 'stack'>, names: readonly string[]): string {
  return stack.map((ink) => entryAt(names, ink)).join(' + ');
}

/** The square that shows a film best: alone, else of few films with this one on top. */
function ownSquare(squares: readonly ReadStack[], ink: number): ReadStack {
  const rank = ({ stack }: ReadStack): number => (stack.includes(ink) ? 2 * stack.length + Number(stack.at(-1) !== ink) : Infinity);
  return squares.reduce((best, square) => (rank(square) < rank(best) ? square : best));
}

function curveOf({ lab, reflectance }: Reading): Float64Array {
  if (reflectance !== undefined) return Float64Array.from(reflectance);
  const [l, a, b] = lab ?? [0, 0, 0];
  // A print can read a little beyond what a surface can be.
  return curveFromColour(nearestPossible([l, a, b]));
}

function labOf({ lab, reflectance }: Reading, where: string): Lab {
  if (reflectance !== undefined) {
    const good = reflectance.length === BANDS && Array.from(reflectance).every((value) => value >= 0 && value <= BRIGHTEST);
    if (!good)
      throw new EngineError('fit.reading', `${where} needs ${BANDS} bands of reflectance from 380 to 730 nm, 0 to 1; read it again.`);
  }
  if (lab !== undefined) {
    const good = lab.length === 3 && Array.from(lab).every(Number.isFinite) && lab[0] >= 0 && lab[0] <= 110;
    if (!good) throw new EngineError('fit.reading', `${where} needs a colour of three numbers, L, a and b; read it again.`);
    return [num(lab, 0), num(lab, 1), num(lab, 2)];
  }
  if (reflectance === undefined)
    throw new EngineError('fit.reading', `${where} has neither a colour nor a curve; read it, or leave it out.`);
  return labD50(reflectance);
}

function checkedFilms(films: readonly string[], index: number): readonly string[] {
  if (Array.isArray(films) && films.length > 0 && films.every((film: unknown) => typeof film === 'string' && film !== '')) return films;
  throw refuse(`Square ${index + 1} names no films; list them first down first, and give the bare paper as the paper.`);
}

function refuse(sentence: string): EngineError {
  return new EngineError('fit.samples', sentence);
}
