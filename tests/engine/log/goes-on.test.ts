import { describe, expect, it } from 'vitest';
import { recipeAsPulled, recipesAsPulled, sheetsAsPulled } from '../../../src/engine/log/as-pulled.ts';
import { checkLog } from '../../../src/engine/log/check.ts';
import { readLog, writeLog } from '../../../src/engine/log/log-file.ts';
import { alikeSheets, chosenFor } from '../../../src/engine/log/now/chosen.ts';
import { goingOn } from '../../../src/engine/log/now/goes-on.ts';
import { readEvents } from '../../../src/engine/log/read-events.ts';
import { planRest } from '../../../src/engine/log/rest.ts';
import { ticksOf } from '../../../src/engine/log/ticks/ticking.ts';
import type { Happening, LogEvent, VisitHead } from '../../../src/engine/log/types.ts';
import { recipeOf } from '../../../src/engine/recipe/write.ts';
import { workshopOf } from '../../../src/engine/visit/lent/workshop.ts';
import type { PressPlan } from '../../../src/engine/visit/visit.ts';
import { planVisit } from '../../../src/engine/visit/visit.ts';
import { pullOf, rectangle, screenAt, smallProject } from '../../helpers/small-project.ts';

const { drawer, press } = smallProject();
const one = recipeOf([pullOf('p1', 's1', 'rust'), pullOf('p2', 's2', 'weed'), pullOf('p3', 's3', 'foam')], drawer, {
  id: 'one',
  title: 'One',
});
const other = recipeOf([pullOf('q1', 's2', 'tar')], drawer, { id: 'other', title: 'Other' });
const head: VisitHead = {
  id: 'v',
  title: 'Visit',
  begunMs: 1000,
  recipes: [one, other],
  sheets: [
    { number: 1, recipe: 0 },
    { number: 2, recipe: 0 },
    { number: 3, recipe: 1 },
  ],
};
let clock = 0;
const log = (...happenings: Happening[]): LogEvent[] =>
  happenings.map((each) => ({ ...each, id: `e${++clock}`, atMs: 1000 + clock * 60_000, device: 'd' }) as LogEvent);
const more = goingOn([pullOf('n1', 's2', 'tar', { dxMm: 3 }), pullOf('n2', 's1', 'clay')], drawer);
const EVENTS = log(
  { kind: 'otherwise', sheet: 1, pulls: ['p1'], how: { dxMm: 2, dyMm: 0 }, note: '' },
  { kind: 'pulled', sheet: 2, pulls: ['p1'] },
  { kind: 'goes-on', sheet: 1, ...more },
  { kind: 'goes-on', sheet: 2, ...more },
);

function last<T>(steps: Iterable<T>): T {
  return [...steps].at(-1)!;
}

describe('a sheet that goes on otherwise than planned', () => {
  it('should keep what is down as it was pulled, and have the chosen pulls left in place of the planned ones', () => {
    const recipes = recipesAsPulled(head, EVENTS);
    const [first, second, third] = sheetsAsPulled(head, EVENTS);
    // Both had the same planned pull on them and go on alike: one recipe.
    expect(recipes).toHaveLength(3);
    expect([first!.recipe, second!.recipe, third!.recipe]).toEqual([2, 2, 1]);
    expect(recipes[2]!.pulls.map(({ id }) => id)).toEqual(['p1', 'n1', 'n2']);
    expect(recipes[2]!.inks.map(({ id }) => id)).toContain('clay');
    expect(recipes[2]!.parent).toBe('one');
    expect(first!.pulls.map(({ dxMm }) => dxMm)).toEqual([2]);
    expect(first!.done).toEqual([0]);
    expect(second!.otherwise).toBe(false);
    // The recipe stays the same object, by which pictures and pairs of pulls are known.
    expect(recipesAsPulled(head, EVENTS)[2]).toBe(recipes[2]);
    const pulled = [...EVENTS, ...log({ kind: 'pulled', sheet: 1, pulls: ['n1', 'n2'] })];
    const sheet = sheetsAsPulled(head, pulled)[0]!;
    expect(sheet.done).toEqual([0, 1, 2]);
    expect(
      recipeAsPulled(recipesAsPulled(head, pulled)[2]!, sheet, { id: 'kept', title: 'Kept' }).pulls.map(({ screen }) => screen),
    ).toEqual(['s1', 's2', 's1']);
    expect(checkLog(head, pulled)).toEqual([]);
  });

  it('should refuse more pulls than a sheet takes', () => {
    const pulls = Array.from({ length: 200 }, (_, i) => pullOf(`f${i}`, 's1', 'rust'));
    const full = recipeOf(pulls, drawer, { id: 'full', title: 'Full' });
    const choice = { more: [pullOf('n', 's2', 'tar')], studio: drawer, id: 'x' };
    const sheet = { number: 7, recipe: 0, done: [0, 1] };
    expect(() => chosenFor([sheet], [full], { ...choice, planned: true })).toThrow(/Sheet 7 would have 201 pulls.*at most 200/);
    expect(chosenFor([sheet], [full], { ...choice, planned: false })).toHaveLength(1);
  });

  it('should plan the rest with it, and without it when it is undone', () => {
    const planned: PressPlan = last(
      planVisit(
        {
          runs: [
            { recipe: one, sheets: 2 },
            { recipe: other, sheets: 1 },
          ],
          press,
          minDeltaE: 1,
          seed: 's',
        },
        50,
      ),
    );
    const rest = (events: readonly LogEvent[]): PressPlan =>
      last(
        planRest(
          {
            runs: [],
            press,
            minDeltaE: 1,
            seed: 's',
            atHand: planned,
            rest: { recipes: recipesAsPulled(head, events), sheets: sheetsAsPulled(head, events) },
          },
          50,
        ),
      );
    const pulls = (plan: PressPlan): string[] =>
      plan.cards.flatMap(({ screen, ink, sheets }) => sheets.map((sheet) => `${sheet}: ${screen.key} ${ink.key}`)).sort();
    expect(pulls(rest(EVENTS))).toEqual(['1: 1 Clay', '1: 2 Tar', '2: 1 Clay', '2: 2 Tar', '3: 2 Tar']);
    const undone = [
      ...EVENTS,
      ...log({ kind: 'undone', sheet: 1, event: EVENTS[2]!.id }, { kind: 'undone', sheet: 2, event: EVENTS[3]!.id }),
    ];
    expect(pulls(rest(undone))).toEqual(['1: 2 Weed', '1: 3 Foam', '2: 2 Weed', '2: 3 Foam', '3: 2 Tar']);
    // What was undone keeps its place among the recipes.
    expect(recipesAsPulled(head, undone)).toHaveLength(3);
    expect(sheetsAsPulled(head, undone).map(({ recipe }) => recipe)).toEqual([0, 0, 1]);
    // The order from before says nothing of a sheet that left it.
    const ticks = ticksOf(planned, sheetsAsPulled(head, EVENTS));
    for (const { number, sheets } of planned.cards) for (const sheet of sheets) expect(ticks.has(`${number}:${sheet}`)).toBe(false);
  });

  it('should come back from a file, and be left out where it names what it does not carry', () => {
    expect(readLog(writeLog(head, EVENTS), 'log.json').value!.events).toEqual(EVENTS);
    const lost = { ...EVENTS[2]!, parts: { ...more.parts, inks: [] } };
    expect(readLog(writeLog(head, [lost as LogEvent]), 'log.json').problems[0]!.message).toBe(
      `log.json, event ${lost.id}: more[0].ink names "tar", which is not among the inks of the file; add it or name another.`,
    );
    const read = readEvents([lost, EVENTS[1]], 'log');
    expect([read.read.length, read.problems.length]).toEqual([1, 1]);
  });

  it('should tell in a sentence when it contradicts itself', () => {
    const after = [...EVENTS, ...log({ kind: 'pulled', sheet: 1, pulls: ['p3'] })];
    expect(checkLog(head, after).map(({ message }) => message)).toEqual([
      'Sheet 1 is said to be pulled with "p3", but One and 2 more has no such pull, so no screen for it was there; undo the entry.',
    ]);
  });
});

describe('a choice at the press', () => {
  it('should be logged for each sheet with what was planned after it, or without', () => {
    const recipes = recipesAsPulled(head, EVENTS.slice(0, 2));
    const sheets = sheetsAsPulled(head, EVENTS.slice(0, 2));
    const choice = { more: [pullOf('x', 's2', 'tar')], studio: drawer, id: 'new' };
    const after = (planned: boolean): string[][] => {
      const would = [...EVENTS.slice(0, 2), ...log(...chosenFor(sheets.slice(1), recipes, { ...choice, planned }))];
      return sheetsAsPulled(head, would).map(({ recipe }) => recipesAsPulled(head, would)[recipe]!.pulls.map(({ id }) => id));
    };
    expect(after(true)).toEqual([
      ['p1', 'p2', 'p3'],
      ['p1', 'new-1', 'p2', 'p3'],
      ['new-1', 'q1'],
    ]);
    const planned = [...EVENTS.slice(0, 2), ...log(...chosenFor(sheets.slice(1, 2), recipes, { ...choice, planned: true }))];
    expect(recipesAsPulled(head, planned).at(-1)!.title).toBe('One and 1 more');
    expect(after(false)).toEqual([['p1', 'p2', 'p3'], ['p1', 'new-1'], ['new-1']]);
    // Sheet 1 was pulled 2 mm off, so sheet 2 has not the same on it.
    expect(alikeSheets(sheets[0]!, sheets)).toEqual([]);
    const bare = sheetsAsPulled(head, []);
    expect(alikeSheets(bare[0]!, bare).map(({ number }) => number)).toEqual([2]);
  });
});

describe('workshopOf', () => {
  it('should know a stencil again under another id, and take in another one under a free id', () => {
    const tall = { ...rectangle('wide', 30, 30), name: 'square' };
    const renamed = { ...other, screens: other.screens.map((screen) => ({ ...screen, id: 'x' })), pulls: [pullOf('q1', 'x', 'tar')] };
    const clash = { shapes: [tall], screens: [screenAt('s1', 9, 'wide', 50, 50)], inks: drawer.inks };
    const { studio, screens, inks } = workshopOf(one, [renamed], clash);
    expect(screens).toEqual(['s1', 's2', 's3', 's1 b']);
    expect(studio.screens.at(-1)!.placed[0]!.shape).toBe('wide b');
    expect(inks.sort()).toEqual(['foam', 'rust', 'tar', 'weed']);
    expect(studio.inks.some(({ id }) => id === 'clay')).toBe(true);
  });
});
