import type { Recipe } from '../../engine/recipe/types.ts';
import { studioOfRecipe } from '../../engine/recipe/write.ts';
import type { Studio } from '../../engine/studio/studio.ts';
import type { Picture } from '../../workers/api/picture-api.ts';
import { engineFor } from '../../workers/client/client.ts';
import { LatelyUsed } from '../ui/lately-used.ts';

// A recipe is a new object when its title changes, but its pulls are the same list: it names the picture.
const drawers = new WeakMap<Recipe['pulls'], Studio>();
/** A picture takes 1.7 MB, and undo keeps removed recipes for hundreds of steps: their pictures are drawn again. */
const MOST_PICTURES = 16;
const pictures = new LatelyUsed<Promise<Picture>>(MOST_PICTURES);
const numbers = new WeakMap<Recipe['pulls'], number>();
let nextNumber = 1;
let last: Promise<unknown> = Promise.resolve();

/** The one drawer of a recipe, so that a worker needs it only once. */
export function recipeStudio(recipe: Recipe): Studio {
  let studio = drawers.get(recipe.pulls);
  if (studio === undefined) drawers.set(recipe.pulls, (studio = studioOfRecipe(recipe)));
  return studio;
}

/**
 * The picture of a recipe. One is drawn after the other, so that a long row of them never keeps the
 * Bench waiting for more than one.
 * @throws what the worker throws when the recipe cannot be drawn
 */
export function recipePicture(recipe: Recipe, heightPx: number, relative: boolean): Promise<Picture> {
  let number = numbers.get(recipe.pulls);
  if (number === undefined) numbers.set(recipe.pulls, (number = nextNumber++));
  const name = `${number} ${heightPx} ${relative}`;
  let picture = pictures.get(name);
  if (picture === undefined) {
    const draw = (): Promise<Picture> =>
      engineFor('picture').thumbnail({ studio: recipeStudio(recipe), pulls: recipe.pulls, heightPx, relative });
    picture = last.then(draw, draw);
    last = picture;
    pictures.set(name, picture);
    picture.catch(() => pictures.delete(name));
  }
  return picture;
}
