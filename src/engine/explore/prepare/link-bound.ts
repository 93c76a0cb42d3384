import { entryAt } from '../../base/at.ts';
import { Relaxation } from './relaxation.ts';
import type { Group } from './screen-sets.ts';

/** A round that lowers the bound by less than this share is the last. */
const LEAST_GAIN = 0.01;

/** The groups with screens numbered anew from 0, and how many these are. */
function numberedAnew(groups: readonly Group[]): { groups: Group[]; screens: number } {
  const numbers = new Map<number, number>();
  const numbered = groups.map(({ lacks, weight }) => ({
    weight,
    lacks: lacks.map((screen) => {
      const number = numbers.get(screen) ?? numbers.size;
      numbers.set(screen, number);
      return number;
    }),
  }));
  return { groups: numbered, screens: numbers.size };
}

/** What `most` screens print at most of prints that all have a further screen, by the linear relaxation. */
function besideOne(groups: readonly Group[], most: number): number {
  const { groups: numbered, screens } = numberedAnew(groups);
  const costs = Array.from({ length: screens }, () => 1);
  return new Relaxation(numbered, { costs, most }).solve(new Map(), most).bound;
}

/**
 * A bound on what `most` of the screens print: each print that can be printed shares its weight out among its
 * screens, and a screen that is made is given at most what the relaxation allows its prints with one screen
 * fewer; so the best choice prints at most what the `most` screens that are given most have together. Any shares
 * hold; those of screens that are given much are lowered round by round.
 * Nearer than the relaxation by itself where many prints share screens but few share several.
 * @param most 1 or more
 */
export function linkBound(groups: readonly Group[], screens: number, most: number, rounds: number): number {
  let wants = Array.from({ length: screens }, () => 1);
  let bound = Infinity;
  for (let round = 0; round < rounds; round++) {
    const shares: Group[][] = wants.map(() => []);
    for (const { lacks, weight } of groups) {
      const all = lacks.reduce((sum, screen) => sum + entryAt(wants, screen), 0);
      for (const screen of lacks) {
        const share = (weight * entryAt(wants, screen)) / all;
        entryAt(shares, screen).push({ weight: share, lacks: lacks.filter((other) => other !== screen) });
      }
    }
    const given = shares.map((of) => besideOne(of, most - 1));
    const highest = given.toSorted((a, b) => b - a).slice(0, most);
    const sum = highest.reduce((so, each) => so + each, 0);
    const gained = sum < bound * (1 - LEAST_GAIN);
    bound = Math.min(bound, sum);
    if (!gained) break;
    const middle = highest.at(-1) ?? 0;
    wants = wants.map((want, screen) => want * Math.min(4, Math.max(0.25, Math.sqrt(middle / Math.max(1e-9, entryAt(given, screen))))));
  }
  return bound;
}
