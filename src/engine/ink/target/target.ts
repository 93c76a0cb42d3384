import type { Lab } from '../../colour/lab.ts';
import type { StackSquare } from '../fit/fit-target.ts';
import { printInks } from '../mix/mix.ts';
import type { Ink } from '../types.ts';

/** A square of a pulled target as it was measured: one ink, or one over another. */
export interface MeasuredSquare {
  first: string;
  /** Ink over it; null for a single film. */
  over: string | null;
  /** D50/2°. */
  lab: Lab;
  /** 36 bands, 0–1, where the instrument gave them; counts before the Lab. */
  reflectance?: number[] | undefined;
}

/** A square of a few that tell much: some films on each other, and what was read of it. */
export interface FewSquare {
  /** Ids of inks, first down first; one stroke each. */
  films: string[];
  /** D50/2°; absent while it is not read. */
  lab?: Lab | undefined;
  /** 36 bands, 0–1, where the instrument gave them; counts before the Lab. */
  reflectance?: number[] | undefined;
}

/** A target of inks over each other, pulled by hand and measured. */
export interface Target {
  /** Inks in the order of its rows and columns, each once. */
  inks: string[];
  squares: MeasuredSquare[];
  /** The few squares that were chosen to be pulled instead, in the order of their numbers; absent until they are. */
  few?: FewSquare[] | undefined;
}

/** A square of a target: one ink, or one over another. */
export interface TargetSquare {
  /** Counted along the rows from 1; an instrument's sample ids are these. */
  number: number;
  first: string;
  /** Null for the ink that is first down alone. */
  over: string | null;
}

/** What was measured of a square, without saying which square. */
export type Reading = Omit<MeasuredSquare, 'first' | 'over'>;

/** A square with its reading; null takes a reading away. */
export type SquareReading = readonly [TargetSquare, Reading | null];

/**
 * The squares of a target, row by row: each row is an ink first down, alone and then under every ink.
 * @param inks ids in the order of rows and columns
 */
export function targetSquares(inks: readonly string[]): TargetSquare[] {
  const across = inks.length + 1;
  return inks.flatMap((first, row) =>
    [null, ...inks].map((over, column): TargetSquare => ({ number: row * across + column + 1, first, over })),
  );
}

/** A project's target; before there is one, of all inks that are pulled. */
export function targetOf(target: Target | undefined, inks: readonly Ink[]): Target {
  return target ?? { inks: printInks(inks).map(({ id }) => id), squares: [] };
}

/**
 * A target with an ink put on it or taken off. New inks go last, so that the numbers of a printed
 * target change as little as may be; readings stay.
 */
export function withInk(target: Target, ink: string, on: boolean): Target {
  const others = target.inks.filter((id) => id !== ink);
  if (!on) return { ...target, inks: others };
  return target.inks.includes(ink) ? target : { ...target, inks: [...others, ink] };
}

/** Ids of all inks that a target names, as often as it does. */
export function namedInks({ inks, squares, few = [] }: Target): string[] {
  return [
    ...inks,
    ...few.flatMap(({ films }) => films),
    ...squares.flatMap(({ first, over }) => (over === null ? [first] : [first, over])),
  ];
}

/** Whether a reading is of a square. */
function isReadingOf(square: Pick<TargetSquare, 'first' | 'over'>, reading: Pick<MeasuredSquare, 'first' | 'over'>): boolean {
  return reading.first === square.first && reading.over === square.over;
}

/** The squares that are measured, with their readings, in the order of the squares. */
export function measuredSquares(target: Target, squares: readonly TargetSquare[]): { square: TargetSquare; reading: MeasuredSquare }[] {
  return squares.flatMap((square) => {
    const reading = readingOf(target, square);
    return reading === undefined ? [] : [{ square, reading }];
  });
}

/** What was measured of a square. */
export function readingOf(target: Target, square: Pick<TargetSquare, 'first' | 'over'>): MeasuredSquare | undefined {
  return target.squares.find((reading) => isReadingOf(square, reading));
}

/** A target with readings put in the place of those of the same squares; null takes one away. */
export function withReadings(target: Target, readings: readonly SquareReading[]): Target {
  const kept = target.squares.filter((old) => !readings.some(([square]) => isReadingOf(square, old)));
  const fresh = readings.flatMap(([{ first, over }, reading]) => (reading === null ? [] : [{ first, over, ...reading }]));
  return { ...target, squares: [...kept, ...fresh] };
}

/** All squares of a target that were measured, as they are fitted: those of its rows and columns, and the few. */
export function stacksOf({ squares, few = [] }: Target): StackSquare[] {
  const pairs = squares.map(({ first, over, lab, reflectance }): StackSquare => ({
    films: (over === null ? [first] : [first, over]).map((ink) => ({ ink })),
    lab,
    reflectance,
  }));
  const more = few
    .filter(({ lab, reflectance }) => lab !== undefined || reflectance !== undefined)
    .map(({ films, lab, reflectance }): StackSquare => ({ films: films.map((ink) => ({ ink })), lab, reflectance }));
  return [...pairs, ...more];
}
