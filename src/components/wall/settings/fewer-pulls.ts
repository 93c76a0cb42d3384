import type { ExploreSettings } from '../../../engine/explore/types.ts';

/** From more pulls in every print than this on, fewer are offered. */
const MANY_PULLS = 16;

/** An offer of prints with fewer pulls. */
interface FewerPulls {
  /** How many pulls each print has now, at least. */
  least: number;
  /** How many each print would have. */
  from: number;
  to: number;
  change: Pick<ExploreSettings, 'leaveOut' | 'maxPulls'>;
}

/**
 * Prints of half of the stack to three quarters of it, where now every print has many pulls: who builds
 * prints of 73 pulls has no use for prints of ten.
 * @param pulls how many pulls lie on the Bench
 * @returns null where few pulls are possible already, or how many is settled
 */
export function fewerPulls(pulls: number, { leaveOut, maxPulls }: Pick<ExploreSettings, 'leaveOut' | 'maxPulls'>): FewerPulls | null {
  const least = pulls - leaveOut;
  if (maxPulls !== undefined || least <= MANY_PULLS) return null;
  const from = Math.round(pulls / 2);
  const to = Math.round((pulls * 3) / 4);
  return from < least ? { least, from, to, change: { maxPulls: to, leaveOut: pulls - from } } : null;
}
