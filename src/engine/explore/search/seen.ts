import type { SeenPrint } from './explorer.ts';

/** Prints that hung under one seed. */
export interface SeenRun {
  seed: string;
  prints: SeenPrint[];
}

/** Seeds that are remembered; of more, the first go. */
export const MOST_SEEN_RUNS = 20;
/** Prints a seed, the first of its wall: they are the most different, so they stand for the rest. */
export const MOST_SEEN_PRINTS = 200;

/**
 * What a run keeps away from: all that hung before its seed was first used. What came later is left
 * out, so that a seed gives its wall again as long as those before it are remembered.
 */
export function seenBefore(seen: readonly SeenRun[], seed: string): SeenPrint[] {
  const own = seen.findIndex((run) => run.seed === seed);
  return (own < 0 ? seen : seen.slice(0, own)).flatMap((run) => run.prints);
}

/**
 * Remembers what hung under a seed. Only the last seed's prints still grow: those of earlier ones
 * have walls that came after them.
 * @returns the same list when nothing is to be added
 */
export function rememberSeen(seen: readonly SeenRun[], seed: string, prints: readonly SeenPrint[]): readonly SeenRun[] {
  const own = seen.findIndex((run) => run.seed === seed);
  if (own >= 0 && own < seen.length - 1) return seen;
  const old = seen[own]?.prints ?? [];
  const known = new Set(old.map(({ key }) => key));
  const fresh = prints.filter(({ key }) => !known.has(key)).slice(0, MOST_SEEN_PRINTS - old.length);
  if (fresh.length === 0) return seen;
  return [...(own < 0 ? seen : seen.slice(0, own)), { seed, prints: [...old, ...fresh] }].slice(-MOST_SEEN_RUNS);
}
