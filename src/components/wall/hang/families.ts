import { defined, entryAt, num } from '../../../engine/base/at.ts';
import type { Variant } from '../../../engine/explore/types.ts';
import type { PrintLineage } from '../../../engine/recipe/lineage.ts';
import type { Studio } from '../../../engine/studio/studio.ts';
import { originOf } from '../run/wall-origins.ts';

/** Names beyond so many are counted. */
const MOST_NAMED = 3;
/** More families than this, of fewer prints each, tell nobody anything. */
const MANY_FAMILIES = 12;
const LEAST_MEAN = 2.5;

interface Family {
  title: string;
  changes: number;
  prints: number[];
}

/**
 * Prints that come from the same parents and are made of the same screens: what is within a family
 * is a matter of order, inks and lays. Where hardly two prints have the same screens, as when a few
 * are taken of a large drawer, prints share one screen that sets them apart from most others.
 * Pinned prints of other walls are a family for each wall.
 * @param variants in the order in which they hang
 * @param places where each is on the wall
 * @returns families with what they have and lack against their parent; the nearest to it first
 */
export function familiesOf(
  variants: readonly Variant[],
  drawer: Studio,
  places = variants.map(({ index }) => index),
): { title: string; prints: number[] }[] {
  const pinned: number[] = [];
  const found: number[] = [];
  for (const i of variants.keys()) (originOf(entryAt(variants, i))?.lineage === undefined ? found : pinned).push(i);
  const derived = sameScreens(variants, found, drawer);
  const families =
    derived.length > MANY_FAMILIES && found.length < derived.length * LEAST_MEAN ? sharedScreens(variants, found, drawer) : derived;
  const all = [...byWall(variants, pinned), ...families].sort((a, b) => a.changes - b.changes || num(a.prints, 0) - num(b.prints, 0));
  return all.map(({ title, prints }) => ({ title, prints: prints.map((i) => num(places, i)) }));
}

function byWall(variants: readonly Variant[], among: readonly number[]): Family[] {
  const families = new Map<string, Family>();
  for (const i of among) {
    const { lineage } = defined(originOf(entryAt(variants, i)));
    const family = families.get(defined(lineage).seed) ?? { title: pinnedTitle(defined(lineage)), changes: -1, prints: [] };
    families.set(defined(lineage).seed, family);
    family.prints.push(i);
  }
  return [...families.values()];
}

function sameScreens(variants: readonly Variant[], among: readonly number[], drawer: Studio): Family[] {
  const families = new Map<string, Family>();
  for (const i of among) {
    const { names, gained, lost, screens } = derivedOf(entryAt(variants, i));
    const key = JSON.stringify([names, [...screens].sort()]);
    const family = families.get(key) ?? { title: titleOf(gained, lost, names, drawer), changes: gained.length + lost.length, prints: [] };
    families.set(key, family);
    family.prints.push(i);
  }
  return [...families.values()];
}

/** Takes, again and again, the prints that share what most of those left share, but not most of all. */
function sharedScreens(variants: readonly Variant[], among: readonly number[], drawer: Studio): Family[] {
  const traits = new Map<number, { names: readonly string[]; of: Set<string> }>();
  const times = new Map<string, number>();
  for (const i of among) {
    const { names, gained, lost, screens } = derivedOf(entryAt(variants, i));
    const of = new Set([...lost.map((id) => `- ${id}`), ...[...screens.keys(), ...gained].map((id) => `+ ${id}`)]);
    traits.set(i, { names, of });
    for (const trait of of) times.set(trait, (times.get(trait) ?? 0) + 1);
  }
  for (const { of } of traits.values()) for (const trait of of) if (defined(times.get(trait)) * 2 > among.length) of.delete(trait);
  const families: Family[] = [];
  while (traits.size > 0) {
    const left = new Map<string, number>();
    for (const { of } of traits.values()) for (const trait of of) left.set(trait, (left.get(trait) ?? 0) + 1);
    const most = [...left].sort(([a, m], [b, n]) => n - m || (a < b ? -1 : 1))[0]?.[0];
    const prints = [...traits].filter(([, { of }]) => most === undefined || of.has(most)).map(([i]) => i);
    const names = defined(traits.get(num(prints, 0))).names;
    const screens = most === undefined ? [] : [most.slice(2)];
    const title =
      most === undefined ? 'All others' : titleOf(most.startsWith('+') ? screens : [], most.startsWith('-') ? screens : [], names, drawer);
    families.push({ title, changes: families.length, prints });
    for (const i of prints) traits.delete(i);
  }
  return families;
}

/** What a print has and lacks against the first of the prints that it comes from. */
function derivedOf(variant: Variant): { names: string[]; screens: Map<string, number>; gained: string[]; lost: string[] } {
  const { parents = [] } = originOf(variant) ?? {};
  const screens = count(variant.pulls);
  const before = count(parents[0]?.pulls ?? []);
  return {
    names: parents.map(({ name }) => name),
    screens,
    gained: [...screens].filter(([id, times]) => times > (before.get(id) ?? 0)).map(([id]) => id),
    lost: [...before].filter(([id, times]) => times > (screens.get(id) ?? 0)).map(([id]) => id),
  };
}

function count(pulls: readonly { screen: string }[]): Map<string, number> {
  const found = new Map<string, number>();
  for (const { screen } of pulls) found.set(screen, (found.get(screen) ?? 0) + 1);
  return found;
}

function pinnedTitle({ seed, way }: PrintLineage): string {
  return way === undefined ? `Pinned, of wall “${seed}”` : 'Pinned, found from other prints';
}

function titleOf(gained: readonly string[], lost: readonly string[], parents: readonly string[], drawer: Studio): string {
  const names = (ids: readonly string[]): string => {
    const known = ids.slice(0, MOST_NAMED).map((id) => drawer.screens.find((screen) => screen.id === id)?.name ?? id);
    return ids.length > MOST_NAMED ? `${known.join(', ')} and ${ids.length - MOST_NAMED} more` : known.join(', ');
  };
  if (parents.length === 0) return `Of ${names(gained)}`;
  const from = `From ${parents.join(' and ')}`;
  const parts = [gained.length > 0 ? `with ${names(gained)}` : '', lost.length > 0 ? `without ${names(lost)}` : ''].filter(
    (part) => part !== '',
  );
  return parts.length === 0 ? `${from}, the same screens` : `${from}, ${parts.join(', ')}`;
}
