import { entryAt, num } from '../../base/at.ts';
import { EngineError } from '../../base/error.ts';
import { deltaE2000 } from '../../colour/delta-e.ts';
import { labD50, type Lab } from '../../colour/lab.ts';
import { BANDS } from '../../colour/weights.ts';
import { say } from '../../words/en/ink/fit.ts';
import { curveFromColour, nearestPossible } from '../film/curves.ts';
import type { FilmKind, InkPair } from './stack-model.ts';
import type { ReadStack } from './stack-problem.ts';

/** A colour as read: Lab (D50, 2°), or reflectance (36 bands, 0–1), or both. */
export interface Reading {
  lab?: readonly [number, number, number] | undefined;
  reflectance?: ArrayLike<number> | undefined;
}

/** How thick a film is, where squares of one ink differ in it. */
interface SampleFilm {
  /** In films of the ink's own curves, by strokes and ink volume. */
  thickness: number;
  /** Tells meshes apart; '' for that on which the ink's own curves were found. */
  mesh: string;
}

/** A square of a target: the films that lie on the paper, first down first, and what it reads. */
export interface FilmSample extends Reading {
  films: readonly string[];
  /** One a film; left out, all are one stroke through the ink's own mesh. */
  how?: readonly SampleFilm[] | undefined;
}

/** Samples that were read and agree with each other. */
export interface ReadSamples {
  /** Names of the films, as they first appear. */
  names: string[];
  squares: ReadStack[];
  /** First one of each ink, a film of its own curves, in the order of the names; then those of other thickness. */
  kinds: FilmKind[];
  /** Keys of the meshes that are not the inks' own. */
  meshNames: string[];
  meshes: number;
  /** Inks that lie on each other in squares. */
  pairs: InkPair[];
  /** As read, 36 bands; where only a colour was read, the smoothest that has it. */
  paper: Float64Array;
  /** Of each film: the curve that it shows alone on the paper; null where none was read. */
  curves: (Float64Array | null)[];
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
    throw refuse(say.oneSquareCannotTell);
  }
  const names = [...new Set(samples.flatMap(({ films }, i) => checkedFilms(films, i)))];
  if (names.length < 2) throw refuse(say.allSquaresAreOf(names[0] ?? ''));
  const kinds = names.map((_, ink): FilmKind => ({ ink, thickness: 1, mesh: -1 }));
  const meshNames = [...new Set(samples.flatMap(({ how = [] }) => how.map(({ mesh }) => mesh)))].filter((mesh) => mesh !== '');
  const kindOf = (film: string, how: SampleFilm | undefined): number => {
    const kind: FilmKind = { ink: names.indexOf(film), thickness: how?.thickness ?? 1, mesh: meshNames.indexOf(how?.mesh ?? '') };
    const known = kinds.findIndex(({ ink, thickness, mesh }) => ink === kind.ink && thickness === kind.thickness && mesh === kind.mesh);
    return known < 0 ? kinds.push(kind) - 1 : known;
  };
  const squares = samples.map(({ films, how, ...reading }, i): ReadStack => {
    const where = `Square ${i + 1} (${films.join(' + ')})`;
    return { stack: films.map((film, at) => kindOf(film, how?.[at])), lab: labOf(reading, where), reflectance: reading.reflectance };
  });
  squares.forEach((square, i) => {
    const other = squares.findIndex(
      ({ stack, lab }, j) => j < i && stack.join() === square.stack.join() && deltaE2000(lab, square.lab) > SAME_STACK,
    );
    if (other >= 0) {
      throw refuse(say.squaresAndAreBoth(other + 1, i + 1, nameOf(square, { names, kinds })));
    }
  });
  labOf(paper ?? {}, say.thePaper);
  return {
    names,
    squares,
    kinds,
    meshNames,
    meshes: meshNames.length,
    pairs: pairsOf(squares, kinds),
    paper: curveOf(paper),
    curves: names.map((_, ink) => {
      const own = squares.find(({ stack, reflectance }) => stack.length === 1 && stack[0] === ink && reflectance !== undefined);
      return own?.reflectance === undefined ? null : Float64Array.from(own.reflectance);
    }),
    alone: names.map((_, ink) => squares.some(({ stack }) => stack.length === 1 && kinds[num(stack, 0)]?.ink === ink)),
  };
}

function pairsOf(squares: readonly ReadStack[], kinds: readonly FilmKind[]): InkPair[] {
  const pairs = squares.flatMap(({ stack }) =>
    stack.slice(1).map((kind, at): InkPair => ({ under: entryAt(kinds, num(stack, at)).ink, over: entryAt(kinds, kind).ink })),
  );
  return pairs.filter(({ under, over }, i) => pairs.findIndex((other) => other.under === under && other.over === over) === i);
}

/** A stack in words: its films with a plus between them. */
export function nameOf({ stack }: Pick<ReadStack, 'stack'>, { names, kinds }: Pick<ReadSamples, 'names' | 'kinds'>): string {
  return stack.map((kind) => entryAt(names, entryAt(kinds, kind).ink)).join(' + ');
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
    if (!good) throw new EngineError('fit.reading', say.needsBandsOfReflectance(where, BANDS));
  }
  if (lab !== undefined) {
    const good = lab.length === 3 && Array.from(lab).every(Number.isFinite) && lab[0] >= 0 && lab[0] <= 110;
    if (!good) throw new EngineError('fit.reading', say.needsColourOfThree(where));
    return [num(lab, 0), num(lab, 1), num(lab, 2)];
  }
  if (reflectance === undefined) throw new EngineError('fit.reading', say.hasNeitherColourNor(where));
  return labD50(reflectance);
}

function checkedFilms(films: readonly string[], index: number): readonly string[] {
  if (Array.isArray(films) && films.length > 0 && films.every((film: unknown) => typeof film === 'string' && film !== '')) return films;
  throw refuse(say.squareNamesNoFilms(index + 1));
}

function refuse(sentence: string): EngineError {
  return new EngineError('fit.samples', sentence);
}
