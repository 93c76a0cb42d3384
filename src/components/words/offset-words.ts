import { rangesText } from '../../engine/base/words.ts';
import type { SetUpCard } from '../../engine/visit/set-up-cards.ts';
import { counted, mmText } from '../ui/words.ts';

/** Where a pull lies. */
type Offset = Pick<SetUpCard, 'dxMm' | 'dyMm' | 'turnDeg'>;

/** How an offset is read, said where one stands beside its drawing. */
export const OFFSET_NOTE = 'The arrow is the way the print moves on the paper; to get there the three lays move the other way.';

/** Length of an arrow for each mm of offset, in units of a diagram of 150; beyond the longest it is cut off. */
const ARROW_A_MM = 4;
const LONGEST_ARROW = 48;

/**
 * How an offset is drawn: to one scale over all set-ups, so that arrows can be compared, with its mm
 * beside it.
 * @returns its length in units of a diagram of 150, and whether it is longer than drawn
 */
export function offsetArrow({ dxMm, dyMm }: Pick<Offset, 'dxMm' | 'dyMm'>): { length: number; cut: boolean; words: string } {
  const mm = Math.hypot(dxMm, dyMm);
  return { length: Math.min(LONGEST_ARROW, ARROW_A_MM * mm), cut: ARROW_A_MM * mm > LONGEST_ARROW, words: `${mmText(mm)} mm` };
}

/** 'no offset', or '12.5 mm right, 3.0 mm up, turned 2°'. */
export function offsetWords(at: Offset): string {
  const parts: string[] = [];
  if (at.dxMm !== 0) parts.push(`${mmText(Math.abs(at.dxMm))} mm ${at.dxMm > 0 ? 'right' : 'left'}`);
  if (at.dyMm !== 0) parts.push(`${mmText(Math.abs(at.dyMm))} mm ${at.dyMm > 0 ? 'down' : 'up'}`);
  if (at.turnDeg !== 0) {
    parts.push(`turned ${Math.abs(at.turnDeg)}° ${at.turnDeg > 0 ? 'clockwise' : 'anticlockwise'}`);
  }
  return parts.length === 0 ? 'no offset' : parts.join(', ');
}

/**
 * How the sheets of a set-up are pulled that do not go as most of it: 'Sheets 4–6: 2 strokes',
 * 'Sheet 7: 0.3 mm right of the others, nearer than the table tells apart'.
 */
export function instructionWords(card: Pick<SetUpCard, 'instructions' | 'strokes' | 'dxMm' | 'dyMm' | 'turnDeg'>): string[] {
  return (card.instructions ?? []).flatMap(({ sheets, strokes, dxMm, dyMm, turnDeg }): string[] => {
    const here = { dxMm: onGrid(dxMm - card.dxMm), dyMm: onGrid(dyMm - card.dyMm), turnDeg: turnDeg - card.turnDeg };
    const away = offsetWords(here);
    const parts: string[] = [];
    if (strokes !== card.strokes) parts.push(counted(strokes, 'stroke'));
    if (away !== 'no offset') parts.push(`drawn ${away} of the others, nearer than this table tells apart`);
    return parts.length === 0 ? [] : [`${sheets.length === 1 ? 'Sheet' : 'Sheets'} ${rangesText(sheets)}: ${parts.join('; ')}`];
  });
}

function onGrid(mm: number): number {
  return Math.round(10 * mm) / 10;
}

/** The same for a narrow place: '→ 12.5 ↑ 3.0 mm'. */
export function offsetShort(at: Offset): string {
  const parts: string[] = [];
  if (at.dxMm !== 0) parts.push(`${at.dxMm > 0 ? '→' : '←'} ${mmText(Math.abs(at.dxMm))}`);
  if (at.dyMm !== 0) parts.push(`${at.dyMm > 0 ? '↓' : '↑'} ${mmText(Math.abs(at.dyMm))}`);
  const words = parts.length === 0 ? [] : [`${parts.join(' ')} mm`];
  if (at.turnDeg !== 0) words.push(`turn ${mmText(at.turnDeg)}°`);
  return words.length === 0 ? 'no offset' : words.join(', ');
}

/** `0.4 mm right, 1.2 mm up, turned 3°`; `no offset` when it lies as drawn. */
export function recipeOffsetWords(at: Offset): string {
  const parts: string[] = [];
  if (at.dxMm !== 0) parts.push(`${Math.abs(at.dxMm)} mm ${at.dxMm > 0 ? 'right' : 'left'}`);
  if (at.dyMm !== 0) parts.push(`${Math.abs(at.dyMm)} mm ${at.dyMm > 0 ? 'down' : 'up'}`);
  if (at.turnDeg !== 0) parts.push(`turned ${at.turnDeg}°`);
  return parts.length === 0 ? 'no offset' : parts.join(', ');
}

/** 'Rust', and only what is not as usual: '; 2.0 mm left; 2 strokes'. */
export function howWords(card: SetUpCard, sheets: readonly number[] = []): string {
  const own = card.instructions?.find((each) => sheets.length > 0 && sheets.every((sheet) => each.sheets.includes(sheet))) ?? card;
  const offset = offsetWords(own);
  return [card.ink.key, ...(offset === 'no offset' ? [] : [offset]), ...(own.strokes === 1 ? [] : [counted(own.strokes, 'stroke')])].join(
    '; ',
  );
}
