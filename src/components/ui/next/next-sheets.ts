import { isAtHand } from '../../../engine/explore/prepare/frames.ts';
import { printInks } from '../../../engine/ink/mix/mix.ts';
import type { Project } from '../../../engine/project/types.ts';
import { printTitle } from '../../../engine/recipe/lineage.ts';
import type { Recipe } from '../../../engine/recipe/types.ts';
import { recipeOf, studioOfRecipe } from '../../../engine/recipe/write.ts';
import type { Studio } from '../../../engine/studio/studio.ts';
import { type Workshop, workshopOf } from '../../../engine/visit/lent/workshop.ts';
import type { AppStore } from '../../app-store.ts';
import { say } from '../../words/en/ui/next.ts';
import { newId } from '../new-id.ts';
import type { NextChoice, NextSheet } from './what-next.ts';

/** What of the drawer is at hand: screens that are made or to make, where that was said of any; else all. */
function drawerAtHand({ drawer, frames }: Pick<Project, 'drawer' | 'frames'>): Studio {
  const there = drawer.screens.filter(({ id }) => isAtHand(id, frames));
  return there.length === 0 ? drawer : { ...drawer, screens: there };
}

/** Prints that a sheet may be brought nearer to: recipes that are kept, and prints that are pinned. */
export function aimsOf({ recipes, pins = [], drawer }: Project): NextSheet['aims'] {
  return [
    ...recipes.map((recipe) => ({ name: recipe.title, pulls: recipe.pulls, studio: studioOfRecipe(recipe) })),
    ...pins
      .filter(({ lineage }) => !recipes.some(({ title }) => title === printTitle(lineage)))
      .map(({ pulls, lineage }) => ({ name: say.pinned(printTitle(lineage)), pulls, studio: drawer })),
  ];
}

/** The stack on the Bench as a sheet that something is to follow on. */
export function benchSheet({ project, relative }: AppStore): NextSheet {
  const { drawer, bench } = project;
  const workshop: Workshop = {
    studio: drawer,
    screens: drawerAtHand(project).screens.map(({ id }) => id),
    inks: printInks(drawer.inks).map(({ id }) => id),
  };
  return {
    name: say.stackOnBench,
    pulls: bench,
    workshop,
    aims: aimsOf(project),
    take: say.addToStack,
    note: say.theyComeOverAll,
    relative,
  };
}

/** Adds a choice to the stack on the Bench, as one step. */
export function addToBench(store: AppStore, { more }: NextChoice): void {
  store.dispatch({ kind: 'add-pulls', pulls: more.map((pull) => ({ ...pull, id: newId() })) });
}

/** A recipe as a sheet that something is to follow on. */
export function recipeSheet({ project, relative }: AppStore, recipe: Recipe): NextSheet {
  const hand = drawerAtHand(project);
  return {
    name: recipe.title,
    pulls: recipe.pulls,
    workshop: workshopOf(recipe, [], hand),
    aims: aimsOf({ ...project, recipes: project.recipes.filter(({ id }) => id !== recipe.id) }),
    take: say.keepAsRecipe,
    note: say.recipeOfItsOwn(recipe.title),
    relative,
  };
}

/** Keeps a choice as a recipe that comes of another. */
export function keepNext(store: AppStore, recipe: Recipe, { more, studio }: Pick<NextChoice, 'more' | 'studio'>): void {
  const pulls = [...recipe.pulls, ...more.map((pull) => ({ ...pull, id: newId() }))];
  const title = say.andMore(recipe.title, more.length);
  const kept = recipeOf(pulls, studio, { id: newId(), title, parent: recipe.id });
  if (store.dispatch({ kind: 'keep-recipe', recipe: kept })) store.tell(say.isInChest(title), 'news');
}
