import { describe, expect, it } from 'vitest';
import { sheetGrid } from '../../../src/engine/visit/sheet-columns.ts';
import type { PressPlan } from '../../../src/engine/visit/visit.ts';

/** Sheets 1–3 become recipe 0, 4–5 recipe 1; sheet 2 gets its second pull apart from 1 and 3. */
const PLAN = {
  sheets: [1, 2, 3, 4, 5].map((number) => ({ number, recipe: number > 3 ? 1 : 0 })),
  cards: [
    {
      states: [
        { recipe: 0, sheets: [1, 2, 3], prints: [0], after: [{ strokes: 2 }] },
        { recipe: 1, sheets: [4, 5], prints: [0, 1], after: [{ strokes: 1 }, { strokes: 3 }] },
      ],
    },
    { states: [{ recipe: 0, sheets: [1, 3], prints: [1], after: [{ strokes: 2 }, { strokes: 1 }] }] },
    { states: [{ recipe: 0, sheets: [2], prints: [1], after: [{ strokes: 2 }, { strokes: 1 }] }] },
  ],
} as unknown as PressPlan;

describe('sheetGrid', () => {
  it('should give every sheet its column while there is room', () => {
    const grid = sheetGrid(PLAN, 5);
    expect(grid.columns.map((column) => column.sheets)).toEqual([[1], [2], [3], [4], [5]]);
    expect(grid.spans).toEqual([
      { recipe: 0, columns: 3 },
      { recipe: 1, columns: 2 },
    ]);
    expect(grid.pulls).toEqual([
      [1, 1, 1, 2, 2],
      [1, 0, 1, 0, 0],
      [0, 1, 0, 0, 0],
    ]);
  });

  it('should count the strokes of what a set-up prints, sheet by sheet, and tell sheets apart by them', () => {
    expect(sheetGrid(PLAN, 5).strokes).toEqual([
      [2, 2, 2, 4, 4],
      [1, 0, 1, 0, 0],
      [0, 1, 0, 0, 0],
    ]);
    const strokes = [2, 1].map((each, i) => ({ recipe: 0, sheets: [i + 1], prints: [0], after: [{ strokes: each }] }));
    const two = { sheets: [1, 2].map((number) => ({ number, recipe: 0 })), cards: [{ states: strokes }] } as unknown as PressPlan;
    expect(sheetGrid(two, 1).columns.map((column) => column.sheets)).toEqual([[1], [2]]);
  });

  it('should never join sheets of different recipes, though as many pulls of each go down', () => {
    const alike = {
      sheets: [1, 2, 3, 4].map((number) => ({ number, recipe: number > 2 ? 1 : 0 })),
      cards: [
        {
          states: [
            { recipe: 0, sheets: [1, 2], prints: [0], after: [{ strokes: 1 }] },
            { recipe: 1, sheets: [3, 4], prints: [0], after: [{ strokes: 1 }] },
          ],
        },
      ],
    } as unknown as PressPlan;
    const grid = sheetGrid(alike, 2);
    expect(grid.columns).toEqual([
      { recipe: 0, sheets: [1, 2] },
      { recipe: 1, sheets: [3, 4] },
    ]);
    expect(grid.pulls).toEqual([[1, 1]]);
  });

  it('should join only neighbours that are printed alike all the way', () => {
    const grid = sheetGrid(PLAN, 4);
    expect(grid.columns.map((column) => column.sheets)).toEqual([[1], [2], [3], [4, 5]]);
    expect(grid.pulls[0]).toEqual([1, 1, 1, 2]);
  });
});
