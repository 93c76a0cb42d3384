import { describe, expect, it } from 'vitest';
import { sheetsAsPulled } from '../../../src/engine/log/as-pulled.ts';
import { checkLog } from '../../../src/engine/log/check.ts';
import { numberSheets } from '../../../src/engine/log/edition/edition-sheets.ts';
import { newEdition } from '../../../src/engine/log/edition/edition.ts';
import { readLog, writeLog } from '../../../src/engine/log/log-file.ts';
import { oversFor } from '../../../src/engine/log/overs.ts';
import { planRest } from '../../../src/engine/log/rest.ts';
import type { LogEvent, VisitHead } from '../../../src/engine/log/types.ts';
import { recipeOf } from '../../../src/engine/recipe/write.ts';
import { smallProject } from '../../helpers/small-project.ts';

const { drawer, bench, press } = smallProject();
const recipe = recipeOf(bench, drawer, { id: 'a', title: 'Ebb' });
const other = recipeOf(bench, drawer, { id: 'b', title: 'Flow' });
const head: VisitHead = {
  id: 'v',
  title: 'Visit',
  begunMs: 0,
  recipes: [recipe, other],
  sheets: [
    { number: 1, recipe: 0 },
    { number: 2, recipe: 0 },
    { number: 3, recipe: 1 },
    { number: 4, recipe: 0, use: 'proof' },
    { number: 5, recipe: 0, use: 'over' },
    { number: 6, recipe: 0, use: 'over' },
    { number: 7, recipe: 1, use: 'over' },
  ],
};
const [one, two] = recipe.pulls.map((pull) => pull.id);
const event = (id: string, atMs: number, rest: Partial<LogEvent>): LogEvent => ({ id, atMs, device: 'd', ...rest }) as LogEvent;
const EVENTS = [
  event('a', 1, { kind: 'pulled', sheet: 1, pulls: [one!] }),
  event('b', 2, { kind: 'pulled', sheet: 6, pulls: [one!] }),
  event('c', 3, { kind: 'pulled', sheet: 1, pulls: [two!] }),
  event('d', 4, { kind: 'replaced', sheet: 1, by: 6, note: 'torn' }),
];

describe('a spoiled sheet that is replaced', () => {
  const sheets = sheetsAsPulled(head, EVENTS);

  it('should be spoiled, and its over a print with its recipe and its own pulls so far', () => {
    expect(sheets[0]).toMatchObject({ spoiled: true, notes: ['torn'] });
    const over = sheets.find(({ number }) => number === 6)!;
    expect(over).toMatchObject({ recipe: 0, done: [0], inPlaceOf: 1, spoiled: false });
    expect(over.use).toBeUndefined();
    expect(checkLog(head, EVENTS)).toEqual([]);
  });

  it('should come back with one undo', () => {
    const [first, , , , , over] = sheetsAsPulled(head, [...EVENTS, event('u', 5, { kind: 'undone', sheet: 1, event: 'd' })]);
    expect(first).toMatchObject({ spoiled: false, done: [0, 1] });
    expect(over).toMatchObject({ use: 'over' });
  });

  it('should offer overs of its recipe that are free, the likest first, and proofs behind them', () => {
    const before = sheetsAsPulled(head, EVENTS.slice(0, 2));
    expect(oversFor(before[0]!, before)).toEqual([6, 5, 4]);
    expect(oversFor(sheets[1]!, sheets)).toEqual([5, 4]);
    expect(oversFor(before[2]!, before)).toEqual([7]);
  });

  it('should be printed on in the rest of the visit, and take a mark of the edition', () => {
    const runs = [
      { recipe, sheets: 2, overs: 2, proofs: 1 },
      { recipe: other, sheets: 1, overs: 1 },
    ];
    const rest = { recipes: head.recipes, sheets };
    const plan = [...planRest({ runs, press, minDeltaE: 1, seed: 's', rest }, 20)].at(-1)!;
    expect(plan.sheets.find(({ number }) => number === 6)).toEqual({ number: 6, recipe: 0 });
    expect(plan.sheets.some(({ number }) => number === 1)).toBe(false);
    const edition = { ...newEdition(recipe), counts: { impressions: 3, ap: 0, pp: 0, hc: 0, bat: false, variable: false } };
    const own = sheets.filter((sheet) => sheet.recipe === 0);
    expect(numberSheets(edition, own, 3).map(({ number, mark }) => [number, mark])).toEqual([
      [1, null],
      [2, '1/3'],
      [4, null],
      [5, '2/3'],
      [6, '3/3'],
    ]);
  });

  it('should be refused with a sheet that has other pulls on it, and go through a file', () => {
    const how = { dxMm: 1, dyMm: 0 };
    const wrong = [
      event('c', 3, { kind: 'otherwise', sheet: 7, pulls: [one!], how, note: '' }),
      event('d', 4, { kind: 'replaced', sheet: 1, by: 7, note: '' }),
    ];
    expect(checkLog(head, wrong).map(({ code }) => code)).toEqual(['log.replaced']);
    const read = readLog(writeLog(head, EVENTS), 'log.json');
    expect(read.problems).toEqual([]);
    expect(read.value!.events).toEqual(EVENTS);
  });
});
