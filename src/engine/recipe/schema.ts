import { z } from 'zod';
import {
  DENSITY_G_PER_CM3,
  DRY_MINUTES,
  K1,
  K2,
  LAB_AB,
  type Limits,
  LONGEST_NAME,
  LONGEST_NOTE,
  LONGEST_SEED,
  MOST_CORNERS,
  MOST_COUNTED,
  MOST_ENTRIES,
  MOST_PULLS,
  MOST_RINGS,
  OFFSET_MM,
  PAPER_PROPORTION,
  PAPER_SIDE_MM,
  PAPER_TOP,
  PLACE_MM,
  REFLECTANCE,
  SHAPE_SCALE,
  SHAPE_SIDE_MM,
  STACK_MINUTES,
  STROKES,
  THREAD_UM,
  THREADS_PER_CM,
  TRAPPING,
  TURN_DEG,
} from '../base/limits.ts';
import { INK_BASES } from '../ink/types.ts';
import { say } from '../words/en/recipe/recipe.ts';
import { MOST_GENERATIONS, type PrintLineage } from './lineage.ts';
import { MOST_LABELS, MOST_SIGNS_OF_LABEL } from './types.ts';

/** Its own two, and those of a whole that was a section itself. */
const MOST_JOINTS = 4;

/** A finite number within limits. */
function numberIn({ least, most }: Limits): z.ZodNumber {
  return z.number().min(least).max(most);
}

const bands = (max: number) => z.array(z.number().min(0).max(max)).length(36);
const id = z.string().min(1).max(200);
const name = z.string().max(LONGEST_NAME);
const seed = z.string().max(LONGEST_SEED);
/** A Lab colour. */
export const labSchema = z.tuple([z.number().min(0).max(100), numberIn(LAB_AB), numberIn(LAB_AB)]);
const onGrid = numberIn(OFFSET_MM);

const outline = z
  .array(numberIn(PLACE_MM))
  .min(6)
  .max(2 * MOST_CORNERS)
  .refine((ring) => ring.length % 2 === 0, say.xAndYFor);

/** A shape of the drawer. */
export const shapeSchema = z.object({
  id,
  name,
  rings: z.array(outline).min(1).max(MOST_RINGS),
  fillRule: z.enum(['nonzero', 'evenodd']),
  widthMm: numberIn(SHAPE_SIDE_MM),
  heightMm: numberIn(SHAPE_SIDE_MM),
});

/** A mesh; a maker's own figures are optional. */
/** A mesh. */
export const meshSchema = z
  .object({
    threadsPerCm: numberIn(THREADS_PER_CM),
    threadUm: numberIn(THREAD_UM),
    fabricUm: z.number().positive().max(2000).optional(),
    statedOpenArea: z.number().positive().max(0.99).optional(),
    statedVolumeCm3PerM2: z.number().positive().max(999).optional(),
  })
  .refine((mesh) => mesh.threadsPerCm * mesh.threadUm < 10_000, say.meshWhoseThreadsLeave);

/** A screen with the shapes placed on it. */
export const screenSchema = z.object({
  id,
  number: z.int().min(1).max(1_000_000),
  name,
  placed: z
    .array(
      z.object({
        shape: id,
        xMm: numberIn(PLACE_MM),
        yMm: numberIn(PLACE_MM),
        turnDeg: numberIn(TURN_DEG),
        scale: numberIn(SHAPE_SCALE),
        mirrored: z.literal(true).optional(),
      }),
    )
    .min(1)
    .max(MOST_ENTRIES),
  mesh: meshSchema,
});

/** An ink with its curves. */
export const inkSchema = z.object({
  id,
  name: name.min(1),
  basis: z.enum(INK_BASES),
  overWhite: labSchema,
  overBlack: labSchema,
  kx: bands(1e6),
  sx: bands(1e6),
  dryMinutes: numberIn(DRY_MINUTES),
  stackMinutes: numberIn(STACK_MINUTES).optional(),
  densityGPerCm3: numberIn(DENSITY_G_PER_CM3),
  solids: z.number().positive().max(1).optional(),
  mesh: meshSchema.optional(),
  stock: z.literal(true).optional(),
  role: z.literal('base').optional(),
  fit: z.object({ looDeltaE: z.number().min(0).max(200), squares: z.int().min(1).max(MOST_ENTRIES) }).optional(),
  measurements: z
    .array(
      z.object({
        date: z.string().regex(/^(\d{4}-\d{2}-\d{2})?$/, say.dateAs202603),
        overWhite: labSchema,
        overBlack: labSchema,
        kx: bands(1e6),
        sx: bands(1e6),
      }),
    )
    .max(1000)
    .optional(),
  mix: z
    .array(z.object({ ink: id, parts: z.number().positive().max(1e6) }))
    .min(1)
    .max(40)
    .optional(),
});

const paperSide = numberIn(PAPER_SIDE_MM);

/** A paper with its printable part. */
export const paperSchema = z
  .object({
    name,
    widthMm: paperSide,
    heightMm: paperSide,
    printable: z.object({
      xMm: z.number().min(0).max(PAPER_SIDE_MM.most),
      yMm: z.number().min(0).max(PAPER_SIDE_MM.most),
      widthMm: paperSide,
      heightMm: paperSide,
    }),
    reflectance: bands(REFLECTANCE.most).refine(
      (reflectance) => Math.max(...reflectance) >= PAPER_TOP.least,
      say.paperThatGivesBack(PAPER_TOP.least * 100),
    ),
  })
  .refine(
    ({ widthMm, heightMm }) => Math.max(widthMm, heightMm) <= PAPER_PROPORTION * Math.min(widthMm, heightMm),
    say.paperWhoseLongSide(PAPER_PROPORTION),
  );

/** One pull of a stack. */
export const pullSchema = z.object({
  id,
  screen: id,
  ink: id,
  dxMm: onGrid,
  dyMm: onGrid,
  turnDeg: z.number().min(-360).max(360),
  strokes: z.int().min(STROKES.least).max(STROKES.most),
});

/** Share of the first stroke's film that each further stroke adds. */
export const strokeGainSchema = z.number().min(0).max(1);

/** Surface and trapping; files from before have neither. */
export const printingShape = {
  surface: z.object({ k1: numberIn(K1), k2: numberIn(K2) }).optional(),
  trapping: z
    .object({
      factor: numberIn(TRAPPING),
      pairs: z
        .array(z.object({ under: id, over: id, factor: numberIn(TRAPPING) }))
        .max(MOST_ENTRIES)
        .optional(),
    })
    .optional(),
};

/** Where a print comes from; of a fixed depth, so that no file makes the reading endless. */
export const lineageSchema = lineageOf(MOST_GENERATIONS);

function lineageOf(generations: number): z.ZodType<PrintLineage> {
  const own = { seed, index: z.int().min(0).max(MOST_COUNTED), way: z.enum(['nearer', 'away', 'between', 'cross', 'taste']).optional() };
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

const joints = z.array(z.number().min(0).max(PAPER_SIDE_MM.most)).max(MOST_JOINTS);

/** A recipe of the present version. */
export const recipeSchema = z.object({
  format: z.literal('pullstack-recipe'),
  version: z.literal(1),
  id,
  title: name,
  note: z.string().max(LONGEST_NOTE),
  labels: z.array(z.string().min(1).max(MOST_SIGNS_OF_LABEL)).max(MOST_LABELS).optional(),
  seed,
  index: z.int().min(-1).max(MOST_COUNTED),
  parent: id.optional(),
  lineage: lineageSchema.optional(),
  paper: paperSchema,
  joints: z.object({ acrossMm: joints, downMm: joints }).optional(),
  strokeGain: strokeGainSchema,
  ...printingShape,
  shapes: z.array(shapeSchema).max(MOST_ENTRIES),
  screens: z.array(screenSchema).max(MOST_ENTRIES),
  inks: z.array(inkSchema).max(MOST_ENTRIES),
  pulls: z.array(pullSchema).min(1).max(MOST_PULLS),
});
