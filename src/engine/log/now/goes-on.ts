import { entryAt } from '../../base/at.ts';
import type { Recipe } from '../../recipe/types.ts';
import { recipeOf, studioOfRecipe } from '../../recipe/write.ts';
import type { Pull } from '../../stack/types.ts';
import type { Studio } from '../../studio/studio.ts';
import { pullsIn } from '../../visit/lent/workshop.ts';
import { say } from '../../words/en/log/now.ts';
import { inOrder, standing } from '../events.ts';
import { inOtherWords, movedSheets } from '../moved.ts';
import type { GoingOn, LogEvent, VisitHead } from '../types.ts';

/** The recipes of a visit and which of them each sheet becomes, after all that was chosen at the press. */
export interface RecipesNow {
  /** Those of the visit, then those of sheets that go on in another way than was planned. */
  recipes: Recipe[];
  /** Index into the recipes by sheet number. */
  recipeOf: ReadonlyMap<number, number>;
  /** By the id of an entry that says so, the recipe that its sheet is of since. */
  byEvent: ReadonlyMap<string, Recipe>;
}

/**
 * Follows the choices that were made for sheets at the press: what was down then stays, what was chosen comes
 * after it, and what was planned beyond that falls away. Sheets of one recipe that had the same on them and go on
 * alike share a recipe.
 */
export function recipesNow(head: VisitHead, events: readonly LogEvent[]): RecipesNow {
  const recipes = [...head.recipes];
  const moved = movedSheets(head, events);
  const recipeOf = new Map(head.sheets.map((sheet) => [sheet.number, moved.get(sheet.number)?.recipe ?? sheet.recipe]));
  const byEvent = new Map<string, Recipe>();
  const down = new Map<number, string[]>();
  const known = new Map<string, number>();
  const counts = new Set(standing(events).map(({ id }) => id));
  for (const event of inOrder(events)) {
    const at = recipeOf.get(event.sheet);
    if (at === undefined) continue;
    const recipe = entryAt(recipes, at);
    const own = down.get(event.sheet) ?? [];
    if ((event.kind === 'pulled' || event.kind === 'otherwise') && counts.has(event.id)) {
      const of = moved.get(event.sheet);
      const pulls = of === undefined ? event.pulls : inOtherWords([event], of).flatMap((said) => ('pulls' in said ? said.pulls : []));
      const fresh = pulls.filter((id) => !own.includes(id) && recipe.pulls.some((pull) => pull.id === id));
      down.set(event.sheet, [...own, ...fresh]);
    }
    if (event.kind !== 'goes-on' && event.kind !== 'extra') continue;
    const key = JSON.stringify([at, own, event.more.map(({ id }) => id)]);
    let to = known.get(key);
    if (to === undefined) {
      to = recipes.length;
      known.set(key, to);
      recipes.push(rememberedRecipe(event, recipe, own));
    }
    // One that was undone keeps its place, so that an order that was made with it can still be read.
    if (!counts.has(event.id)) continue;
    recipeOf.set(event.sheet, to);
    byEvent.set(event.id, entryAt(recipes, to));
    if (event.kind === 'extra') down.set(event.sheet, [...own, ...event.pulls]);
  }
  return { recipes, recipeOf, byEvent };
}

/** What an entry made of a recipe: events and recipes are never changed, and pictures go by the recipe. */
const made = new WeakMap<GoingOn, { of: Recipe; down: string; recipe: Recipe }>();

function rememberedRecipe(event: GoingOn, of: Recipe, own: readonly string[]): Recipe {
  const down = JSON.stringify(own);
  const known = made.get(event);
  if (known?.of === of && known.down === down) return known.recipe;
  const recipe = goesOn(of, own, event);
  made.set(event, { of, down, recipe });
  return recipe;
}

/** A recipe of what is down, by its planned pulls in the order in which they went down, and of what comes after. */
function goesOn(recipe: Recipe, down: readonly string[], { more, parts }: GoingOn): Recipe {
  const { studio, pulls } = pullsIn(studioOfRecipe(recipe), more, parts);
  const kept = down.flatMap((id) => recipe.pulls.filter((pull) => pull.id === id));
  // What was planned already and still follows is no more than before.
  const chosen = more.filter(({ id }) => !recipe.pulls.some((pull) => pull.id === id));
  const all = recipeOf([...kept, ...pulls], studio, {
    id: `${recipe.id} ${more[0]?.id ?? ''}`,
    title: say.andMore(recipe.title, chosen.length),
  });
  // Pulls that are down keep all that they name; what fell away takes its screens and inks with it.
  return { ...recipe, ...all, parent: recipe.id };
}

/**
 * What to log when a sheet goes on in another way than was planned.
 * @param more first down first, with ids that no pull of the visit has
 * @param studio what the pulls name
 * @throws EngineError 'recipe.missing' when they name what is not there, 'recipe.empty' without pulls
 */
export function goingOn(more: readonly Pull[], studio: Studio): GoingOn {
  const { shapes, screens, inks, pulls } = recipeOf(more, studio, { id: 'more', title: '' });
  return { more: pulls, parts: { shapes, screens, inks } };
}
