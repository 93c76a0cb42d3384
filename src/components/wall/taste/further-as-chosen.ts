import { num } from '../../../engine/base/at.ts';
import { guideOf, type TasteGuide } from '../../../engine/explore/taste/taste-guide.ts';
import { wallTools } from '../../../workers/client/client.ts';
import { type DerivedAsk, tasteAsk } from '../run/derived-ask.ts';
import { UNSURE } from './taste-words.ts';
import { askOf, knownOf, type KnownPrints } from './wall-choices.ts';

/** From so many prints further ones are found: those that would hang first. */
const MOST_PARENTS = 12;

/**
 * A wall of prints that one would choose, from those that hang.
 * @throws EngineError as guideOf
 */
export async function furtherAsChosen({ variants, facts, sequence }: KnownPrints, by: Omit<TasteGuide, 'scale'>): Promise<DerivedAsk> {
  // Asked before any work, so that the sentence comes at once.
  const guide = guideOf({ ...by, scale: { middle: [], spread: [] } });
  const known = knownOf(facts, sequence);
  const { order, scale } = await wallTools().taste(askOf(facts, known, { ...by, passed: 0 }));
  const first = (order ?? []).slice(0, MOST_PARENTS);
  const prints = first.flatMap((at) => variants[num(known, at)] ?? []);
  const open = UNSURE.find(([share]) => share === guide.unsure && share > 0)?.[1] ?? '';
  return tasteAsk({ ...guide, scale: scale ?? guide.scale }, prints, open);
}
