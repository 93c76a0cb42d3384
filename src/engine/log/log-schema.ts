import { z } from 'zod';
import { LONGEST_NAME, MOST_ENTRIES, MOST_PULLS, MOST_SHEETS, STROKES } from '../base/limits.ts';
import { inkSchema, pullSchema, recipeSchema, screenSchema, shapeSchema } from '../recipe/schema.ts';
import { say } from '../words/en/log/log.ts';
import { LOG_FORMAT, LOG_VERSION } from './types.ts';

const id = z.string().min(1).max(200);
const note = z.string().max(4000);
/** Ms since 1970 UTC, until the year 9999: what a date can show. */
const time = z.number().min(0).max(253_402_300_799_999);
const head = { id, atMs: time, device: id, sheet: z.int().min(1).max(100_000) };
const pulls = z.array(id).min(1).max(MOST_PULLS);
const offset = z.number().min(-100).max(100);

const screenNumber = screenSchema.shape.number;
const ofSetUp = {
  ...head,
  sheet: z.literal(0),
  screen: z.object({ number: screenNumber, name: z.string().max(LONGEST_NAME) }),
  ink: z.string().max(LONGEST_NAME),
};

/** What is said of a screen on the press. */
const settingSchema = z.object({
  snapOffMm: z.number().min(0).max(50).optional(),
  shoreA: z.number().min(0).max(100).optional(),
  profile: z.string().max(200).optional(),
  angleDeg: z.number().min(0).max(90).optional(),
  registerMm: z.number().min(0).max(100).optional(),
});

const goingOn = {
  more: z.array(pullSchema).min(1).max(MOST_PULLS),
  parts: z.object({
    shapes: z.array(shapeSchema).max(MOST_ENTRIES),
    screens: z.array(screenSchema).max(MOST_PULLS),
    inks: z.array(inkSchema).max(MOST_ENTRIES),
  }),
};

/** One event of a log. */
export const eventSchema = z.discriminatedUnion('kind', [
  z.object({ ...head, kind: z.literal('pulled'), pulls }),
  z.object({
    ...head,
    kind: z.literal('otherwise'),
    pulls,
    how: z.object({
      ink: inkSchema.optional(),
      stocks: z.array(inkSchema).max(MOST_ENTRIES).optional(),
      strokes: z.int().min(STROKES.least).max(STROKES.most).optional(),
      dxMm: offset,
      dyMm: offset,
    }),
    note,
  }),
  z.object({ ...head, kind: z.literal('spoiled'), note }),
  z.object({ ...head, kind: z.literal('replaced'), by: head.sheet, note }),
  z.object({ ...head, kind: z.literal(['kept', 'lucky']), note }),
  z.object({ ...head, kind: z.literal('placed'), box: z.string().max(200) }),
  z.object({ ...head, kind: z.literal('tested'), of: head.sheet, pull: id }),
  z.object({ ...ofSetUp, kind: z.literal('set-up'), how: settingSchema, note }),
  z.object({
    ...ofSetUp,
    kind: z.literal('weighed'),
    grams: z.number().min(0).max(100_000),
    on: z.array(z.tuple([head.sheet, id])).max(MOST_SHEETS * MOST_PULLS),
  }),
  z.object({ ...head, kind: z.literal('goes-on'), ...goingOn }),
  z.object({ ...head, kind: z.literal('extra'), pulls, ...goingOn }),
  z.object({ ...head, sheet: z.int().min(0).max(100_000), kind: z.literal('undone'), event: id }),
]);

/** What a visit prints. */
export const headSchema = z
  .object({
    id,
    title: z.string().max(LONGEST_NAME),
    begunMs: time,
    minDeltaE: z.number().min(0).max(100).optional(),
    recipes: z.array(recipeSchema).min(1).max(MOST_SHEETS),
    sheets: z
      .array(
        z.object({
          number: z.int().min(1).max(100_000),
          recipe: z.int().min(0).max(MOST_SHEETS),
          use: z.enum(['good', 'over', 'proof']).optional(),
        }),
      )
      .min(1)
      .max(MOST_SHEETS),
    test: z.int().min(1).max(100_000).optional(),
  })
  .refine((visit) => visit.sheets.every((sheet) => sheet.recipe < visit.recipes.length), say.visitWhoseSheetsName);

/** A log file. */
export const logSchema = z.object({
  format: z.literal(LOG_FORMAT),
  version: z.literal(LOG_VERSION),
  head: headSchema,
  events: z.array(eventSchema).max(200_000),
});
