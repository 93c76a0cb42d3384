import { describe, expect, it } from 'vitest';
import { takerRows, wetUntil } from '../../../../src/components/press/next/taker-rows.ts';
import { takerSteps } from '../../../../src/engine/explore/onward/takers.ts';
import { recipesAsPulled, sheetsAsPulled } from '../../../../src/engine/log/as-pulled.ts';
import type { LogEvent, VisitHead } from '../../../../src/engine/log/types.ts';
import { recipeOf } from '../../../../src/engine/recipe/write.ts';
import type { SetUpCard } from '../../../../src/engine/visit/set-up-cards.ts';
import { smallProject } from '../../../helpers/small-project.ts';

const { bench, drawer } = smallProject();
const NOW_MS = 60_000;
const head: VisitHead = {
  id: 'v',
  title: 'Visit',
  begunMs: 0,
  recipes: [recipeOf(bench, drawer, { id: 'one', title: 'One' })],
  sheets: [1, 2, 3].map((number) => ({ number, recipe: 0 })),
};
const events: LogEvent[] = [{ id: 'e', atMs: 1000, device: 'd', kind: 'pulled', sheet: 1, pulls: ['p1'] }];
const log = { sheets: sheetsAsPulled(head, events), recipes: recipesAsPulled(head, events) };

/** Until when the sheets are wet for the second screen, moved to the right by so much; it stands on sheet 3's set-up. */
function wet(dxMm: number): { numbers: number[]; under: number; beside: number }[] {
  const states = [{ recipe: 0, prints: [1], sheets: [3] }];
  const card = { sheets: [3], states, dxMm, dyMm: 0, turnDeg: 0, strokes: 1 } as unknown as SetUpCard;
  const rows = takerRows(card, log, NOW_MS);
  const steps = takerSteps(
    rows.map(({ taker }) => taker),
    { heightPx: 40, relative: true },
  );
  let step = steps.next();
  while (!step.done) step = steps.next();
  return rows.map((row, i) => ({ numbers: row.numbers, ...wetUntil(row, step.value[i]!, log, NOW_MS) }));
}

describe('wetUntil', () => {
  it('should hold a sheet as too wet for a pull only where the pull lies on the wet film', () => {
    // The first screen prints 100 to 300 mm across, the second 180 to 280.
    const dryMs = 1000 + drawer.inks.find(({ id }) => id === 'rust')!.dryMinutes * 60_000;
    const bare = { numbers: [2], under: 0, beside: 0 };
    expect(wet(0)).toEqual([{ numbers: [1], under: dryMs, beside: dryMs }, bare]);
    expect(wet(119)).toEqual([{ numbers: [1], under: dryMs, beside: dryMs }, bare]);
    expect(wet(121)).toEqual([{ numbers: [1], under: 0, beside: dryMs }, bare]);
  });
});
