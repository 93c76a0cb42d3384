import { defined, num } from '../base/at.ts';
import type { CardState } from './set-up-cards.ts';
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
  /** Strokes of those pulls together. */
  strokes: number[][];
}

/** What a sheet is that is printed beside those that are wanted; null for these, the test sheet and unknown numbers. */
export function extraUse({ sheets }: Pick<PressPlan, 'sheets'>, number: number): 'proof' | 'over' | null {
  const use = sheets.find((sheet) => sheet.number === number)?.use;
  return use === 'proof' || use === 'over' ? use : null;
}

/**
 * Lays a plan out as a grid.
 * @param most columns at most; with more sheets, neighbours that are printed alike share a column
 */
export function sheetGrid(plan: PressPlan, most: number): SheetGrid {
  const place = new Map(plan.sheets.map((sheet, at) => [sheet.number, at]));
  const rowsOf = (value: (state: CardState) => number): number[][] =>
    plan.cards.map((card) => {
      const row = plan.sheets.map(() => 0);
      for (const state of card.states) for (const sheet of state.sheets) row[defined(place.get(sheet))] = value(state);
      return row;
    });
  const bySheet = rowsOf(({ prints }) => prints.length);
  // What a set-up prints lies on top of what it leaves behind.
  const strokes = rowsOf(({ prints, after }) => after.slice(-prints.length).reduce((sum, pull) => sum + pull.strokes, 0));
  const merge = plan.sheets.length > most;
  const columns: SheetColumn[] = [];
  const kept: number[] = [];
  for (const [at, sheet] of plan.sheets.entries()) {
    const last = columns.at(-1);
    const before = plan.sheets[at - 1];
    if (
      merge &&
      last?.recipe === sheet.recipe &&
      before?.use === sheet.use &&
      [...bySheet, ...strokes].every((row) => row[at] === row[at - 1])
    ) {
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
  const shown = (rows: number[][]): number[][] => rows.map((row) => kept.map((at) => num(row, at)));
  return { columns, spans, pulls: shown(bySheet), strokes: shown(strokes) };
}
