import { entryAt } from '../../base/at.ts';
import type { Recipe } from '../../recipe/types.ts';
import type { SetUpCard } from '../../visit/set-up-cards.ts';
import type { PressPlan } from '../../visit/visit.ts';
import type { SheetAsPulled } from '../as-pulled.ts';
import type { Deviation, Happening, LogEvent } from '../types.ts';
import { tickKey } from './ticks.ts';

/**
 * Positions of the recipe's pulls that a set-up prints on a sheet; none where the sheet has gone over to another
 * recipe since the order was made.
 */
export function printsOn(card: SetUpCard, { number, recipe }: Pick<SheetAsPulled, 'number' | 'recipe'>): number[] {
  return card.states.find((state) => state.sheets.includes(number) && state.recipe === recipe)?.prints ?? [];
}

/** Whether a pull that a set-up prints on a sheet was pulled differently: another ink, other strokes, off register. */
export function wentOtherwise(card: SetUpCard, sheet: SheetAsPulled, recipe: Recipe): boolean {
  const here = new Set(printsOn(card, sheet).map((at) => entryAt(recipe.pulls, at).id));
  return sheet.events.some((event) => event.kind === 'otherwise' && event.pulls.some((id) => here.has(id)));
}

/** Keys of the sheets whose pulls are done, set-up by set-up; a spoiled sheet has nothing left to do. */
export function ticksOf(plan: PressPlan, sheets: readonly SheetAsPulled[]): Set<string> {
  const states = new Map(sheets.map((sheet) => [sheet.number, sheet]));
  const ticks = new Set<string>();
  for (const card of plan.cards) {
    for (const { recipe, sheets: numbers, prints } of card.states) {
      for (const number of numbers) {
        const state = states.get(number);
        if (state === undefined) continue;
        if (state.spoiled || (state.recipe === recipe && prints.every((at) => state.done.includes(at))))
          ticks.add(tickKey(card.number, number));
      }
    }
  }
  return ticks;
}

/** Keys of the sheets that were pulled otherwise, set-up by set-up. @param recipes of `recipesAsPulled` */
export function otherwiseTicks(plan: PressPlan, sheets: readonly SheetAsPulled[], recipes: readonly Recipe[]): Set<string> {
  const differing = sheets.filter((sheet) => !sheet.spoiled && sheet.events.some(({ kind }) => kind === 'otherwise'));
  return new Set(
    plan.cards.flatMap((card) =>
      differing
        .filter((sheet) => wentOtherwise(card, sheet, entryAt(recipes, sheet.recipe)))
        .map(({ number }) => tickKey(card.number, number)),
    ),
  );
}

/** Sheets of a set-up that are ticked, and the visit as it stands. */
export interface Ticking {
  card: SetUpCard;
  numbers: readonly number[];
  /** All sheets of the visit as they are. */
  sheets: readonly SheetAsPulled[];
  recipes: readonly Recipe[];
}

/** What to log when sheets are ticked in a set-up, pulled as planned or otherwise. */
export function tickedOn({ card, numbers, sheets, recipes }: Ticking, otherwise?: { how: Deviation; note: string }): Happening[] {
  return numbers.flatMap((sheet): Happening[] => {
    const state = sheets.find((entry) => entry.number === sheet);
    if (state === undefined || state.spoiled) return [];
    const left = printsOn(card, state).filter((at) => !state.done.includes(at));
    const pulls = left.map((at) => entryAt(entryAt(recipes, state.recipe).pulls, at).id);
    if (pulls.length === 0) return [];
    return [otherwise === undefined ? { kind: 'pulled', sheet, pulls } : { kind: 'otherwise', sheet, pulls, ...otherwise }];
  });
}

/** A tick that comes back within so long was taken back by a slip of the finger. */
const SLIP_MS = 120_000;

/**
 * What to log when sheets are ticked. A tick that was taken back a moment ago counts again as it
 * was: logged anew it would lie over what was pulled since, and the sheet not be as it is.
 * @param events of the whole visit
 * @param nowMs ms since 1970 UTC
 */
export function tickedAgain(ticking: Ticking, events: readonly LogEvent[], nowMs: number): Happening[] {
  return tickedOn(ticking).flatMap((happening): Happening[] => {
    if (happening.kind !== 'pulled') return [happening];
    const undoings = slipsOf(happening, events, nowMs);
    return undoings.length === 0 ? [happening] : undoings.map((event) => ({ kind: 'undone', sheet: happening.sheet, event }));
  });
}

/** Ids of what took the same pull back just now; none when it was taken back longer ago or never logged. */
function slipsOf({ sheet, pulls }: { sheet: number; pulls: readonly string[] }, events: readonly LogEvent[], nowMs: number): string[] {
  const own = events.filter((event) => event.sheet === sheet);
  const takenBack = new Set(own.flatMap((event) => (event.kind === 'undone' ? [event.event] : [])));
  const before = own.filter((event) => event.kind === 'pulled' && event.pulls.join() === pulls.join()).sort((a, b) => b.atMs - a.atMs)[0];
  const undoings = own.filter((event) => event.kind === 'undone' && event.event === before?.id && !takenBack.has(event.id));
  return undoings.every((event) => nowMs - event.atMs <= SLIP_MS) ? undoings.map((event) => event.id) : [];
}

/** What to log when ticks of a set-up are taken back. */
export function tickedOff({ card, numbers, sheets, recipes }: Ticking): Happening[] {
  return numbers.flatMap((sheet): Happening[] => {
    const state = sheets.find((entry) => entry.number === sheet);
    if (state === undefined) return [];
    const pulls = new Set(printsOn(card, state).map((at) => entryAt(entryAt(recipes, state.recipe).pulls, at).id));
    return state.events
      .filter((event) => 'pulls' in event && event.pulls.some((pull) => pulls.has(pull)))
      .map((event) => ({ kind: 'undone', sheet, event: event.id }));
  });
}
