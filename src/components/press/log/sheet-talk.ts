import { entryAt } from '../../../engine/base/at.ts';
import type { SheetAsPulled } from '../../../engine/log/as-pulled.ts';
import { oversFor } from '../../../engine/log/overs.ts';
import { printsOn, type Ticking, tickedOn } from '../../../engine/log/ticks/ticking.ts';
import type { Deviation, Happening, LogEvent } from '../../../engine/log/types.ts';
import type { Recipe } from '../../../engine/recipe/types.ts';
import type { InkAtHand } from '../../../engine/visit/lent/inks-at-hand.ts';
import type { SetUpCard } from '../../../engine/visit/set-up-cards.ts';
import type { SheetTalk } from '../../ui/log/log-sheet.ts';
import { say } from '../../words/en/press/log.ts';
import { pullInWords } from '../../words/log-words.ts';
import { listed } from '../../words/plan-words.ts';

/**
 * What there is to say of a sheet at a set-up: of the pulls that it still needs there, else of those it had last.
 * @param visit its sheets and recipes as pulled
 */
export function sheetTalk(
  card: SetUpCard,
  sheet: SheetAsPulled,
  { sheets, recipes }: Pick<Ticking, 'sheets' | 'recipes'>,
  inks: InkAtHand[],
): SheetTalk {
  const recipe = entryAt(recipes, sheet.recipe);
  const left = printsOn(card, sheet).filter((at) => !sheet.done.includes(at));
  const printed = left.length === 0 ? lastHere(card, sheet, recipes) : null;
  const here = printed === null ? left : printed.pulls.map((id) => recipe.pulls.findIndex((pull) => pull.id === id));
  const first = recipe.pulls[here[0] ?? -1];
  const pull =
    first === undefined
      ? null
      : {
          words: listed(here.map((at) => pullInWords(entryAt(recipe.pulls, at), recipe))),
          strokes: first.strokes,
          printed: printed !== null,
        };
  return { sheet, recipe, pull, inks, over: overFor(sheet, { sheets, recipes }, here) };
}

/** Who stands in for a sheet that is spoiled here; of another recipe only where nothing on it tells them apart. */
function overFor(
  sheet: SheetAsPulled,
  { sheets, recipes }: Pick<Ticking, 'sheets' | 'recipes'>,
  here: readonly number[],
): SheetTalk['over'] {
  const [number] = oversFor(sheet, sheets, here, recipes);
  const over = sheets.find((each) => each.number === number);
  if (over === undefined) return null;
  const of = over.recipe === sheet.recipe ? '' : say.ofTitle(entryAt(recipes, over.recipe).title);
  return { number: over.number, words: say.proof(over.use === 'proof', over.number, of) };
}

/** The same of several sheets of a set-up at once, those first chosen that are not pulled yet; null where all are spoiled. */
export function sheetsTalk(
  card: SetUpCard,
  numbers: readonly number[],
  visit: Pick<Ticking, 'sheets' | 'recipes'>,
  inks: InkAtHand[],
): SheetTalk | null {
  const good = sheetsOf(numbers, visit.sheets).filter(({ spoiled }) => !spoiled);
  const left = good.filter((sheet) => printsOn(card, sheet).some((at) => !sheet.done.includes(at)));
  const first = left[0] ?? good[0];
  if (first === undefined) return null;
  const chosen = (left.length > 0 ? left : good).map((sheet) => sheet.number);
  return { ...sheetTalk(card, first, visit, inks), among: { numbers: good.map((sheet) => sheet.number), chosen } };
}

/** Sheets by their numbers, in that order. */
function sheetsOf(numbers: readonly number[], sheets: readonly SheetAsPulled[]): SheetAsPulled[] {
  return numbers.flatMap((number) => sheets.find((sheet) => sheet.number === number) ?? []);
}

/**
 * The sheet of a set-up whose picture helps: the one asked for, or, as a spoiled one needs nothing more and what is
 * planned anew may have other sheets, the one in its place or the first that is good.
 * @param numbers of the set-up's sheets
 * @returns undefined where the log knows none of them
 */
export function sheetToShow(numbers: readonly number[], sheets: readonly SheetAsPulled[], asked: number | null): SheetAsPulled | undefined {
  const there = sheetsOf(numbers, sheets);
  const good = there.filter(({ spoiled }) => !spoiled);
  return good.find(({ number }) => number === asked) ?? good.find(({ inPlaceOf }) => inPlaceOf === asked) ?? good[0] ?? there[0];
}

/** What a set-up printed last on a sheet, as planned; null when another pull lies over it. */
function lastHere(card: SetUpCard, sheet: SheetAsPulled, recipes: readonly Recipe[]): Extract<LogEvent, { kind: 'pulled' }> | null {
  const last = sheet.events.findLast((event) => 'pulls' in event);
  if (last?.kind !== 'pulled') return null;
  const here = new Set(printsOn(card, sheet).map((at) => entryAt(entryAt(recipes, sheet.recipe).pulls, at).id));
  return last.pulls.every((id) => here.has(id)) ? last : null;
}

/** What is logged when the pulls of sheets at a set-up went otherwise; nothing of sheets that have no such pull. */
export function pulledOtherwise(ticking: Ticking, how: Deviation, note: string): Happening[] {
  return ticking.numbers.flatMap((number) => {
    const sheet = ticking.sheets.find((each) => each.number === number);
    return sheet === undefined ? [] : sheetOtherwise({ ...ticking, numbers: [number] }, sheet, how, note);
  });
}

function sheetOtherwise(ticking: Ticking, sheet: SheetAsPulled, how: Deviation, note: string): Happening[] {
  const happenings = tickedOn(ticking, { how, note });
  const printed = happenings.length === 0 ? lastHere(ticking.card, sheet, ticking.recipes) : null;
  if (printed === null) return happenings;
  // What was ticked as planned and looks otherwise is said anew: nothing is ever changed in a log.
  return [
    { kind: 'undone', sheet: sheet.number, event: printed.id },
    { kind: 'otherwise', sheet: sheet.number, pulls: printed.pulls, how, note },
  ];
}
