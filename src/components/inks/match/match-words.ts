import type { MatchAnswer } from '../../../engine/ink/mix/match.ts';
import { fixed } from '../../../engine/words/language.ts';
import { say } from '../../words/en/inks/match.ts';

/** One line of a mix to weigh. */
export interface WeighLine {
  name: string;
  hundredths: string;
  grams: string;
}

/** What to weigh, and its share of 100 parts by weight. */
export function weighLines({ parts }: Pick<MatchAnswer, 'parts'>): WeighLine[] {
  const all = parts.reduce((sum, { grams }) => sum + grams, 0);
  return parts.map(({ ink, grams }) => ({ name: ink.name, hundredths: fixed((100 * grams) / all, 1), grams: fixed(grams, 1) }));
}

/** How many pots are opened for a mix, and what must be weighed of the least part. */
export function potWords({ parts }: Pick<MatchAnswer, 'parts'>): string {
  const least = Math.min(...parts.map(({ grams }) => grams));
  return say.potsLeastG(parts.length, fixed(least, 1));
}

/** ΔE as weighed, and what a perfect balance would give when that is another figure. */
export function deltaWords({ deltaE, exactDeltaE }: Pick<MatchAnswer, 'deltaE' | 'exactDeltaE'>): string {
  const weighed = fixed(deltaE, 1);
  const exact = fixed(exactDeltaE, 1);
  return weighed === exact ? `ΔE ${weighed}` : say.deltaEAsWeighedBefore(weighed, exact);
}

/** What tells a mix apart by another light. @param deltaE under a filament lamp, ΔE00 @param first whether that is to the first mix, and not to a print that is wanted */
export function lampWords(deltaE: number, first: boolean): string {
  return say.byLampLightDeltaE(fixed(deltaE, 1), first);
}
