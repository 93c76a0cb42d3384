import type { KinRequest } from '../../engine/explore/index.ts';
import type { KinKind, Variant } from '../../engine/explore/types.ts';
import type { Parent } from './wall-origins.ts';

/** Prints of a wall that are found from others. */
const PRINTS = 60;
/** Steps between two prints unless the user says otherwise. */
export const STEPS = 10;

/** A wall that is found from prints of another, and what it is called. */
export interface KinAsk {
  request: KinRequest;
  parents: readonly Parent[];
  /** What hangs, in a sentence. */
  sentence: string;
}

/** `print-kin`: a wall is wanted that comes from these prints. */
export type KinEvent = CustomEvent<KinAsk>;

/**
 * Words and numbers of a wall that is found from prints.
 * @param prints one, or two for 'between' and 'cross'
 */
export function kinAsk(kind: KinKind, prints: readonly Variant[], steps = STEPS): KinAsk {
  const names = prints.map(({ index, seed }) => `print ${index + 1} of “${seed}”`);
  const sentences: Record<KinKind, string> = {
    nearer: `Prints near ${names[0]}, the nearest first.`,
    away: `Prints unlike ${names[0]}.`,
    between: `The way from ${names[0]} to ${names[1]}, ${steps} ${steps === 1 ? 'step' : 'steps'} between.`,
    cross: `${names[0]} crossed with ${names[1]}.`,
  };
  const sentence = sentences[kind];
  return {
    request: { kind, parents: prints.map(({ id, pulls }) => ({ id, pulls })), count: kind === 'between' ? steps : PRINTS },
    parents: prints.map(({ pulls }, i) => ({ name: names[i]!, pulls })),
    sentence: sentence.charAt(0).toUpperCase() + sentence.slice(1),
  };
}
