import { readRecipe, type ReadResult } from '../../engine/recipe/read.ts';
import type { Recipe } from '../../engine/recipe/types.ts';
import { writeRecipe } from '../../engine/recipe/write.ts';
import { sentenceOf } from '../../workers/client/client.ts';
import { newId } from '../ui/new-id.ts';

/** What came of one recipe file. */
export type Import = { kind: 'new'; recipe: Recipe } | { kind: 'there'; title: string } | { kind: 'refused'; sentences: string[] };

/**
 * Reads a recipe file.
 * @param kept the recipes of the chest: one with the same content is not kept twice, one with the
 *   same id and other content gets another id
 * @param readFile throws in a sentence that names the file
 */
export async function importRecipe(
  file: File,
  kept: readonly Recipe[],
  readFile: (file: File) => Promise<ReadResult<Recipe>>,
): Promise<Import> {
  let read: ReadResult<Recipe>;
  try {
    read = await readFile(file);
  } catch (error) {
    return { kind: 'refused', sentences: [sentenceOf(error)] };
  }
  if (read.value === null) return { kind: 'refused', sentences: read.problems.slice(0, 1).map((problem) => problem.message) };
  const recipe = read.value;
  const double = kept.find((other) => other.id === recipe.id);
  if (double === undefined) return { kind: 'new', recipe };
  if (ordered(double) === writeRecipe(recipe)) return { kind: 'there', title: double.title };
  return { kind: 'new', recipe: { ...recipe, id: newId() } };
}

/** The text of a recipe with its fields in the order in which the reader leaves them. */
function ordered(recipe: Recipe): string {
  const text = writeRecipe(recipe);
  const again = readRecipe(text, recipe.title).value;
  return again === null ? text : writeRecipe(again);
}
