import { entryAt, u8 } from '../../base/at.ts';
import type { Hold } from '../types.ts';

/**
 * Which holds an order of arcs does not admit.
 * @param at index of each pull
 * @param arcs [low, high] by index
 * @returns whether a hold, alone with the arcs, is kept by no order of all pulls
 * Cost: once the number of pulls times that of arcs; then next to nothing for each hold.
 */
export function brokenBy(at: ReadonlyMap<string, number>, arcs: readonly (readonly [number, number])[]): (hold: Hold) => boolean {
  const n = at.size;
  const reach = reachOf(n, arcs);
  const reaches = (low: number, high: number): boolean => u8(reach, low * n + high) === 1;
  const indexes = Array.from({ length: n }, (_, i) => i);
  if (indexes.some((i) => reaches(i, i))) return () => true;
  const below = indexes.map((i) => indexes.filter((low) => reaches(low, i)).length);
  const above = indexes.map((i) => indexes.filter((high) => reaches(i, high)).length);
  return (hold) => {
    const index = at.get(hold.pull);
    if (index === undefined) return false;
    switch (hold.kind) {
      case 'before': {
        const other = at.get(hold.other);
        return other !== undefined && reaches(other, index);
      }
      case 'first':
        return entryAt(below, index) > 0;
      case 'last':
        return entryAt(above, index) > 0;
      case 'place':
        return entryAt(below, index) > index || entryAt(above, index) > n - 1 - index;
      default:
        return false;
    }
  };
}

/** n × n, 1 where arcs lead from the one to the other. */
function reachOf(n: number, arcs: readonly (readonly [number, number])[]): Uint8Array {
  const next = Array.from({ length: n }, (): number[] => []);
  for (const [low, high] of arcs) entryAt(next, low).push(high);
  const reach = new Uint8Array(n * n);
  for (let start = 0; start < n; start++) {
    const way = [...entryAt(next, start)];
    for (let i = way.pop(); i !== undefined; i = way.pop()) {
      if (u8(reach, start * n + i) === 1) continue;
      reach[start * n + i] = 1;
      way.push(...entryAt(next, i));
    }
  }
  return reach;
}
