import { rangesText } from '../../engine/base/words.ts';
import type { SetUpCard } from '../../engine/visit/set-up-cards.ts';
import { mmText } from '../ui/words.ts';
import { say } from './en/phrases/plan.ts';

/** Where a pull lies. */
type Offset = Pick<SetUpCard, 'dxMm' | 'dyMm' | 'turnDeg'>;

const ARROW_NOTE = say.arrowIsWayPrint;

/**
 * How an offset is read and a turn made, said where they stand beside their drawing.
 * @returns a sentence or two each, none where a pull lies as drawn
 */
export function offsetNotes(at: Offset): string[] {
  return [turnNote(at), at.dxMm === 0 && at.dyMm === 0 ? '' : ARROW_NOTE].filter((text) => text !== '');
}

/**
 * How a quarter or half turn is made; '' for any other. The paper is turned rather than the frame: common
 * practice, no source; the print turns the other way than the paper.
 */
export function turnNote({ turnDeg }: Pick<Offset, 'turnDeg'>): string {
  const turn = signedTurn(turnDeg);
  if (turn === 0 || turn % 90 !== 0) return '';
  const how = Math.abs(turn) === 180 ? say.halfRound : say.quarterAnticlockwise(turn > 0);
  return say.turnPaperNotFrame(how);
}

/** A turn clockwise as one of −179.9… to 180, degrees. */
function signedTurn(turnDeg: number): number {
  const turn = ((turnDeg % 360) + 360) % 360;
  return turn > 180 ? turn - 360 : turn;
}

/** '90° clockwise', '12° anticlockwise', '180°'. */
function turnWords(turnDeg: number): string {
  const turn = signedTurn(turnDeg);
  const size = Math.round(Math.abs(turn) * 10) / 10;
  return Math.abs(turn) === 180 ? '180°' : say.clockwise(size, turn > 0);
}

/** The same for a narrow place: 'turn 90° right', 'turn 180°'. */
function turnShort(turnDeg: number): string {
  const turn = signedTurn(turnDeg);
  if (Math.abs(turn) === 180) return say.turn180;
  const size = Math.round(Math.abs(turn) * 10) / 10;
  return turn > 0 ? say.turnRight(size) : say.turnLeft(size);
}

/** Length of an arrow for each mm of offset, in units of a diagram of 150; beyond the longest it is cut off. */
const ARROW_A_MM = 4;
const LONGEST_ARROW = 48;

/**
 * How an offset is drawn: to one scale over all set-ups, so that arrows can be compared, with the mm that the
 * lays are moved by in a line outside the sheet.
 * @returns its length in units of a diagram of 150, and whether it is longer than drawn
 */
export function offsetArrow({ dxMm, dyMm }: Pick<Offset, 'dxMm' | 'dyMm'>): { length: number; cut: boolean; words: string } {
  const mm = Math.hypot(dxMm, dyMm);
  const words = offsetShort({ dxMm, dyMm, turnDeg: 0 });
  return { length: Math.min(LONGEST_ARROW, ARROW_A_MM * mm), cut: ARROW_A_MM * mm > LONGEST_ARROW, words };
}

/** What is said of a pull that lies where it was drawn. */
export function noOffset(): string {
  return say.noOffset;
}

/** 'no offset', or '12.5 mm right, 3.0 mm up, turned 2°'. */
export function offsetWords(at: Offset): string {
  const parts: string[] = [];
  if (at.dxMm !== 0) parts.push(say.mmRight(mmText(Math.abs(at.dxMm)), at.dxMm > 0));
  if (at.dyMm !== 0) parts.push(say.mmDown(mmText(Math.abs(at.dyMm)), at.dyMm > 0));
  if (at.turnDeg % 360 !== 0) parts.push(say.turned(turnWords(at.turnDeg)));
  return parts.length === 0 ? noOffset() : parts.join(', ');
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
    if (strokes !== card.strokes) parts.push(say.strokes(strokes));
    if (away !== noOffset()) parts.push(say.drawnOfOthersNearer(away));
    return parts.length === 0 ? [] : [say.sheets(sheets.length, rangesText(sheets), parts.join('; '))];
  });
}

function onGrid(mm: number): number {
  return Math.round(10 * mm) / 10;
}

/** The same for a narrow place: '→ 12.5 ↑ 3.0 mm, turn 90° left'. */
export function offsetShort(at: Offset): string {
  return offsetLines(at).join(', ');
}

/** The same in lines below each other: '→ 12.5 ↑ 3.0 mm' and 'turn 90° left', or 'no offset' alone. */
export function offsetLines(at: Offset): string[] {
  const parts: string[] = [];
  if (at.dxMm !== 0) parts.push(`${at.dxMm > 0 ? '→' : '←'} ${mmText(Math.abs(at.dxMm))}`);
  if (at.dyMm !== 0) parts.push(`${at.dyMm > 0 ? '↓' : '↑'} ${mmText(Math.abs(at.dyMm))}`);
  const words = parts.length === 0 ? [] : [`${parts.join(' ')} mm`];
  if (at.turnDeg % 360 !== 0) words.push(turnShort(at.turnDeg));
  return words.length === 0 ? [noOffset()] : words;
}

/** `0.4 mm right, 1.2 mm up, turned 3°`; `no offset` when it lies as drawn. */
export function recipeOffsetWords(at: Offset): string {
  const parts: string[] = [];
  if (at.dxMm !== 0) parts.push(say.mmRightAbs(Math.abs(at.dxMm), at.dxMm > 0));
  if (at.dyMm !== 0) parts.push(say.mmDownAbs(Math.abs(at.dyMm), at.dyMm > 0));
  if (at.turnDeg % 360 !== 0) parts.push(say.turned(turnWords(at.turnDeg)));
  return parts.length === 0 ? noOffset() : parts.join(', ');
}

/** 'Rust', and only what is not as usual: '; 2.0 mm left; 2 strokes'. */
export function howWords(card: SetUpCard, sheets: readonly number[] = []): string {
  const own = card.instructions?.find((each) => sheets.length > 0 && sheets.every((sheet) => each.sheets.includes(sheet))) ?? card;
  const offset = offsetWords(own);
  return [card.ink.key, ...(offset === noOffset() ? [] : [offset]), ...(own.strokes === 1 ? [] : [say.strokes(own.strokes)])].join('; ');
}
