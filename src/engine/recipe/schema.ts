import { z } from 'zod';
import {
  DENSITY_G_PER_CM3,
  DRY_MINUTES,
  type Limits,
  MOST_PULLS,
  OFFSET_MM,
  STACK_MINUTES,
  STROKES,
  THREAD_UM,
  THREADS_PER_CM,
} from '../base/limits.ts';
import { INK_BASES } from '../ink/types.ts';
import { MOST_GENERATIONS, type PrintLineage } from './lineage.ts';

const finite = z.number();
/** A finite number within limits. */
function numberIn({ least, most }: Limits): z.ZodNumber {
  return z.number().min(least).max(most);
}

const bands = (max: number) => z.array(z.number().min(0).max(max)).length(36);
const id = z.string().min(1).max(200);
const lab = z.tuple([z.number().min(0).max(100), finite, finite]);
const onGrid = numberIn(OFFSET_MM);

const outline = z
  .array(finite)
  .min(6)
  .refine((ring) => ring.length % 2 === 0, 'an x and a y for each corner');

/** A shape of the drawer. */
export const shapeSchema = z.object({
  id,
  name: z.string(),
  rings: z.array(outline).min(1),
  fillRule: z.enum(['nonzero', 'evenodd']),
  widthMm: z.number().positive(),
  heightMm: z.number().positive(),
});

/** A mesh; a maker's own figures are optional. */
const meshSchema = z
  .object({
    threadsPerCm: numberIn(THREADS_PER_CM),
    threadUm: numberIn(THREAD_UM),
    fabricUm: z.number().positive().max(2000).optional(),
    statedOpenArea: z.number().positive().max(0.99).optional(),
    statedVolumeCm3PerM2: z.number().positive().max(999).optional(),
  })
  .refine((mesh) => mesh.threadsPerCm * mesh.threadUm < 10_000, 'a mesh whose threads leave an opening: fewer or thinner threads');

/** A screen with the shapes placed on it. */
export const screenSchema = z.object({
  id,
  number: z.int().min(1),
  name: z.string(),
  placed: z
    .array(
      z.object({
        shape: id,
        xMm: finite,
        yMm: finite,
        turnDeg: finite,
        scale: z.number().positive().max(100),
      }),
    )
    .min(1),
  mesh: meshSchema,
});

/** An ink with its curves. */
export const inkSchema = z.object({
  id,
  name: z.string().min(1),
  basis: z.enum(INK_BASES),
  overWhite: lab,
  overBlack: lab,
  kx: bands(1e6),
  sx: bands(1e6),
  dryMinutes: numberIn(DRY_MINUTES),
  stackMinutes: numberIn(STACK_MINUTES).optional(),
  densityGPerCm3: numberIn(DENSITY_G_PER_CM3),
  solids: z.number().positive().max(1).optional(),
  mesh: meshSchema.optional(),
  stock: z.literal(true).optional(),
  role: z.literal('base').optional(),
  mix: z
    .array(z.object({ ink: id, parts: z.number().positive().max(1e6) }))
    .min(1)
    .max(40)
    .optional(),
});

/** A paper with its printable part. */
export const paperSchema = z.object({
  name: z.string(),
  widthMm: z.number().positive().max(5000),
  heightMm: z.number().positive().max(5000),
  printable: z.object({
    xMm: z.number().min(0),
    yMm: z.number().min(0),
    widthMm: z.number().positive(),
    heightMm: z.number().positive(),
  }),
  reflectance: bands(1.2),
});

/** One pull of a stack. */
export const pullSchema = z.object({
  id,
  screen: id,
  ink: id,
  dxMm: onGrid,
  dyMm: onGrid,
  turnDeg: finite.min(-360).max(360),
  strokes: z.int().min(STROKES.least).max(STROKES.most),
});

/** Share of the first stroke's film that each further stroke adds. */
export const strokeGainSchema = z.number().min(0).max(1);

/** Where a print comes from; of a fixed depth, so that no file makes the reading endless. */
export const lineageSchema = lineageOf(MOST_GENERATIONS);

function lineageOf(generations: number): z.ZodType<PrintLineage> {
  const own = { seed: z.string(), index: z.int().min(0), way: z.enum(['nearer', 'away', 'between', 'cross']).optional() };
  if (generations === 0) return z.object(own);
  return z.object({
    ...own,
    parents: z
      .array(lineageOf(generations - 1))
      .min(1)
      .max(2)
      .optional(),
  });
}

/** A recipe of the present version. */
export const recipeSchema = z.object({
  format: z.literal('pullstack-recipe'),
  version: z.literal(1),
  id,
  title: z.string(),
  note: z.string(),
  seed: z.string(),
  index: z.int().min(-1),
  parent: id.optional(),
  lineage: lineageSchema.optional(),
  paper: paperSchema,
  strokeGain: strokeGainSchema,
  shapes: z.array(shapeSchema),
  screens: z.array(screenSchema),
  inks: z.array(inkSchema),
  pulls: z.array(pullSchema).min(1).max(MOST_PULLS),
});
