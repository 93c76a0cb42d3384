import type { PrintLineage } from '../lineage.ts';
import type { Recipe } from '../types.ts';

/** A recipe with those that came of it. */
export interface RecipeBranch {
  recipe: Recipe;
  children: RecipeBranch[];
}

/**
 * The recipes of a chest as they came of each other: a recipe hangs under the one that it names as its parent,
 * or, found on a wall, under the kept print that it was found from. What names none that is kept stands at the
 * root; where two name each other, the older does.
 */
export function recipeTree(recipes: readonly Recipe[]): RecipeBranch[] {
  const branches = new Map(recipes.map((recipe): [string, RecipeBranch] => [recipe.id, { recipe, children: [] }]));
  const prints = new Map(recipes.filter(({ index }) => index >= 0).map((recipe) => [`${recipe.index} ${recipe.seed}`, recipe.id]));
  const parents = new Map<string, string>();
  const comesFrom = (id: string, other: string): boolean => {
    for (let at: string | undefined = id; at !== undefined; at = parents.get(at)) if (at === other) return true;
    return false;
  };
  const roots: RecipeBranch[] = [];
  for (const [id, branch] of branches) {
    const parentId = parentOf(branch.recipe, prints);
    const parent = parentId === null ? undefined : branches.get(parentId);
    if (parentId === null || parent === undefined || comesFrom(parentId, id)) roots.push(branch);
    else {
      parents.set(id, parentId);
      parent.children.push(branch);
    }
  }
  return roots;
}

function parentOf({ parent, lineage }: Recipe, prints: ReadonlyMap<string, string>): string | null {
  if (parent !== undefined) return parent;
  let level: readonly PrintLineage[] = lineage?.parents ?? [];
  while (level.length > 0) {
    for (const { seed, index } of level) {
      const kept = prints.get(`${index} ${seed}`);
      if (kept !== undefined) return kept;
    }
    level = level.flatMap(({ parents }) => parents ?? []);
  }
  return null;
}
