import { z } from 'zod';
import { LESSON_PULLS, LONGEST_NAME } from '../base/limits.ts';
import { BANDS } from '../colour/weights.ts';
import { INK_BASES } from '../ink/types.ts';
import { meshSchema, printingShape, strokeGainSchema } from '../recipe/schema.ts';
import { GOAL_KINDS } from './goal-kinds.ts';

/** Corners of one lesson; more take a phone too long. */
export const MOST_CORNERS = 6000;
/** Steps of a paper's reflectance to 1. */
export const PAPER_STEPS = 2000;

const name = z.string().max(LONGEST_NAME);
const index = z
  .int()
  .min(0)
  .max(LESSON_PULLS.most - 1);
/** A curve in signs: see lettersOf. */
const curve = z.string().max(5 * BANDS);
const offset = z.int().min(-20_000).max(20_000);

/** A lesson in few signs; curves and outlines as lettersOf writes them. */
export const packedLessonSchema = z.object({
  version: z.literal(1),
  title: name,
  goal: z.enum(GOAL_KINDS).nullable(),
  limits: z.tuple([z.number().min(0).max(100), z.number().min(0).max(10_000)]),
  /** Steps of coordinates, mm. */
  grid: z.number().min(0.01).max(20),
  paper: z.object({
    size: z.tuple([z.number().min(1).max(5000), z.number().min(1).max(5000)]),
    reflectance: curve,
    ...printingShape,
    strokeGain: strokeGainSchema,
  }),
  inks: z
    .array(
      z.object({
        name,
        basis: z.enum(INK_BASES),
        kx: curve,
        sx: curve,
        mesh: meshSchema.optional(),
        opacity: z.number().min(-1).max(1).optional(),
      }),
    )
    .min(1)
    .max(LESSON_PULLS.most),
  screens: z
    .array(
      z.object({
        number: z.int().min(1).max(1_000_000),
        name,
        mesh: meshSchema,
        rule: z.enum(['nonzero', 'evenodd']),
        rings: z.array(z.string().max(10 * MOST_CORNERS)).max(500),
      }),
    )
    .min(1)
    .max(LESSON_PULLS.most),
  /** Screen, ink, tenths of mm right and down, degrees, strokes. */
  pulls: z
    .array(z.tuple([index, index, offset, offset, z.number().min(-36_000).max(36_000), z.int().min(1).max(20)]))
    .min(LESSON_PULLS.least)
    .max(LESSON_PULLS.most),
});

export type PackedLesson = z.infer<typeof packedLessonSchema>;
