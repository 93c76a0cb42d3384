import { entryAt, num } from '../../../engine/base/at.ts';
import { rangesText } from '../../../engine/base/words.ts';
import { srgbHexFromLab } from '../../../engine/colour/screen-colour.ts';
import { sheetGrid } from '../../../engine/visit/sheet-columns.ts';
import type { PressPlan } from '../../../engine/visit/visit.ts';
import { counted } from '../../ui/words.ts';
import { waitWords } from '../../words/drying-words.ts';
import { offsetShort, offsetWords } from '../../words/offset-words.ts';
import { recipeLetter } from '../../words/plan-words.ts';
import type { GridRow, PaperBlock } from './paper-blocks.ts';

/** Columns that a page on its long side holds beside the row heads, with numerals of more than 6 pt. */
const MOST_ACROSS = 64;

/** The whole visit at a glance: rows are set-ups in time, columns are sheets, a square is a pull. Many sheets take several grids. */
export function gridBlocks(plan: PressPlan): PaperBlock[] {
  const grid = sheetGrid(plan, 2 * MOST_ACROSS);
  const bands = Math.ceil(grid.columns.length / MOST_ACROSS);
  // Bands of nearly the same width, so that the last has squares like the others.
  const across = Math.ceil(grid.columns.length / bands);
  return Array.from({ length: bands }, (_, b): PaperBlock[] => {
    const columns = grid.columns.slice(b * across, (b + 1) * across);
    return [
      { kind: 'page' },
      {
        kind: 'grid',
        title:
          bands === 1 ? 'Set-up grid' : `Set-up grid, sheets ${rangesText(columns.flatMap(({ sheets }) => sheets).sort((x, y) => x - y))}`,
        note: `${counted(plan.cards.length, 'set-up')} from top to bottom, sheets from left to right. A filled square is a pull of one stroke; a numeral in it, as many strokes.`,
        columns: columns.map(({ recipe, sheets }, at) => ({
          label: rangesText(sheets),
          letter: at > 0 && entryAt(columns, at - 1).recipe === recipe ? '' : recipeLetter(recipe),
        })),
        rows: plan.cards.map((_card, index) => gridRow(plan, index, entryAt(grid.strokes, index).slice(b * across, (b + 1) * across))),
      },
    ];
  }).flat();
}

function gridRow(plan: PressPlan, index: number, strokes: readonly number[]): GridRow {
  const card = entryAt(plan.cards, index);
  const offset = offsetWords(card) === 'no offset' ? '' : ` ${offsetShort(card)}`;
  const bed = plan.times.some((time) => time.bed > 0) ? `, bed ${entryAt(plan.times, index).bed + 1}` : '';
  return {
    gap: gapWords(plan, index),
    number: String(card.number),
    hex: srgbHexFromLab(card.ink.ink.overWhite),
    screen: `${card.screen.key} ${card.screen.name}`,
    mount: card.mount,
    how: `${card.ink.key}${offset}${bed}`,
    squares: strokes.map((count) => (count === 0 ? null : count === 1 ? '' : String(count))),
    light: num(card.ink.ink.overWhite, 0) < 55,
  };
}

/** 'Day 2', 'Day 2: wait 25 min: Rust dries', or null where nothing lies between two set-ups. */
function gapWords(plan: PressPlan, index: number): string | null {
  const time = plan.times[index];
  if (time === undefined) return null;
  const before = plan.times[index - 1];
  const parts: string[] = [];
  if ((before === undefined || before.day < time.day) && plan.daysNeeded > 1) parts.push(`Day ${time.day}`);
  if (time.waitMinutes >= 1) parts.push(waitWords(plan, index));
  return parts.length === 0 ? null : parts.join(': ');
}
