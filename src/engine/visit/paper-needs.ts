import { sheetsWithOvers } from './quantities/sheets.ts';
import { type VisitFigures, wholeFigures } from './visit-figures.ts';

/** Sheets to print of a run so that overs are there to spoil. */
export function withOvers(sheets: number, overs: number): number {
  return Math.ceil(sheets * (1 + overs) - 1e-9);
}

/** Paper to cut for a run: good sheets, overs and proofs. */
export function paperToCut(good: number, given: VisitFigures): { good: number; overs: number; proofs: number; cut: number } {
  const { overs: share, proofs } = wholeFigures(given);
  const overs = withOvers(good, share) - good;
  return { good, overs, proofs, cut: good + overs + proofs };
}

/** Spoiled at each pull, share, to show how rejects compound; common practice, no source. */
export const REJECTS_A_PULL = 0.02;

/**
 * Sheets to begin with when a share is spoiled at each pull, beside the flat share of overs.
 * @param good sheets wanted
 * @param pulls of the recipe: how often each sheet goes over the press
 */
export function withRejects(good: number, pulls: number): number {
  return sheetsWithOvers(good, REJECTS_A_PULL, pulls);
}
