import type { Pull } from '../types.ts';

/**
 * A stack with some of its pulls brought together at a place, in the order that they have.
 * @param moved ids; those that are not in the stack do not count
 * @param to place of the first of them in the stack that comes of it, first down 0; beyond an end, that end
 */
export function movedTo<P extends Pick<Pull, 'id'>>(pulls: readonly P[], moved: ReadonlySet<string>, to: number): P[] {
  const rest = pulls.filter(({ id }) => !moved.has(id));
  const at = Math.max(0, Math.min(rest.length, Math.trunc(to)));
  return [...rest.slice(0, at), ...pulls.filter(({ id }) => moved.has(id)), ...rest.slice(at)];
}

/**
 * Where pulls come to lie when they are brought right over or under another.
 * @returns the place that `movedTo` wants; −1 when the other is one of them or not in the stack
 */
export function placeBeside(
  pulls: readonly Pick<Pull, 'id'>[],
  moved: ReadonlySet<string>,
  beside: { pull: string; side: 'over' | 'under' },
): number {
  const at = pulls.filter(({ id }) => !moved.has(id)).findIndex(({ id }) => id === beside.pull);
  return at < 0 ? -1 : at + (beside.side === 'over' ? 1 : 0);
}
