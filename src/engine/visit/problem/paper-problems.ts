import { entryAt, num } from '../../base/at.ts';
import type { Problem } from '../../base/error.ts';
import { rangesText } from '../../base/words.ts';
import type { SetUp } from '../../pullorder/types.ts';
import { say } from '../../words/en/visit/problem.ts';
import { pullAreas } from '../ink-needs.ts';
import type { VisitProblem } from '../visit-problem.ts';

/**
 * What is wrong between an order and its paper, a sentence each.
 * @param before set-ups that are done, behind which these are numbered
 * @returns 'visit.paper-sizes' where sheets of several sizes are pulled at one offset: the same lays hold
 *   each at another place; 'visit.off-sheet' for each pull that meets nothing of its sheet
 */
export function paperProblems(setUps: readonly SetUp[], visit: VisitProblem, before = 0): Problem[] {
  return [...sizeProblems(setUps, visit, before), ...offSheet(visit)];
}

function sizeProblems(setUps: readonly SetUp[], { sheets, recipes }: VisitProblem, before: number): Problem[] {
  const sizes = new Set<string>();
  const mixed = setUps.flatMap(({ pulls }, i) => {
    const own = new Set(
      pulls.map(([s]) => {
        const { widthMm, heightMm } = entryAt(recipes, entryAt(sheets, s).recipe).paper;
        return `${widthMm} × ${heightMm} mm`;
      }),
    );
    if (own.size < 2) return [];
    for (const size of own) sizes.add(size);
    return [before + i + 1];
  });
  if (mixed.length === 0) return [];
  return [
    {
      code: 'visit.paper-sizes',
      message: say.setUpsPrintSheets(mixed.length, rangesText(mixed), [...sizes].join(', ')),
      where: `set-up ${num(mixed, 0)}`,
    },
  ];
}

/** Less than this is no print, mm². */
const NOTHING_MM2 = 1;

function offSheet({ recipes }: VisitProblem): Problem[] {
  return recipes.flatMap((recipe) =>
    pullAreas(recipe).flatMap((areaMm2, p): Problem[] => {
      if (areaMm2 >= NOTHING_MM2) return [];
      const { screen: id } = entryAt(recipe.pulls, p);
      const screen = recipe.screens.find((each) => each.id === id);
      return [
        {
          code: 'visit.off-sheet',
          message: say.screenLiesOffSheet(screen?.number ?? '?', screen?.name ?? '', recipe.title),
          where: recipe.title,
        },
      ];
    }),
  );
}
