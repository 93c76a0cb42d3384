import { printInks } from '../../ink/mix/mix.ts';
import type { Recipe } from '../../recipe/types.ts';
import { studioOfRecipe } from '../../recipe/write.ts';
import type { Pull } from '../../stack/types.ts';
import type { Studio } from '../../studio/studio.ts';
import { inkId, stocksOfInk, withInk } from './borrowed-ink.ts';
import { withScreen } from './borrowed-screen.ts';

/** A studio that sheets may go on in, and what of it is there to begin with. */
export interface Workshop {
  studio: Studio;
  screens: string[];
  inks: string[];
}

/**
 * All that a sheet can go on with: its own recipe's screens and inks, those of the other recipes of the visit, and
 * the screens and inks of the drawer that are said to be there.
 * @param others further recipes of the visit
 * @param drawer screens that are made or to make, and inks
 */
export function workshopOf(
  recipe: Recipe,
  others: readonly Recipe[],
  drawer: Pick<Studio, 'shapes' | 'screens' | 'inks'> = { shapes: [], screens: [], inks: [] },
): Workshop {
  const own = studioOfRecipe(recipe);
  const printed = (of: Recipe): Recipe['inks'] => of.inks.filter(({ id }) => of.pulls.some((pull) => pull.ink === id));
  const lenders = [
    ...others.map((of) => ({ holder: of, inks: printed(of), ready: true })),
    { holder: drawer, inks: printInks(drawer.inks), ready: false },
  ];
  let [shapes, screens, inks] = [[...own.shapes], [...own.screens], [...own.inks]];
  const there = new Set(printed(recipe).map(({ id }) => id));
  for (const { holder, inks: lent, ready } of lenders) {
    for (const screen of holder.screens) {
      const held = withScreen({ shapes, screens }, screen, holder);
      shapes = [...held.shapes];
      screens = [...held.screens];
    }
    for (const ink of lent) {
      inks = withInk(inks, ink, stocksOfInk(ink, [holder]));
      if (ready) there.add(inkId(ink, inks).id);
    }
  }
  return { studio: { ...own, shapes, screens, inks }, screens: screens.map(({ id }) => id), inks: [...there] };
}

/**
 * Pulls of another studio in the words of one, which gets what it lacks of them.
 * @returns the studio with that, and the pulls under its ids; pulls that name nothing are left out
 */
export function pullsIn(
  studio: Studio,
  pulls: readonly Pull[],
  from: Pick<Studio, 'shapes' | 'screens' | 'inks'>,
): { studio: Studio; pulls: Pull[] } {
  let { shapes, screens, inks } = studio;
  const found = pulls.flatMap((pull): Pull[] => {
    const screen = from.screens.find(({ id }) => id === pull.screen);
    const ink = from.inks.find(({ id }) => id === pull.ink);
    if (screen === undefined || ink === undefined) return [];
    const held = withScreen({ shapes, screens }, screen, from);
    ({ shapes, screens } = held);
    inks = withInk(inks, ink, stocksOfInk(ink, [from]));
    return [{ ...pull, screen: held.id, ink: inkId(ink, inks).id }];
  });
  return { studio: { ...studio, shapes, screens, inks }, pulls: found };
}
