import { entryAt } from '../base/at.ts';
import type { Recipe } from './types.ts';

type Derived = Pick<Recipe, 'id' | 'title' | 'parent'>;

/** A print and what became of it: recipes that come from one another. */
export interface Family {
  /** Id of the first of them that is still known. */
  id: string;
  /** Its title. */
  title: string;
  /** Ids of all of them. */
  members: ReadonlySet<string>;
}

/**
 * Sorts recipes into families by the parents that they name. A parent that is nowhere to be found
 * still holds its children together.
 * @param recipes may name one id more than once, as kept recipes and those of visits do; the first
 *   title counts
 * @returns in the order in which their first members are named
 */
export function recipeFamilies(recipes: readonly Derived[]): Family[] {
  const known = new Map<string, Derived>();
  for (const recipe of recipes) if (!known.has(recipe.id)) known.set(recipe.id, recipe);
  const rootOf = (id: string): string => {
    const way = new Set([id]);
    let at = id;
    for (;;) {
      const parent = known.get(at)?.parent;
      // Files can be edited by hand, so parents can run in a ring: its least id stands for it.
      if (parent === undefined) return at;
      if (way.has(parent)) return entryAt([...way].sort(), 0);
      way.add(parent);
      at = parent;
    }
  };
  const families = new Map<string, { id: string; title: string; members: Set<string> }>();
  for (const { id, title } of known.values()) {
    const root = rootOf(id);
    const family = families.get(root);
    if (family === undefined) {
      const first = known.get(root);
      families.set(root, { id: first?.id ?? id, title: first?.title ?? title, members: new Set([id]) });
    } else family.members.add(id);
  }
  return [...families.values()];
}
