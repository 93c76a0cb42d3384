import { entryAt } from '../../base/at.ts';
import { EngineError } from '../../base/error.ts';
import type { Recipe } from '../../recipe/types.ts';
import { say } from '../../words/en/visit/stencils.ts';
import { paperToCut } from '../paper-needs.ts';
import type { PressPlan } from '../visit.ts';

/** A sheet as it is bought. */
export interface StockSheet {
  widthMm: number;
  heightMm: number;
  /** The side along which its fibres run. */
  grain: 'width' | 'height';
}

/** How the sheets of one paper and size are cut. */
export interface CutRow {
  /** Indices of the recipes that are printed on it. */
  recipes: number[];
  paper: string;
  widthMm: number;
  heightMm: number;
  /** Sheets to cut, with overs and proofs. */
  sheets: number;
  /** By the way in which the grain then runs on the cut sheet. */
  ways: { grain: 'width' | 'height'; across: number; down: number; aStock: number; stockSheets: number | null; wasted: number }[];
}

/**
 * How many sheets come out of a stock sheet, in rows and columns of straight cuts, with the grain along
 * either side: all sheets of one print want it the same way, as paper moves across its grain with the weather.
 * @returns a row for each paper and size; `stockSheets` null where none fits
 * @throws EngineError 'visit.bad-number' when a side of the stock sheet is none
 */
export function cutList(plan: Pick<PressPlan, 'sheets' | 'recipes'>, recipes: readonly Recipe[], stock: StockSheet): CutRow[] {
  for (const side of [stock.widthMm, stock.heightMm]) {
    if (!(side > 0 && side < Infinity)) throw new EngineError('visit.bad-number', say.stockSheetOfMm(stock.widthMm, stock.heightMm));
  }
  const rows = new Map<string, Omit<CutRow, 'ways'>>();
  for (const at of plan.recipes.keys()) {
    const { name: paper, widthMm, heightMm } = entryAt(recipes, at).paper;
    const { cut } = paperToCut(plan.sheets.filter(({ recipe }) => recipe === at));
    const key = JSON.stringify([paper, widthMm, heightMm]);
    const row = rows.get(key) ?? { recipes: [], paper, widthMm, heightMm, sheets: 0 };
    row.recipes.push(at);
    row.sheets += cut;
    rows.set(key, row);
  }
  return [...rows.values()].map((row) => ({ ...row, ways: (['width', 'height'] as const).map((grain) => oneWay(row, stock, grain)) }));
}

/** Cut so that the grain runs along one side: the sheet lies as the stock does, or a quarter turned. */
function oneWay(
  sheet: Pick<CutRow, 'widthMm' | 'heightMm' | 'sheets'>,
  stock: StockSheet,
  grain: 'width' | 'height',
): CutRow['ways'][number] {
  const [wide, high] = grain === stock.grain ? [sheet.widthMm, sheet.heightMm] : [sheet.heightMm, sheet.widthMm];
  // A hair, so that sheets which just fit do.
  const across = Math.floor(stock.widthMm / wide + 1e-9);
  const down = Math.floor(stock.heightMm / high + 1e-9);
  const aStock = across * down;
  const wasted = 1 - (aStock * wide * high) / (stock.widthMm * stock.heightMm);
  return { grain, across, down, aStock, stockSheets: aStock === 0 ? null : Math.ceil(sheet.sheets / aStock), wasted };
}
