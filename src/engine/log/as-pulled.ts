import { defined, entryAt } from '../base/at.ts';
import { EngineError } from '../base/error.ts';
import type { Recipe } from '../recipe/types.ts';
import { studioOfRecipe, recipeOf, type RecipeHead } from '../recipe/write.ts';
import type { Pull } from '../stack/types.ts';
import { inkId, stocksOfInk, withInk } from '../visit/lent/borrowed-ink.ts';
import type { SheetUse } from '../visit/visit-problem.ts';
import { say } from '../words/en/log/log.ts';
import { standing } from './events.ts';
import { inOtherWords, movedSheets } from './moved.ts';
import { recipesNow } from './now/goes-on.ts';
import { measuredPairs, minDeltaEOf, type OrderPairs, outOfTurn } from './turns.ts';
import type { LogEvent, LoggedSheet, VisitHead } from './types.ts';

/** One sheet as it really is. */
export interface SheetAsPulled {
  number: number;
  /** Index into the visit's recipes. */
  recipe: number;
  /** Absent = a print that is wanted. */
  use?: SheetUse | undefined;
  /** Number of the spoiled sheet whose place it has taken; absent = none. */
  inPlaceOf?: number | undefined;
  /** What is on it, first down first, with the ink, strokes and offset that were really pulled. */
  pulls: Pull[];
  /** Positions of the recipe's pulls that are on it, in the order in which they were printed. */
  done: number[];
  /** Whether something on it differs from what its recipe says: a pull or the order. */
  otherwise: boolean;
  spoiled: boolean;
  /** Kept as it came: not as planned, and worth keeping. */
  kept: boolean;
  /** The same as `kept`, by the name that scripts know from before. */
  lucky: boolean;
  /** Where it lies; '' when nobody said. */
  box: string;
  /** Notes, in the order in which they were made. */
  notes: string[];
  /** What counts of its events, in order. */
  events: LogEvent[];
}

const REGISTER_STEPS_A_MM = 10;

function onGrid(mm: number): number {
  return Math.round(mm * REGISTER_STEPS_A_MM) / REGISTER_STEPS_A_MM;
}

/**
 * The visit's recipes, and those of sheets that go on otherwise, with the inks that were pulled instead of theirs, so that every sheet can be
 * drawn, weighed out and kept. A recipe without such an ink is the same object. An ink that came
 * from another recipe of the visit or from the drawer brings the stocks that it is weighed from; one whose
 * stocks nobody has counts as an ink by itself.
 */
export function recipesAsPulled(head: VisitHead, events: readonly LogEvent[]): Recipe[] {
  const { recipes, recipeOf: recipeOfSheet } = recipesNow(head, events);
  const before = [...recipes];
  for (const event of standing(events)) {
    if (event.kind !== 'otherwise' || event.how.ink === undefined) continue;
    const at = recipeOfSheet.get(event.sheet);
    const recipe = at === undefined ? undefined : recipes[at];
    if (recipe === undefined) continue;
    const { ink, stocks = [] } = event.how;
    const lenders = [...before, { inks: [ink, ...stocks] }];
    recipes[defined(at)] = { ...recipe, inks: withInk(recipe.inks, ink, stocksOfInk(ink, lenders)) };
  }
  return recipes.map((recipe, at) => (recipe.inks.length === entryAt(before, at).inks.length ? entryAt(before, at) : recipe));
}

/**
 * What is on a sheet after what happened to it. A pull that is said to be printed twice counts
 * once, the first time; one that the recipe does not have counts not at all: `checkLog` names both.
 * @param recipe of `recipesAsPulled`, so that the inks are there
 * @param events of the whole visit or of the sheet alone
 * @param pairs knows which pulls must keep their order
 */
export function sheetAsPulled(
  recipe: Recipe,
  sheet: LoggedSheet,
  events: readonly LogEvent[],
  pairs: OrderPairs = measuredPairs(),
): SheetAsPulled {
  const own = standing(events.filter((event) => event.sheet === sheet.number));
  const state: SheetAsPulled = {
    ...sheet,
    pulls: [],
    done: [],
    otherwise: false,
    spoiled: false,
    kept: false,
    lucky: false,
    box: '',
    notes: [],
    events: own,
  };
  for (const event of own) {
    if ('note' in event && event.note !== '') state.notes.push(event.note);
    if (event.kind === 'spoiled' || event.kind === 'replaced') state.spoiled = true;
    else if (event.kind === 'kept' || event.kind === 'lucky') state.kept = state.lucky = true;
    else if (event.kind === 'placed') state.box = event.box;
    else if ('pulls' in event) print(state, recipe, event);
  }
  // Pulls out of turn can show as much as a wrong ink; free swaps, which a pull order makes, do not.
  state.otherwise ||= outOfTurn(recipe, state.done, pairs).length > 0;
  return state;
}

function print(state: SheetAsPulled, recipe: Recipe, event: Extract<LogEvent, { pulls: string[] }>): void {
  for (const id of event.pulls) {
    const at = recipe.pulls.findIndex((pull) => pull.id === id);
    if (at < 0 || state.done.includes(at)) continue;
    const planned = entryAt(recipe.pulls, at);
    state.done.push(at);
    if (event.kind !== 'otherwise') {
      state.pulls.push(planned);
      continue;
    }
    const { how } = event;
    state.otherwise = true;
    state.pulls.push({
      ...planned,
      // Pictures go by the ids of their pulls, so a pull that looks otherwise has its own.
      id: `${planned.id}~${event.id}`,
      ink: how.ink === undefined ? planned.ink : inkId(how.ink, recipe.inks).id,
      strokes: how.strokes ?? planned.strokes,
      dxMm: onGrid(planned.dxMm + how.dxMm),
      dyMm: onGrid(planned.dyMm + how.dyMm),
    });
  }
}

/** All sheets of a visit as they are, in the order of their numbers. */
export function sheetsAsPulled(
  head: VisitHead,
  events: readonly LogEvent[],
  pairs: OrderPairs = measuredPairs(minDeltaEOf(head)),
): SheetAsPulled[] {
  const recipes = recipesAsPulled(head, events);
  const bySheet = new Map<number, LogEvent[]>();
  for (const event of events) {
    const list = bySheet.get(event.sheet);
    if (list === undefined) bySheet.set(event.sheet, [event]);
    else list.push(event);
  }
  const places = placesTaken(events);
  const moved = movedSheets(head, events);
  const { recipeOf: recipeNow } = recipesNow(head, events);
  return head.sheets.map((planned) => {
    const of = moved.get(planned.number);
    const sheet = { ...planned, recipe: recipeNow.get(planned.number) ?? planned.recipe };
    const own = bySheet.get(sheet.number) ?? [];
    const state = sheetAsPulled(entryAt(recipes, sheet.recipe), sheet, of === undefined ? own : inOtherWords(own, of), pairs);
    const inPlaceOf = places.get(sheet.number);
    if (inPlaceOf === undefined) return state;
    const { use: _over, ...good } = state;
    return { ...good, inPlaceOf };
  });
}

/** Numbers of the overs that are prints now, each with the number of the spoiled sheet that it stands for. */
function placesTaken(events: readonly LogEvent[]): Map<number, number> {
  return new Map(standing(events).flatMap((event) => (event.kind === 'replaced' ? [[event.by, event.sheet] as const] : [])));
}

/**
 * A recipe of a sheet as it really is, to print again what happened once.
 * @param recipe of `recipesAsPulled`
 * @throws EngineError 'log.bare' when nothing is on the sheet
 */
export function recipeAsPulled(recipe: Recipe, sheet: SheetAsPulled, head: RecipeHead): Recipe {
  if (sheet.pulls.length === 0) {
    throw new EngineError('log.bare', say.sheetHasNoPull(sheet.number));
  }
  const pulls = sheet.pulls.map((pull, at) => ({ ...pull, id: `p${at + 1}` }));
  return recipeOf(pulls, studioOfRecipe(recipe), head);
}
