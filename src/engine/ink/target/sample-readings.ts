import { defined, entryAt, num } from '../../base/at.ts';
import { labD50, type Lab } from '../../colour/lab.ts';
import { say } from '../../words/en/ink/target.ts';
import type { CgatsSample } from '../cgats/read-cgats.ts';
import type { Reading } from './target.ts';

/** What a measurement file gives for a target. */
export interface FileReadings<Square> {
  readings: [Square, Reading][];
  /** What was left out or joined, in sentences. */
  remarks: string[];
}

/**
 * Readings by sample id, which is the square's number; ids such as 'S07' count as 7. Several samples
 * of one square are averaged.
 */
export function sampleReadings<Square extends { number: number }>(
  samples: readonly CgatsSample[],
  squares: readonly Square[],
): FileReadings<Square> {
  const bySquare = new Map<Square, CgatsSample[]>();
  const strange: string[] = [];
  for (const sample of samples) {
    const digits = /^\D*(\d+)$/.exec(sample.id.trim())?.[1];
    const square = squares.find(({ number }) => number === Number(digits));
    if (square === undefined) strange.push(sample.id === '' ? sample.name : sample.id);
    else bySquare.set(square, [...(bySquare.get(square) ?? []), sample]);
  }
  const remarks: string[] = [];
  if (strange.length > 0) {
    const some = strange.slice(0, 5).join(', ');
    remarks.push(say.samplesAreNoNumbers(some, strange.length > 5 ? say.andMore(strange.length - 5) : '', squares.length));
  }
  const twice = [...bySquare].filter(([, list]) => list.length > 1).map(([square]) => square.number);
  if (twice.length > 0) remarks.push(say.squareAndMoreWas(twice.slice(0, 8).join(', '), twice.length > 8));
  const readings = [...bySquare].map(([square, list]): FileReadings<Square>['readings'][number] => [square, meanReading(list)]);
  return { readings: readings.sort(([a], [b]) => a.number - b.number), remarks };
}

/** The mean of samples of one square: of curves where all have one, else of Labs. */
function meanReading(list: readonly CgatsSample[]): Reading {
  const mean = (values: readonly ArrayLike<number>[]): number[] =>
    Array.from(entryAt(values, 0), (_, i) => values.reduce((sum, each) => sum + num(each, i), 0) / values.length);
  const curves = list.flatMap(({ reflectance }) => (reflectance === undefined ? [] : [reflectance]));
  if (curves.length === list.length) {
    const reflectance = mean(curves);
    return { lab: labD50(reflectance), reflectance };
  }
  return { lab: mean(list.map(({ lab, reflectance }) => lab ?? labD50(defined(reflectance)))) as Lab };
}
