import { entryAt } from '../../base/at.ts';
import type { Recipe } from '../../recipe/types.ts';
import type { PressPlan } from '../../visit/press-plan.ts';

/** Stands for the test sheet, which no set-up lists. */
export const ANY_SHEET = 0;

/** A pull on a sheet, by the sheet's number and the pull's id. */
export type PulledLast = readonly [sheet: number, pull: string];

/** An order that is worked, and what stood on its beds when it began. */
export type WorkedPlan = Pick<PressPlan, 'cards' | 'times'> & { begins?: { lastOn?: readonly (PulledLast | null)[] | undefined } };

/** A film that was pulled, with its screen. */
interface PulledFilm {
  sheet: number;
  pull: string;
  /** When, in any unit. */
  at: number;
  screen: string;
}

/**
 * What was pulled last on each bed: by the order that was worked, on the bed of its set-up; before that order began,
 * on the bed that it found it on. What no order tells of was on the first bed. A frame that was used later on
 * another bed has left this one.
 * @param films those whose frame may still stand there
 * @returns for each bed the index of its film; null for a bed that is bare
 */
export function lastOnBeds(
  films: readonly PulledFilm[],
  { plan, recipes, beds }: { plan: WorkedPlan | undefined; recipes: readonly Recipe[]; beds: number },
): (number | null)[] {
  const bedOf = bedsByPull(plan, recipes);
  const last: (number | null)[] = Array.from({ length: beds }, () => null);
  const seen = new Set<string>();
  const latestFirst = [...films.keys()].sort((a, b) => entryAt(films, b).at - entryAt(films, a).at);
  for (const index of latestFirst) {
    const { sheet, pull, screen } = entryAt(films, index);
    const bed = Math.min(beds - 1, bedOf.get(`${sheet} ${pull}`) ?? bedOf.get(`${ANY_SHEET} ${pull}`) ?? 0);
    // What was pulled on the bed before was washed up for it.
    if (last[bed] === null) last[bed] = seen.has(screen) ? -1 : index;
    seen.add(screen);
  }
  return last.map((index) => (index === -1 ? null : index));
}

function bedsByPull(plan: WorkedPlan | undefined, recipes: readonly Recipe[]): Map<string, number> {
  const found = new Map<string, number>();
  for (const [bed, last] of (plan?.begins?.lastOn ?? []).entries()) if (last !== null) found.set(last.join(' '), bed);
  for (const [at, card] of (plan?.cards ?? []).entries()) {
    const bed = plan?.times[at]?.bed ?? 0;
    for (const { recipe, sheets, prints } of card.states)
      for (const p of prints) for (const sheet of [ANY_SHEET, ...sheets]) found.set(`${sheet} ${recipes[recipe]?.pulls[p]?.id ?? ''}`, bed);
  }
  return found;
}
