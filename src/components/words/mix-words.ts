import type { SetUpCard } from '../../engine/visit/set-up-cards.ts';
import { fixed } from '../../engine/words/language.ts';
import { say } from './en/phrases/inks.ts';

/** 'Mix per 100 g: 20.0 g Tar, 80.0 g Base'; null for an ink that is no mix. */
export function mixWords(card: Pick<SetUpCard, 'ink'>): string | null {
  const { stocks } = card.ink;
  if (stocks.length < 2) return null;
  const all = stocks.reduce((sum, { parts }) => sum + parts, 0);
  return say.mixPer100G(stocks.map(({ ink, parts }) => `${fixed((100 * parts) / all, 1)} g ${ink.name}`).join(', '));
}
