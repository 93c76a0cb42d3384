import project from 'virtual:demo-project';
import { unpackRing } from '../engine/geometry/packed-ring.ts';
import type { Project } from '../engine/project/types.ts';

/** The demo project, of the shape files that ship with the app. */
export function demo(): Project {
  const packed = structuredClone(project);
  const { drawer } = packed;
  const shapes = drawer.shapes.map((shape) => ({ ...shape, rings: shape.rings.map(unpackRing) }));
  return { ...packed, drawer: { ...drawer, shapes } };
}
