import { cutText } from '../base/bounds.ts';
import type { Problem } from '../base/error.ts';
import { explainIssues } from '../recipe/explain.ts';
import { checkHolder, checkPulls } from '../recipe/references.ts';
import { say } from '../words/en/log/log.ts';
import { eventSchema, headSchema } from './log-schema.ts';
import type { LogEvent, VisitHead } from './types.ts';

/** What of a list could be read, and a problem for each entry that could not. */
export interface EntriesRead<Entry> {
  read: Entry[];
  problems: Problem[];
}

/**
 * Checks the events of a log one by one, so that a bad one takes no other with it.
 * @param raw anything, as it was kept
 * @param name of the log, for the sentences
 */
export function readEvents(raw: readonly unknown[], name: string): EntriesRead<LogEvent> {
  const read: LogEvent[] = [];
  const problems: Problem[] = [];
  for (const [i, each] of raw.entries()) {
    const parsed = eventSchema.safeParse(each);
    if (parsed.success) {
      const unknown = checkGoingOn(parsed.data, say.event(name, cutText(parsed.data.id)));
      if (unknown.length === 0) read.push(parsed.data);
      else problems.push(...unknown.slice(0, 1));
    } else {
      const issues = parsed.error.issues.map((issue) => ({ ...issue, path: ['events', i, ...issue.path] }));
      problems.push(...explainIssues(issues, { events: raw }, name, 'log'));
    }
  }
  return { read, problems };
}

/** What of a sheet that goes on otherwise names nothing that the entry carries. */
export function checkGoingOn(event: LogEvent, name: string): Problem[] {
  if (event.kind !== 'goes-on' && event.kind !== 'extra') return [];
  return [...checkHolder(event.parts, name), ...checkPulls(event.more, event.parts, 'more', name)];
}

/**
 * Checks the heads of visits one by one.
 * @param raw anything, as it was kept
 * @param name of where they are kept, for the sentences
 */
export function readHeads(raw: readonly unknown[], name: string): EntriesRead<VisitHead> {
  const read: VisitHead[] = [];
  const problems: Problem[] = [];
  for (const [i, each] of raw.entries()) {
    const parsed = headSchema.safeParse(each);
    if (!parsed.success) {
      const issues = parsed.error.issues.map((issue) => ({ ...issue, path: ['visits', i, ...issue.path] }));
      problems.push(...explainIssues(issues, { visits: raw }, name, 'log'));
      continue;
    }
    const [problem] = parsed.data.recipes.flatMap((recipe) => [
      ...checkHolder(recipe, `${name}, ${cutText(parsed.data.title)}`),
      ...checkPulls(recipe.pulls, recipe, 'pulls', `${name}, ${cutText(parsed.data.title)}`),
    ]);
    if (problem === undefined) read.push(parsed.data);
    else problems.push(problem);
  }
  return { read, problems };
}
