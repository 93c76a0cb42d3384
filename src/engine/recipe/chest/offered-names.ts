import { entryAt, f64 } from '../../base/at.ts';
import { buildCellMap } from '../../stack/cell-map.ts';
import { pullsOfCell } from '../../stack/overlap-areas.ts';
import { SpanCache } from '../../stack/screen-spans.ts';
import type { Stack } from '../../stack/types.ts';
import type { Studio } from '../../studio/studio.ts';
import { say } from '../../words/en/recipe/chest.ts';
import { lowered } from '../../words/language.ts';

/** Rows in which the sheet is looked at: enough to tell what is seen the most. */
const ROWS = 200;

/**
 * Names for a print from what is seen of it: the inks that lie on top over most of the sheet, and the screen that
 * lies on top over most of it.
 * @param spans of this studio, used again; made anew when left out
 * @returns up to three, each different, the plainest first; none for a stack that prints nothing on the sheet
 * @throws what `SpanCache` throws
 */
export function offeredNames(stack: Stack, studio: Studio, spans: SpanCache = new SpanCache(studio)): string[] {
  const { widthMm, heightMm } = studio.paper;
  const grid = { widthMm, heightMm, rows: ROWS };
  const map = buildCellMap(spans.place(stack, grid), grid);
  const inks = new Map<string, number>();
  const screens = new Map<string, number>();
  for (let cell = 1; cell < map.cells; cell++) {
    const top = pullsOfCell(map, cell).at(-1);
    if (top === undefined) continue;
    const { ink, screen } = entryAt(stack.pulls, top);
    inks.set(ink, (inks.get(ink) ?? 0) + f64(map.areaMm2, cell));
    screens.set(screen, (screens.get(screen) ?? 0) + f64(map.areaMm2, cell));
  }
  const [first, second, third] = most(inks, studio.inks);
  const [screen] = most(screens, studio.screens);
  if (first === undefined || screen === undefined) return [];
  const names = [
    second === undefined ? first : say.and(first, lowered(second)),
    say.in(screen, lowered(first)),
    third === undefined ? say.pulls(first, stack.pulls.length) : [first, lowered(second ?? ''), lowered(third)].join(', '),
  ];
  return [...new Set(names)];
}

function most(areas: ReadonlyMap<string, number>, named: readonly { id: string; name: string }[]): string[] {
  return [...areas]
    .sort((one, other) => other[1] - one[1])
    .flatMap(([id]) => {
      const name = named.find((entry) => entry.id === id)?.name.trim() ?? '';
      return name === '' ? [] : [name];
    });
}
