import type { Screen, Shape } from '../../shapes/types.ts';
import { stencilText } from '../registry.ts';

/** Shapes, and screens that they lie on. */
export interface Stencils {
  shapes: readonly Shape[];
  screens: readonly Screen[];
}

/** An id like the one wanted that nothing in the list has. */
function freeId(wanted: string, taken: readonly { id: string }[]): string {
  let id = wanted;
  while (taken.some((each) => each.id === id)) id += ' b';
  return id;
}

/**
 * Screens with one that is borrowed: the same stencil under whatever id is there already, else it comes in
 * with its shapes, under other ids where theirs are taken.
 * @param from has the screen's shapes
 * @returns what is there then, and the id that the screen has in it
 */
export function withScreen(held: Stencils, borrowed: Screen, from: Pick<Stencils, 'shapes'>): Stencils & { id: string } {
  // Outlines are long: they are only compared where the number says that it may be the same stencil.
  const text = stencilText(borrowed, from);
  const known = held.screens.find((screen) => screen.number === borrowed.number && stencilText(screen, held) === text);
  if (known !== undefined) return { shapes: held.shapes, screens: held.screens, id: known.id };
  const shapes = [...held.shapes];
  const placed = borrowed.placed.map((each) => {
    const shape = from.shapes.find(({ id }) => id === each.shape);
    if (shape === undefined) return each;
    const same = shapes.find((other) => JSON.stringify({ ...other, id: '' }) === JSON.stringify({ ...shape, id: '' }));
    if (same !== undefined) return { ...each, shape: same.id };
    const id = freeId(shape.id, shapes);
    shapes.push({ ...shape, id });
    return { ...each, shape: id };
  });
  const id = freeId(borrowed.id, held.screens);
  return { shapes, screens: [...held.screens, { ...borrowed, id, placed }], id };
}
