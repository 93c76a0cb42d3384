import type { z } from 'zod';
import { cutText } from '../base/bounds.ts';
import type { Problem } from '../base/error.ts';

const MAX_SHOWN = 40;

/** `pulls[3].strokes` from ['pulls', 3, 'strokes']. */
export function fieldName(path: readonly PropertyKey[]): string {
  let name = '';
  for (const key of path) {
    if (typeof key === 'number') name += `[${key}]`;
    else name += name === '' ? String(key) : `.${String(key)}`;
  }
  return name === '' ? 'the file' : name;
}

/** The value at a path, as a user would recognise it; `nothing` when there is none. */
function found(root: unknown, path: readonly PropertyKey[]): string {
  let value = root;
  for (const key of path) {
    if (typeof value !== 'object' || value === null) return 'nothing';
    value = (value as Record<PropertyKey, unknown>)[key];
  }
  if (value === undefined) return 'nothing';
  if (value === null) return 'null';
  if (typeof value === 'number') return String(value);
  const text = Array.isArray(value) ? `a list of ${value.length}` : typeof value === 'object' ? 'an object' : JSON.stringify(value);
  return text.length > MAX_SHOWN ? `${text.slice(0, MAX_SHOWN)}…` : text;
}

function wanted(issue: z.core.$ZodIssue): string {
  switch (issue.code) {
    case 'too_small':
      return issue.origin === 'array'
        ? `at least ${issue.minimum} entries`
        : issue.origin === 'string'
          ? 'some text'
          : issue.inclusive
            ? `${issue.minimum} or more`
            : `more than ${issue.minimum}`;
    case 'too_big':
      return issue.origin === 'array'
        ? `at most ${issue.maximum} entries`
        : issue.origin === 'string'
          ? `at most ${issue.maximum} signs long`
          : `${issue.maximum} or less`;
    case 'invalid_type':
      return issue.expected === 'int' ? 'a whole number' : `${/^[aeiou]/u.test(issue.expected) ? 'an' : 'a'} ${issue.expected}`;
    case 'invalid_value':
      return issue.values.map((value) => JSON.stringify(value)).join(' or ');
    default:
      return issue.message;
  }
}

/**
 * Says in one sentence what is wrong with a document.
 * @param issues what the schema found; only the first is said, the rest are often its echoes
 * @param root the document as read
 * @param fileName named in the sentence
 * @param codePrefix `recipe` or `project`
 */
export function explainIssues(issues: readonly z.core.$ZodIssue[], root: unknown, fileName: string, codePrefix: string): Problem[] {
  const issue = issues[0];
  if (issue === undefined) return [];
  const where = fieldName(issue.path);
  return [
    {
      code: `${codePrefix}.field`,
      message: `${fileName}: ${cutText(where)} is ${found(root, issue.path)}, but must be ${wanted(issue)}; mend that field and read the file again.`,
      where,
    },
  ];
}
