import { entryAt } from '../../../engine/base/at.ts';
import type { Overprint } from '../../../engine/ink/film/overprint.ts';
import { fixed } from '../../../engine/words/language.ts';
import { say } from '../../words/en/inks/overprint.ts';
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
  const parts = first === over ? [say.overItselfSecondPull(above)] : [say.overDeltaEToOver(above, below, fixed(cell.orderDeltaE, 1))];
  if (cell.overprintColour) parts.push(say.overprintColourDeltaETo(fixed(cell.nearestDeltaE, 1), overprintDeltaE));
  parts.push(say.printShouldComeOut(withinWords(cell.expectedDeltaE)));
  if (!cell.swatch.inGamut) parts.push(say.moreColourfulInPrintThanThis);
  return parts.join(' ');
}
