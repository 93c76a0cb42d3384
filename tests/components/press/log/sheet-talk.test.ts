import { describe, expect, it } from 'vitest';
import { sheetsTalk, sheetToShow } from '../../../../src/components/press/log/sheet-talk.ts';
import { sheetsAsPulled } from '../../../../src/engine/log/as-pulled.ts';
import type { LogEvent, VisitHead } from '../../../../src/engine/log/types.ts';
import { recipeOf } from '../../../../src/engine/recipe/write.ts';
import type { SetUpCard } from '../../../../src/engine/visit/set-up-cards.ts';
import { smallProject } from '../../../helpers/small-project.ts';

const project = smallProject();
const recipe = recipeOf(project.bench, project.drawer, { id: 'one', title: 'One' });
// Proofs go through a set-up first and stand first in the log.
const head: VisitHead = {
  id: 'v',
  title: 'Visit',
  begunMs: 0,
  recipes: [recipe],
  sheets: [
    { number: 4, recipe: 0, use: 'proof' },
    ...[1, 2].map((number) => ({ number, recipe: 0 })),
    { number: 3, recipe: 0, use: 'over' },
  ],
};
const sheets = (...happened: object[]) =>
  sheetsAsPulled(
    head,
    happened.map((each, i): LogEvent => ({ id: `e${i}`, atMs: 1000 * (i + 1), device: 'd', ...each }) as LogEvent),
  );
const all = [1, 2, 3, 4];

describe('sheetToShow', () => {
  it('should show the sheet asked for, else the first of the set-up', () => {
    expect(sheetToShow(all, sheets(), 2)?.number).toBe(2);
    expect(sheetToShow(all, sheets(), null)?.number).toBe(1);
    expect(sheetToShow([2, 3], sheets(), 1)?.number).toBe(2);
    expect(sheetToShow([9], sheets(), 9)).toBeUndefined();
  });
  it('should go on with what is good where a sheet is spoiled', () => {
    expect(sheetToShow(all, sheets({ kind: 'replaced', sheet: 1, by: 3, note: '' }), 1)?.number).toBe(3);
    expect(sheetToShow(all, sheets({ kind: 'spoiled', sheet: 2, note: '' }), 2)?.number).toBe(1);
    expect(sheetToShow([2], sheets({ kind: 'spoiled', sheet: 2, note: '' }), null)?.number).toBe(2);
  });
});

describe('sheetsTalk', () => {
  it('should name sheets in the order of their tiles, spoiled ones left out', () => {
    const card = { states: [{ recipe: 0, prints: [0], sheets: all }], screen: {}, ink: {} } as unknown as SetUpCard;
    const visit = { sheets: sheets({ kind: 'spoiled', sheet: 2, note: '' }), recipes: [recipe] };
    expect(sheetsTalk(card, all, visit, [])?.among?.numbers).toEqual([1, 3, 4]);
  });
});
