import { entryAt } from '../../../engine/base/at.ts';
import type { Recipe } from '../../../engine/recipe/types.ts';
import { engineFor } from '../../../workers/client/client.ts';
import type { PaperState } from '../../output/papers/paper-blocks.ts';
import { stateKey } from '../../output/state-key.ts';
import { recipeStudio } from '../../ui/print/recipe-studio.ts';
import { imageOf } from '../../ui/print/state-pictures.ts';

interface PngOptions {
  heightPx: number;
  /** Whether the paper is shown white. */
  relative: boolean;
  signal: AbortSignal;
  /** Gets the share that is drawn, 0–1. */
  onProgress(share: number): void;
}

/** A PNG of each state, by `stateKey`, as small as it is printed; fewer when it was stopped. @param recipes by the index that states use */
export async function statePngs(
  states: readonly PaperState[],
  recipes: readonly Recipe[],
  { heightPx, relative, signal, onProgress }: PngOptions,
): Promise<Map<string, Uint8Array>> {
  const found = new Map<string, Uint8Array>();
  for (const [at, { recipe, pulls }] of states.entries()) {
    if (signal.aborted) break;
    const studio = recipeStudio(entryAt(recipes, recipe));
    const png = await imageOf(await engineFor('picture').thumbnail({ studio, pulls, heightPx, relative }));
    found.set(stateKey(recipe, pulls), new Uint8Array(await png.arrayBuffer()));
    onProgress((at + 1) / states.length);
  }
  return found;
}
