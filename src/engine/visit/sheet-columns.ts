import { defined, num } from '../base/at.ts';
import type { PressPlan } from './visit.ts';

/** A column of the set-up grid: one sheet, or sheets that are printed alike all the way. */
export interface SheetColumn {
  recipe: number;
  /** Ascending. */
  sheets: number[];
}

/** Pulls that a set-up prints on a sheet, by set-up and column; 0 leaves the square empty. */
export interface SheetGrid {
  columns: SheetColumn[];
  /** Columns of each recipe, in the order of the columns. */
  spans: { recipe: number; columns: number }[];
  /** One row a set-up. */
  pulls: number[][];
}

/**
 * Lays a plan out as a grid.
 * @param most columns at most; with more sheets, neighbours that are printed alike share a column
 */
export function sheetGrid(plan: PressPlan, most: number): SheetGrid {
  const place = new Map(plan.sheets.map((sheet, at) => [sheet.number, at]));
  const bySheet = plan.cards.map((card) => {
    const row = plan.sheets.map(() => 0);
    for (const state of card.states) {
      for (const sheet of state.sheets) row[defined(place.get(sheet))] = state.prints.length;
    }
    return row;
  });
  const merge = plan.sheets.length > most;
  const columns: SheetColumn[] = [];
  const kept: number[] = [];
  for (const [at, sheet] of plan.sheets.entries()) {
    const last = columns.at(-1);
    const before = plan.sheets[at - 1];
    if (merge && last?.recipe === sheet.recipe && before?.use === sheet.use && bySheet.every((row) => row[at] === row[at - 1])) {
      last.sheets.push(sheet.number);
    } else {
      columns.push({ recipe: sheet.recipe, sheets: [sheet.number] });
      kept.push(at);
    }
  }
  const spans: SheetGrid['spans'] = [];
  for (const { recipe } of columns) {
    const last = spans.at(-1);
    if (last?.recipe === recipe) last.columns++;
    else spans.push({ recipe, columns: 1 });
  }
  return { columns, spans, pulls: bySheet.map((row) => kept.map((at) => num(row, at))) };
}
