import { entryAt } from '../../../engine/base/at.ts';
import { deltaE2000 } from '../../../engine/colour/delta-e.ts';
import type { Overprint, OverprintGrid } from '../../../engine/ink/film/overprint.ts';

/**
 * What a square of the chart says aloud.
 * @param names of the inks, in the chart's order
 * @param third from how far off every ink a colour is called a third one, ΔE
 */
export function squareSentence(names: readonly string[], first: number, over: number, cell: Overprint, third: number): string {
  const below = entryAt(names, first);
  const above = entryAt(names, over);
  const parts =
    first === over
      ? [`${above} over itself, a second pull.`]
      : [`${above} over ${below}: ΔE ${cell.orderDeltaE.toFixed(1)} to ${below} over ${above}.`];
  if (cell.thirdColour) parts.push(`A third colour: ΔE ${cell.nearestDeltaE.toFixed(1)} to the nearest ink, past ${third}.`);
  if (!cell.swatch.inGamut) parts.push('More colourful in print than this screen can show.');
  return parts.join(' ');
}

/** The ink whose own swatch is nearest a square's colour, by its place in the chart. */
export function nearestInk({ own, rows }: OverprintGrid, first: number, over: number): number {
  const { lab } = entryAt(entryAt(rows, first), over).swatch;
  const distances = own.map((swatch) => deltaE2000(lab, swatch.lab));
  return distances.indexOf(Math.min(...distances));
}

/** L, a and b to a tenth, with a true minus sign. */
export function labWords(lab: readonly [number, number, number]): string[] {
  return lab.map((value) =>
    value
      .toFixed(1)
      .replace(/^-0\.0$/, '0.0')
      .replace('-', '−'),
  );
}
