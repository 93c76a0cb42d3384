import { cutName, cutText } from '../base/bounds.ts';
import { explainIssues } from '../recipe/explain.ts';
import { MOST_TOLD, readEnvelope, type ReadResult } from '../recipe/read.ts';
import { checkHolder, checkPulls } from '../recipe/references.ts';
import { say } from '../words/en/log/log.ts';
import { logSchema } from './log-schema.ts';
import { checkGoingOn } from './read-events.ts';
import { LOG_FORMAT, LOG_VERSION, type LogEvent, type VisitHead, type VisitLog } from './types.ts';

/**
 * Reads a log file.
 * @param text JSON as `writeLog` gives it
 * @param fileName named in the sentences
 * @returns the log, or problems and no log; never throws on input
 */
export function readLog(text: string, fileName: string): ReadResult<VisitLog> {
  const envelope = readEnvelope(text, fileName, { format: LOG_FORMAT, latest: LOG_VERSION, what: 'log' });
  if (envelope.value === null) return envelope;
  const name = cutName(fileName);
  const parsed = logSchema.safeParse(envelope.value.raw);
  if (!parsed.success) return { value: null, problems: explainIssues(parsed.error.issues, envelope.value.raw, name, 'log') };
  const log: VisitLog = parsed.data;
  const problems = [
    ...log.head.recipes.flatMap((recipe, i) => [
      ...checkHolder(recipe, name),
      ...checkPulls(recipe.pulls, recipe, `head.recipes[${i}].pulls`, name),
    ]),
    ...log.events.flatMap((event) => checkGoingOn(event, say.event(name, cutText(event.id)))),
  ];
  return problems.length > 0 ? { value: null, problems: problems.slice(0, MOST_TOLD) } : { value: log, problems: [] };
}

/** The text of a log file. */
export function writeLog(head: VisitHead, events: readonly LogEvent[]): string {
  return `${JSON.stringify({ format: LOG_FORMAT, version: LOG_VERSION, head, events: [...events] } satisfies VisitLog)}\n`;
}
