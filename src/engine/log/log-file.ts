import { z } from 'zod';
import { LONGEST_NAME, MOST_PULLS, MOST_SHEETS, STROKES } from '../base/limits.ts';
import { explainIssues } from '../recipe/explain.ts';
import { MOST_TOLD, readEnvelope, type ReadResult } from '../recipe/read.ts';
import { checkHolder, checkPulls } from '../recipe/references.ts';
import { inkSchema, recipeSchema } from '../recipe/schema.ts';
import { LOG_FORMAT, LOG_VERSION, type LogEvent, type VisitHead, type VisitLog } from './types.ts';

const id = z.string().min(1).max(200);
const note = z.string().max(4000);
/** Ms since 1970 UTC, until the year 9999: what a date can show. */
const time = z.number().min(0).max(253_402_300_799_999);
const head = { id, atMs: time, device: id, sheet: z.int().min(1).max(100_000) };
const pulls = z.array(id).min(1).max(MOST_PULLS);
const shift = z.number().min(-100).max(100);

/** One event of a log. */
const eventSchema = z.discriminatedUnion('kind', [
  z.object({ ...head, kind: z.literal('pulled'), pulls }),
  z.object({
    ...head,
    kind: z.literal('otherwise'),
    pulls,
    how: z.object({
      ink: inkSchema.optional(),
      strokes: z.int().min(STROKES.least).max(STROKES.most).optional(),
      dxMm: shift,
      dyMm: shift,
    }),
    note,
  }),
  z.object({ ...head, kind: z.literal('spoiled'), note }),
  z.object({ ...head, kind: z.literal(['kept', 'lucky']), note }),
  z.object({ ...head, kind: z.literal('placed'), box: z.string().max(200) }),
  z.object({ ...head, kind: z.literal('undone'), event: id }),
]);

const headSchema = z
  .object({
    id,
    title: z.string().max(LONGEST_NAME),
    begunMs: time,
    minDeltaE: z.number().min(0).max(100).optional(),
    recipes: z.array(recipeSchema).min(1).max(MOST_SHEETS),
    sheets: z
      .array(z.object({ number: z.int().min(1).max(100_000), recipe: z.int().min(0) }))
      .min(1)
      .max(MOST_SHEETS),
  })
  .refine((visit) => visit.sheets.every((sheet) => sheet.recipe < visit.recipes.length), 'a visit whose sheets name its recipes');

const logSchema = z.object({
  format: z.literal(LOG_FORMAT),
  version: z.literal(LOG_VERSION),
  head: headSchema,
  events: z.array(eventSchema).max(200_000),
});

/**
 * Reads a log file.
 * @param text JSON as `writeLog` gives it
 * @param fileName named in the sentences
 * @returns the log, or problems and no log; never throws on input
 */
export function readLog(text: string, fileName: string): ReadResult<VisitLog> {
  const envelope = readEnvelope(text, fileName, { format: LOG_FORMAT, latest: LOG_VERSION, what: 'log' });
  if (envelope.value === null) return envelope;
  const parsed = logSchema.safeParse(envelope.value.raw);
  if (!parsed.success) return { value: null, problems: explainIssues(parsed.error.issues, envelope.value.raw, fileName, 'log') };
  const log: VisitLog = parsed.data;
  const problems = log.head.recipes.flatMap((recipe, i) => [
    ...checkHolder(recipe, fileName),
    ...checkPulls(recipe.pulls, recipe, `head.recipes[${i}].pulls`, fileName),
  ]);
  return problems.length > 0 ? { value: null, problems: problems.slice(0, MOST_TOLD) } : { value: log, problems: [] };
}

/** The text of a log file. */
export function writeLog(head: VisitHead, events: readonly LogEvent[]): string {
  return `${JSON.stringify({ format: LOG_FORMAT, version: LOG_VERSION, head, events: [...events] } satisfies VisitLog)}\n`;
}
