import { pairsOf, type ChosenPair, type TasteChoice, type TastePrint } from './choices.ts';
import { type Scale, scaleOf } from './scale.ts';
import { factsOf, learnPairs, viewOf } from './taste.ts';
import type { TasteFacts } from './traits.ts';

/** Parts into which choices are cut to see whether those left out are foretold. */
const PARTS = 5;
/** With fewer choices a part holds too little. */
const LEAST_CHOICES = 10;
/** Up to this chance of doing as well by tosses of a coin it is not called luck: less than one in twenty, as choices share prints that were passed over. */
const CLEAR = 0.02;

/** How many choices were foretold by a taste that was learnt without them. */
export interface Foretold {
  right: number;
  of: number;
  /** Whether it is no better than a coin, may still be luck, or is neither. */
  standing: 'nothing' | 'luck' | 'clear';
}

/**
 * Holds out a fifth of the choices after another, and counts those whose chosen print scores above the mean of what
 * it was chosen over. A taste knows nothing then of any print of those choices: who is passed over by many would be
 * known for that. Pairs that were asked because their answer was open are left out, as they are foretold worst.
 * @returns null with fewer than ten choices
 */
export function foretold(choices: readonly TasteChoice[], wall: readonly TasteFacts[]): Foretold | null {
  const pairs = pairsOf(choices);
  const tried = [...new Set(pairs.map(({ of }) => of))].filter((of) => choices[of]?.open !== true);
  if (tried.length < LEAST_CHOICES) return null;
  const scale = scaleOf(wall);
  let right = 0;
  for (let part = 0; part < PARTS; part++) {
    const held = new Set(tried.filter((_, i) => i % PARTS === part));
    const margins = marginsOf(pairs, held, scale);
    for (const margin of margins.values()) if (margin > 0) right++;
  }
  const of = tried.length;
  const standing = 2 * right <= of ? 'nothing' : byCoin(right, of) > CLEAR ? 'luck' : 'clear';
  return { right, of, standing };
}

/** By how much the chosen print of each held choice scores above the mean of the others, by a taste without them. */
function marginsOf(pairs: readonly ChosenPair[], held: ReadonlySet<number>, scale: Scale): Map<number, number> {
  const asked = pairs.filter(({ of }) => held.has(of));
  const known = new Set(asked.flatMap(({ chosen, other }) => [chosen.key, other.key]));
  const taste = learnPairs(
    pairs.filter(({ chosen, other }) => !known.has(chosen.key) && !known.has(other.key)),
    scale,
  );
  const margins = new Map<number, number>();
  if (taste === null) return margins;
  const score = (print: TastePrint): number => viewOf(taste, factsOf(print)).score;
  for (const { of, chosen, other } of asked) margins.set(of, (margins.get(of) ?? 0) + score(chosen) - score(other));
  return margins;
}

/** How often tosses of a coin are right so many times or more, 0–1. */
function byCoin(right: number, of: number): number {
  let [ways, sum] = [1, 0];
  for (let hits = of; hits >= right; hits--) {
    sum += ways;
    ways = (ways * hits) / (of - hits + 1);
  }
  return sum / 2 ** of;
}
