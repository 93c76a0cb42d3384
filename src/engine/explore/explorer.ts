import { EngineError } from '../base/error.ts';
import { checkExplore } from './check.ts';
import { Finder } from './finder.ts';
import type { ExploreInput, Variant } from './types.ts';

/** Draws for one variant before the space counts as exhausted. */
export const MAX_ATTEMPTS = 200;

/** A search that goes on in steps, so that whoever runs it can stop it between two. */
export interface Explorer {
  /**
   * Goes on.
   * @param draws how many draws to try, 1 or more; most give a variant
   * @returns the variants found, in their order on the wall
   */
  step(draws: number): Variant[];
  /** Variants found so far and asked for. */
  readonly found: number;
  readonly asked: number;
  /** True when all were found or no more can be. */
  readonly done: boolean;
  /** Why fewer were found than asked, in a sentence; '' while going on or when all were found. */
  readonly reason: string;
}

/**
 * Finds stacks that print different pictures, from a seed.
 * Variant i is the first draw of `seed:i:attempt` whose picture no variant before it has, so a wall
 * is the same however the work is cut up. When only the order may change and there are few order
 * classes, all are listed, so that none is missed.
 * @param input drawer, base stack and what may change; a project is one
 * @param alreadySeen picture keys that shall not come again; changes which variants are found
 * @throws EngineError with the code and sentence of the first problem of checkExplore
 */
export function createExplorer(input: ExploreInput, alreadySeen: Iterable<string> = []): Explorer {
  const [problem] = checkExplore(input.explore, input.drawer, input.bench);
  if (problem !== undefined) {
    throw new EngineError(problem.code, problem.message, { path: [problem.where] });
  }
  const asked = input.explore.count;
  const finder = new Finder(input);
  const list = finder.list(4 * asked + 1000);
  const seen = new Set(alreadySeen);
  const before = seen.size;
  let found = 0;
  let attempt = 0;
  let listed = 0;
  let reason = '';

  const next = (): Variant | null => {
    if (list !== null) return list[listed++](found);
    return finder.draw(found, attempt++);
  };
  const exhausted = (): boolean => (list === null ? attempt >= MAX_ATTEMPTS : listed >= list.length);

  return {
    step(draws) {
      const fresh: Variant[] = [];
      for (let left = draws; left > 0 && found < asked && reason === ''; left--) {
        if (exhausted()) {
          reason = exhaustedReason(found, asked, before > 0, list !== null);
          break;
        }
        const variant = next();
        if (variant === null || seen.has(variant.key)) continue;
        seen.add(variant.key);
        fresh.push(variant);
        found++;
        attempt = 0;
      }
      return fresh;
    },
    get found() {
      return found;
    },
    get asked() {
      return asked;
    },
    get done() {
      return found >= asked || reason !== '';
    },
    get reason() {
      return reason;
    },
  };
}

function exhaustedReason(found: number, asked: number, someSeen: boolean, all: boolean): string {
  const pictures = found === 1 ? 'picture' : 'pictures';
  const what = someSeen ? `new ${pictures}` : `different ${pictures}`;
  const mend = 'let more change, loosen a hold, or lower the ΔE under which pictures count as the same';
  return all
    ? `The orders of these pulls hold only ${found} ${what}, and ${asked} were asked for; ${mend}.`
    : `Only ${found} ${what} of ${asked} came out of what may change; ${mend}.`;
}

/**
 * Variants of a project, for scripts in Node without workers.
 * @param project anything with a drawer, a bench and explore settings
 * @param options the seed and how many; both take the place of the project's own
 * @returns variants one by one; fewer when no more can be found
 * @throws EngineError as createExplorer, at the first variant
 */
export function* explore(
  project: ExploreInput,
  options: { seed: string; count: number },
): Generator<Variant> {
  const { drawer, bench } = project;
  const explorer = createExplorer({ drawer, bench, explore: { ...project.explore, ...options } });
  while (!explorer.done) yield* explorer.step(1);
}
