import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { recipeAsPulled, recipesAsPulled, sheetAsPulled, sheetsAsPulled } from '../../../src/engine/log/as-pulled.ts';
import { checkLog } from '../../../src/engine/log/check.ts';
import { standing } from '../../../src/engine/log/events.ts';
import { readLog, writeLog } from '../../../src/engine/log/log-file.ts';
import { mergeLogs } from '../../../src/engine/log/merge.ts';
import { measuredPairs } from '../../../src/engine/log/turns.ts';
import type { LogEvent, VisitHead, VisitLog } from '../../../src/engine/log/types.ts';
import { readRecipe } from '../../../src/engine/recipe/read.ts';
import { recipeOf, writeRecipe } from '../../../src/engine/recipe/write.ts';
import { smallProject } from '../../helpers/small-project.ts';

const project = smallProject();
const recipe = recipeOf(project.bench, project.drawer, { id: 'a', title: 'First' });
const head: VisitHead = {
  id: 'v',
  title: 'Visit',
  begunMs: 1000,
  recipes: [recipe],
  sheets: [1, 2, 3].map((number) => ({ number, recipe: 0 })),
};
let next = 0;
type Body<T = LogEvent> = T extends LogEvent ? Omit<T, 'id' | 'atMs' | 'device'> : never;
function event(body: Body, atMs = 2000 + next): LogEvent {
  return { id: `e${next++}`, atMs, device: 'd', ...body } as LogEvent;
}
const pulled = (sheet: number, ...pulls: string[]): LogEvent => event({ kind: 'pulled', sheet, pulls });
const logOf = (...events: LogEvent[]): VisitLog => ({ format: 'pullstack-log', version: 1, head, events });
const codes = (...events: LogEvent[]): string[] => checkLog(head, events).map((problem) => problem.code);

describe('sheetAsPulled', () => {
  it('should stack what was pulled, in the order of the clock and not of the list', () => {
    const late = pulled(1, 'p2');
    const early = event({ kind: 'pulled', sheet: 1, pulls: ['p1'] }, 1500);
    const state = sheetAsPulled(recipe, head.sheets[0]!, [late, early, pulled(2, 'p3')]);
    expect(state.pulls).toEqual([recipe.pulls[0], recipe.pulls[1]]);
    expect(state.otherwise).toBe(false);
  });
  it('should change only the pull that went otherwise', () => {
    const how = { strokes: 2, dxMm: 0.25, dyMm: -1 };
    const events = [pulled(1, 'p1'), event({ kind: 'otherwise', sheet: 1, pulls: ['p2'], how, note: 'slipped' })];
    const state = sheetAsPulled(recipe, head.sheets[0]!, events);
    expect(state.pulls[0]).toBe(recipe.pulls[0]);
    // A quarter of a millimetre lies on the 0.1 mm grid as 0.3.
    expect(state.pulls[1]).toMatchObject({ screen: 's2', ink: 'weed', strokes: 2, dxMm: 0.3, dyMm: -1 });
    expect(state.pulls[1]!.id).not.toBe('p2');
    expect(state).toMatchObject({ otherwise: true, notes: ['slipped'], done: [0, 1] });
  });
  it('should tell pulls out of turn as otherwise', () => {
    expect(sheetAsPulled(recipe, head.sheets[0]!, [pulled(1, 'p2'), pulled(1, 'p1')]).otherwise).toBe(true);
  });
  it('should not call a free swap otherwise, since pull orders make them', () => {
    const swapped = [pulled(1, 'p2'), pulled(1, 'p1')];
    expect(sheetAsPulled(recipe, head.sheets[0]!, swapped, measuredPairs(100)).otherwise).toBe(false);
    expect(sheetAsPulled(recipe, head.sheets[0]!, swapped, () => null).otherwise).toBe(false);
    expect(sheetAsPulled(recipe, head.sheets[0]!, swapped, () => new Set(['0 1'])).otherwise).toBe(true);
    expect(sheetsAsPulled({ ...head, minDeltaE: 100 }, swapped)[0]!.otherwise).toBe(false);
  });
  it('should take back what was undone, also a spoiled sheet', () => {
    const tick = pulled(1, 'p1');
    const spoiled = event({ kind: 'spoiled', sheet: 1, note: 'torn' });
    const events = [tick, spoiled];
    expect(sheetAsPulled(recipe, head.sheets[0]!, events)).toMatchObject({ spoiled: true, notes: ['torn'] });
    events.push(event({ kind: 'undone', sheet: 1, event: spoiled.id }), event({ kind: 'undone', sheet: 1, event: tick.id }));
    expect(sheetAsPulled(recipe, head.sheets[0]!, events)).toMatchObject({ spoiled: false, pulls: [], notes: [] });
    events.push(pulled(1, 'p1'));
    expect(sheetAsPulled(recipe, head.sheets[0]!, events).done).toEqual([0]);
  });
});

describe('standing', () => {
  it('should bring back what was undone when the undoing is undone', () => {
    const tick = pulled(1, 'p1');
    const undo = event({ kind: 'undone', sheet: 1, event: tick.id });
    const redo = event({ kind: 'undone', sheet: 1, event: undo.id });
    const again = event({ kind: 'undone', sheet: 1, event: redo.id });
    expect(standing([tick, undo])).toEqual([]);
    expect(standing([redo, tick, undo])).toEqual([tick]);
    expect(standing([tick, undo, redo, again])).toEqual([]);
    // Another undoing of the same entry still stands.
    expect(standing([tick, undo, redo, event({ kind: 'undone', sheet: 1, event: tick.id })])).toEqual([]);
  });
  it('should come to an end when undoings name each other', () => {
    const tick = pulled(1, 'p1');
    const circle = [event({ kind: 'undone', sheet: 1, event: `e${next + 1}` }), event({ kind: 'undone', sheet: 1, event: `e${next - 1}` })];
    expect(standing([tick, ...circle])).toEqual([tick]);
    const own = `e${next}`;
    expect(standing([tick, event({ kind: 'undone', sheet: 1, event: own })])).toEqual([tick]);
  });
});

describe('a sheet kept as it came', () => {
  it.each(['kept', 'lucky'] as const)('should be told from a log whose entry says %s', (kind) => {
    const events = [pulled(1, 'p1'), event({ kind, sheet: 1, note: 'soft edge' })];
    const { value, problems } = readLog(writeLog(head, events), 'log.json');
    expect(problems).toEqual([]);
    const [first, second] = sheetsAsPulled(head, value!.events);
    expect(first).toMatchObject({ kept: true, lucky: true, notes: ['soft edge'] });
    expect(second).toMatchObject({ kept: false, lucky: false });
  });
});

describe('recipeAsPulled', () => {
  it('should become a recipe that can be read again, with an ink from elsewhere beside a namesake', () => {
    const other = { ...project.drawer.inks[0]!, id: 'foam', name: 'Cold foam', mix: [{ ink: 'gone', parts: 1 }] };
    const events = [
      pulled(1, 'p1'),
      event({ kind: 'otherwise', sheet: 1, pulls: ['p3'], how: { ink: other, dxMm: 0, dyMm: 0 }, note: '' }),
    ];
    const [own] = recipesAsPulled(head, events);
    const [state] = sheetsAsPulled(head, events);
    const made = recipeAsPulled(own!, state!, { id: 'n', title: 'As it came' });
    const again = readRecipe(writeRecipe(made), 'as-it-came.json');
    expect(again.problems).toEqual([]);
    expect(again.value!.pulls.map((pull) => again.value!.inks.find((ink) => ink.id === pull.ink)!.name)).toEqual([
      recipe.inks.find((ink) => ink.id === 'rust')!.name,
      'Cold foam',
    ]);
    expect(recipe.inks.some((ink) => ink.name === 'Cold foam')).toBe(false);
  });
  it('should bring the stocks of a mix that was borrowed from another recipe', () => {
    const stock = { ...project.drawer.inks[3]!, id: 'stock', name: 'Stock black', stock: true as const };
    const base = { ...project.drawer.inks[4]!, id: 'rust', name: 'Base' };
    const mixed = {
      ...project.drawer.inks[1]!,
      id: 'mixed',
      name: 'Wet grey',
      mix: [
        { ink: 'stock', parts: 1 },
        { ink: 'rust', parts: 4 },
      ],
    };
    const second = recipeOf(
      [{ ...project.bench[0]!, ink: 'mixed' }],
      { ...project.drawer, inks: [stock, base, mixed] },
      { id: 'b', title: 'Second' },
    );
    const both = { ...head, recipes: [recipe, second] };
    const events = [
      pulled(1, 'p1'),
      event({ kind: 'otherwise', sheet: 1, pulls: ['p3'], how: { ink: mixed, dxMm: 0, dyMm: 0 }, note: '' }),
    ];
    expect(checkLog(both, events)).toEqual([]);
    const [own] = recipesAsPulled(both, events);
    const kept = readRecipe(
      writeRecipe(recipeAsPulled(own!, sheetsAsPulled(both, events)[0]!, { id: 'n', title: 'As it came', parent: 'a' })),
      'x.json',
    );
    expect(kept.problems).toEqual([]);
    const ink = kept.value!.inks.find((entry) => entry.name === 'Wet grey')!;
    // The recipe has a rust of its own, so the base that is called so goes by another id.
    expect(ink.mix!.map((part) => [kept.value!.inks.find((entry) => entry.id === part.ink)!.name, part.parts])).toEqual([
      ['Stock black', 1],
      ['Base', 4],
    ]);
    expect(kept.value!.parent).toBe('a');
  });
  it('should refuse a bare sheet in a sentence', () => {
    expect(() => recipeAsPulled(recipe, sheetsAsPulled(head, [])[0]!, { id: 'n', title: 'Bare' })).toThrow(/Sheet 1 has no pull/);
  });
});

describe('checkLog', () => {
  it('should find nothing in an honest log', () => {
    expect(codes(pulled(1, 'p1'), pulled(1, 'p2'), event({ kind: 'spoiled', sheet: 1, note: '' }))).toEqual([]);
  });
  it('should name each contradiction', () => {
    expect(codes(pulled(1, 'p1'), pulled(1, 'p1'))).toEqual(['log.twice']);
    expect(codes(pulled(9, 'p1'))).toEqual(['log.sheet']);
    expect(codes(pulled(1, 'p9'))).toEqual(['log.pull']);
    expect(codes(event({ kind: 'spoiled', sheet: 1, note: '' }), pulled(1, 'p1'))).toEqual(['log.spoiled']);
    expect(codes(event({ kind: 'pulled', sheet: 1, pulls: ['p1'] }, 10))).toEqual(['log.early']);
    expect(codes(event({ kind: 'undone', sheet: 1, event: 'nowhere' }))).toEqual(['log.undone']);
    const stranger = { ...project.drawer.inks[0]!, name: 'Nowhere blue' };
    expect(codes(event({ kind: 'otherwise', sheet: 1, pulls: ['p1'], how: { ink: stranger, dxMm: 0, dyMm: 0 }, note: '' }))).toEqual([
      'log.ink',
    ]);
    const tick = pulled(1, 'p1');
    expect(codes(tick, event({ kind: 'undone', sheet: 2, event: tick.id }))).toEqual(['log.undone']);
    for (const problem of checkLog(head, [pulled(9, 'p1'), pulled(1, 'p9')])) expect(problem.message).toMatch(/^Sheet \d.*\.$/);
  });
});

describe('checkLog against the overlaps', () => {
  // In the small project all three rectangles overlap, and no two inks commute.
  it('should name a pull that is logged over what should lie on it', () => {
    const [problem, ...more] = checkLog(head, [pulled(1, 'p2'), pulled(1, 'p1'), pulled(2, 'p1', 'p2', 'p3')]);
    expect(more).toEqual([]);
    expect(problem!.code).toBe('log.order');
    expect(problem!.message).toMatch(/^Sheet 1: screen 1 in Rust is logged after screen 2 in \w+, but lies under it in First/);
    expect(codes(pulled(1, 'p3', 'p2', 'p1'))).toEqual(['log.order', 'log.order']);
  });
  it('should let free swaps and pulls that do not touch come in any order', () => {
    const tolerant = { ...head, minDeltaE: 100 };
    expect(checkLog(tolerant, [pulled(1, 'p2'), pulled(1, 'p1')])).toEqual([]);
    const apart = recipeOf(
      [
        { ...project.bench[0]!, dxMm: -300 },
        { ...project.bench[1]!, dxMm: 300 },
      ],
      project.drawer,
      { id: 'c', title: 'Apart' },
    );
    expect(checkLog({ ...head, recipes: [apart] }, [pulled(1, 'p2'), pulled(1, 'p1')])).toEqual([]);
  });
  it('should go by the clock and by what still stands', () => {
    const slip = event({ kind: 'pulled', sheet: 1, pulls: ['p2'] }, 1500);
    const after = event({ kind: 'pulled', sheet: 1, pulls: ['p1'] }, 1600);
    expect(codes(after, slip)).toEqual(['log.order']);
    expect(codes(after, slip, event({ kind: 'undone', sheet: 1, event: slip.id }), pulled(1, 'p2'))).toEqual([]);
  });
});

describe('mergeLogs', () => {
  const arbitrary = fc.array(
    fc.record({
      id: fc.constantFrom('a', 'b', 'c', 'd'),
      atMs: fc.integer({ min: 1000, max: 1005 }),
      sheet: fc.integer({ min: 1, max: 3 }),
      pull: fc.constantFrom('p1', 'p2'),
    }),
    { maxLength: 4 },
  );
  it('should lose nothing and not care which log is named first', () => {
    fc.assert(
      fc.property(arbitrary, arbitrary, (one, other) => {
        const events = (list: typeof one, device: string): LogEvent[] =>
          [...new Map(list.map((entry) => [entry.id, entry])).values()].map(({ id, atMs, sheet, pull }) => ({
            id,
            atMs,
            device,
            sheet,
            kind: 'pulled',
            pulls: [pull],
          }));
        const a = logOf(...events(one, 'x'));
        const b = logOf(...events(other, 'y'));
        const merged = mergeLogs(a, b).log.events;
        expect(mergeLogs(b, a).log.events).toEqual(merged);
        expect(new Set(merged.map((entry) => entry.id)).size).toBe(merged.length);
        expect(merged).toHaveLength(a.events.length + b.events.length);
        // Bringing the same file in again changes nothing.
        expect(mergeLogs(a, a).log.events).toHaveLength(a.events.length);
      }),
    );
  });
  it('should keep entries of one name from three devices, however they are brought together', () => {
    fc.assert(
      fc.property(arbitrary, arbitrary, arbitrary, (...lists) => {
        const [a, b, c] = lists.map((list, i) =>
          logOf(
            ...[...new Map(list.map((entry) => [entry.id, entry])).values()].map(({ id, atMs, sheet, pull }): LogEvent => ({
              id,
              atMs,
              device: 'xyz'[i]!,
              sheet,
              kind: 'pulled',
              pulls: [pull],
            })),
          ),
        );
        const ab = mergeLogs(a!, b!).log;
        const all = mergeLogs(ab, c!).log.events;
        const happened = (list: readonly LogEvent[]): string[] => list.map((each) => JSON.stringify({ ...each, id: '' })).sort();
        expect(happened(all)).toEqual(happened([a!, b!, c!].flatMap(({ events }) => events)));
        expect(mergeLogs(a!, mergeLogs(c!, b!).log).log.events).toEqual(all);
        expect(mergeLogs({ ...ab, events: all }, mergeLogs(b!, c!).log).log.events).toEqual(all);
      }),
    );
  });
  it('should show a sheet that two devices ticked', () => {
    const { log, conflicts } = mergeLogs(logOf(pulled(1, 'p1')), logOf(pulled(1, 'p1')));
    expect(log.events).toHaveLength(2);
    expect(conflicts.map((problem) => problem.code)).toEqual(['log.twice']);
  });
  it('should refuse the log of another visit', () => {
    expect(() => mergeLogs(logOf(), { ...logOf(), head: { ...head, id: 'w' } })).toThrow(/another visit/);
  });
});

describe('readLog', () => {
  it('should read what was written', () => {
    const events = [
      pulled(1, 'p1'),
      event({ kind: 'otherwise', sheet: 2, pulls: ['p1'], how: { dxMm: 1, dyMm: 0 }, note: 'x' }),
      event({ kind: 'placed', sheet: 1, box: 'Box 3' }),
    ];
    expect(readLog(writeLog(head, events), 'visit.json').value).toEqual(logOf(...events));
  });
  it('should say where a log is broken', () => {
    const text = writeLog(head, [pulled(1, 'p1')]);
    expect(readLog(text.slice(0, -20), 'cut.json').problems[0]!.message).toContain('cut.json');
    expect(readLog(text.replace('"sheet":1', '"sheet":"one"'), 'v.json').problems[0]!.message).toContain('events[0].sheet');
    expect(readLog(text.replace('pullstack-log', 'other'), 'v.json').problems[0]!.code).toBe('log.format');
  });
});
