import { entryAt, num } from '../../base/at.ts';
import { EngineError, type Problem } from '../../base/error.ts';
import type { Recipe } from '../../recipe/types.ts';
import { say } from '../../words/en/log/edition.ts';
import { sheetsAsPulled, type SheetAsPulled } from '../as-pulled.ts';
import { recipesNow } from '../now/goes-on.ts';
import type { OrderPairs } from '../turns.ts';
import type { LogEvent, VisitHead } from '../types.ts';
import { type Edition, editionMarks } from './edition.ts';

/** A sheet of an edition and what is pencilled on it. */
export interface EditionSheet {
  number: number;
  /** '3/20', 'AP 1/2'; null when it has none. */
  mark: string | null;
  /** Whether the mark was given by hand. */
  chosen: boolean;
  /** 'reject' = spoiled; 'out' = kept out by hand; 'spare' = good, but no mark is left for it. */
  fate: 'numbered' | 'reject' | 'out' | 'spare';
  /** Whether all its pulls are on it. */
  finished: boolean;
  sheet: SheetAsPulled;
}

/** When a pull of the recipe went down, over all sheets of the edition. */
export interface PullDates {
  /** Ms since 1970 UTC, each time once, ascending; empty when nothing was logged. */
  atMs: number[];
  /** On how many sheets. */
  sheets: number;
}

/** An edition as its visit's log tells it. */
export interface EditionRecord {
  /** In the order of their numbers. */
  sheets: EditionSheet[];
  /** By the recipe's pulls. */
  dates: PullDates[];
  /** What keeps the numbers from being true. */
  problems: Problem[];
}

/**
 * Gives each good sheet its mark. Marks that were chosen by hand stay; the others go to the sheets
 * in the order of their numbers, in an edition of like impressions first to those that went as the
 * recipe says. Spoiled sheets drop out, and their marks go to others; of two marks for one sheet the
 * first counts.
 * @param sheets those of the edition's recipe
 * @param pulls how many pulls make a finished sheet
 */
export function numberSheets(edition: Pick<Edition, 'counts' | 'marks'>, sheets: readonly SheetAsPulled[], pulls: number): EditionSheet[] {
  const all = editionMarks(edition.counts);
  const left = new Set(all);
  const chosen = new Map<number, string>();
  for (const { sheet: number, mark } of edition.marks) {
    const sheet = sheets.find((entry) => entry.number === number);
    if (sheet === undefined || sheet.spoiled || chosen.has(number) || (mark !== '' && !left.has(mark))) continue;
    chosen.set(number, mark);
    left.delete(mark);
  }
  // A proof was pulled to be looked at: it takes a mark only when nothing else is left.
  const last = (sheet: SheetAsPulled): number => (sheet.use === 'proof' ? 1 : 0);
  const free = sheets
    .filter((sheet) => !sheet.spoiled && !chosen.has(sheet.number))
    .sort((a, b) => last(a) - last(b) || a.number - b.number);
  const line = edition.counts.variable ? free : [...free.filter((sheet) => !sheet.otherwise), ...free.filter((sheet) => sheet.otherwise)];
  // Those that went otherwise only fill up, yet the numbers shall rise with the sheets.
  const takers = line.slice(0, left.size).sort((a, b) => a.number - b.number);
  const given = new Map(takers.map((sheet, at) => [sheet.number, entryAt([...left], at)]));
  return [...sheets]
    .sort((a, b) => a.number - b.number)
    .map((sheet): EditionSheet => {
      const byHand = chosen.get(sheet.number);
      const mark = (byHand ?? given.get(sheet.number) ?? '') || null;
      return {
        number: sheet.number,
        mark,
        chosen: byHand !== undefined,
        fate: sheet.spoiled ? 'reject' : mark !== null ? 'numbered' : byHand !== undefined ? 'out' : 'spare',
        finished: sheet.done.length >= pulls,
        sheet,
      };
    });
}

/**
 * Reads an edition out of the log of its visit: which sheet is 3/20, which AP 1, what was spoiled,
 * when each pull went down.
 * @param pairs as `sheetsAsPulled` takes it
 * @throws EngineError 'edition.visit' when the visit does not print the edition's recipe
 */
export function editionRecord(edition: Edition, head: VisitHead, events: readonly LogEvent[], pairs?: OrderPairs): EditionRecord {
  const at = head.recipes.findIndex((recipe) => recipe.id === edition.recipe);
  const recipe = head.recipes[at];
  if (recipe === undefined) {
    throw new EngineError('edition.visit', say.doesNotPrintThis(head.title));
  }
  const own = sheetsOfEdition(recipe, head, events, sheetsAsPulled(head, events, pairs));
  const sheets = numberSheets(edition, own, recipe.pulls.length);
  // Of sheets that were spoiled too: the day's work was done on them as well.
  const dates = recipe.pulls.map((pull): PullDates => {
    const times = own.flatMap(({ events: each }) =>
      each.flatMap((event) => ('pulls' in event && event.pulls.includes(pull.id) ? [event.atMs] : [])),
    );
    return { atMs: [...new Set(times)].sort((a, b) => a - b), sheets: times.length };
  });
  return { sheets, dates, problems: recordProblems(edition, sheets) };
}

/**
 * The sheets of a recipe, and those with all its pulls and extra ones between them, which went otherwise; what
 * goes on as another print is none.
 * @param recipe of the visit
 * @param sheets all of the visit
 * @returns each by the recipe's own pulls: what is done of them
 */
export function sheetsOfEdition(
  recipe: Recipe,
  head: VisitHead,
  events: readonly LogEvent[],
  sheets: readonly SheetAsPulled[],
): SheetAsPulled[] {
  const { recipes } = recipesNow(head, events);
  const placeOf = new Map(recipe.pulls.map(({ id }, p) => [id, p]));
  return sheets.flatMap((sheet) => {
    const now = entryAt(recipes, sheet.recipe);
    if (now === recipe) return [sheet];
    const there = new Set(now.pulls.map(({ id }) => id));
    if (!cameFrom(now, recipe, recipes, head) || !recipe.pulls.every(({ id }) => there.has(id))) return [];
    const done = sheet.done.flatMap((at) => placeOf.get(entryAt(now.pulls, at).id) ?? []);
    // As many of its own as are down: an extra pull is none of them.
    return [{ ...sheet, done, otherwise: true }];
  });
}

/** Whether a recipe that was made at the press came from one of the visit. */
function cameFrom(now: Recipe, recipe: Recipe, recipes: readonly Recipe[], head: VisitHead): boolean {
  let of: Recipe | undefined = now;
  while (of !== undefined && of !== recipe && !head.recipes.includes(of)) {
    const parent: string | undefined = of.parent;
    of = recipes.find(({ id }) => id === parent);
  }
  return of === recipe;
}

/** How many good sheets of a recipe a visit has, printed or still to be printed, overs and proofs among them. */
export function goodSheets(id: string, head: VisitHead, events: readonly LogEvent[]): number {
  const recipe = head.recipes.find((each) => each.id === id);
  if (recipe === undefined) return 0;
  return sheetsOfEdition(
    recipe,
    head,
    events,
    sheetsAsPulled(head, events, () => null),
  ).filter(({ spoiled }) => !spoiled).length;
}

/**
 * The order in which the pulls of an edition began to go down, where a pull order made it another
 * than the recipe's.
 * @param dates by the recipe's pulls
 * @returns positions of the recipe's pulls; null when it is the recipe's order, or when not all were logged
 */
export function printedOrder(dates: readonly PullDates[]): number[] | null {
  if (dates.some(({ atMs }) => atMs.length === 0)) return null;
  const order = dates.map((_, at) => at).sort((a, b) => num(entryAt(dates, a).atMs, 0) - num(entryAt(dates, b).atMs, 0) || a - b);
  return order.every((pull, at) => pull === at) ? null : order;
}

function recordProblems({ counts, marks }: Edition, sheets: readonly EditionSheet[]): Problem[] {
  const problems: Problem[] = [];
  const used = new Set(sheets.map((sheet) => sheet.mark));
  const short = editionMarks(counts).filter((mark) => !used.has(mark));
  if (short.length > 0) {
    const named = short.length > 4 ? say.andMore(short.slice(0, 3).join(', '), short.length - 3) : short.join(', ');
    problems.push({
      code: 'edition.short',
      message: say.noSheetIsLeft(named),
      where: 'sheets',
    });
  }
  const unfinished = sheets.filter((sheet) => sheet.fate === 'numbered' && !sheet.finished);
  if (unfinished.length > 0) {
    problems.push({
      code: 'edition.unfinished',
      message: say.numberedSheetsAreNot(unfinished.length, entryAt(unfinished, 0).number),
      where: `sheet ${entryAt(unfinished, 0).number}`,
    });
  }
  const otherwise = counts.variable ? [] : sheets.filter((sheet) => sheet.fate === 'numbered' && sheet.sheet.otherwise);
  if (otherwise.length > 0) {
    problems.push({
      code: 'edition.otherwise',
      message: say.sheetWasPulledDifferently(
        entryAt(otherwise, 0).number,
        entryAt(otherwise, 0).mark ?? '',
        otherwise.length > 1 ? say.asMoreWere(otherwise.length - 1) : '',
      ),
      where: `sheet ${entryAt(otherwise, 0).number}`,
    });
  }
  for (const { sheet: number, mark } of marks) {
    const there = sheets.find((sheet) => sheet.number === number);
    if (there?.fate === 'reject' && mark !== '') {
      problems.push({
        code: 'edition.reject',
        message: say.sheetWasToBe(number, mark),
        where: `sheet ${number}`,
      });
    }
  }
  return problems;
}
