import { entryAt } from '../../base/at.ts';
import type { Hold } from '../types.ts';

/**
 * Pulls that are each held before the next and the last before the first.
 * @returns null when the holds go round in no circle
 */
export function findCircle(holds: readonly Hold[]): string[] | null {
  const next = new Map<string, string[]>();
  for (const hold of holds) {
    if (hold.kind === 'before') next.set(hold.pull, [...(next.get(hold.pull) ?? []), hold.other]);
  }
  const done = new Set<string>();
  for (const start of next.keys()) {
    const path = [start];
    const tried = new Map([[start, 0]]);
    while (path.length > 0) {
      const top = entryAt(path, path.length - 1);
      const turn = tried.get(top) ?? 0;
      const to = next.get(top)?.[turn];
      tried.set(top, turn + 1);
      if (to === undefined) {
        done.add(top);
        path.pop();
      } else if (path.includes(to)) {
        return path.slice(path.indexOf(to));
      } else if (!done.has(to)) {
        path.push(to);
        tried.set(to, 0);
      }
    }
  }
  return null;
}
