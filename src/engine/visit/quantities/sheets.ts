import { EngineError } from '../../base/error.ts';
import { say } from '../../words/en/visit/quantities.ts';

/**
 * Sheets to start with so that enough stay good: rejects compound by run, ⌈good / (1 − r)^runs⌉,
 * and sheets spoiled while setting up come on top.
 * @param good sheets wanted
 * @param rejectPerRun share spoiled at each run, 0 to less than 1
 * @param runs how often each sheet goes over the press
 * @param setUpSheets sheets used up in setting up, in all
 * @throws EngineError 'quantities.bad-number'
 * Source: the product rule of a series of independent steps (NIST/SEMATECH e-Handbook of Statistical
 * Methods, 8.1.8.2).
 */
export function sheetsWithOvers(good: number, rejectPerRun: number, runs: number, setUpSheets = 0): number {
  for (const [name, value] of [
    [say.goodSheets, good],
    ['runs', runs],
    [say.setUpSheets, setUpSheets],
  ] as const) {
    if (!(Number.isInteger(value) && value >= 0)) {
      throw new EngineError('quantities.bad-number', say.numberOfIsGive(name, value));
    }
  }
  if (!(rejectPerRun >= 0 && rejectPerRun < 1)) {
    throw new EngineError('quantities.bad-number', say.shareOfRejectsIs(rejectPerRun * 100));
  }
  const start = good / (1 - rejectPerRun) ** runs;
  if (!(start <= 1e9)) {
    throw new EngineError('quantities.bad-number', say.atRejectsOverRuns(rejectPerRun * 100, runs));
  }
  // A hair is taken off so that binary dust does not add a sheet.
  return Math.ceil(start - 1e-9) + setUpSheets;
}
