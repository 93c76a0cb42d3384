import type { Pull } from '../types.ts';

/**
 * The pulls from one to another, both with them, whichever of the two lies lower.
 * @returns ids, first down first; none when either is not in the stack
 */
export function pullsBetween(pulls: readonly Pull[], one: string, other: string): string[] {
  const ends = [one, other].map((id) => pulls.findIndex((pull) => pull.id === id));
  if (ends.includes(-1)) return [];
  return pulls.slice(Math.min(...ends), Math.max(...ends) + 1).map(({ id }) => id);
}

/** The ids of all pulls in one ink, or of one screen, first down first. */
export function pullsOf(pulls: readonly Pull[], what: 'ink' | 'screen', id: string): string[] {
  return pulls.filter((pull) => pull[what] === id).map((pull) => pull.id);
}
