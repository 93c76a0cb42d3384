import { entryAt } from '../../../engine/base/at.ts';
import type { Overprint } from '../../../engine/ink/film/overprint.ts';
import { withinWords } from '../../words/error-words.ts';

/** A square of the chart to be spoken of. */
export interface SpokenSquare {
  /** Places of its inks in the chart. */
  first: number;
  over: number;
  cell: Overprint;
  /** From how far off every ink a colour is an overprint colour, ΔE00. */
  overprintDeltaE: number;
}

/**
 * What a square of the chart says aloud.
 * @param names of the inks, in the chart's order
 */
export function squareSentence(names: readonly string[], { first, over, cell, overprintDeltaE }: SpokenSquare): string {
  const below = entryAt(names, first);
  const above = entryAt(names, over);
  const parts =
    first === over
      ? [`${above} over itself, a second pull.`]
      : [`${above} over ${below}: ΔE ${cell.orderDeltaE.toFixed(1)} to ${below} over ${above}.`];
  if (cell.overprintColour)
    parts.push(`An overprint colour: ΔE ${cell.nearestDeltaE.toFixed(1)} to the nearest ink, past ${overprintDeltaE}.`);
  parts.push(`A print should come out ${withinWords(cell.expectedDeltaE)} of it.`);
  if (!cell.swatch.inGamut) parts.push('More colourful in print than this screen can show.');
  return parts.join(' ');
}
