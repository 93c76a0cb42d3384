import type { SetUpCard } from '../../engine/visit/set-up-cards.ts';
import { counted, mmText } from '../ui/words.ts';

/** Where a pull lies. */
type Offset = Pick<SetUpCard, 'dxMm' | 'dyMm' | 'turnDeg'>;

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
export function howWords(card: SetUpCard): string {
  const offset = offsetWords(card);
  return [card.ink.key, ...(offset === 'no offset' ? [] : [offset]), ...(card.strokes === 1 ? [] : [counted(card.strokes, 'stroke')])].join(
    '; ',
  );
}
