import { entryAt } from '../../../engine/base/at.ts';
import type { Pull } from '../../../engine/stack/types.ts';
import type { MadePlan } from '../../output/made-plan.ts';
import { stateKey } from '../../output/state-key.ts';
import type { StatePictures } from '../../ui/print/state-pictures.ts';

/** Each state that a pull sheet shows: the recipe's number and the pulls on its sheet. */
function* statesOf(made: MadePlan): Generator<[number, readonly Pull[]]> {
  for (const { states } of made.plan.cards) {
    for (const { recipe, before, after } of states) {
      if (before.length > 0) yield [recipe, before];
      yield [recipe, after];
    }
  }
  for (const [recipe, { pulls }] of made.recipes.entries()) yield [recipe, pulls];
}

/**
 * A PNG of each state that a pull sheet shows, by `stateKey`; those that could not be drawn are missing.
 * @param onProgress gets the share that is drawn, 0–1
 */
export async function statePngs(
  made: MadePlan,
  pictures: StatePictures,
  onProgress: (share: number) => void,
): Promise<Map<string, Uint8Array>> {
  const states = [...statesOf(made)];
  for (const [recipe, pulls] of states) pictures.of(entryAt(made.recipes, recipe), pulls);
  await pictures.settled((left) => onProgress(1 - Math.min(1, left / states.length)));
  const found = new Map<string, Uint8Array>();
  for (const [recipe, pulls] of states) {
    const url = pictures.of(entryAt(made.recipes, recipe), pulls);
    const key = stateKey(recipe, pulls);
    if (url === null || url === '' || found.has(key)) continue;
    found.set(key, new Uint8Array(await (await fetch(url)).arrayBuffer()));
  }
  return found;
}
