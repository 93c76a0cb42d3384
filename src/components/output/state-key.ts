import type { Pull } from '../../engine/stack/types.ts';

/** Names a state of a recipe's sheet by the pulls on it. */
export function stateKey(recipe: number, pulls: readonly Pull[]): string {
  return JSON.stringify([recipe, pulls.map((pull) => pull.id)]);
}
