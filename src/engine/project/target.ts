import type { Target } from './types.ts';

/** Ids of all inks that a target names, as often as it does. */
export function namedInks({ inks, squares }: Target): string[] {
  return [...inks, ...squares.flatMap(({ first, over }) => (over === null ? [first] : [first, over]))];
}
