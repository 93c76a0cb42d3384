import type { Variant } from '../../explore/types.ts';
import type { Pull } from '../../stack/types.ts';
import type { Studio } from '../../studio/studio.ts';
import type { PrintLineage } from '../lineage.ts';

/** A print that stays on the wall whatever hangs beside it. */
export interface Pin {
  /** Names its picture, as the explorer does. */
  key: string;
  pulls: Pull[];
  lineage: PrintLineage;
}

/** Pins with a print put in at the end, or taken out when its picture is there. */
export function togglePin(pins: readonly Pin[], print: Pin): Pin[] {
  const rest = pins.filter(({ key }) => key !== print.key);
  return rest.length < pins.length ? rest : [...pins, print];
}

/** Where pinned prints hang on a wall, in the order of the pins. */
export function pinnedPlaces(pins: readonly Pin[], variants: readonly Variant[]): Set<number> {
  if (pins.length === 0) return new Set();
  const places = new Map<string, number>();
  variants.forEach(({ key }, place) => {
    if (!places.has(key)) places.set(key, place);
  });
  return new Set(pins.flatMap(({ key }) => places.get(key) ?? []));
}

/** Pins that do not hang on a wall, though its studio has all that they print. */
export function missingPins(pins: readonly Pin[], variants: readonly Variant[], studio: Studio): Pin[] {
  const there = new Set(variants.map(({ key }) => key));
  const screens = new Set(studio.screens.map(({ id }) => id));
  const inks = new Set(studio.inks.map(({ id }) => id));
  return pins.filter(({ key, pulls }) => !there.has(key) && pulls.every((pull) => screens.has(pull.screen) && inks.has(pull.ink)));
}

/** A pinned print of another wall as a print of this one; its number stays that of its own wall. */
export function pinnedVariant({ key, pulls, lineage }: Pin): Variant {
  const { seed, index, way, parents = [] } = lineage;
  const variant: Variant = { id: `${seed}:${index}`, seed, index, pulls, key };
  if (way === undefined) return variant;
  return { ...variant, lineage: { kind: way, parents: parents.map((parent) => `${parent.seed}:${parent.index}`), seed } };
}
