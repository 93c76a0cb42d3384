import { z } from 'zod';
import { entryAt } from '../base/at.ts';
import { LONGEST_NAME, LONGEST_SEED, MOST_ENTRIES, MOST_HOLDS } from '../base/limits.ts';
import type { Hold } from '../explore/settings/hold.ts';
import type { Range } from '../explore/settings/range.ts';
import { NUMBER_SETTINGS, type NumberField, SETTINGS } from '../explore/settings/setting-table.ts';
import type { ExploreSettings } from '../explore/types.ts';

type Schemas<K extends keyof ExploreSettings> = { [Field in K]-?: z.ZodType<ExploreSettings[Field]> };

const id = z.string().min(1).max(200);
const pairs = z
  .array(z.tuple([id, id]))
  .max(200)
  .optional();
const screens = z.array(id).max(1000).optional();

const holdSchema: z.ZodType<Hold> = z.discriminatedUnion('kind', [
  z.object({ kind: z.enum(['first', 'last', 'place', 'ink', 'out', 'lies']), pull: id }),
  z.object({ kind: z.literal('before'), pull: id, other: id }),
]);

function numberIn({ least, most, whole }: Range): z.ZodNumber {
  return (whole ? z.int() : z.number()).min(least).max(most);
}

function oneOf<V extends string>({ choices }: { choices: readonly (readonly [V, string])[] }): z.ZodType<V | undefined> {
  const values = choices.map(([value]) => value);
  return z.enum([entryAt(values, 0), ...values.slice(1)]).optional() as unknown as z.ZodType<V | undefined>;
}

const numbers = Object.fromEntries(
  NUMBER_SETTINGS.map(([field, { range, empty }]) => [field, empty === undefined ? numberIn(range) : numberIn(range).optional()]),
) as unknown as Schemas<NumberField>;

const others: Schemas<Exclude<keyof ExploreSettings, NumberField>> = {
  seed: z.string().max(LONGEST_SEED),
  order: z.boolean(),
  recolour: z.boolean(),
  palette: z.array(z.string().max(LONGEST_NAME)).max(MOST_ENTRIES),
  holds: z.array(holdSchema).max(MOST_HOLDS),
  unwidenedDeltaE: numberIn(SETTINGS.minDeltaE.range).optional(),
  apart: pairs,
  neverOver: pairs,
  inkFirst: id.optional(),
  inkLast: id.optional(),
  offsetDirection: oneOf(SETTINGS.offsetDirection),
  turns: oneOf(SETTINGS.turns),
  places: oneOf(SETTINGS.places),
  mirrored: z.boolean().optional(),
  veil: z.boolean().optional(),
  onlyAtHand: z.boolean().optional(),
  mustScreens: screens,
  notScreens: screens,
};

/** Settings of a wall as they stand in a file: numbers within the ranges of the table of settings. */
export const exploreSchema = z.object({ ...numbers, ...others }) as unknown as z.ZodType<ExploreSettings>;
