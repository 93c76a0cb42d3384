import { z } from 'zod';
import { LESSON_PULLS, MOST_PULLS, MOST_SHEETS } from '../base/limits.ts';
import { MOST_SEEN_PRINTS, MOST_SEEN_RUNS } from '../explore/search/seen.ts';
import { exploreSchema } from '../explore/settings/setting-table.ts';
import { editionSchema } from '../log/edition/edition-schema.ts';
import {
  inkSchema,
  lineageSchema,
  paperSchema,
  pullSchema,
  recipeSchema,
  screenSchema,
  shapeSchema,
  strokeGainSchema,
} from '../recipe/schema.ts';
import { MOST_PINS, PROJECT_FORMAT, PROJECT_VERSION } from './types.ts';

const id = z.string().min(1);

const pressSchema = z.object({
  pullsPerHour: z.number().positive().max(1000),
  mountMinutes: z.number().min(0).max(600),
  washUpMinutes: z.number().min(0).max(600),
  registerMinutes: z.number().min(0).max(600),
  days: z.int().min(1).max(60),
  hoursPerDay: z.number().positive().max(24),
  transfer: z.number().positive().max(1),
  lossMl: z.number().min(0).max(5000),
  overs: z.number().min(0).max(2),
  registrationMm: z.number().min(0).max(20),
  dayStartMinute: z.int().min(0).max(1439).exactOptional(),
  lunchStartMinute: z.int().min(0).max(1439).exactOptional(),
  lunchMinutes: z.number().min(0).max(240).exactOptional(),
  mixMinutes: z.number().min(0).max(600).exactOptional(),
  rackPlaces: z.int().min(0).max(10_000).exactOptional(),
  beds: z.int().min(1).max(2).exactOptional(),
  safety: z.number().min(0).max(2).exactOptional(),
  proofs: z.int().min(0).max(100).exactOptional(),
});

const targetSchema = z
  .object({
    inks: z.array(id).refine((ids) => new Set(ids).size === ids.length, 'each ink once'),
    squares: z.array(
      z.object({
        first: id,
        over: id.nullable(),
        lab: z.tuple([z.number().min(0).max(100), z.number(), z.number()]),
        reflectance: z.array(z.number().min(0).max(1.2)).length(36).optional(),
      }),
    ),
  })
  .optional();

const originSchema = z.object({
  source: z.discriminatedUnion('kind', [
    z.object({ kind: z.literal('wall'), print: lineageSchema }),
    z.object({ kind: z.literal('recipe'), title: z.string() }),
    z.object({ kind: z.literal('hand') }),
  ]),
  pulls: z.array(pullSchema).max(MOST_PULLS),
});

/** A project of the present version, field by field; its names are checked by `checkProject`. */
export const projectSchema = z.object({
  format: z.literal(PROJECT_FORMAT),
  version: z.literal(PROJECT_VERSION),
  title: z.string(),
  drawer: z.object({
    shapes: z.array(shapeSchema),
    screens: z.array(screenSchema),
    inks: z.array(inkSchema),
    paper: paperSchema,
    strokeGain: strokeGainSchema,
  }),
  bench: z.array(pullSchema).max(MOST_PULLS),
  origin: originSchema.optional(),
  explore: exploreSchema,
  recipes: z.array(recipeSchema),
  visit: z.array(z.object({ recipe: z.string(), sheets: z.int().min(1).max(MOST_SHEETS) })),
  press: pressSchema,
  lesson: z.array(pullSchema).max(LESSON_PULLS.most),
  pins: z
    .array(z.object({ key: z.string(), pulls: z.array(pullSchema).min(1).max(MOST_PULLS), lineage: lineageSchema }))
    .max(MOST_PINS)
    .optional(),
  seen: z
    .array(z.object({ seed: z.string(), prints: z.array(z.object({ key: z.string(), look: z.string() })).max(MOST_SEEN_PRINTS) }))
    .max(MOST_SEEN_RUNS)
    .optional(),
  editions: z.array(editionSchema).max(10_000).optional(),
  target: targetSchema,
});
