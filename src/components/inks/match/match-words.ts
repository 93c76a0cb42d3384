import type { MatchAnswer } from '../../../engine/ink/mix/match.ts';
import type { InkPart } from '../../../engine/ink/mix/mix.ts';

/** One line of a mix to weigh. */
export interface WeighLine {
  name: string;
  hundredths: string;
  grams: string;
}

/** What to weigh, and its share of 100 parts by weight. */
export function weighLines({ parts }: Pick<MatchAnswer, 'parts'>): WeighLine[] {
  const all = parts.reduce((sum, { grams }) => sum + grams, 0);
  return parts.map(({ ink, grams }) => ({ name: ink.name, hundredths: ((100 * grams) / all).toFixed(1), grams: grams.toFixed(1) }));
}

/** The parts by weight of the ink that an answer becomes. */
export function inkParts({ parts }: Pick<MatchAnswer, 'parts'>): InkPart[] {
  return parts.map(({ ink, grams }) => ({ ink, parts: grams }));
}

/** A name for a mix: its two strongest inks without the base. */
export function mixName({ parts }: Pick<MatchAnswer, 'parts'>): string {
  const inks = parts.filter(({ ink }) => ink.role !== 'base').sort((a, b) => b.grams - a.grams);
  const named = inks.length === 0 ? parts : inks;
  return named
    .slice(0, 2)
    .map(({ ink }) => ink.name)
    .join(' and ');
}

/** ΔE as weighed, and what a perfect balance would give when that is another figure. */
export function deltaWords({ deltaE, exactDeltaE }: Pick<MatchAnswer, 'deltaE' | 'exactDeltaE'>): string {
  const weighed = deltaE.toFixed(1);
  const exact = exactDeltaE.toFixed(1);
  return weighed === exact ? `ΔE ${weighed}` : `ΔE ${weighed} as weighed, ${exact} before rounding`;
}
