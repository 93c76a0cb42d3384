import { describe, expect, it } from 'vitest';
import type { AppStore } from '../../../../src/components/app-store.ts';
import { sheetNext } from '../../../../src/components/press/next/sheet-next.ts';
import type { LogKeeper } from '../../../../src/components/ui/log/log-keeper.ts';
import { recipesAsPulled, sheetsAsPulled } from '../../../../src/engine/log/as-pulled.ts';
import type { LogEvent, VisitHead } from '../../../../src/engine/log/types.ts';
import { recipeOf } from '../../../../src/engine/recipe/write.ts';
import { pullOf, smallProject } from '../../../helpers/small-project.ts';

const project = smallProject();
const recipe = recipeOf(project.bench, project.drawer, { id: 'one', title: 'One' });
const head: VisitHead = {
  id: 'v',
  title: 'Visit',
  begunMs: 0,
  recipes: [recipe, recipeOf([pullOf('q1', 's2', 'tar')], project.drawer, { id: 'two', title: 'Two' })],
  sheets: [1, 2, 3].map((number) => ({ number, recipe: 0 })),
};
const event = (id: string, rest: object): LogEvent => ({ id, atMs: 1000 * (1 + Number(id.slice(1))), device: 'd', ...rest }) as LogEvent;

function next(events: readonly LogEvent[], number: number) {
  const log = { head, events, pairs: () => null, sheets: sheetsAsPulled(head, events), recipes: recipesAsPulled(head, events) };
  return sheetNext({ project, relative: true } as AppStore, log as unknown as LogKeeper, number);
}

describe('sheetNext', () => {
  const pulled = [event('e1', { kind: 'otherwise', sheet: 1, pulls: ['p1'], how: { dxMm: 3, dyMm: 0 }, note: '' })];

  it('should begin with what is down as it was really pulled, and offer what the visit has', () => {
    const sheet = next(pulled, 1)!;
    expect(sheet.pulls.map(({ dxMm }) => dxMm)).toEqual([3]);
    expect(sheet.refused).toBeUndefined();
    expect(sheet.workshop.screens).toEqual(['s1', 's2', 's3']);
    // Tar is the other recipe's.
    expect(sheet.workshop.inks.sort()).toEqual(['foam', 'rust', 'tar', 'weed']);
    expect(sheet.options!.map(({ label }) => label)).toEqual(['Then the 2 pulls that were planned']);
    expect(next([], 3)!.options!.map(({ label }) => label)).toEqual([
      'Then the 3 pulls that were planned',
      'Sheets 1, 2 too, with the same on them',
    ]);
    expect(next([], 9)).toBeNull();
  });

  it('should refuse a spoiled sheet, and one of which the log contradicts itself, in a sentence each', () => {
    expect(next([...pulled, event('e2', { kind: 'spoiled', sheet: 1, note: '' })], 1)!.refused).toBe(
      'Sheet 1 is spoiled; choose another sheet to go on with.',
    );
    const twice = [...pulled, event('e2', { kind: 'pulled', sheet: 1, pulls: ['p1'] })];
    expect(next(twice, 1)!.refused).toBe(
      'What is on it is not certain. Sheet 1: pull 1 of One is logged twice; look at the sheet and undo one, or log it as an extra pull.',
    );
    expect(next(twice, 2)!.refused).toBeUndefined();
  });
});
