import { say } from '../words/en/base/base.ts';
import { EngineError } from './error.ts';

type Work = (...args: never[]) => unknown;

/** Words as a list: 'a, b and c'. */
function listed(words: readonly string[]): string {
  return words.length < 2 ? words.join() : say.and(words.slice(0, -1).join(', '), words.at(-1) ?? '');
}

/** What is wrong with a call, for who wrote it without a compiler. */
function refusal(name: string, takes: readonly string[], args: readonly unknown[], cause: unknown): EngineError {
  const missing = takes.filter((_, i) => args[i] === undefined);
  const details = { name, missing, cause: cause === undefined ? null : String(cause) };
  const said =
    missing.length > 0 ? say.needsAreMissing(listed(takes), listed(missing), missing.length) : say.cannotUseWhatIt(listed(takes));
  return new EngineError('door.arguments', say.enginesDOORMdSays(name, said), { details });
}

/**
 * A function of the door that says so in one sentence when it is called with too little, or with what it
 * cannot use, and that gives no NaN; what it says itself is more exact and goes first.
 * @param name as scripts call it
 * @param takes names of the arguments that must be there
 * @returns the function; it throws EngineError 'door.arguments' besides what it throws by itself
 */
export function asked<F extends Work>(name: string, work: F, ...takes: string[]): F {
  const call = (...args: unknown[]): unknown => {
    const missing = takes.some((_, i) => args[i] === undefined);
    let found: unknown;
    try {
      found = (work as unknown as (...args: unknown[]) => unknown)(...args);
    } catch (error) {
      throw error instanceof EngineError ? error : refusal(name, takes, args, error);
    }
    if (isGenerator(found)) return stepped(found, (error) => refusal(name, takes, args, error), missing);
    if (missing || isNoNumber(found)) throw refusal(name, takes, args, undefined);
    return found;
  };
  return call as unknown as F;
}

/** What comes of arithmetic with something that is no number. */
function isNoNumber(found: unknown): boolean {
  return found instanceof Float64Array ? found.some(Number.isNaN) : Number.isNaN(found);
}

function isGenerator(found: unknown): found is Generator {
  return typeof (found as Generator | null)?.next === 'function' && typeof (found as Generator).return === 'function';
}

/** Steps say what is wrong at the first of them, and may not begin without what they need. */
function* stepped(steps: Generator, refuse: (cause: unknown) => EngineError, missing: boolean): Generator {
  try {
    const first = steps.next();
    if (missing) throw refuse(undefined);
    if (first.done === true) return first.value;
    let sent = yield first.value;
    for (;;) {
      const step = steps.next(sent);
      if (step.done === true) return step.value;
      sent = yield step.value;
    }
  } catch (error) {
    throw error instanceof EngineError ? error : refuse(error);
  } finally {
    steps.return(undefined);
  }
}
