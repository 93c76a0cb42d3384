import { EngineError } from '../../base/error.ts';
import { deltaE2000 } from '../../colour/delta-e.ts';
import type { Lab } from '../../colour/lab.ts';
import { say } from '../../words/en/ink/drift.ts';
import type { Surface } from '../film/saunderson.ts';
import { swatchLab } from '../film/swatch.ts';
import type { Ink, InkMeasurement, Paper } from '../types.ts';

const DATE = /^\d{4}-(\d{2})-(\d{2})$/;
const DAYS = [31, 29, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

/**
 * An ink that was measured again: its curves are those of the last date, what it was before is kept.
 * @param measurement dated as '2026-03-14'; another of the same day takes the place of the first
 * @throws EngineError 'ink.date' for what is no date
 */
export function measuredAgain(ink: Ink, measurement: InkMeasurement): Ink {
  const [, month, day] = DATE.exec(measurement.date) ?? [];
  if (!(Number(day) >= 1 && Number(day) <= (DAYS[Number(month) - 1] ?? 0))) {
    throw new EngineError('ink.date', say.isNoDateWrite(measurement.date));
  }
  const { overWhite, overBlack, kx, sx } = ink;
  const before = ink.measurements ?? [{ date: '', overWhite, overBlack, kx, sx }];
  const measurements = [...before.filter(({ date }) => date !== measurement.date), measurement].sort((a, b) => (a.date < b.date ? -1 : 1));
  const last = measurements.at(-1) ?? measurement;
  const { fit: _, ...rest } = ink;
  return {
    ...rest,
    basis: 'measured',
    overWhite: [...last.overWhite],
    overBlack: [...last.overBlack],
    kx: [...last.kx],
    sx: [...last.sx],
    measurements,
  };
}

/** How far the ink of the last date is from that of an earlier one. */
export interface DriftLine {
  /** '' for the curves from before it was first measured again. */
  date: string;
  /** One stroke on the paper then, D50/2°. */
  lab: Lab;
  /** ΔE00 of one stroke on the paper, and over the card's white and black. */
  onPaper: number;
  overWhite: number;
  overBlack: number;
}

/**
 * How an ink has drifted.
 * @param surface that prints are seen through; left out, there is none
 * @returns a line for each date, the last one last with 0; none where it was measured once only
 */
export function inkDrift(ink: Ink, paper: Pick<Paper, 'reflectance'>, surface?: Surface): DriftLine[] {
  const lines = ink.measurements ?? [];
  const last = lines.at(-1);
  if (last === undefined) return [];
  const on = (one: InkMeasurement): Lab => swatchLab(one, paper.reflectance, { surface });
  return lines.map((line) => ({
    date: line.date,
    lab: on(line),
    onPaper: deltaE2000(on(line), on(last)),
    overWhite: deltaE2000(line.overWhite, last.overWhite),
    overBlack: deltaE2000(line.overBlack, last.overBlack),
  }));
}
