import type { Recipe } from '../types.ts';

/** How the recipes of a chest are sorted. */
export type RecipeSort = 'newest' | 'oldest' | 'title' | 'fewest pulls' | 'most pulls' | 'fewest inks';

/** Which recipes of a chest are shown, and in which order. */
export interface RecipeView {
  /** Words that title, note, labels, ink or screen names must all contain; '' for any. */
  words: string;
  /** A label that they must have; '' for any. */
  label: string;
  sort: RecipeSort;
}

/** The inks that a recipe pulls; stock inks that are only weighed into a mix do not count. */
export function pulledInks({ inks, pulls }: Pick<Recipe, 'inks' | 'pulls'>): Recipe['inks'] {
  const pulled = new Set(pulls.map(({ ink }) => ink));
  return inks.filter(({ id }) => pulled.has(id));
}

/** The recipes that are shown, sorted; the project keeps them oldest first. */
export function sortedRecipes(recipes: readonly Recipe[], { words, label, sort }: RecipeView): Recipe[] {
  const wanted = words
    .toLowerCase()
    .split(/\s+/)
    .filter((word) => word !== '');
  const shown = recipes.filter((recipe) => {
    if (label !== '' && recipe.labels?.includes(label) !== true) return false;
    const text = textOf(recipe);
    return wanted.every((word) => text.includes(word));
  });
  const by = (number: (recipe: Recipe) => number): Recipe[] => shown.toSorted((a, b) => number(a) - number(b));
  switch (sort) {
    case 'oldest':
      return shown;
    case 'newest':
      return shown.toReversed();
    case 'title':
      return shown.toSorted((a, b) => (a.title.toLowerCase() < b.title.toLowerCase() ? -1 : 1));
    case 'fewest pulls':
      return by(({ pulls }) => pulls.length);
    case 'most pulls':
      return by(({ pulls }) => -pulls.length);
    case 'fewest inks':
      return by((recipe) => pulledInks(recipe).length);
  }
}

function textOf(recipe: Recipe): string {
  const names = [...pulledInks(recipe), ...recipe.screens].map(({ name }) => name);
  return [recipe.title, recipe.note, ...(recipe.labels ?? []), ...names].join('\n').toLowerCase();
}

/** Every label that a recipe has, each once, by name. */
export function labelsOf(recipes: readonly Pick<Recipe, 'labels'>[]): string[] {
  return [...new Set(recipes.flatMap(({ labels }) => labels ?? []))].sort((a, b) => (a.toLowerCase() < b.toLowerCase() ? -1 : 1));
}
