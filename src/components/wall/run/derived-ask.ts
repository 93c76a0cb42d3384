import type { DerivedRequest } from '../../../engine/explore/search/derived-explorer.ts';
import type { DerivedKind, Variant } from '../../../engine/explore/types.ts';
import { pairName, printName } from '../../../engine/recipe/lineage.ts';
import { lineageOf, type Parent } from './wall-origins.ts';

/** Prints of a wall that are found from others. */
const PRINTS = 60;
/** Steps between two prints unless the user says otherwise. */
const STEPS = 10;
export const MOST_STEPS = 60;

/** A wall that is found from prints of another, and what it is called. */
export interface DerivedAsk {
  request: DerivedRequest;
  parents: readonly Parent[];
  /** What hangs, in a sentence. */
  sentence: string;
}

/** `print-derived`: a wall is wanted that comes from these prints. */
export type DerivedEvent = CustomEvent<DerivedAsk>;

/**
 * Words and numbers of a wall that is found from prints.
 * @param prints one, or two for 'between' and 'cross'
 */
export function derivedAsk(kind: DerivedKind, prints: readonly Variant[]): DerivedAsk {
  const parents = prints.map((print) => {
    const lineage = lineageOf(print);
    return { name: printName(lineage), pulls: print.pulls, lineage };
  });
  const names = parents.map(({ name }) => name);
  const pair = (word: string): string =>
    pairName(
      parents.map(({ lineage }) => lineage),
      word,
    );
  const sentences: Record<DerivedKind, () => string> = {
    nearer: () => `Prints near ${names[0]}, the nearest first.`,
    away: () => `Prints unlike ${names[0]}.`,
    between: () => `The way from ${pair('to')}.`,
    cross: () => `${pair('crossed with')}.`,
  };
  const sentence = sentences[kind]();
  return {
    request: { kind, parents: prints.map(({ id, pulls }) => ({ id, pulls })), count: kind === 'between' ? STEPS : PRINTS },
    parents,
    sentence: sentence.charAt(0).toUpperCase() + sentence.slice(1),
  };
}

/** The same wall with another number of steps between its two prints. */
export function withSteps(ask: DerivedAsk, steps: number): DerivedAsk {
  return { ...ask, request: { ...ask.request, count: Math.max(1, Math.min(MOST_STEPS, Math.round(steps))) } };
}
