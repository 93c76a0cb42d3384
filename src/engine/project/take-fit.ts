import type { Recipe } from '../recipe/types.ts';
import type { FitChoice } from '../visit/fit-choice.ts';
import type { PressPlan } from '../visit/visit.ts';
import type { Command } from './commands/command.ts';

/**
 * Turns what would make a visit fit into one command, so that one undo takes it back. A recipe that
 * was thinned out for it is kept beside the one it came from, under an id of its own.
 * @param kept the project's recipes
 * @param newId an id that no recipe has, another each time
 * @returns the order made for the choice, with the ids that its recipes then have; null when none was made
 */
export function takenFit(
  { runs, press, plan }: Pick<FitChoice, 'runs' | 'press' | 'plan'>,
  kept: readonly Recipe[],
  newId: () => string,
): { command: Command; plan: PressPlan | null } {
  const known = new Set(kept.map((recipe) => recipe.id));
  const thinned = new Map<string, Recipe>();
  for (const { recipe } of runs) {
    if (!known.has(recipe.id)) thinned.set(recipe.id, { ...recipe, id: newId() });
  }
  const idOf = (id: string): string => thinned.get(id)?.id ?? id;
  return {
    command: {
      kind: 'thin-visit',
      recipes: [...thinned.values()],
      runs: runs.map(({ recipe, sheets, overs, proofs }) => ({ recipe: idOf(recipe.id), sheets, overs, proofs })),
      press,
    },
    plan: plan === null ? null : { ...plan, recipes: plan.recipes.map((of) => ({ ...of, id: idOf(of.id) })) },
  };
}
