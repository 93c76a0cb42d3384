import { describe, expect, it } from 'vitest';
import { sheetsAsPulled } from '../../../../src/engine/log/as-pulled.ts';
import { pullsAnHour } from '../../../../src/engine/log/feedback/pull-rate.ts';
import type { LogEvent, VisitHead } from '../../../../src/engine/log/types.ts';
import { recipeOf } from '../../../../src/engine/recipe/write.ts';
import { smallProject } from '../../../helpers/small-project.ts';

const { drawer, bench } = smallProject();
const recipe = recipeOf(bench, drawer, { id: 'a', title: 'Ebb' });
const head: VisitHead = {
  id: 'v',
  title: 'v',
  begunMs: 0,
  recipes: [recipe],
  sheets: [1, 2, 3, 4, 5].map((number) => ({ number, recipe: 0 })),
};

/** Sheets 1 to 5 ticked in a set-up, so many seconds after each other. */
function setUp(at: number, fromMs: number, gaps: readonly number[]): LogEvent[] {
  let ms = fromMs;
  return [0, ...gaps].map((gap, i) => {
    ms += 1000 * gap;
    return { id: `${at} ${i}`, atMs: ms, device: 'd', sheet: i + 1, kind: 'pulled', pulls: [recipe.pulls[at]!.id] };
  });
}

const rate = (events: LogEvent[]) => pullsAnHour(sheetsAsPulled(head, events), events);

describe('pullsAnHour', () => {
  it('should be the middle over the set-ups, with its range', () => {
    // 90 s a sheet are 40 an hour, 60 s 60, 120 s 30.
    const events = [...setUp(0, 0, [90, 90, 90, 90]), ...setUp(1, 1e7, [60, 60, 60, 60]), ...setUp(2, 2e7, [120, 120, 120, 120])];
    expect(rate(events)).toEqual({ value: 40, least: 30, most: 60, setUps: 3 });
  });

  it('should leave out pauses and sheets that were ticked together', () => {
    expect(rate(setUp(0, 0, [90, 1, 1, 1]))).toBeNull();
    expect(rate(setUp(0, 0, [90, 3600, 90, 90]))).toMatchObject({ value: 40, setUps: 1 });
    expect(rate([])).toBeNull();
  });

  it('should not count from the last sheet of one set-up to the first of the next', () => {
    const events = [...setUp(0, 0, [90, 90, 90, 90]), ...setUp(1, 600_000, [90, 90, 90, 90])];
    expect(rate(events)).toEqual({ value: 40, least: 40, most: 40, setUps: 2 });
  });
});
