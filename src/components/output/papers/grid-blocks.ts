import { entryAt, num } from '../../../engine/base/at.ts';
import { rangesText } from '../../../engine/base/words.ts';
import { srgbHexFromLab } from '../../../engine/colour/screen-colour.ts';
import { extraUse, sheetGrid } from '../../../engine/visit/sheet-columns.ts';
import type { PressPlan } from '../../../engine/visit/visit.ts';
import { capital } from '../../../engine/words/language.ts';
import { waitWords } from '../../words/drying-words.ts';
import { say } from '../../words/en/output/papers.ts';
import { noOffset, offsetShort, offsetWords } from '../../words/offset-words.ts';
import { recipeLetter, useLetter } from '../../words/plan-words.ts';
import type { GridRow, PaperBlock } from './paper-blocks.ts';

/** Columns that a page on its long side holds beside the row heads, with numerals of more than 6 pt. */
const MOST_ACROSS = 64;
/** What stands over the column of the test sheet, where others have the letter of their recipe. */
const TEST = 'test';

/** A column of the grid: sheets that are printed alike, or the test sheet of the run. */
interface Column {
  letter: string;
  /** Marks a proof or an over; '' for all others. */
  use: string;
  sheets: number[];
  /** For each set-up null = no pull, '' = one stroke, else how many. */
  squares: (string | null)[];
}

/**
 * The whole visit at a glance: rows are set-ups in time, columns are sheets, a square is a pull. Many sheets
 * take several grids; the test sheet stands behind all others.
 */
export function gridBlocks(plan: PressPlan): PaperBlock[] {
  const all = columnsOf(plan);
  const bands = Math.ceil(all.length / MOST_ACROSS);
  // Bands of nearly the same width, so that the last has squares like the others.
  const across = Math.ceil(all.length / bands);
  const test = all.some(({ letter }) => letter === TEST) ? say.lastColumnIsTest : '';
  return Array.from({ length: bands }, (_, b): PaperBlock[] => {
    const columns = all.slice(b * across, (b + 1) * across);
    return [
      { kind: 'page' },
      {
        kind: 'grid',
        title: bands === 1 ? say.setUpGrid : say.setUpGridSheets(rangesText(columns.flatMap(({ sheets }) => sheets).sort((x, y) => x - y))),
        note: say.setUpsFromTop(
          plan.cards.length,
          all.some(({ use }) => use !== ''),
          test,
        ),
        columns: columns.map(({ letter, use, sheets }, at) => ({
          label: rangesText(sheets),
          use,
          letter: at > 0 && entryAt(columns, at - 1).letter === letter ? '' : letter,
        })),
        rows: plan.cards.map((_card, index) =>
          gridRow(
            plan,
            index,
            columns.map(({ squares }) => squares[index] ?? null),
          ),
        ),
      },
    ];
  }).flat();
}

function columnsOf(plan: PressPlan): Column[] {
  const grid = sheetGrid(plan, 2 * MOST_ACROSS);
  const columns = grid.columns.map(({ recipe, sheets }, at): Column => {
    const counts = grid.strokes.map((row) => num(row, at));
    const use = extraUse(plan, entryAt(sheets, 0));
    return {
      letter: recipeLetter(recipe),
      use: use === null ? '' : useLetter(use),
      sheets,
      squares: counts.map((count) => (count === 0 ? null : count === 1 ? '' : String(count))),
    };
  });
  const { testNumber } = plan;
  if (testNumber === undefined || plan.testSheet !== true) return columns;
  return [
    ...columns,
    { letter: TEST, use: '', sheets: [testNumber], squares: plan.cards.map(({ test }) => (test === undefined ? null : '')) },
  ];
}

function gridRow(plan: PressPlan, index: number, squares: GridRow['squares']): GridRow {
  const card = entryAt(plan.cards, index);
  const offset = offsetWords(card) === noOffset() ? '' : ` ${offsetShort(card)}`;
  const bed = plan.times.some((time) => time.bed > 0) ? say.bed(entryAt(plan.times, index).bed + 1) : '';
  return {
    gap: gapWords(plan, index),
    number: String(card.number),
    hex: srgbHexFromLab(card.ink.ink.overWhite),
    screen: `${card.screen.key} ${card.screen.name}`,
    mount: card.mount,
    how: `${card.ink.key}${offset}${bed}`,
    squares,
    light: num(card.ink.ink.overWhite, 0) < 55,
  };
}

/** 'Day 2', 'Day 2: wait 25 min: Rust dries', or null where nothing lies between two set-ups. */
function gapWords(plan: PressPlan, index: number): string | null {
  const time = plan.times[index];
  if (time === undefined) return null;
  const before = plan.times[index - 1];
  const parts: string[] = [];
  if ((before === undefined || before.day < time.day) && plan.daysNeeded > 1) parts.push(say.day(time.day));
  if (time.waitMinutes >= 1) parts.push(waitWords(plan, index));
  return parts.length === 0 ? null : capital(parts.join(': '));
}
