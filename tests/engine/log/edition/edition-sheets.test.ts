import { describe, expect, it } from 'vitest';
import { type SheetAsPulled, sheetsAsPulled } from '../../../../src/engine/log/as-pulled.ts';
import { editionRecord, type EditionSheet, numberSheets } from '../../../../src/engine/log/edition/edition-sheets.ts';
import { type Edition, editionMarks, newEdition } from '../../../../src/engine/log/edition/edition.ts';
import type { LogEvent, VisitHead } from '../../../../src/engine/log/types.ts';
import { recipeOf } from '../../../../src/engine/recipe/write.ts';
import { smallProject } from '../../../helpers/small-project.ts';

const { bench, drawer } = smallProject();
const recipe = recipeOf(bench, drawer, { id: 'a', title: 'Ebb' });
const other = recipeOf(bench, drawer, { id: 'b', title: 'Other' });
// Sheets 1 to 2 are of another recipe: an edition's numbers have nothing to do with the sheets'.
const head: VisitHead = {
  id: 'v',
  title: 'Visit',
  begunMs: 0,
  recipes: [other, recipe],
  sheets: [0, 0, 1, 1, 1, 1, 1, 1].map((at, i) => ({ number: i + 1, recipe: at })),
};
const edition: Edition = { ...newEdition(recipe), counts: { impressions: 3, ap: 1, pp: 0, hc: 0, bat: true, variable: false } };

let next = 0;
type Body<T = LogEvent> = T extends LogEvent ? Omit<T, 'id' | 'atMs' | 'device'> : never;
const at = (atMs: number, body: Body): LogEvent => ({ id: `e${next++}`, atMs, device: 'd', ...body }) as LogEvent;
const whole = (sheet: number, atMs: number): LogEvent[] =>
  bench.map((pull, i) => at(atMs + 1000 * i, { kind: 'pulled', sheet, pulls: [pull.id] }));
const marks = (sheets: readonly EditionSheet[]): Record<number, string | null> =>
  Object.fromEntries(sheets.map(({ number, mark }) => [number, mark]));

describe('editionRecord', () => {
  it('should number the good sheets in turn, the spoiled ones falling out', () => {
    const events = [3, 4, 5, 6, 7, 8].flatMap((sheet) => whole(sheet, 100 * sheet));
    const { sheets, problems } = editionRecord(edition, head, [...events, at(9999, { kind: 'spoiled', sheet: 4, note: 'torn' })]);
    expect(marks(sheets)).toEqual({ 3: '1/3', 4: null, 5: '2/3', 6: '3/3', 7: 'BAT', 8: 'AP 1/1' });
    expect(sheets.map((sheet) => sheet.fate)).toEqual(['numbered', 'reject', 'numbered', 'numbered', 'numbered', 'numbered']);
    expect(problems).toEqual([]);
  });

  it('should keep marks that were given by hand and give each mark once', () => {
    const chosen: Edition = {
      ...edition,
      marks: [
        { sheet: 3, mark: 'BAT' },
        { sheet: 4, mark: '' },
        { sheet: 5, mark: 'BAT' },
      ],
    };
    const { sheets } = editionRecord(
      chosen,
      head,
      [3, 4, 5, 6, 7, 8].flatMap((sheet) => whole(sheet, 0)),
    );
    expect(marks(sheets)).toEqual({ 3: 'BAT', 4: null, 5: '1/3', 6: '2/3', 7: '3/3', 8: 'AP 1/1' });
    const given = sheets.flatMap(({ mark }) => mark ?? []);
    expect([...given].sort()).toEqual([...editionMarks(edition.counts)].sort());
    expect(sheets[1]!.fate).toBe('out');
  });

  it('should lose no mark where a sheet is named twice', () => {
    const chosen: Edition = {
      ...edition,
      marks: [
        { sheet: 3, mark: 'BAT' },
        { sheet: 3, mark: '2/3' },
      ],
    };
    const { sheets, problems } = editionRecord(
      chosen,
      head,
      [3, 4, 5, 6, 7, 8].flatMap((sheet) => whole(sheet, 0)),
    );
    expect(marks(sheets)).toEqual({ 3: 'BAT', 4: '1/3', 5: '2/3', 6: '3/3', 7: 'AP 1/1', 8: null });
    expect(problems).toEqual([]);
  });

  it('should use sheets that went otherwise last, unless the edition is variable', () => {
    const how = { strokes: 2, dxMm: 0, dyMm: 0 };
    const events = [
      ...[4, 5, 6, 7, 8].flatMap((sheet) => whole(sheet, 0)),
      at(0, { kind: 'otherwise', sheet: 3, pulls: ['p1'], how, note: '' }),
      at(5, { kind: 'pulled', sheet: 3, pulls: ['p2', 'p3'] }),
    ];
    expect(marks(editionRecord(edition, head, events).sheets)[3]).toBeNull();
    const variable = { ...edition, counts: { ...edition.counts, variable: true } };
    expect(marks(editionRecord(variable, head, events).sheets)[3]).toBe('EV 1/3');
    // When it is needed all the same, it is named.
    const larger = { ...edition, counts: { ...edition.counts, ap: 2 } };
    expect(editionRecord(larger, head, events).problems.map((problem) => problem.code)).toEqual(['edition.otherwise']);
  });

  it('should let the numbers rise with the sheets, also where one that went otherwise fills up', () => {
    const how = { strokes: 2, dxMm: 0, dyMm: 0 };
    const events = [
      ...[3, 5, 6, 7].flatMap((sheet) => whole(sheet, 0)),
      at(0, { kind: 'otherwise', sheet: 4, pulls: ['p1'], how, note: '' }),
      at(5, { kind: 'pulled', sheet: 4, pulls: ['p2', 'p3'] }),
      at(9, { kind: 'spoiled', sheet: 8, note: '' }),
    ];
    expect(marks(editionRecord(edition, head, events).sheets)).toEqual({ 3: '1/3', 4: '2/3', 5: '3/3', 6: 'BAT', 7: 'AP 1/1', 8: null });
  });

  it('should say what has no sheet, what is unfinished, and whose mark has gone', () => {
    const chosen: Edition = { ...edition, counts: { ...edition.counts, ap: 2 }, marks: [{ sheet: 3, mark: '2/3' }] };
    const { problems } = editionRecord(chosen, head, [
      ...[4, 5, 6, 7].flatMap((sheet) => whole(sheet, 0)),
      at(1, { kind: 'pulled', sheet: 8, pulls: ['p1'] }),
      at(2, { kind: 'spoiled', sheet: 3, note: '' }),
    ]);
    expect(problems.map((problem) => problem.code)).toEqual(['edition.short', 'edition.unfinished', 'edition.reject']);
    expect(problems[0]!.message).toContain('AP 2/2');
    for (const problem of problems) expect(problem.message).toMatch(/[.]$/);
  });

  it('should tell when each pull went down, spoiled sheets too, and nothing of other recipes', () => {
    const events = [...whole(3, 10), ...whole(4, 10), ...whole(1, 77), at(9999, { kind: 'spoiled', sheet: 4, note: '' })];
    const { dates } = editionRecord(edition, head, events);
    expect(dates).toEqual([0, 1, 2].map((i) => ({ atMs: [10 + 1000 * i], sheets: 2 })));
  });

  it('should refuse a visit that does not print the recipe', () => {
    expect(() => editionRecord({ ...edition, recipe: 'gone' }, head, [])).toThrow(/does not print this recipe/);
  });
});

describe('numberSheets', () => {
  const counts = { ...edition.counts, impressions: 2, ap: 0, bat: false };
  const sheetOf = (number: number, more: Partial<SheetAsPulled> = {}): SheetAsPulled => ({
    ...sheetsAsPulled(head, whole(3, 0), () => null).find((sheet) => sheet.number === 3)!,
    number,
    ...more,
  });

  it('should give a mark to a proof only when no other sheet is left for it, and count by number however they are named', () => {
    const proof = sheetOf(3, { use: 'proof' });
    const sheets = [sheetOf(6), proof, sheetOf(5)];
    const numbered = numberSheets({ counts, marks: [] }, sheets, 3);
    expect(numbered.map(({ number, mark, fate }) => [number, mark, fate])).toEqual([
      [3, null, 'spare'],
      [5, '1/2', 'numbered'],
      [6, '2/2', 'numbered'],
    ]);
    expect(sheets.map(({ number }) => number)).toEqual([6, 3, 5]);
    expect(marks(numberSheets({ counts, marks: [] }, [sheetOf(6), proof], 3))).toEqual({ 3: '1/2', 6: '2/2' });
  });

  it('should tell marks by hand from marks in turn, and pass over marks for sheets that are not there', () => {
    const byHand = [
      { sheet: 77, mark: '1/2' },
      { sheet: 5, mark: '2/2' },
      { sheet: 6, mark: '' },
    ];
    const numbered = numberSheets(
      { counts, marks: byHand },
      [5, 6, 7].map((number) => sheetOf(number)),
      3,
    );
    expect(numbered.map(({ mark, chosen, fate }) => [mark, chosen, fate])).toEqual([
      ['2/2', true, 'numbered'],
      [null, true, 'out'],
      ['1/2', false, 'numbered'],
    ]);
  });

  it('should give two sheets that are kept out no mark each', () => {
    const out = [5, 6].map((sheet) => ({ sheet, mark: '' }));
    expect(numberSheets({ counts, marks: out }, [sheetOf(5), sheetOf(6)], 3).map(({ fate }) => fate)).toEqual(['out', 'out']);
  });

  it('should call a sheet finished when all its pulls are on it', () => {
    expect(numberSheets({ counts, marks: [] }, [sheetOf(5), sheetOf(6, { done: [0, 1] })], 3).map(({ finished }) => finished)).toEqual([
      true,
      false,
    ]);
  });
});
