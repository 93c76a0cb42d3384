import { EngineError } from '../base/error.ts';
import { say } from '../words/en/recipe/recipe.ts';
import type { Recipe } from './types.ts';

type Derived = Pick<Recipe, 'id' | 'title' | 'parent'>;

/** A print and what became of it: recipes that come from one another. */
export interface RelatedRecipes {
  /** Id of the first of them that is still known. */
  id: string;
  /** Its title. */
  title: string;
  /** Ids of all of them. */
  members: ReadonlySet<string>;
}

/**
 * Puts related recipes together by the parents that they name. A parent that is nowhere to be found
 * still holds its children together.
 * @param recipes may name one id more than once, as kept recipes and those of visits do; the first
 *   title counts
 * @throws EngineError 'recipe.id' for one without an id
 * @returns in the order in which their first members are named
 */
export function relatedRecipes(recipes: readonly Derived[]): RelatedRecipes[] {
  const known = new Map<string, Derived>();
  for (const recipe of recipes) {
    if (typeof recipe?.id !== 'string') throw new EngineError('recipe.id', say.recipeHasNoId);
    if (!known.has(recipe.id)) known.set(recipe.id, recipe);
  }
  const roots = new Map<string, string>();
  const rootOf = (id: string): string => {
    const way = new Set<string>();
    let root: string | undefined;
    for (let at = id; root === undefined;) {
      const parent = known.get(at)?.parent;
      root = roots.get(at);
      if (root !== undefined) break;
      // Files can be edited by hand, so parents can run in a ring: its least id stands for it.
      if (way.has(at)) root = [...way].slice([...way].indexOf(at)).reduce((least, one) => (one < least ? one : least));
      else if (parent === undefined) root = at;
      way.add(at);
      at = parent ?? at;
    }
    for (const one of way) roots.set(one, root);
    return root;
  };
  const groups = new Map<string, { id: string; title: string; members: Set<string> }>();
  for (const { id, title } of known.values()) {
    const root = rootOf(id);
    const group = groups.get(root);
    if (group === undefined) {
      const first = known.get(root);
      groups.set(root, { id: first?.id ?? id, title: first?.title ?? title, members: new Set([id]) });
    } else group.members.add(id);
  }
  return [...groups.values()];
}
