import { num } from '../../base/at.ts';
import type { Pull } from '../../stack/types.ts';
import type { Constraints } from '../search/arrange.ts';
import type { Hold } from '../types.ts';

/**
 * The order holds as places and arcs among pulls.
 * @param pulls the pulls that are left of the base stack, then those brought in
 * @param base how many of them are of the base stack; 'place' counts these only
 */
export function holdConstraints(pulls: readonly Pick<Pull, 'id'>[], base: number, holds: readonly Hold[]): Constraints {
  const at = new Map(pulls.map((pull, index) => [pull.id, index]));
  const slots = pulls.map(() => -1);
  const arcs: [number, number][] = [];
  for (const hold of holds) {
    const index = at.get(hold.pull);
    if (index === undefined) continue;
    if (hold.kind === 'before') {
      const then = at.get(hold.other);
      if (then !== undefined) arcs.push([index, then]);
      continue;
    }
    const slot = slotOf(hold.kind, index, base, pulls.length);
    if (slot < 0) continue;
    // Two different places for one pull: no order keeps a pull below itself.
    if (num(slots, index) >= 0 && slots[index] !== slot) arcs.push([index, index]);
    slots[index] = slot;
  }
  return { arcs, slots };
}

function slotOf(kind: Hold['kind'], index: number, base: number, pulls: number): number {
  if (kind === 'first') return 0;
  if (kind === 'last') return pulls - 1;
  return kind === 'place' && index < base ? index : -1;
}
