import { describe, expect, it } from 'vitest';
import { extraPullOf } from '../../../src/components/press/next/taker-rows.ts';
import { MOST_PULLS } from '../../../src/engine/base/limits.ts';
import { recipesAsPulled, sheetsAsPulled } from '../../../src/engine/log/as-pulled.ts';
import { checkLog } from '../../../src/engine/log/check.ts';
import { editionRecord, goodSheets } from '../../../src/engine/log/edition/edition-sheets.ts';
import { newEdition } from '../../../src/engine/log/edition/edition.ts';
import { filmsOn } from '../../../src/engine/log/films.ts';
import { readLog, writeLog } from '../../../src/engine/log/log-file.ts';
import { chosenFor } from '../../../src/engine/log/now/chosen.ts';
import { planRest } from '../../../src/engine/log/rest.ts';
import type { Happening, LogEvent, VisitHead } from '../../../src/engine/log/types.ts';
import { recipeOf } from '../../../src/engine/recipe/write.ts';
import type { SetUpCard } from '../../../src/engine/visit/set-up-cards.ts';
import { smallProject } from '../../helpers/small-project.ts';

const { bench, drawer, press } = smallProject();
const recipe = recipeOf(bench, drawer, { id: 'a', title: 'A' });
const head: VisitHead = { id: 'v', title: 'V', begunMs: 0, recipes: [recipe], sheets: [1, 2, 3].map((number) => ({ number, recipe: 0 })) };
/** The set-up of the recipe's second pull. */
const card = { dxMm: 0, dyMm: 0, turnDeg: 0, strokes: 1, states: [{ recipe: 0, prints: [1], sheets: [1, 2, 3] }] } as unknown as SetUpCard;
const stamped = (happenings: readonly Happening[]): LogEvent[] =>
  happenings.map((each, i) => ({ ...each, id: `e${i}`, atMs: 1000 * (i + 1), device: 'd' }));
const pulled = (sheet: number, id: string): Happening => ({ kind: 'pulled', sheet, pulls: [id] });

/** What is logged of a pull more on a sheet, after what happened so far. */
function extra(so: readonly Happening[], sheet: number, id: string, how = { dxMm: 0, dyMm: 0 }): Happening[] {
  const events = stamped(so);
  const recipes = recipesAsPulled(head, events);
  const sheets = sheetsAsPulled(head, events).filter(({ number }) => number === sheet);
  return chosenFor(sheets, recipes, { ...extraPullOf(card, recipes, how)!, id, planned: true, pulled: true });
}

const before = [pulled(1, 'p1'), pulled(1, 'p2')];
const once = [...before, ...extra(before, 1, 'x', { dxMm: 4, dyMm: 0 })];

describe('a pull that nothing planned', () => {
  it('should lie on top of what was down, with its film, and leave what was planned to be pulled', () => {
    const events = stamped([...once, pulled(2, 'p1')]);
    expect(checkLog(head, events)).toEqual([]);
    expect(readLog(writeLog(head, events), 'log.json').value!.events).toEqual(events);
    const recipes = recipesAsPulled(head, events);
    const sheets = sheetsAsPulled(head, events);
    const [first] = sheets;
    expect(first!.pulls.map(({ screen, dxMm }) => [screen, dxMm])).toEqual([
      ['s1', 0],
      ['s2', 0],
      ['s2', 4],
    ]);
    expect(filmsOn(first!, recipes[first!.recipe]!).map(({ pulledMs }) => pulledMs)).toEqual([1000, 2000, 3000]);
    const plan = [...planRest({ runs: [], minDeltaE: 1, press, seed: 's', rest: { recipes, sheets } }, 20)].at(-1)!;
    const left = (number: number): number =>
      plan.cards.flatMap(({ states }) => states.filter((state) => state.sheets.includes(number)).flatMap(({ prints }) => prints)).length;
    expect([1, 2, 3].map(left)).toEqual([1, 2, 3]);
  });

  it('should keep the sheet in its edition as one that went otherwise, finished once its own pulls are down', () => {
    const all = [...once, pulled(1, 'p3'), ...[2, 3].flatMap((sheet) => ['p1', 'p2', 'p3'].map((id) => pulled(sheet, id)))];
    const edition = { ...newEdition(recipe, 3), counts: { ...newEdition(recipe, 3).counts, impressions: 2 } };
    const { sheets, dates } = editionRecord(edition, head, stamped(all));
    expect(goodSheets('a', head, stamped(all))).toBe(3);
    expect(sheets.map(({ number, mark, finished, sheet }) => [number, mark, finished, sheet.otherwise])).toEqual([
      [1, null, true, true],
      [2, '1/2', true, false],
      [3, '2/2', true, false],
    ]);
    expect(dates.map((each) => each.sheets)).toEqual([3, 3, 3]);
    const unfinished = editionRecord(edition, head, stamped(once)).sheets[0]!;
    expect([unfinished.finished, unfinished.sheet.done]).toEqual([false, [0, 1]]);
  });

  it('should be logged twice, taken back by one undo, and be refused beyond what a sheet takes', () => {
    const twice = [...once, ...extra(once, 1, 'y')];
    expect(sheetsAsPulled(head, stamped(twice))[0]!.pulls).toHaveLength(4);
    expect(checkLog(head, stamped(twice))).toEqual([]);
    const events = stamped([...once, { kind: 'undone', sheet: 1, event: 'e2' }]);
    const [sheet] = sheetsAsPulled(head, events);
    expect([sheet!.recipe, sheet!.otherwise, sheet!.pulls.map(({ id }) => id)]).toEqual([0, false, ['p1', 'p2']]);
    expect(checkLog(head, events)).toEqual([]);
    let many = before;
    for (let i = 0; i < MOST_PULLS - 3; i++) many = [...many, ...extra(many, 1, `m${i}`)];
    expect(sheetsAsPulled(head, stamped(many))[0]!.pulls).toHaveLength(MOST_PULLS - 1);
    expect(() => extra(many, 1, 'last')).toThrow(/^Sheet 1 would have \d+ pulls/);
  });
});
