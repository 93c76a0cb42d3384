import { type OrderPairs, pairsOf } from '../../../engine/log/turns.ts';
import type { Recipe } from '../../../engine/recipe/types.ts';
import { studioOfRecipe } from '../../../engine/recipe/write.ts';
import type { Pull } from '../../../engine/stack/types.ts';
import { engineFor } from '../../../workers/client/client.ts';

interface Asked {
  /** Null until the worker has answered. */
  pairs: ReadonlySet<string> | null;
  answer: Promise<void>;
}

const asked = new WeakMap<readonly Pull[], Map<number, Asked>>();

function ask(recipe: Recipe, minDeltaE: number): Asked {
  let of = asked.get(recipe.pulls);
  if (of === undefined) asked.set(recipe.pulls, (of = new Map()));
  const there = of.get(minDeltaE);
  if (there !== undefined) return there;
  // The Lesson's worker is the one that has least to do during a visit.
  const fresh: Asked = {
    pairs: null,
    answer: engineFor('lesson')
      .meeting({ studio: studioOfRecipe(recipe), pulls: recipe.pulls, minDeltaE })
      .then((pairs) => {
        fresh.pairs = pairsOf(pairs);
      }),
  };
  of.set(minDeltaE, fresh);
  return fresh;
}

/**
 * Knows which pulls of a visit's recipes must keep their order, as far as a worker has measured it:
 * seconds for large stacks, for which nobody at the press shall wait.
 * @param minDeltaE ΔE00 from which on an order shows; 0 asks which pulls touch at all
 * @param arrived called when more is known; a worker that fails leaves the pulls as in turn
 */
export function workerPairs(minDeltaE: number, arrived: () => void): OrderPairs {
  const waiting = new Set<Asked>();
  return (recipe: Recipe) => {
    const found = ask(recipe, minDeltaE);
    if (found.pairs === null && !waiting.has(found)) {
      waiting.add(found);
      found.answer.then(arrived, () => undefined);
    }
    return found.pairs;
  };
}
