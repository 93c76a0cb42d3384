import { roundTo } from '../../base/units.ts';
import type { ReadShape } from '../read/read-shapes.ts';
import type { Shape } from '../types.ts';

/**
 * A shape as the drawer keeps it: its outlines to a micrometre, as plain numbers.
 * @param id unique in the drawer
 */
export function drawerShape(read: ReadShape, id: string): Shape {
  return {
    id,
    name: read.name,
    rings: read.rings.map((ring) => Array.from(ring, (value) => roundTo(value, 3))),
    fillRule: read.fillRule,
    widthMm: roundTo(read.widthMm, 3),
    heightMm: roundTo(read.heightMm, 3),
  };
}
