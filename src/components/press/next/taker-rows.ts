import { entryAt } from '../../../engine/base/at.ts';
import { roundTo } from '../../../engine/base/units.ts';
import type { Taken, Taker } from '../../../engine/explore/onward/takers.ts';
import type { SheetAsPulled } from '../../../engine/log/as-pulled.ts';
import { filmsOn } from '../../../engine/log/films.ts';
import { alikeSheets } from '../../../engine/log/now/chosen.ts';
import type { Deviation } from '../../../engine/log/types.ts';
import type { Recipe } from '../../../engine/recipe/types.ts';
import { studioOfRecipe } from '../../../engine/recipe/write.ts';
import type { Pull } from '../../../engine/stack/types.ts';
import { inkId, stocksOfInk, withInk } from '../../../engine/visit/lent/borrowed-ink.ts';
import { pullsIn } from '../../../engine/visit/lent/workshop.ts';
import type { SetUpCard } from '../../../engine/visit/set-up-cards.ts';
import type { LogKeeper } from '../../ui/log/log-keeper.ts';
import type { GoOn } from './go-on.ts';

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

/**
 * What a set-up prints as it was pulled beyond the plan, with all that it names.
 * @param how the ink that was really in the screen, where it was another, and how far off register it lies, mm
 */
export function extraPullOf(
  card: SetUpCard,
  recipes: readonly Recipe[],
  { ink, stocks, strokes, dxMm, dyMm }: Deviation,
): Pick<GoOn, 'more' | 'studio'> | null {
  const from = pullOfCard(card, recipes);
  if (from === null) return null;
  const { pull, recipe } = from;
  const own = studioOfRecipe(recipe);
  const inks = ink === undefined ? own.inks : withInk(own.inks, ink, stocksOfInk(ink, [...recipes, { inks: [ink, ...(stocks ?? [])] }]));
  const pulled = {
    ...pull,
    ink: ink === undefined ? pull.ink : inkId(ink, inks).id,
    strokes: strokes ?? pull.strokes,
    dxMm: roundTo(pull.dxMm + dxMm, 1),
    dyMm: roundTo(pull.dyMm + dyMm, 1),
  };
  return { more: [pulled], studio: { ...own, inks } };
}

type Known = Pick<LogKeeper, 'sheets' | 'recipes'>;

/** Films that are wet on the sheets of a row, by their places among what is down, and until when; ms since 1970 UTC. */
function wetFilms(numbers: readonly number[], { sheets, recipes }: Known, nowMs: number): { place: number; dryMs: number }[] {
  const own = sheets.filter(({ number }) => numbers.includes(number));
  const films = own.flatMap((sheet) =>
    filmsOn(sheet, entryAt(recipes, sheet.recipe)).map(({ at, dryMs }) => ({ place: sheet.done.indexOf(at), dryMs })),
  );
  return films.filter(({ dryMs }) => dryMs > nowMs);
}

/** Sheets that a set-up is not planned for and that could take its pull, those with the same on them together. */
export function takerRows(card: SetUpCard, { sheets, recipes }: Known, nowMs: number): TakerRow[] {
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
    const wet = [...new Set(wetFilms(numbers, { sheets, recipes }, nowMs).map(({ place }) => place))];
    return pull === undefined ? [] : [{ recipe, sheet, numbers, taker: { studio, pulls: sheet.pulls, wet, pull } }];
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

/**
 * Until when what the pull would lie on is too wet to be printed over, and until when anything on the sheets of a row
 * is, ms since 1970 UTC; 0 when it is dry.
 */
export function wetUntil({ numbers }: TakerRow, { touches }: Pick<Taken, 'touches'>, log: Known, nowMs: number) {
  const films = wetFilms(numbers, log, nowMs);
  const last = (those: typeof films): number => Math.max(0, ...those.map(({ dryMs }) => dryMs));
  return { under: last(films.filter(({ place }) => touches.includes(place))), beside: last(films) };
}
