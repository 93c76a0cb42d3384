import { z } from 'zod';
import {
  FRAME_SIDE_MM,
  LESSON_PULLS,
  LONGEST_NAME,
  LONGEST_SEED,
  MOST_ENTRIES,
  MOST_PULLS,
  MOST_SHEETS,
  PAPER_SIDE_MM,
} from '../base/limits.ts';
import { MOST_SEEN_PRINTS, MOST_SEEN_RUNS } from '../explore/search/seen.ts';
import { tasteSchema } from '../explore/taste/taste-schema.ts';
import { editionSchema } from '../log/edition/edition-schema.ts';
import { JOINT_MM, MOST_KEPT_CUTS, MOST_SECTIONS, MOST_SPREAD_MM, OVERLAP_MM } from '../output/film/film-limits.ts';
import {
  inkSchema,
  labSchema,
  lineageSchema,
  paperSchema,
  printingShape,
  pullSchema,
  recipeSchema,
  screenSchema,
  shapeSchema,
  strokeGainSchema,
} from '../recipe/schema.ts';
import { say } from '../words/en/project/project.ts';
import { exploreSchema } from './explore-schema.ts';
import { MOST_PINS, PROJECT_FORMAT, PROJECT_VERSION } from './types.ts';

const id = z.string().min(1).max(200);
const name = z.string().max(LONGEST_NAME);

/** The figures of a studio. */
export const pressSchema = z.object({
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
  strokeSeconds: z.number().min(0).max(600).exactOptional(),
  dayStartMinute: z.int().min(0).max(1439).exactOptional(),
  lunchStartMinute: z.int().min(0).max(1439).exactOptional(),
  lunchMinutes: z.number().min(0).max(240).exactOptional(),
  mixMinutes: z.number().min(0).max(600).exactOptional(),
  rackPlaces: z.int().min(0).max(10_000).exactOptional(),
  beds: z.int().min(1).max(2).exactOptional(),
  safety: z.number().min(0).max(2).exactOptional(),
  proofs: z.int().min(0).max(100).exactOptional(),
});

const amount = z.number().min(0).max(1e9).optional();
const screenBudgetSchema = z.object({
  screens: amount,
  filmM2: amount,
  money: amount,
  hours: amount,
  moneyEach: amount,
  hoursEach: amount,
  filmMarginMm: amount,
  filmMoneyM2: amount,
  inkMoneyEach: amount,
  inkHoursEach: amount,
});

const curve = z.array(z.number().min(0).max(1.2)).length(36);

const targetSchema = z
  .object({
    inks: z
      .array(id)
      .max(MOST_ENTRIES)
      .refine((ids) => new Set(ids).size === ids.length, say.eachInkOnce),
    squares: z
      .array(
        z.object({
          first: id,
          over: id.nullable(),
          lab: labSchema,
          reflectance: curve.optional(),
        }),
      )
      .max(MOST_ENTRIES),
    few: z
      .array(z.object({ films: z.array(id).min(1).max(MOST_PULLS), lab: labSchema.optional(), reflectance: curve.optional() }))
      .max(MOST_ENTRIES)
      .optional(),
  })
  .optional();

const ids = z.array(id).max(MOST_ENTRIES);
const insideMm = z.number().min(FRAME_SIDE_MM.least).max(FRAME_SIDE_MM.most);
const framesSchema = z.object({
  made: ids,
  toMake: ids,
  film: ids.optional(),
  reclaimed: ids.optional(),
  inside: z.record(id, z.object({ widthMm: insideMm, heightMm: insideMm })).optional(),
});

const cutPlaces = z.array(z.number().min(0).max(PAPER_SIDE_MM.most)).max(MOST_SECTIONS);
const paperSide = z.number().min(PAPER_SIDE_MM.least).max(PAPER_SIDE_MM.most);
const cutsSchema = z.object({
  widthMm: paperSide,
  heightMm: paperSide,
  acrossMm: cutPlaces,
  downMm: cutPlaces,
  overlapMm: z.number().min(JOINT_MM.least).max(JOINT_MM.most),
});

/** How films are made; also what a command may set. */
export const filmsSchema = z.object({
  side: z.enum(['paper', 'squeegee']),
  printed: z.enum(['against', 'away']),
  spreadMm: z.number().min(-MOST_SPREAD_MM).max(MOST_SPREAD_MM),
  registerMarks: z.boolean(),
  lays: z.boolean(),
  as: z.enum(['pdf', 'pdfs', 'svgs']),
  paper: z.enum(['whole', 'A4', 'A3', 'Letter', 'Tabloid']),
  overlapMm: z.number().min(OVERLAP_MM.least).max(OVERLAP_MM.most),
  cuts: z.array(cutsSchema).max(MOST_KEPT_CUTS).optional(),
});

const originSchema = z.object({
  source: z.discriminatedUnion('kind', [
    z.object({ kind: z.literal('wall'), print: lineageSchema }),
    z.object({ kind: z.literal('recipe'), title: name, recipe: id.optional() }),
    z.object({ kind: z.literal('hand') }),
  ]),
  pulls: z.array(pullSchema).max(MOST_PULLS),
});

/** A project of the present version, field by field; its names are checked by `checkProject`. */
export const projectSchema = z.object({
  format: z.literal(PROJECT_FORMAT),
  version: z.literal(PROJECT_VERSION),
  title: name,
  drawer: z.object({
    shapes: z.array(shapeSchema).max(MOST_ENTRIES),
    screens: z.array(screenSchema).max(MOST_ENTRIES),
    inks: z.array(inkSchema).max(MOST_ENTRIES),
    paper: paperSchema,
    strokeGain: strokeGainSchema,
    ...printingShape,
  }),
  bench: z.array(pullSchema).max(MOST_PULLS),
  origin: originSchema.optional(),
  explore: exploreSchema,
  recipes: z.array(recipeSchema).max(MOST_ENTRIES),
  visit: z
    .array(
      z.object({
        recipe: name,
        sheets: z.int().min(1).max(MOST_SHEETS),
        overs: z.int().min(0).max(MOST_SHEETS).optional(),
        proofs: z.int().min(0).max(MOST_SHEETS).optional(),
      }),
    )
    .max(MOST_ENTRIES),
  press: pressSchema,
  lesson: z.array(pullSchema).max(LESSON_PULLS.most),
  lessonInks: z
    .array(z.object({ ink: id, opacity: z.number().min(-1).max(1) }))
    .max(MOST_ENTRIES)
    .optional(),
  pins: z
    .array(z.object({ key: z.string().max(LONGEST_SEED), pulls: z.array(pullSchema).min(1).max(MOST_PULLS), lineage: lineageSchema }))
    .max(MOST_PINS)
    .optional(),
  frames: framesSchema.optional(),
  films: filmsSchema.optional(),
  screenBudget: screenBudgetSchema.optional(),
  seen: z
    .array(
      z.object({
        seed: z.string().max(LONGEST_SEED),
        prints: z.array(z.object({ key: z.string().max(LONGEST_SEED), look: z.string().max(LONGEST_SEED) })).max(MOST_SEEN_PRINTS),
      }),
    )
    .max(MOST_SEEN_RUNS)
    .optional(),
  taste: tasteSchema.optional(),
  editions: z.array(editionSchema).max(10_000).optional(),
  target: targetSchema,
});
