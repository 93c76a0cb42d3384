import { sheetsWithOvers } from './quantities/sheets.ts';
import { type VisitFigures, wholeFigures } from './visit-figures.ts';
import type { VisitSheet } from './visit-problem.ts';

/** Sheets of a run that are printed beside those that are wanted. */
export interface Extras {
  overs: number;
  proofs: number;
}

/**
 * What the studio prints beside the sheets that are wanted, where nobody says otherwise: its share of
 * overs, rounded up, and its proofs. A print of which there is one has neither: a spoiled one is no
 * longer the same print, and the visit's test sheet is looked at instead.
 */
export function usualExtras(sheets: number, given: VisitFigures): Extras {
  if (sheets < 2) return { overs: 0, proofs: 0 };
  const { overs, proofs } = wholeFigures(given);
  return { overs: Math.ceil(sheets * overs - 1e-9), proofs };
}

/** Paper to cut for a recipe, by what its sheets are for. */
export function paperToCut(sheets: readonly Pick<VisitSheet, 'use'>[]): Extras & { good: number; cut: number } {
  const overs = sheets.filter(({ use }) => use === 'over').length;
  const proofs = sheets.filter(({ use }) => use === 'proof').length;
  return { good: sheets.length - overs - proofs, overs, proofs, cut: sheets.length };
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
