import { entryAt } from '../../base/at.ts';
import { EngineError } from '../../base/error.ts';
import { MOST_PULLS } from '../../base/limits.ts';
import type { Recipe } from '../../recipe/types.ts';
import { studioOfRecipe } from '../../recipe/write.ts';
import type { Pull } from '../../stack/types.ts';
import type { Studio } from '../../studio/studio.ts';
import { pullsIn } from '../../visit/lent/workshop.ts';
import { say } from '../../words/en/log/now.ts';
import type { SheetAsPulled } from '../as-pulled.ts';
import type { Happening } from '../types.ts';
import { goingOn } from './goes-on.ts';

/** A choice of what follows on sheets. */
export interface Choice {
  /** First down first, in the words of the studio. */
  more: readonly Pull[];
  studio: Studio;
  /** What the further pulls are called by; no pull of the visit may begin with it. */
  id: string;
  /** Whether what was planned for the sheets still follows. */
  planned: boolean;
  /** Whether the first pull is on the sheets already, though nothing planned it. */
  pulled?: boolean;
}

/**
 * What to log so that sheets go on as was chosen.
 * @param recipes of `recipesAsPulled`
 * @throws EngineError 'log.full' when a sheet would have more pulls than one takes, and as `goingOn`
 */
export function chosenFor(
  sheets: readonly Pick<SheetAsPulled, 'number' | 'recipe' | 'done'>[],
  recipes: readonly Recipe[],
  choice: Choice,
): Happening[] {
  const named = choice.more.map((pull, i) => ({ ...pull, id: `${choice.id}-${i + 1}` }));
  return sheets.map(({ number, recipe: at, done }): Happening => {
    const recipe = entryAt(recipes, at);
    const { studio, pulls } = pullsIn(studioOfRecipe(recipe), named, choice.studio);
    const left = choice.planned ? recipe.pulls.filter((_, i) => !done.includes(i)) : [];
    const inAll = done.length + pulls.length + left.length;
    if (inAll > MOST_PULLS) throw new EngineError('log.full', say.sheetWouldHave(number, inAll, MOST_PULLS));
    const going = goingOn([...pulls, ...left], studio);
    const [extra] = going.more;
    if (choice.pulled === true && extra !== undefined) return { kind: 'extra', sheet: number, pulls: [extra.id], ...going };
    return { kind: 'goes-on', sheet: number, ...going };
  });
}

/** The sheets that have the same on them as one, itself left out: of its recipe, with the same pulls as they were really pulled. */
export function alikeSheets(sheet: SheetAsPulled, sheets: readonly SheetAsPulled[]): SheetAsPulled[] {
  const textOf = ({ recipe, pulls }: SheetAsPulled): string => JSON.stringify([recipe, pulls.map(({ id: _id, ...pull }) => pull)]);
  const text = textOf(sheet);
  return sheets.filter((each) => each.number !== sheet.number && !each.spoiled && textOf(each) === text);
}
