import { defined, entryAt } from '../base/at.ts';
import { cutText } from '../base/bounds.ts';
import type { Problem } from '../base/error.ts';
import type { Recipe } from '../recipe/types.ts';
import { inkText } from '../visit/registry.ts';
import { say } from '../words/en/log/log.ts';
import { standing } from './events.ts';
import { type MovedSheet, movedSheets } from './moved.ts';
import { type RecipesNow, recipesNow } from './now/goes-on.ts';
import { measuredPairs, minDeltaEOf, type OrderPairs, outOfTurn } from './turns.ts';
import type { LogEvent, VisitHead } from './types.ts';

type Printed = Extract<LogEvent, { pulls: string[] }>;

/**
 * What in a log cannot all be true, or not without showing on the sheet.
 * @returns a problem each: 'log.sheet' (no such sheet), 'log.pull' (no such pull, so no screen for
 *   it), 'log.ink' (an ink that no recipe of the visit has), 'log.twice', 'log.order' (against an
 *   overlap), 'log.spoiled' (pulled after it was spoiled), 'log.replaced' (by a sheet with other pulls on it),
 *   'log.early' (before the visit began),
 *   'log.undone' (takes back what is not there, or is of another sheet); `where` names the event
 * @param pairs knows which pulls must keep their order; asked only when a sheet was pulled out of turn
 */
export function checkLog(head: VisitHead, events: readonly LogEvent[], pairs: OrderPairs = measuredPairs(minDeltaEOf(head))): Problem[] {
  const problems: Problem[] = [];
  const fault: Fault = (event, code, message) => {
    problems.push({ code, message, where: `event ${event.id}` });
  };
  checkUndone(events, fault);
  const read = new SheetReader(head, { moved: movedSheets(head, events), now: recipesNow(head, events) }, fault);
  for (const event of standing(events)) read.event(event);
  read.turns(pairs);
  return problems;
}

/** Follows each sheet through the events that count, in their order. */
class SheetReader {
  private readonly head: VisitHead;
  private readonly fault: Fault;
  /** By number the recipe that a sheet is of, at the moment that is looked at. */
  private readonly sheets: Map<number, Recipe | undefined>;
  private readonly moved: ReadonlyMap<number, MovedSheet>;
  /** By the id of an entry that says that a sheet goes on otherwise, the recipe that it is of since. */
  private readonly chosen: ReadonlyMap<string, Recipe>;
  private readonly inks: ReadonlySet<string>;
  /** By sheet the pulls that were printed on it, by position, with the event that says so. */
  private readonly printed = new Map<number, Map<number, Printed>>();
  private readonly spoiled = new Set<number>();

  constructor(head: VisitHead, { moved, now }: { moved: ReadonlyMap<number, MovedSheet>; now: RecipesNow }, fault: Fault) {
    this.head = head;
    this.moved = moved;
    this.fault = fault;
    this.chosen = now.byEvent;
    this.sheets = new Map(head.sheets.map((sheet) => [sheet.number, head.recipes[sheet.recipe]]));
    this.inks = new Set(now.recipes.flatMap((recipe) => recipe.inks.map(inkText)));
  }

  event(event: LogEvent): void {
    if (event.sheet === 0) return;
    if (event.sheet === this.head.test) {
      this.tested(event);
      return;
    }
    const recipe = this.sheets.get(event.sheet);
    if (recipe === undefined) {
      this.fault(event, 'log.sheet', say.sheetIsInLog(event.sheet));
      return;
    }
    if (event.atMs < this.head.begunMs) {
      this.fault(event, 'log.early', say.sheetEntryIsFrom(event.sheet));
    }
    if (event.kind === 'spoiled' || event.kind === 'replaced') this.spoiled.add(event.sheet);
    if (event.kind === 'replaced' && this.sheets.get(event.by) !== recipe) this.replaced(event, recipe);
    if (event.kind === 'goes-on' || event.kind === 'extra') this.goesOn(event, recipe);
    if ('pulls' in event) this.pulls(event, this.sheets.get(event.sheet) ?? recipe);
  }

  /** The test sheet has no recipe: it may carry a pull of any. */
  private tested(event: LogEvent): void {
    if (event.kind !== 'tested' || this.sheets.get(event.of)?.pulls.some(({ id }) => id === event.pull) === true) return;
    this.fault(event, 'log.pull', say.testSheetIsSaid(event.sheet, cutText(event.pull), event.of));
  }

  private replaced(event: Extract<LogEvent, { kind: 'replaced' }>, recipe: Recipe): void {
    const moved = this.moved.get(event.by);
    const first = this.sheets.get(event.by);
    if (moved?.event.id !== event.id || first === undefined) {
      this.fault(event, 'log.replaced', say.sheetIsSaidTo(event.sheet, event.by, cutText(recipe.title)));
      return;
    }
    const there = [...(this.printed.get(event.by) ?? [])];
    const placeOf = (at: number): number => recipe.pulls.findIndex(({ id }) => id === moved.ids.get(entryAt(first.pulls, at).id));
    this.printed.set(event.by, new Map(there.map(([at, printed]) => [placeOf(at), printed])));
    this.sheets.set(event.by, recipe);
  }

  /** From now on what is on a sheet counts by the recipe that was chosen for it. */
  private goesOn(event: LogEvent, recipe: Recipe): void {
    const chosen = this.chosen.get(event.id);
    if (chosen === undefined) return;
    const there = [...(this.printed.get(event.sheet) ?? [])];
    const placeOf = (at: number): number => chosen.pulls.findIndex(({ id }) => id === recipe.pulls[at]?.id);
    this.printed.set(event.sheet, new Map(there.map(([at, printed]) => [placeOf(at), printed])));
    this.sheets.set(event.sheet, chosen);
  }

  private pulls(event: Printed, recipe: Recipe): void {
    if (this.spoiled.has(event.sheet)) {
      this.fault(event, 'log.spoiled', say.sheetWasPulledAfter(event.sheet));
    }
    if (
      event.kind === 'otherwise' &&
      event.how.ink !== undefined &&
      event.how.stocks === undefined &&
      !this.inks.has(inkText(event.how.ink))
    ) {
      this.fault(event, 'log.ink', say.sheetIsSaidToBe(event.sheet, cutText(event.how.ink.name)));
    }
    for (const id of event.pulls) this.pull(event, recipe, id);
  }

  private pull(event: Printed, recipe: Recipe, id: string): void {
    const at = recipe.pulls.findIndex((pull) => pull.id === id);
    if (at < 0) {
      this.fault(event, 'log.pull', say.sheetIsSaidToBePulled(event.sheet, cutText(id), cutText(recipe.title)));
      return;
    }
    let own = this.printed.get(event.sheet);
    if (own === undefined) this.printed.set(event.sheet, (own = new Map()));
    if (own.has(at)) {
      this.fault(event, 'log.twice', say.sheetPullOfIs(event.sheet, at + 1, cutText(recipe.title)));
    } else own.set(at, event);
  }

  /** Names the pulls that lie over what they should lie under; at most one sentence for each pull. */
  turns(pairs: OrderPairs): void {
    for (const [number, own] of this.printed) {
      const recipe = defined(this.sheets.get(number));
      for (const { at, over } of outOfTurn(recipe, [...own.keys()], pairs)) {
        this.fault(
          defined(own.get(at)),
          'log.order',
          say.sheetIsLoggedAfter(number, pullWords(recipe, at), pullWords(recipe, over), cutText(recipe.title)),
        );
      }
    }
  }
}

type Fault = (event: LogEvent, code: string, message: string) => void;

function checkUndone(events: readonly LogEvent[], fault: Fault): void {
  const known = new Map(events.map((event) => [event.id, event]));
  for (const event of events) {
    if (event.kind !== 'undone') continue;
    const undone = known.get(event.event);
    if (undone === undefined) {
      fault(event, 'log.undone', say.sheetSomethingIsUndone(event.sheet));
    } else if (undone.sheet !== event.sheet) {
      fault(event, 'log.undone', say.sheetWhatIsUndone(event.sheet, undone.sheet));
    }
  }
}

function pullWords(recipe: Recipe, at: number): string {
  const pull = entryAt(recipe.pulls, at);
  const screen = recipe.screens.find((entry) => entry.id === pull.screen);
  const ink = recipe.inks.find((entry) => entry.id === pull.ink);
  return say.screenIn(screen?.number ?? '?', ink?.name ?? '?');
}
