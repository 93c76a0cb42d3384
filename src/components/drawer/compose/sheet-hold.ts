import { movedBy, scaledBy, turnedBy } from '../../../engine/shapes/compose/arrange.ts';
import type { PlacedShape } from '../../../engine/shapes/types.ts';

/** A place on the sheet, mm. */
export interface SheetPlace {
  xMm: number;
  yMm: number;
}

/** What a hand does with the pieces that it holds. */
export type HoldKind = 'move' | 'turn' | 'scale';

/** Pieces that a pointer holds. */
export interface SheetHold {
  pointer: number;
  kind: HoldKind;
  /** Where it took hold, and the middle of what it holds. */
  from: SheetPlace;
  about: SheetPlace;
  /** All that lies on the screen, as it was, and which of it is held. */
  before: readonly PlacedShape[];
  pieces: readonly number[];
}

/** A turn that Shift holds to, degrees. */
const SNAP_DEG = 15;

/**
 * Where what lies on the screen comes to lie when the hand is at a place.
 * @param snapped turns by whole steps of 15°, moves along one axis
 */
export function heldAt(hold: SheetHold, now: SheetPlace, snapped: boolean): PlacedShape[] {
  const { kind, from, about, before, pieces } = hold;
  return withPieces(before, pieces, (held) => {
    if (kind === 'move') {
      const [dx, dy] = [now.xMm - from.xMm, now.yMm - from.yMm];
      const across = Math.abs(dx) >= Math.abs(dy);
      return movedBy(held, snapped && !across ? 0 : dx, snapped && across ? 0 : dy);
    }
    if (kind === 'scale') return scaledBy(held, distance(now, about) / Math.max(0.1, distance(from, about)), about);
    const turn = ((angle(now, about) - angle(from, about)) * 180) / Math.PI;
    return turnedBy(held, snapped ? Math.round(turn / SNAP_DEG) * SNAP_DEG : turn, about);
  });
}

/** All that lies on a screen, with some of it changed. */
export function withPieces(
  placed: readonly PlacedShape[],
  pieces: readonly number[],
  change: (held: PlacedShape[]) => readonly PlacedShape[],
): PlacedShape[] {
  const changed = change(placed.filter((_, i) => pieces.includes(i)));
  let next = 0;
  return placed.map((one, i) => (pieces.includes(i) ? (changed[next++] ?? one) : one));
}

function distance(a: SheetPlace, b: SheetPlace): number {
  return Math.hypot(a.xMm - b.xMm, a.yMm - b.yMm);
}

function angle(at: SheetPlace, about: SheetPlace): number {
  return Math.atan2(at.yMm - about.yMm, at.xMm - about.xMm);
}
