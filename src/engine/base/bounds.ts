import { say } from '../words/en/base/base.ts';

/** Depth of lists and objects within each other in a document; ours have some 25. */
const MOST_DEEP = 64;

/** Lists, objects and values in a document; 200 detailed screens have some two million. */
const MOST_PARTS = 4_000_000;

/**
 * Whether a parsed document is of a size that can be looked at field by field.
 * @param raw anything that JSON can hold
 * @returns the rest of a sentence when it is too deep or too large, else null
 */
export function sizeFault(raw: unknown): string | null {
  let level: object[] = typeof raw === 'object' && raw !== null ? [raw] : [];
  let parts = level.length;
  for (let depth = 1; level.length > 0; depth++) {
    if (depth > MOST_DEEP) return say.hasListsOrObjects(MOST_DEEP);
    const next: object[] = [];
    for (const one of level) {
      const values: unknown[] = Array.isArray(one) ? one : Object.values(one);
      parts += values.length;
      if (parts > MOST_PARTS) return say.hasMoreThanMillion(MOST_PARTS / 1e6);
      for (const value of values) if (typeof value === 'object' && value !== null) next.push(value);
    }
    level = next;
  }
  return null;
}

/** A sentence names the file and one thing in it: 200 signs that are not ours. */
const MOST_SIGNS = 100;

/** Text from a file for a sentence: at most 100 signs, the last of them an ellipsis where it was longer. */
export function cutText(text: string, most = MOST_SIGNS): string {
  return text.length > most ? `${text.slice(0, most - 1)}…` : text;
}

/** The name of a file for a sentence, also where none was given. */
export function cutName(fileName: string): string {
  return cutText(String(fileName ?? 'file'));
}
