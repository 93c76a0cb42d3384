import { entryAt } from '../../base/at.ts';
import type { Recipe } from '../../recipe/types.ts';
import { type VisitFigures, wholeFigures } from '../visit-figures.ts';
import type { PressPlan } from '../visit.ts';
import { setUpInk } from './set-up-ink.ts';

/** A bucket that is put on a bed, and what is printed from it until another ink comes. */
export interface Bucket {
  /** The ink's name in the visit. */
  ink: string;
  bed: number;
  /** Indices of its set-ups, in time, and the wet ink that each prints, g. */
  setUps: { at: number; grams: number }[];
  /** What stays in screen and bucket, g: once a bucket. */
  lossG: number;
  /** More for safety, g. */
  safetyG: number;
  /** To fill it with, g: what its set-ups print and the two above. */
  totalG: number;
}

/**
 * The buckets of a plan, in the order in which they come on: over all buckets of an ink they hold what
 * `visitInks` says to mix of it.
 * @param recipes by the index that the cards' states use
 * @throws EngineError as `setUpInk`
 */
export function bucketsOf(
  plan: Pick<PressPlan, 'cards' | 'times' | 'testSheet'>,
  recipes: readonly Recipe[],
  given: VisitFigures,
): Bucket[] {
  const { lossMl, safety } = wholeFigures(given);
  const printed = setUpInk(plan, recipes, given);
  const buckets: Bucket[] = [];
  const there = new Map<number, Bucket>();
  for (const [at, { ink, inkChange }] of plan.cards.entries()) {
    const bed = plan.times[at]?.bed ?? 0;
    let bucket = there.get(bed);
    if (bucket === undefined || inkChange) {
      // What is on the press already when the rest begins has been lost before.
      const lossG = inkChange ? lossMl * ink.ink.densityGPerCm3 : 0;
      bucket = { ink: ink.key, bed, setUps: [], lossG, safetyG: 0, totalG: 0 };
      there.set(bed, bucket);
      buckets.push(bucket);
    }
    bucket.setUps.push({ at, grams: entryAt(printed, at).grams });
  }
  for (const bucket of buckets) {
    const wanted = bucket.lossG + bucket.setUps.reduce((sum, { grams }) => sum + grams, 0);
    bucket.safetyG = wanted * safety;
    bucket.totalG = wanted + bucket.safetyG;
  }
  return buckets;
}
