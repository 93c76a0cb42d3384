import { describe, expect, it } from 'vitest';
import type { Ink } from '../../../src/engine/ink/types.ts';
import { recipesAsPulled, sheetAsPulled } from '../../../src/engine/log/as-pulled.ts';
import { checkLog } from '../../../src/engine/log/check.ts';
import { inOrder } from '../../../src/engine/log/events.ts';
import { readLog, writeLog } from '../../../src/engine/log/log-file.ts';
import { mergeLogs } from '../../../src/engine/log/merge.ts';
import type { LogEvent, VisitHead, VisitLog } from '../../../src/engine/log/types.ts';
import type { Recipe } from '../../../src/engine/recipe/types.ts';
import { recipeOf } from '../../../src/engine/recipe/write.ts';
import { smallProject } from '../../helpers/small-project.ts';

const { bench, drawer } = smallProject();
const own = recipeOf(bench, drawer, { id: 'a', title: 'Own' });
const [, , , black, clear] = drawer.inks as [Ink, Ink, Ink, Ink, Ink];
const stock: Ink = { ...black, id: 'stock', name: 'Stock black' };
const base: Ink = { ...clear, id: 'base', name: 'Base' };
const mixed: Ink = {
  ...drawer.inks[1]!,
  id: 'mixed',
  name: 'Wet grey',
  mix: [
    { ink: 'stock', parts: 1 },
    { ink: 'base', parts: 4 },
  ],
};
const printedIn = (id: string, inks: Ink[]): Recipe => ({
  ...recipeOf([{ ...bench[0]!, ink: 'mixed' }], { ...drawer, inks }, { id, title: id }),
  inks,
});

let next = 0;
type Body<T = LogEvent> = T extends LogEvent ? Omit<T, 'id' | 'atMs' | 'device'> : never;
const event = (body: Body, atMs = 5000 + next): LogEvent => ({ id: `e${next++}`, atMs, device: 'd', ...body }) as LogEvent;
const headOf = (...recipes: Recipe[]): VisitHead => ({
  id: 'v',
  title: 'Visit',
  begunMs: 1000,
  recipes,
  sheets: [{ number: 1, recipe: 0 }],
});
const inkedWith = (ink: Ink | undefined): LogEvent =>
  event({ kind: 'otherwise', sheet: 1, pulls: ['p1'], how: { ink, dxMm: 0, dyMm: 0 }, note: '' });
/** The inks that sheet 1's recipe has when one was borrowed: by name, with the names of their stocks. */
function inksWith(ink: Ink, ...others: Recipe[]): Record<string, string[]> {
  const [recipe] = recipesAsPulled(headOf(own, ...others), [inkedWith(ink)]);
  const nameOf = (id: string): string => recipe!.inks.find((each) => each.id === id)!.name;
  return Object.fromEntries(recipe!.inks.map(({ name, mix = [] }) => [name, mix.map((part) => nameOf(part.ink))]));
}

describe('an ink that was borrowed', () => {
  it('should bring the stocks of the recipe that mixes it so, whatever else goes by their ids', () => {
    const strange = [
      { ...stock, name: 'Another black' },
      { ...base, name: 'Another base' },
    ];
    const otherParts = printedIn('b', [
      ...strange,
      {
        ...mixed,
        mix: [
          { ink: 'stock', parts: 2 },
          { ink: 'base', parts: 4 },
        ],
      },
    ]);
    const kept = printedIn('d', [stock, base, mixed]);
    const otherColour = { ...kept, id: 'c', inks: [...strange, { ...drawer.inks[2]!, mix: mixed.mix }] };
    const wanted = { 'Stock black': [], Base: [], 'Wet grey': ['Stock black', 'Base'] };
    expect(inksWith(mixed, otherParts, kept)).toMatchObject(wanted);
    expect(inksWith(mixed, otherColour, kept)).toMatchObject(wanted);
  });

  it('should come by itself where a stock is missing, or where it is no mix', () => {
    const lacking = printedIn('b', [stock, base, mixed]);
    const found = inksWith(mixed, { ...lacking, inks: lacking.inks.filter(({ id }) => id !== 'stock') });
    expect(found).toMatchObject({ 'Wet grey': [] });
    expect(found).not.toHaveProperty('Base');
    const { mix: _, ...plain } = mixed;
    expect(inksWith(plain, printedIn('b', [plain]))).toMatchObject({ 'Wet grey': [] });
  });

  it('should share a stock that the recipe has already', () => {
    const [recipe] = recipesAsPulled(headOf({ ...own, inks: [...own.inks, base] }, printedIn('b', [stock, base, mixed])), [
      inkedWith(mixed),
    ]);
    expect(recipe!.inks.filter(({ name }) => name === 'Base')).toHaveLength(1);
    expect(recipe!.inks).toHaveLength(own.inks.length + 3);
  });
});

describe('sheetAsPulled', () => {
  it('should say where the sheet was last put, and keep no empty notes', () => {
    const events = [
      event({ kind: 'spoiled', sheet: 1, note: '' }),
      event({ kind: 'placed', sheet: 1, box: 'Box 3' }),
      event({ kind: 'placed', sheet: 1, box: 'Box 4' }),
    ];
    expect(sheetAsPulled(own, { number: 1, recipe: 0 }, events)).toMatchObject({ box: 'Box 4', notes: [], done: [], spoiled: true });
  });
});

describe('checkLog', () => {
  it('should find nothing in what happened as the visit began, or was pulled otherwise in its own ink', () => {
    expect(checkLog(headOf(own), [event({ kind: 'pulled', sheet: 1, pulls: ['p1'] }, 1000)])).toEqual([]);
    expect(checkLog(headOf(own), [event({ kind: 'pulled', sheet: 1, pulls: ['p1'] }, 999)]).map(({ code }) => code)).toEqual(['log.early']);
    expect(checkLog(headOf(own), [inkedWith(undefined)])).toEqual([]);
  });
});

describe('inOrder', () => {
  it('should go by clock, then device, then id, whichever way round they come', () => {
    const at = (atMs: number, device: string, id: string): LogEvent => ({ kind: 'pulled', sheet: 1, pulls: ['p1'], atMs, device, id });
    const sorted = [at(1, 'z', 'z'), at(2, 'a', 'y'), at(2, 'b', 'a'), at(2, 'b', 'b'), at(2, 'b', 'c')];
    expect(inOrder([...sorted].reverse())).toEqual(sorted);
    expect(inOrder([2, 4, 0, 3, 1].map((i) => sorted[i]!))).toEqual(sorted);
    // Of one name and time they stay as they came.
    const twins = [at(2, 'b', 'a'), { ...at(2, 'b', 'a'), sheet: 2 }];
    expect(inOrder(twins)).toEqual(twins);
  });
});

describe('mergeLogs', () => {
  it('should take an entry for the same however its fields are ordered', () => {
    const entry = inkedWith(undefined);
    if (entry.kind !== 'otherwise') throw new Error('no such entry');
    const log = (...events: LogEvent[]): VisitLog => ({ format: 'pullstack-log', version: 1, head: headOf(own), events });
    const turned = Object.fromEntries(Object.entries({ ...entry, how: { dyMm: 0, dxMm: 0 } }).reverse()) as unknown as LogEvent;
    const { log: merged, conflicts } = mergeLogs(log({ ...entry, how: { dxMm: 0, dyMm: 0 } }), log(turned));
    expect(merged.events).toHaveLength(1);
    expect(conflicts).toEqual([]);
    // What differs in a field within, or in the order of its pulls, is another entry.
    expect(mergeLogs(log(entry), log({ ...entry, how: { dxMm: 0, dyMm: 0.1 } })).log.events).toHaveLength(2);
    const both = { ...entry, pulls: ['p1', 'p2'] };
    expect(mergeLogs(log(both), log({ ...both, pulls: ['p2', 'p1'] })).log.events).toHaveLength(2);
  });
});

describe('readLog', () => {
  it('should refuse a sheet of a recipe that the visit does not have', () => {
    const sheets = [0, 1].map((recipe, i) => ({ number: i + 1, recipe }));
    expect(readLog(writeLog({ ...headOf(own, own), sheets }, []), 'v.json').problems).toEqual([]);
    const { value, problems } = readLog(writeLog({ ...headOf(own), sheets }, []), 'v.json');
    expect(value ?? null).toBeNull();
    expect(problems).toHaveLength(1);
  });
});
