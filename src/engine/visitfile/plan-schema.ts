import { z } from 'zod';
import { LONGEST_NAME, LONGEST_SEED, MOST_PULLS, MOST_SHEETS } from '../base/limits.ts';
import { pressSchema } from '../project/schema.ts';
import { inkSchema, meshSchema, pullSchema, recipeSchema, screenSchema } from '../recipe/schema.ts';

export const PLAN_FORMAT = 'pullstack-plan';
export const PLAN_VERSION = 1;

/** Set-ups of one order: each prints one pull of one sheet at the least. */
const MOST_SET_UPS = MOST_SHEETS * MOST_PULLS;
/** Minutes of a year: no visit is longer. */
const minute = z.number().min(-525_600).max(525_600);
const key = z.string().min(1).max(LONGEST_NAME);
const count = z.int().min(0).max(1_000_000);
const index = z.int().min(0).max(MOST_SET_UPS);
const offset = { dxMm: z.number().min(-5000).max(5000), dyMm: z.number().min(-5000).max(5000), turnDeg: z.number().min(-360).max(360) };
const sheets = z.array(z.int().min(1).max(100_000)).max(MOST_SHEETS);
const strokes = z.int().min(1).max(1000);
const amount = z.number().min(0).max(1e9);
const use = z.enum(['good', 'over', 'proof']).exactOptional();
const moment = z.object({ day: z.int().min(1).max(10_000), minute });

const cardSchema = z.object({
  number: z.int().min(1).max(MOST_SET_UPS),
  screen: z.object({ key, number: screenSchema.shape.number, name: z.string().max(LONGEST_NAME), mesh: meshSchema }),
  ink: z.object({ key, ink: inkSchema, stocks: z.array(z.object({ ink: inkSchema, parts: amount })).max(100) }),
  ...offset,
  strokes,
  mount: z.boolean(),
  inkChange: z.boolean(),
  registerMove: z.boolean(),
  sheets: sheets.min(1),
  instructions: z
    .array(z.object({ ...offset, strokes, sheets }))
    .max(MOST_SHEETS)
    .exactOptional(),
  states: z
    .array(
      z.object({
        recipe: index,
        sheets: sheets.min(1),
        prints: z.array(index).min(1).max(MOST_PULLS),
        before: z.array(pullSchema).max(MOST_PULLS),
        after: z.array(pullSchema).min(1).max(MOST_PULLS),
      }),
    )
    .min(1)
    .max(MOST_SHEETS),
  test: z.object({ recipe: index, at: index, sheet: z.int().min(1).max(100_000) }).exactOptional(),
});

const timeSchema = z.object({
  day: z.int().min(1).max(10_000),
  startMinute: minute,
  endMinute: minute,
  bed: z.int().min(0).max(10),
  waitMinutes: minute,
  waitFor: z.array(key).max(1000),
  rackWaitMinutes: minute,
  dryMinute: minute,
  stackMinute: minute,
  fits: z.boolean(),
});

const planSchema = z.object({
  times: z.array(timeSchema).max(MOST_SET_UPS),
  parts: z
    .array(
      z.object({
        kind: z.enum(['mix', 'mount', 'register', 'print', 'wait', 'wash']),
        setUp: index,
        day: z.int().min(1).max(10_000),
        bed: z.int().min(0).max(10),
        fromMinute: minute,
        toMinute: minute,
      }),
    )
    .max(20 * MOST_SET_UPS),
  clock: z.object({ startMinute: minute, workMinutes: minute, lunch: z.object({ fromMinute: minute, minutes: minute }).nullable() }),
  daysNeeded: z.int().min(0).max(10_000),
  ends: moment,
  racksNeeded: count,
  problems: z.array(z.object({ code: z.string().max(200), message: z.string().max(4000), where: z.string().max(1000) })).max(MOST_SET_UPS),
  sheets: z
    .array(z.object({ number: z.int().min(1).max(100_000), recipe: index, use }))
    .min(1)
    .max(MOST_SHEETS),
  testSheet: z.boolean().exactOptional(),
  testNumber: z.int().min(1).max(100_000).exactOptional(),
  recipes: z
    .array(z.object({ id: key, title: z.string().max(LONGEST_NAME), sheets }))
    .min(1)
    .max(MOST_SHEETS),
  cards: z.array(cardSchema).min(1).max(MOST_SET_UPS),
  inks: z
    .array(
      z.object({
        key,
        name: z.string().max(LONGEST_NAME),
        areaM2: amount,
        grams: amount,
        printedG: amount,
        proofsG: amount,
        lossG: amount,
        safetyG: amount,
      }),
    )
    .max(10_000),
  stocks: z.array(z.object({ name: z.string().max(LONGEST_NAME), grams: amount })).max(10_000),
  setUpsBefore: count.exactOptional(),
  mounts: count,
  inkChanges: count,
  registerMoves: count,
  bound: z.object({ setUps: count, mounts: count }),
  endsAtLeast: moment.nullable().exactOptional(),
  endsAtLeastBy: z.enum(['work', 'frame', 'sheet', 'drying']).exactOptional(),
  freeSwaps: count,
  savedSetUps: count.nullable(),
  savedMounts: count.nullable(),
  worked: z.number().min(0).max(1).exactOptional(),
  done: z.boolean(),
  begins: z
    .object({ day: z.int().min(1).max(10_000), minute, wetSheets: count, stays: z.string().max(LONGEST_NAME).nullable() })
    .exactOptional(),
});

/** A pull order with what it was made from, as a file holds it; its recipes stand once. */
export const planFileSchema = z.object({
  format: z.literal(PLAN_FORMAT),
  version: z.literal(PLAN_VERSION),
  recipes: z.array(recipeSchema).min(1).max(MOST_SHEETS),
  runs: z
    .array(z.object({ recipe: index, sheets: count, overs: count.exactOptional(), proofs: count.exactOptional() }))
    .min(1)
    .max(MOST_SHEETS),
  minDeltaE: z.number().min(0).max(100),
  press: pressSchema,
  seed: z.string().max(LONGEST_SEED),
  testSheet: z.boolean().exactOptional(),
  plan: planSchema,
});
