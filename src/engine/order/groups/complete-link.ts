import { num } from '../../base/at.ts';

/** Two items and how far apart they are. */
export interface Link {
  a: number;
  b: number;
  distance: number;
}

/**
 * Groups items by complete link: the two groups whose farthest items are nearest become one, as long as
 * all their items are linked. So no two items of a group lie farther apart than a link may be long,
 * whereas a chain of near neighbours is cut.
 * @param items number of items
 * @param links all pairs that may be of one group, each once; those of equal distance by their items
 * @returns groups of items, each ascending, by their first item
 * Source: complete linkage, Sørensen (1948), from memory. Cost O(links · log links + items²).
 */
export function completeLink(items: number, links: readonly Link[]): number[][] {
  const groupOf = Array.from({ length: items }, (_, item) => item);
  const members = groupOf.map((item) => [item]);
  const linked = groupOf.map(() => new Map<number, number>());
  const sorted = [...links].sort((x, y) => x.distance - y.distance || x.a - y.a || x.b - y.b);
  for (const link of sorted) {
    const a = num(groupOf, link.a);
    const b = num(groupOf, link.b);
    const count = (linked[a]?.get(b) ?? 0) + 1;
    linked[a]?.set(b, count);
    linked[b]?.set(a, count);
    // The last link between two groups is their longest.
    if (count === (members[a]?.length ?? 0) * (members[b]?.length ?? 0)) merge(Math.min(a, b), Math.max(a, b));
  }

  function merge(into: number, from: number): void {
    for (const item of members[from] ?? []) groupOf[item] = into;
    members[into]?.push(...(members[from] ?? []));
    members[from] = [];
    for (const [other, count] of linked[from] ?? []) {
      linked[other]?.delete(from);
      if (other === into) continue;
      const sum = count + (linked[into]?.get(other) ?? 0);
      linked[into]?.set(other, sum);
      linked[other]?.set(into, sum);
    }
    linked[from] = new Map();
    linked[into]?.delete(from);
  }

  return members.filter((group) => group.length > 0).map((group) => group.sort((x, y) => x - y));
}
