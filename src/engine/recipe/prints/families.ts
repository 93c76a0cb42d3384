import { defined, entryAt, num } from '../../base/at.ts';
import type { Variant } from '../../explore/types.ts';
import type { Studio } from '../../studio/studio.ts';
import { say } from '../../words/en/recipe/prints.ts';
import type { PrintLineage } from '../lineage.ts';
import type { Origin } from './origin.ts';

/** Names beyond so many are counted. */
const MOST_NAMED = 3;
/** More families than this, of fewer prints each, tell nobody anything. */
const MANY_FAMILIES = 12;
const LEAST_MEAN = 2.5;

/** A print as it hangs. */
export interface HungPrint {
  variant: Pick<Variant, 'pulls'>;
  /** What it comes from, as far as it is known. */
  origin: Pick<Origin, 'parents' | 'lineage'> | undefined;
  /** Where it is on the wall. */
  place: number;
}

interface Family {
  title: string;
  changes: number;
  /** By their place in the list. */
  prints: number[];
}

/**
 * Prints that come from the same parents and are made of the same screens: what is within a family
 * is a matter of order, inks and offsets. Where hardly two prints have the same screens, as when a few
 * are taken of a large drawer, prints share one screen that sets them apart from most others.
 * Pinned prints of other walls are a family for each wall.
 * @param prints in the order in which they hang
 * @returns families with what they have and lack against their parent; the nearest to it first
 */
export function familiesOf(prints: readonly HungPrint[], studio: Studio): { title: string; prints: number[] }[] {
  const pinned: number[] = [];
  const found: number[] = [];
  prints.forEach(({ origin }, i) => (origin?.lineage === undefined ? found : pinned).push(i));
  const derived = sameScreens(prints, found, studio);
  const families =
    derived.length > MANY_FAMILIES && found.length < derived.length * LEAST_MEAN ? sharedScreens(prints, found, studio) : derived;
  const all = [...byWall(prints, pinned), ...families].sort((a, b) => a.changes - b.changes || num(a.prints, 0) - num(b.prints, 0));
  return all.map((family) => ({ title: family.title, prints: family.prints.map((i) => entryAt(prints, i).place) }));
}

function byWall(prints: readonly HungPrint[], among: readonly number[]): Family[] {
  const families = new Map<string, Family>();
  for (const i of among) {
    const lineage = defined(entryAt(prints, i).origin?.lineage);
    const family = families.get(lineage.seed) ?? { title: pinnedTitle(lineage), changes: -1, prints: [] };
    families.set(lineage.seed, family);
    family.prints.push(i);
  }
  return [...families.values()];
}

function sameScreens(prints: readonly HungPrint[], among: readonly number[], studio: Studio): Family[] {
  const families = new Map<string, Family>();
  for (const i of among) {
    const { names, gained, lost, screens } = derivedOf(entryAt(prints, i));
    const key = JSON.stringify([names, [...screens].sort()]);
    const family = families.get(key) ?? { title: titleOf(gained, lost, names, studio), changes: gained.length + lost.length, prints: [] };
    families.set(key, family);
    family.prints.push(i);
  }
  return [...families.values()];
}

/** Takes, again and again, the prints that share what most of those left share, but not most of all. */
function sharedScreens(prints: readonly HungPrint[], among: readonly number[], studio: Studio): Family[] {
  const traits = new Map<number, { names: readonly string[]; of: Set<string> }>();
  const times = new Map<string, number>();
  for (const i of among) {
    const { names, gained, lost, screens } = derivedOf(entryAt(prints, i));
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
    const taken = [...traits].filter(([, { of }]) => most === undefined || of.has(most)).map(([i]) => i);
    const names = sameNames(taken.map((i) => defined(traits.get(i)).names));
    const screens = most === undefined ? [] : [most.slice(2)];
    const title =
      most === undefined ? say.allOthers : titleOf(most.startsWith('+') ? screens : [], most.startsWith('-') ? screens : [], names, studio);
    families.push({ title, changes: families.length, prints: taken });
    for (const i of taken) traits.delete(i);
  }
  return families;
}

/** The names of the parents where all have the same; else none. */
function sameNames([first = [], ...others]: readonly (readonly string[])[]): readonly string[] {
  return others.every((names) => names.join() === first.join()) ? first : [];
}

/** What a print has and lacks against the first of the prints that it comes from. */
function derivedOf({ variant, origin }: HungPrint): { names: string[]; screens: Map<string, number>; gained: string[]; lost: string[] } {
  const { parents = [] } = origin ?? {};
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
  return way === undefined ? say.pinnedOfWall(seed) : say.pinnedFoundFromOther;
}

function titleOf(gained: readonly string[], lost: readonly string[], parents: readonly string[], studio: Studio): string {
  const names = (ids: readonly string[]): string => {
    const known = ids.slice(0, MOST_NAMED).map((id) => studio.screens.find((screen) => screen.id === id)?.name ?? id);
    return ids.length > MOST_NAMED ? say.andMore(known.join(', '), ids.length - MOST_NAMED) : known.join(', ');
  };
  if (parents.length === 0) return gained.length > 0 ? say.of(names(gained)) : say.without(names(lost));
  const from = say.from(parents.join(say.and));
  const parts = [gained.length > 0 ? say.with(names(gained)) : '', lost.length > 0 ? say.withoutNames(names(lost)) : ''].filter(
    (part) => part !== '',
  );
  return parts.length === 0 ? say.sameScreens(from) : `${from}, ${parts.join(', ')}`;
}
