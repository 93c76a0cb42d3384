import { num } from '../../../engine/base/at.ts';
import type { View } from '../camera/camera.ts';
import type { WallPlan } from '../plan/wall-plan.ts';

/** A rectangle on the screen, CSS px from the top left of the wall's element. */
export interface Frame {
  left: number;
  top: number;
  width: number;
  height: number;
}

/**
 * Where a print is on the screen.
 * @param at left and top of each print by its number, wall units
 */
export function frameOf(index: number, at: Float32Array, { printWidth, printHeight }: WallPlan, { scale, x, y }: View): Frame {
  return {
    left: num(at, index * 2) * scale + x,
    top: num(at, index * 2 + 1) * scale + y,
    width: printWidth * scale,
    height: printHeight * scale,
  };
}
