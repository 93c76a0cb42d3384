import { z } from 'zod';
import { LONGEST_NAME } from '../../base/limits.ts';
import { say } from '../../words/en/explore/taste.ts';
import { SKETCH_LENGTH } from '../look/sketch.ts';
import { MOST_CHOICES, MOST_PASSED } from './choices.ts';

/** No measure of a sheet comes near; beyond, fits lose their digits. */
const measure = z.number().min(-1e6).max(1e6);

const printSchema = z.object({
  key: z.string().min(1).max(200),
  name: z.string().max(LONGEST_NAME),
  measures: z.object({
    coverage: measure,
    colours: measure,
    mainColour: measure,
    overprintColour: measure,
    darkest: measure,
    lightest: measure,
    contrast: measure,
    edgeContrast: measure,
    imbalance: measure,
    pulls: measure,
    screens: measure,
    inks: measure,
    setUps: measure,
  }),
  sketch: z
    .string()
    .length(SKETCH_LENGTH * 2)
    .regex(/^[0-9a-f]*$/, say.hexDigits),
});

/** Choices that a taste is learnt from, as a project keeps them. */
export const tasteSchema = z
  .array(
    z.object({
      way: z.enum(['compared', 'selected', 'pinned', 'kept']),
      chosen: printSchema,
      over: z.array(printSchema).max(MOST_PASSED),
      open: z.literal(true).optional(),
    }),
  )
  .max(MOST_CHOICES);
