import { f64 } from '../base/at.ts';

/** A stretch of a ring that faces another outline, and how far that lies off at its ends, mm. */
export interface Stretch {
  fromMm: number;
  toMm: number;
  fromApartMm: number;
  toApartMm: number;
}

/** A part of a ring along which another outline keeps its distance. */
export interface SteadyPart {
  fromMm: number;
  toMm: number;
  /** The widest that they stand apart, mm. */
  apartMm: number;
}

/** The distance is taken so many times along the least length. */
const SAMPLES = 8;

/** Edges that come nearer or farther by more than this share of their length cross or touch: 1.7° (a choice, no source). */
const STEADY = 0.03;

/** Curves are straight edges, and two of one curve need not have the same corners: they differ by as much, mm. */
const ROUGH_MM = 0.03;

/** Of all that lies within reach, as much is steady at least: where two bends touch, less is. */
const MOSTLY = 0.5;

/**
 * The parts of a run of stretches along which the distance of the two outlines hardly changes: true joints. Edges that
 * cross, or that bend towards each other and away again, lie as near for a while, but change their distance all the time.
 * @param run of one ring, each going on from the one before
 * @param leastMm parts are at least so long
 */
export function steadyParts(run: readonly Stretch[], leastMm: number): SteadyPart[] {
  const startMm = run.reduce((least, { fromMm }) => Math.min(least, fromMm), Infinity);
  const lengthMm = run.reduce((most, { toMm }) => Math.max(most, toMm), -Infinity) - startMm;
  if (!(lengthMm >= leastMm)) return [];
  const steps = Math.ceil((lengthMm / leastMm) * SAMPLES);
  const at = (step: number): number => startMm + (lengthMm * step) / steps;
  const apart = distances(run, steps, { startMm, lengthMm });
  const window = Math.min(steps, SAMPLES);
  const slackMm = Math.max(ROUGH_MM, STEADY * leastMm);
  const parts: SteadyPart[] = [];
  let [first, last] = [0, -1];
  const close = (): void => {
    if (last > first) parts.push({ fromMm: at(first), toMm: at(last), apartMm: rangeOf(apart, first, last)[1] });
  };
  for (let from = 0; from + window <= steps; from++) {
    const [least, most] = rangeOf(apart, from, from + window);
    if (most - least > slackMm) continue;
    if (from > last) {
      close();
      first = from;
    }
    last = from + window;
  }
  close();
  const steadyMm = parts.reduce((sum, { fromMm, toMm }) => sum + toMm - fromMm, 0);
  return steadyMm < MOSTLY * lengthMm ? [] : parts;
}

/** How far off the other outline lies at even steps along a run, the nearest of it; NaN where it breaks off. */
function distances(run: readonly Stretch[], steps: number, { startMm, lengthMm }: { startMm: number; lengthMm: number }): Float64Array {
  const apart = new Float64Array(steps + 1).fill(NaN);
  for (const { fromMm, toMm, fromApartMm, toApartMm } of run) {
    const stepOf = (mm: number): number => ((mm - startMm) / lengthMm) * steps;
    for (let step = Math.ceil(stepOf(fromMm) - 1e-9); step <= stepOf(toMm) + 1e-9; step++) {
      const along = Math.min(1, Math.max(0, (startMm + (lengthMm * step) / steps - fromMm) / (toMm - fromMm)));
      const here = fromApartMm + along * (toApartMm - fromApartMm);
      if (!(Math.abs(f64(apart, step)) <= Math.abs(here))) apart[step] = here;
    }
  }
  return apart;
}

function rangeOf(values: Float64Array, from: number, to: number): [least: number, most: number] {
  let [least, most] = [Infinity, -Infinity];
  for (let i = from; i <= to; i++) {
    const value = f64(values, i);
    if (value < least) least = value;
    if (value > most) most = value;
  }
  return [least, most];
}
