import { entryAt } from '../../base/at.ts';
import type { Hold } from '../types.ts';

/**
 * Pulls that are each held before the next and the last before the first.
 * @returns null when the holds go round in no circle
 */
export function findCircle(holds: readonly Hold[]): string[] | null {
  const next = new Map<string, string[]>();
  for (const hold of holds) {
    if (hold.kind !== 'before') continue;
    const others = next.get(hold.pull);
    if (others === undefined) next.set(hold.pull, [hold.other]);
    else others.push(hold.other);
  }
  const done = new Set<string>();
  for (const start of next.keys()) {
    if (done.has(start)) continue;
    const path = [start];
    const onPath = new Set(path);
    const tried = new Map([[start, 0]]);
    while (path.length > 0) {
      const top = entryAt(path, path.length - 1);
      const turn = tried.get(top) ?? 0;
      const to = next.get(top)?.[turn];
      tried.set(top, turn + 1);
      if (to === undefined) {
        done.add(top);
        path.pop();
        onPath.delete(top);
      } else if (onPath.has(to)) {
        return path.slice(path.indexOf(to));
      } else if (!done.has(to)) {
        path.push(to);
        onPath.add(to);
        tried.set(to, 0);
      }
    }
  }
  return null;
}
