import { describe, expect, it } from 'vitest';
import { recipesAsPulled, sheetsAsPulled } from '../../../src/engine/log/as-pulled.ts';
import type { LogEvent, VisitHead } from '../../../src/engine/log/types.ts';
import { wetSheets } from '../../../src/engine/log/wet.ts';
import { recipeOf } from '../../../src/engine/recipe/write.ts';
import { smallProject } from '../../helpers/small-project.ts';

const { drawer, bench } = smallProject();
const recipe = recipeOf(bench, drawer, { id: 'a', title: 'First' });
const inks = recipe.inks.map((ink) => ({ ...ink, dryMinutes: 20, stackMinutes: 45 }));
const slow = { ...inks[0]!, id: 'slow', name: 'Slow', dryMinutes: 90, stackMinutes: undefined };
const head: VisitHead = {
  id: 'v',
  title: 'Visit',
  begunMs: 0,
  recipes: [{ ...recipe, inks }],
  sheets: [1, 2, 3].map((number) => ({ number, recipe: 0 })),
};
const minute = 60_000;
const [one, two] = recipe.pulls.map((pull) => pull.id);
const event = (sheet: number, atMs: number, pull: string): LogEvent => ({
  id: `${sheet} ${pull}`,
  atMs,
  device: 'd',
  sheet,
  kind: 'pulled',
  pulls: [pull],
});

function wetAt(nowMs: number, events: LogEvent[]) {
  return wetSheets(
    sheetsAsPulled(head, events, () => null),
    recipesAsPulled(head, events),
    nowMs,
  );
}

describe('wetSheets', () => {
  it('should count from when each film was logged, and leave out what can be stacked', () => {
    const events = [event(1, 0, one!), event(2, 0, one!), event(2, 10 * minute, two!)];
    expect(wetAt(12 * minute, events)).toMatchObject([
      { number: 1, dryMs: 20 * minute, stackMs: 45 * minute },
      { number: 2, dryMs: 30 * minute, stackMs: 55 * minute },
    ]);
    expect(wetAt(50 * minute, events).map(({ number }) => number)).toEqual([2]);
    expect(wetAt(55 * minute, events)).toEqual([]);
  });

  it('should dry as the ink that was really in the screen does', () => {
    const otherwise: LogEvent = {
      id: 'o',
      atMs: 0,
      device: 'd',
      sheet: 3,
      kind: 'otherwise',
      pulls: [one!],
      how: { ink: slow, dxMm: 0, dyMm: 0 },
      note: '',
    };
    // Without a figure of its own an ink can be stacked on after twice the time until it can be printed on: common practice, no source.
    expect(wetAt(0, [otherwise, event(3, minute, two!)])).toEqual([{ number: 3, ink: 'Slow', dryMs: 90 * minute, stackMs: 180 * minute }]);
  });

  it('should forget what was undone', () => {
    expect(wetAt(0, [event(1, 0, one!), { id: 'u', atMs: 1, device: 'd', sheet: 1, kind: 'undone', event: `1 ${one}` }])).toEqual([]);
  });
});
