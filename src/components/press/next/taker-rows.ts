import { entryAt } from '../../../engine/base/at.ts';
import type { Taken, Taker } from '../../../engine/explore/onward/takers.ts';
import type { SheetAsPulled } from '../../../engine/log/as-pulled.ts';
import { alikeSheets } from '../../../engine/log/now/chosen.ts';
import { wetSheets } from '../../../engine/log/wet.ts';
import type { Recipe } from '../../../engine/recipe/types.ts';
import { studioOfRecipe } from '../../../engine/recipe/write.ts';
import type { Pull } from '../../../engine/stack/types.ts';
import { pullsIn } from '../../../engine/visit/lent/workshop.ts';
import type { SetUpCard } from '../../../engine/visit/set-up-cards.ts';
import type { LogKeeper } from '../../ui/log/log-keeper.ts';

/** Sheets with the same on them that could take the pull of a set-up. */
export interface TakerRow {
  recipe: Recipe;
  sheet: SheetAsPulled;
  numbers: number[];
  taker: Taker;
}

/** The pull that a set-up prints, in the words of the recipe that it is first for. */
export function pullOfCard(card: SetUpCard, recipes: readonly Recipe[]): { pull: Pull; recipe: Recipe } | null {
  const [state] = card.states;
  const recipe = state === undefined ? undefined : recipes[state.recipe];
  const pull = recipe?.pulls[state?.prints[0] ?? -1];
  if (pull === undefined || recipe === undefined) return null;
  return { recipe, pull: { ...pull, dxMm: card.dxMm, dyMm: card.dyMm, turnDeg: card.turnDeg, strokes: card.strokes } };
}

/** Sheets that a set-up is not planned for and that could take its pull, those with the same on them together. */
export function takerRows(card: SetUpCard, { sheets, recipes }: Pick<LogKeeper, 'sheets' | 'recipes'>): TakerRow[] {
  const from = pullOfCard(card, recipes);
  if (from === null) return [];
  const free = sheets.filter(({ number, spoiled }) => !spoiled && !card.sheets.includes(number));
  const done = new Set<number>();
  return free.flatMap((sheet): TakerRow[] => {
    if (done.has(sheet.number)) return [];
    const numbers = [sheet.number, ...alikeSheets(sheet, free).map(({ number }) => number)].sort((a, b) => a - b);
    for (const number of numbers) done.add(number);
    const recipe = entryAt(recipes, sheet.recipe);
    const { studio, pulls } = pullsIn(studioOfRecipe(recipe), [from.pull], from.recipe);
    const [pull] = pulls;
    return pull === undefined ? [] : [{ recipe, sheet, numbers, taker: { studio, pulls: sheet.pulls, pull } }];
  });
}

/** Ways to put sheets in order. */
export type TakerOrder = 'change' | 'softer' | 'sharper';

/** Places of the rows, the best first. */
export function ranked(found: readonly Taken[], by: TakerOrder): number[] {
  const worth = ({ now, next }: Taken): number =>
    ({ change: next.change, softer: now.edgeContrast - next.edgeContrast, sharper: next.edgeContrast - now.edgeContrast })[by];
  return found.map((_, at) => at).sort((a, b) => worth(entryAt(found, b)) - worth(entryAt(found, a)) || a - b);
}

/** Until when sheets of a row are too wet to be printed over, ms since 1970 UTC; 0 when they are dry. */
export function wetUntil({ numbers }: TakerRow, { sheets, recipes }: Pick<LogKeeper, 'sheets' | 'recipes'>, nowMs: number): number {
  const own = sheets.filter(({ number }) => numbers.includes(number));
  const dry = wetSheets(own, recipes, nowMs).map(({ dryMs }) => dryMs);
  const last = Math.max(0, ...dry);
  return last > nowMs ? last : 0;
}
