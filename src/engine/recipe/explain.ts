import type { z } from 'zod';
import { cutText } from '../base/bounds.ts';
import type { Problem } from '../base/error.ts';
import { say } from '../words/en/recipe/recipe.ts';

const MAX_SHOWN = 40;

/** `pulls[3].strokes` from ['pulls', 3, 'strokes']. */
export function fieldName(path: readonly PropertyKey[]): string {
  let name = '';
  for (const key of path) {
    if (typeof key === 'number') name += `[${key}]`;
    else name += name === '' ? String(key) : `.${String(key)}`;
  }
  return name === '' ? say.theFile : name;
}

/** The value at a path, as a user would recognise it; `nothing` when there is none. */
function found(root: unknown, path: readonly PropertyKey[]): string {
  let value = root;
  for (const key of path) {
    if (typeof value !== 'object' || value === null) return say.nothing;
    value = (value as Record<PropertyKey, unknown>)[key];
  }
  if (value === undefined) return say.nothing;
  if (value === null) return 'null';
  if (typeof value === 'number') return String(value);
  const text = Array.isArray(value) ? say.listOf(value.length) : typeof value === 'object' ? say.anObject : JSON.stringify(value);
  return text.length > MAX_SHOWN ? `${text.slice(0, MAX_SHOWN)}…` : text;
}

function wanted(issue: z.core.$ZodIssue): string {
  switch (issue.code) {
    case 'too_small':
      return issue.origin === 'array'
        ? say.atLeastEntries(issue.minimum)
        : issue.origin === 'string'
          ? say.someText
          : issue.inclusive
            ? say.orMore(issue.minimum)
            : say.moreThan(issue.minimum);
    case 'too_big':
      return issue.origin === 'array'
        ? say.atMostEntries(issue.maximum)
        : issue.origin === 'string'
          ? say.atMostSignsLong(issue.maximum)
          : say.orLess(issue.maximum);
    case 'invalid_type':
      return issue.expected === 'int' ? say.wholeNumber : say.an(/^[aeiou]/u.test(issue.expected), issue.expected);
    case 'invalid_value':
      return issue.values.map((value) => JSON.stringify(value)).join(say.or);
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
      message: say.isButMustBe(fileName, cutText(where), found(root, issue.path), wanted(issue)),
      where,
    },
  ];
}
