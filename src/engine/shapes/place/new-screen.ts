import { SHAPE_SCALE } from '../../base/limits.ts';
import { roundTo } from '../../base/units.ts';
import { placeRings, shapeBounds } from '../../geometry/rings.ts';
import type { Box } from '../../geometry/types.ts';
import type { Mesh, PlacedShape, Screen, Shape } from '../types.ts';

/** A mesh for fine work on paper; common practice, no source: the user's to change. */
export const DEFAULT_MESH: Readonly<Mesh> = { threadsPerCm: 90, threadUm: 48 };

/** A placed shape and whether it had to be made smaller for it. */
export interface FirstPlace {
  placed: PlacedShape;
  /** True when the shape at the size of its file does not fit the printable part. */
  fitted: boolean;
}

/**
 * The number for the next frame.
 * @returns one more than the highest in use, 1 for the first
 */
export function nextScreenNumber(screens: readonly Pick<Screen, 'number'>[]): number {
  return 1 + screens.reduce((highest, screen) => Math.max(highest, screen.number), 0);
}

/**
 * Lays a shape in the middle of the printable part, at the size of its file, or smaller when it
 * does not fit. Scales are whole per mille downwards, so that the shape surely fits.
 * @param printable the part of the sheet that can be printed, mm
 * @param scale to lay it larger or smaller than in its file
 */
export function placeInMiddle(shape: Pick<Shape, 'id' | 'widthMm' | 'heightMm'>, printable: Box, scale = 1): FirstPlace {
  const fit = Math.min(printable.widthMm / shape.widthMm, printable.heightMm / shape.heightMm);
  const fitted = fit < scale;
  return {
    placed: {
      shape: shape.id,
      xMm: printable.xMm + printable.widthMm / 2,
      yMm: printable.yMm + printable.heightMm / 2,
      turnDeg: 0,
      scale: fitted ? Math.max(0.001, Math.floor(fit * 1000) / 1000) : roundTo(Math.min(SHAPE_SCALE.most, Math.max(0.001, scale)), 3),
    },
    fitted,
  };
}

/**
 * A new screen that prints one shape in the middle of the sheet.
 * @param head the id and the number of the frame
 * @param scale as `placeInMiddle` takes it
 */
export function screenOfShape(
  shape: Shape,
  printable: Box,
  head: { id: string; number: number },
  scale = 1,
): { screen: Screen; fitted: boolean } {
  const { placed, fitted } = placeInMiddle(shape, printable, scale);
  return {
    screen: { id: head.id, number: head.number, name: shape.name, placed: [placed], mesh: { ...DEFAULT_MESH } },
    fitted,
  };
}

/**
 * How far a placed shape reaches out of a box.
 * @returns mm beyond the side it passes most; 0 when it lies inside
 */
export function reachBeyondMm(shape: Pick<Shape, 'rings'>, place: Omit<PlacedShape, 'shape'>, box: Box): number {
  const outer = shapeBounds(placeRings(shape.rings, place));
  return Math.max(
    0,
    box.xMm - outer.xMm,
    box.yMm - outer.yMm,
    outer.xMm + outer.widthMm - (box.xMm + box.widthMm),
    outer.yMm + outer.heightMm - (box.yMm + box.heightMm),
  );
}
