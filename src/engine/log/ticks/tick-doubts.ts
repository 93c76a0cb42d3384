import { entryAt } from '../../base/at.ts';
import type { Recipe } from '../../recipe/types.ts';
import type { SheetAsPulled } from '../as-pulled.ts';
import { filmsOn } from '../films.ts';
import type { OrderPairs } from '../turns.ts';
import { printsOn, type Ticking } from './ticking.ts';

/** What speaks against a tick: the sheet is not ready for the pull that is said to be on it. */
export type TickDoubt = { sheet: number; /** Index into the visit's recipes. */ recipe: number } & (
  | { kind: 'under'; /** Position of a pull that lies under this one and is not down. */ at: number }
  | { kind: 'over'; /** Position of a pull that is down and should lie over this one. */ at: number }
  | { kind: 'wet'; ink: string; /** Ms since 1970 UTC. */ dryMs: number }
);

/** Which pulls of a recipe show their order, and which touch at all; null while unknown. */
export interface KnownPairs {
  order: OrderPairs;
  touching: OrderPairs;
}

/**
 * Looks whether sheets can be pulled in a set-up as they lie: every film under it down, none that
 * belongs over it, and those that it touches dry.
 * @param pairs while the order is unknown nothing is said of it; while it is unknown what touches, every wet film does
 * @param nowMs ms since 1970 UTC
 * @returns in the order of the sheets, one of a kind each; nothing for sheets that are spoiled or pulled already
 */
export function tickDoubts({ card, numbers, sheets, recipes }: Ticking, pairs: KnownPairs, nowMs: number): TickDoubt[] {
  return numbers.flatMap((number) => {
    const sheet = sheets.find((each) => each.number === number);
    if (sheet === undefined || sheet.spoiled) return [];
    const left = printsOn(card, sheet).filter((at) => !sheet.done.includes(at));
    const recipe = entryAt(recipes, sheet.recipe);
    return [...turnDoubts(sheet, recipe, left, pairs.order), ...wetDoubts(sheet, recipe, { left, pairs, nowMs })];
  });
}

function turnDoubts(sheet: SheetAsPulled, recipe: Recipe, left: readonly number[], order: OrderPairs): TickDoubt[] {
  const matters = left.length === 0 ? null : order(recipe);
  if (matters === null) return [];
  const { number, done } = sheet;
  const all = recipe.pulls.map((_, at) => at);
  const missing = all.find((a) => !done.includes(a) && !left.includes(a) && left.some((at) => matters.has(`${a} ${at}`)));
  const early = all.find((b) => done.includes(b) && left.some((at) => matters.has(`${at} ${b}`)));
  const doubts: TickDoubt[] = [];
  if (missing !== undefined) doubts.push({ sheet: number, recipe: sheet.recipe, kind: 'under', at: missing });
  if (early !== undefined) doubts.push({ sheet: number, recipe: sheet.recipe, kind: 'over', at: early });
  return doubts;
}

function wetDoubts(
  sheet: SheetAsPulled,
  recipe: Recipe,
  { left, pairs, nowMs }: { left: readonly number[]; pairs: KnownPairs; nowMs: number },
): TickDoubt[] {
  if (left.length === 0) return [];
  const wet = filmsOn(sheet, recipe).filter((film) => film.dryMs > nowMs);
  if (wet.length === 0) return [];
  const touching = pairs.touching(recipe);
  const last = wet
    .filter((film) => touching === null || left.some((at) => touching.has(`${Math.min(at, film.at)} ${Math.max(at, film.at)}`)))
    .sort((a, b) => b.dryMs - a.dryMs)[0];
  return last === undefined ? [] : [{ sheet: sheet.number, recipe: sheet.recipe, kind: 'wet', ink: last.ink, dryMs: last.dryMs }];
}
