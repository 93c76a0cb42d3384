import { EngineError } from '../../base/error.ts';
import { type Limits, within } from '../../base/limits.ts';
import { fieldName } from '../../recipe/explain.ts';
import { say } from '../../words/en/project/commands.ts';

/** A field that cannot be kept: where it is, and what it must be, as it stands in a sentence. */
interface Fault {
  path: (string | number)[];
  must: string;
}

/** What is wrong with a value; null when it can be kept. */
export type FieldCheck = (value: unknown) => Fault | null;

function unless(fits: boolean, must: string): Fault | null {
  return fits ? null : { path: [], must };
}

/** Text of so many signs. */
export function text({ least, most }: Limits): FieldCheck {
  return (value) => unless(typeof value === 'string' && within({ least, most }, value.length), say.textOfToSigns(least, most));
}

/** A number within limits. */
export function number(limits: Limits): FieldCheck {
  return (value) => unless(typeof value === 'number' && within(limits, value), say.numberFromTo(limits.least, limits.most));
}

/** A whole number within limits. */
export function whole(limits: Limits): FieldCheck {
  return (value) => unless(Number.isInteger(value) && within(limits, value as number), say.wholeNumberFromTo(limits.least, limits.most));
}

/** One of a few values. */
export function oneOf(values: readonly unknown[]): FieldCheck {
  return (value) => unless(values.includes(value), values.join(say.or));
}

/** What may be left out. */
export function optional(check: FieldCheck): FieldCheck {
  return (value) => (value === undefined ? null : check(value));
}

/** A list of at most so many. */
export function list(check: FieldCheck, most: number): FieldCheck {
  return (value) => {
    if (!Array.isArray(value) || value.length > most) return { path: [], must: say.listOfAtMost(most) };
    return firstFault(value.entries(), () => check);
  };
}

/** A thing with these fields. */
export function fields(checks: Readonly<Record<string, FieldCheck>>): FieldCheck {
  return (value) => {
    if (typeof value !== 'object' || value === null) return { path: [], must: say.anObject };
    const entries = Object.keys(checks).map((field) => [field, (value as Record<string, unknown>)[field]] as const);
    return firstFault(entries, (field) => checks[field]);
  };
}

function firstFault<Key extends string | number>(
  entries: Iterable<readonly [Key, unknown]>,
  checkOf: (key: Key) => FieldCheck | undefined,
): Fault | null {
  for (const [key, value] of entries) {
    const fault = checkOf(key)?.(value) ?? null;
    if (fault !== null) return { ...fault, path: [key, ...fault.path] };
  }
  return null;
}

/**
 * Checks what is to be kept by hand and not by its schema: the schemas' library is large, and only what reads files
 * loads it. A test holds the two together.
 * @param what it is, for the code, and whose its fields are, for the sentence: "The pull's"
 * @throws EngineError 'command.<what>' for a field that cannot be kept
 */
export function requireFields({ what, whose }: { what: string; whose: string }, value: unknown, check: FieldCheck): void {
  const fault = check(value);
  if (fault === null) return;
  throw new EngineError(`command.${what}`, say.cannotBeSoIt(whose, fieldName(fault.path), fault.must), {
    path: fault.path,
  });
}
