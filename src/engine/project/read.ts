import { z } from 'zod';
import type { Problem } from '../base/error.ts';
import { MOST_SEEN_PRINTS, MOST_SEEN_RUNS } from '../explore/search/seen.ts';
import { checkHolds } from '../explore/settings/holds.ts';
import { editionSchema } from '../log/edition/edition-schema.ts';
import { explainIssues } from '../recipe/explain.ts';
import { readEnvelope, type ReadResult } from '../recipe/read.ts';
import { checkHolder, checkPulls } from '../recipe/references.ts';
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
import { namedInks } from './target.ts';
import { MOST_PINS, PROJECT_FORMAT, PROJECT_VERSION, type Project } from './types.ts';

const id = z.string().min(1);
const most = z.int().min(1).max(200);
const holdSchema = z.discriminatedUnion('kind', [
  z.object({ kind: z.enum(['first', 'last', 'place', 'ink', 'out']), pull: id }),
  z.object({ kind: z.literal('before'), pull: id, other: id }),
]);

const projectSchema = z.object({
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
  bench: z.array(pullSchema).max(200),
  explore: z.object({
    seed: z.string(),
    count: z.int().min(1).max(10_000),
    order: z.boolean(),
    recolour: z.boolean(),
    palette: z.array(z.string()),
    offsetRangeMm: z.number().min(0).max(100),
    leaveOut: z.int().min(0).max(200),
    bringIn: z.int().min(0).max(200),
    holds: z.array(holdSchema),
    minDeltaE: z.number().min(0).max(100),
    maxInks: most.optional(),
    apart: z
      .array(z.tuple([id, id]))
      .max(200)
      .optional(),
    neverOver: z
      .array(z.tuple([id, id]))
      .max(200)
      .optional(),
    inkFirst: id.optional(),
    inkLast: id.optional(),
    offsetDirection: z.enum(['any', 'across', 'down']).optional(),
    offsetSnapMm: z.number().min(0.1).max(100).optional(),
    turns: z.enum(['none', 'half', 'any']).optional(),
    echoes: z.int().min(0).max(200).optional(),
    echoMm: z.number().min(0).max(100).optional(),
    maxStrokes: z.int().min(1).max(20).optional(),
    veil: z.boolean().optional(),
    mustScreens: z.array(id).max(1000).optional(),
    notScreens: z.array(id).max(1000).optional(),
    maxPulls: most.optional(),
    maxScreens: most.optional(),
    maxSetUps: most.optional(),
    maxThirdShare: z.number().min(0).max(1).optional(),
    maxEdgeShare: z.number().min(0).max(1).optional(),
  }),
  recipes: z.array(recipeSchema),
  visit: z.array(z.object({ recipe: z.string(), sheets: z.int().min(1).max(500) })),
  press: z.object({
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
  }),
  lesson: z.array(pullSchema).max(5),
  pins: z
    .array(z.object({ key: z.string(), pulls: z.array(pullSchema).min(1).max(200), lineage: lineageSchema }))
    .max(MOST_PINS)
    .optional(),
  seen: z
    .array(z.object({ seed: z.string(), prints: z.array(z.object({ key: z.string(), look: z.string() })).max(MOST_SEEN_PRINTS) }))
    .max(MOST_SEEN_RUNS)
    .optional(),
  editions: z.array(editionSchema).max(10_000).optional(),
  target: z
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
    .optional(),
});

/**
 * Reads a project and checks every field and every name in it.
 * @param text JSON as `writeProject` gives it
 * @param fileName named in the sentences
 * @returns the project, or problems and no project; never throws on input
 */
export function readProject(text: string, fileName: string): ReadResult<Project> {
  const envelope = readEnvelope(text, fileName, PROJECT_FORMAT, PROJECT_VERSION, 'project');
  if (envelope.value === null) return envelope;
  return checkProject(envelope.value.raw, fileName);
}

/**
 * Checks every field and every name of a project that was parsed already.
 * @param raw anything
 * @param fileName named in the sentences
 */
export function checkProject(raw: unknown, fileName: string): ReadResult<Project> {
  const parsed = projectSchema.safeParse(raw);
  if (!parsed.success) {
    return { value: null, problems: explainIssues(parsed.error.issues, raw, fileName, 'project') };
  }
  const project: Project = parsed.data;
  const problems = [
    ...checkHolder(project.drawer, fileName),
    ...checkPulls(project.bench, project.drawer, 'bench', fileName),
    ...checkPulls(project.lesson, project.drawer, 'lesson', fileName),
    ...(project.pins ?? []).flatMap((pin, i) => checkPulls(pin.pulls, project.drawer, `pins[${i}].pulls`, fileName)),
    ...checkTarget(project, fileName),
    ...checkEditions(project, fileName),
    ...project.recipes.flatMap((recipe, i) => [
      ...checkHolder(recipe, fileName),
      ...checkPulls(recipe.pulls, recipe, `recipes[${i}].pulls`, fileName),
    ]),
    ...checkHolds(project.bench, project.explore.holds).map((problem) => ({
      ...problem,
      message: `${fileName}: ${problem.message}`,
    })),
  ];
  return problems.length > 0 ? { value: null, problems } : { value: project, problems: [] };
}

function checkTarget({ target, drawer }: Project, fileName: string): Problem[] {
  if (target === undefined) return [];
  const gone = namedInks(target).find((named) => !drawer.inks.some((ink) => ink.id === named));
  if (gone === undefined) return [];
  return [
    {
      code: 'project.target',
      message: `${fileName}: target names the ink "${gone}", which is not in drawer.inks; add that ink or take it off the target.`,
      where: 'target',
    },
  ];
}

function checkEditions({ editions = [], recipes }: Project, fileName: string): Problem[] {
  return editions.flatMap(({ recipe }, i): Problem[] => {
    const where = `editions[${i}].recipe`;
    if (!recipes.some((entry) => entry.id === recipe)) {
      return [
        {
          code: 'project.edition',
          message: `${fileName}: ${where} names "${recipe}", which is not among the recipes of the file; add it or take the edition out.`,
          where,
        },
      ];
    }
    if (editions.findIndex((other) => other.recipe === recipe) === i) return [];
    return [
      {
        code: 'project.edition',
        message: `${fileName}: ${where} is "${recipe}", which an edition before it already is of; take one of the two out.`,
        where,
      },
    ];
  });
}

/** The text of a project file. */
export function writeProject(project: Project): string {
  return `${JSON.stringify(project)}\n`;
}
