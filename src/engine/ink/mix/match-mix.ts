import { say } from '../../words/en/ink/mix.ts';
import type { MatchAnswer } from './match.ts';
import type { InkPart } from './mix.ts';

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
    .join(say.and);
}
