import { atOnce } from '../../base/at-once.ts';
import { entryAt } from '../../base/at.ts';
import { OVERLAP_TOLERANCE_MM, pairSteps } from '../../order/overlaps.ts';
import type { Recipe } from '../../recipe/types.ts';
import { studioOfRecipe } from '../../recipe/write.ts';

/** Recipes whose pairs are kept. */
const KEPT = 200;

type Pair = [number, number];

/** Which pulls of a recipe touch, and of which the order shows. */
export interface MeasuredPairs {
  touching: Pair[];
  mattering: Pair[];
}

/** Remembers which pulls of recipes meet, as measuring those of twelve recipes of 80 pulls takes some seconds. */
export class PairMemory {
  /** By all that the pairs follow from; the latest used last. */
  readonly #known = new Map<string, MeasuredPairs>();

  /** @throws EngineError as `overlapsOf` */
  of(recipe: Recipe, minDeltaE: number): MeasuredPairs {
    return atOnce(this.steps(recipe, minDeltaE));
  }

  /**
   * Measures what is not known yet.
   * @yields the share of the recipes that is done, 0–1
   * @throws EngineError as `overlapsOf`
   */
  *measure(recipes: readonly Recipe[], minDeltaE: number): Generator<number, void> {
    const all = [...new Set(recipes)];
    for (const [at, recipe] of all.entries()) {
      for (const share of this.steps(recipe, minDeltaE)) yield (at + share) / all.length;
      yield (at + 1) / all.length;
    }
  }

  private *steps(recipe: Recipe, minDeltaE: number): Generator<number, MeasuredPairs> {
    const studio = studioOfRecipe(recipe);
    const key = JSON.stringify([minDeltaE, recipe.pulls, studio]);
    let pairs = this.#known.get(key);
    if (pairs === undefined) {
      const options = { toleranceMm: OVERLAP_TOLERANCE_MM, minDeltaE };
      const { touching, mattering } = yield* pairSteps({ pulls: recipe.pulls }, studio, options);
      pairs = { touching: named(touching), mattering: named(mattering) };
    }
    this.#known.delete(key);
    this.#known.set(key, pairs);
    if (this.#known.size > KEPT) this.#known.delete(entryAt([...this.#known.keys()], 0));
    return pairs;
  }
}

function named(found: readonly { a: number; b: number }[]): Pair[] {
  return found.map(({ a, b }): Pair => [a, b]);
}
