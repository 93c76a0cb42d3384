import type { Variant } from '../../engine/explore/types.ts';
import type { PrintLineage } from '../../engine/recipe/lineage.ts';
import type { Drawer } from '../../engine/stack/types.ts';
import { originOf } from './wall-origins.ts';

/** Names beyond so many are counted. */
const MOST_NAMED = 3;

/**
 * Prints that come from the same parents and are made of the same screens: what is within a family
 * is a matter of order, inks and lays.
 * Pinned prints of other walls are a family for each wall.
 * @param variants in the order in which they hang
 * @param places where each is on the wall
 * @returns families with what they have and lack against their parent; the nearest to it first
 */
export function familiesOf(variants: readonly Variant[], drawer: Drawer, places = variants.map(({ index }) => index)): { title: string; prints: number[] }[] {
  const families = new Map<string, { title: string; changes: number; prints: number[] }>();
  for (const [i, variant] of variants.entries()) {
    const { parents = [], lineage } = originOf(variant) ?? {};
    const screens = count(variant.pulls);
    const key = lineage !== undefined ? lineage.seed : JSON.stringify([parents.map(({ name }) => name), [...screens].sort()]);
    let family = families.get(key);
    if (family === undefined) {
      const before = count(parents[0]?.pulls ?? []);
      const gained = [...screens].filter(([id, times]) => times > (before.get(id) ?? 0)).map(([id]) => id);
      const lost = [...before].filter(([id, times]) => times > (screens.get(id) ?? 0)).map(([id]) => id);
      const title = lineage !== undefined ? pinnedTitle(lineage) : titleOf(gained, lost, parents.map(({ name }) => name), drawer);
      family = { title, changes: lineage !== undefined ? -1 : gained.length + lost.length, prints: [] };
      families.set(key, family);
    }
    family.prints.push(places[i]!);
  }
  return [...families.values()].sort((a, b) => a.changes - b.changes || a.prints[0]! - b.prints[0]!);
}

function count(pulls: readonly { screen: string }[]): Map<string, number> {
  const found = new Map<string, number>();
  for (const { screen } of pulls) found.set(screen, (found.get(screen) ?? 0) + 1);
  return found;
}

function pinnedTitle({ seed, way }: PrintLineage): string {
  return way === undefined ? `Pinned, of wall “${seed}”` : 'Pinned, found from other prints';
}

function titleOf(gained: readonly string[], lost: readonly string[], parents: readonly string[], drawer: Drawer): string {
  const names = (ids: readonly string[]): string => {
    const known = ids.slice(0, MOST_NAMED).map((id) => drawer.screens.find((screen) => screen.id === id)?.name ?? id);
    return ids.length > MOST_NAMED ? `${known.join(', ')} and ${ids.length - MOST_NAMED} more` : known.join(', ');
  };
  if (parents.length === 0) return `Of ${names(gained)}`;
  const from = `From ${parents.join(' and ')}`;
  const parts = [gained.length > 0 ? `with ${names(gained)}` : '', lost.length > 0 ? `without ${names(lost)}` : ''].filter((part) => part !== '');
  return parts.length === 0 ? `${from}, the same screens` : `${from}, ${parts.join(', ')}`;
}
