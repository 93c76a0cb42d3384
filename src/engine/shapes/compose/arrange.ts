import { SHAPE_SCALE } from '../../base/limits.ts';
import { roundTo, toOffsetGrid } from '../../base/units.ts';
import { placeRings, shapeBounds } from '../../geometry/rings.ts';
import type { Box } from '../../geometry/types.ts';
import type { PlacedShape, Shape } from '../types.ts';

/** A placed shape with what it is of. */
export interface Piece {
  shape: Pick<Shape, 'rings'>;
  placed: PlacedShape;
}

/** Where pieces are brought to in a box. */
export type Alignment = 'left' | 'centre' | 'right' | 'top' | 'middle' | 'bottom';

/** The upright box round pieces as they lie, mm; of no size at 0, 0 for none. */
export function boxOf(pieces: readonly Piece[]): Box {
  return shapeBounds(pieces.flatMap(({ shape, placed }) => placeRings(shape.rings, placed)));
}

/** About which place pieces are turned and scaled, mm: where one is placed, else the middle of the box round all. */
export function middleOf(pieces: readonly Piece[]): { xMm: number; yMm: number } {
  const [one] = pieces;
  if (one !== undefined && pieces.length === 1) return { xMm: one.placed.xMm, yMm: one.placed.yMm };
  const box = boxOf(pieces);
  return { xMm: box.xMm + box.widthMm / 2, yMm: box.yMm + box.heightMm / 2 };
}

/** Placed shapes, each so much further right and down, on the 0.1 mm grid. */
export function movedBy(placed: readonly PlacedShape[], dxMm: number, dyMm: number): PlacedShape[] {
  return placed.map((one) => ({ ...one, xMm: toOffsetGrid(one.xMm + dxMm), yMm: toOffsetGrid(one.yMm + dyMm) }));
}

/**
 * Placed shapes turned clockwise about a place, as one.
 * @param turnDeg rounded to a tenth of a degree
 */
export function turnedBy(placed: readonly PlacedShape[], turnDeg: number, about: { xMm: number; yMm: number }): PlacedShape[] {
  const turn = roundTo(turnDeg, 1);
  const rad = (turn * Math.PI) / 180;
  const [cos, sin] = [Math.cos(rad), Math.sin(rad)];
  return placed.map((one) => {
    const [x, y] = [one.xMm - about.xMm, one.yMm - about.yMm];
    return {
      ...one,
      xMm: toOffsetGrid(about.xMm + cos * x - sin * y),
      yMm: toOffsetGrid(about.yMm + sin * x + cos * y),
      turnDeg: roundTo((((one.turnDeg + turn) % 360) + 360) % 360, 1),
    };
  });
}

/** Placed shapes made larger or smaller about a place, as one; sizes stay within what a shape may have. */
export function scaledBy(placed: readonly PlacedShape[], factor: number, about: { xMm: number; yMm: number }): PlacedShape[] {
  const least = Math.max(...placed.map(({ scale }) => SHAPE_SCALE.least / scale));
  const most = Math.min(...placed.map(({ scale }) => SHAPE_SCALE.most / scale));
  const by = Math.min(most, Math.max(least, factor));
  return placed.map((one) => ({
    ...one,
    xMm: toOffsetGrid(about.xMm + (one.xMm - about.xMm) * by),
    yMm: toOffsetGrid(about.yMm + (one.yMm - about.yMm) * by),
    scale: Math.max(SHAPE_SCALE.least, roundTo(one.scale * by, 4)),
  }));
}

/** Placed shapes mirrored left to right about an upright line, as one. Twice gives the same again. */
export function mirroredAbout(placed: readonly PlacedShape[], xMm: number): PlacedShape[] {
  return placed.map(({ mirrored, ...one }) => {
    const other = { ...one, xMm: toOffsetGrid(2 * xMm - one.xMm), turnDeg: one.turnDeg === 0 ? 0 : roundTo(360 - one.turnDeg, 1) % 360 };
    return mirrored === true ? other : { ...other, mirrored: true as const };
  });
}

/** Pieces brought to an edge or a middle of a box, as one. */
export function alignedIn(pieces: readonly Piece[], box: Box, to: Alignment): PlacedShape[] {
  const own = boxOf(pieces);
  const across = { left: 0, centre: 0.5, right: 1, top: null, middle: null, bottom: null }[to];
  const down = { left: null, centre: null, right: null, top: 0, middle: 0.5, bottom: 1 }[to];
  const dxMm = across === null ? 0 : box.xMm - own.xMm + across * (box.widthMm - own.widthMm);
  const dyMm = down === null ? 0 : box.yMm - own.yMm + down * (box.heightMm - own.heightMm);
  return movedBy(
    pieces.map(({ placed }) => placed),
    dxMm,
    dyMm,
  );
}

/**
 * Groups of pieces brought to an edge or a middle of the box round all of them, each group as one.
 * @returns the placed shapes of each group, in the groups' order
 */
export function alignedTogether(groups: readonly (readonly Piece[])[], to: Alignment): PlacedShape[][] {
  const box = boxOf(groups.flat());
  return groups.map((pieces) => (pieces.length === 0 ? [] : alignedIn(pieces, box, to)));
}

/** How far pieces lie off a sheet: wholly, in part, or not. */
export function offSheet(pieces: readonly Piece[], sheet: { widthMm: number; heightMm: number }): 'wholly' | 'in part' | 'not' {
  if (pieces.length === 0) return 'not';
  const { xMm, yMm, widthMm, heightMm } = boxOf(pieces);
  const [right, bottom] = [xMm + widthMm, yMm + heightMm];
  if (right <= 0 || bottom <= 0 || xMm >= sheet.widthMm || yMm >= sheet.heightMm) return 'wholly';
  const inside = xMm >= 0 && yMm >= 0 && right <= sheet.widthMm && bottom <= sheet.heightMm;
  return inside ? 'not' : 'in part';
}

/** Pieces moved no further than it takes to lie within a box, as one; in its middle where they are larger. */
export function fetchedBack(pieces: readonly Piece[], box: Box): PlacedShape[] {
  const own = boxOf(pieces);
  const along = (from: number, size: number, first: number, room: number): number => {
    if (size > room) return first + (room - size) / 2 - from;
    return Math.max(first, Math.min(first + room - size, from)) - from;
  };
  return movedBy(
    pieces.map(({ placed }) => placed),
    along(own.xMm, own.widthMm, box.xMm, box.widthMm),
    along(own.yMm, own.heightMm, box.yMm, box.heightMm),
  );
}
