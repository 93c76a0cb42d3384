import { describe, expect, it } from 'vitest';
import { sheetsAsPulled } from '../../../src/engine/log/as-pulled.ts';
import { checkLog } from '../../../src/engine/log/check.ts';
import { inTheirPlaces } from '../../../src/engine/log/now/in-its-place.ts';
import { oversFor } from '../../../src/engine/log/overs.ts';
import { planRest } from '../../../src/engine/log/rest.ts';
import { ticksOf } from '../../../src/engine/log/ticks/ticking.ts';
import { tickKey } from '../../../src/engine/log/ticks/ticks.ts';
import type { LogEvent } from '../../../src/engine/log/types.ts';
import { visitHeadOf } from '../../../src/engine/log/visit-head.ts';
import { recipeOf } from '../../../src/engine/recipe/write.ts';
import { planVisit, type VisitInput } from '../../../src/engine/visit/visit.ts';
import { pullOf, smallProject } from '../../helpers/small-project.ts';

const { drawer, press } = smallProject();
/** Both begin with rust through screen 1, and go on with other screens; their pulls have other ids. */
const one = recipeOf([pullOf('p1', 's1', 'rust'), pullOf('p2', 's2', 'weed')], drawer, { id: 'a', title: 'Ebb' });
const other = recipeOf([pullOf('q1', 's1', 'rust'), pullOf('q2', 's3', 'foam')], drawer, { id: 'b', title: 'Flow' });
const recipes = [one, other];
const input: VisitInput = {
  runs: [
    { recipe: one, sheets: 2 },
    { recipe: other, sheets: 2, overs: 1 },
  ],
  minDeltaE: 0,
  press,
  seed: 's',
};
const plan = [...planVisit(input, 20)].at(-1)!;
const head = visitHeadOf(plan, recipes, { id: 'v', title: 'v', begunMs: 0, minDeltaE: 0 });
const event = (id: string, atMs: number, rest: Partial<LogEvent>): LogEvent => ({ id, atMs, device: 'd', ...rest }) as LogEvent;
const FIRST = [1, 2, 3, 4, 5].map((sheet) => event(`r${sheet}`, sheet, { kind: 'pulled', sheet, pulls: [sheet < 3 ? 'p1' : 'q1'] }));
const TAKES = event('t', 10, { kind: 'replaced', sheet: 1, by: 5, note: '' });
const known = () => null;
const sheetsOf = (events: LogEvent[]) => sheetsAsPulled(head, events, known);

describe('an over of another recipe', () => {
  it('should be offered while its pulls so far are the same, and no longer', () => {
    const same = sheetsOf(FIRST);
    expect(oversFor(same[0]!, same, [], recipes)).toEqual([5]);
    expect(oversFor(same[0]!, same)).toEqual([]);
    const further = sheetsOf([...FIRST, event('x', 9, { kind: 'pulled', sheet: 5, pulls: ['q2'] })]);
    expect(oversFor(further[0]!, further, [], recipes)).toEqual([]);
    const moved = sheetsOf([
      ...FIRST.slice(0, 4),
      event('o', 9, { kind: 'otherwise', sheet: 5, pulls: ['q1'], how: { dxMm: 1, dyMm: 0 }, note: '' }),
    ]);
    expect(oversFor(moved[0]!, moved, [], recipes)).toEqual([]);
    const thinner = { ...other, pulls: other.pulls.map((pull) => ({ ...pull, strokes: 2 })) };
    expect(oversFor(same[0]!, same, [], [one, thinner])).toEqual([]);
  });

  it('should be a sheet of that recipe, and go its way from there', () => {
    const events = [...FIRST, TAKES];
    const sheets = sheetsOf(events);
    expect(sheets[4]).toMatchObject({ number: 5, recipe: 0, done: [0], inPlaceOf: 1, otherwise: false });
    expect(checkLog(head, events, known)).toEqual([]);
    const order = inTheirPlaces(plan, sheets);
    const weed = order.cards.find(
      ({ screen }) =>
        screen.number ===
        plan.cards.find(({ states }) => states.some(({ recipe, prints }) => recipe === 0 && prints.includes(1)))!.screen.number,
    )!;
    expect(weed.sheets).toEqual([2, 5]);
    const later = [...events, event('w', 20, { kind: 'pulled', sheet: 5, pulls: ['p2'] })];
    expect(sheetsOf(later)[4]!.done).toEqual([0, 1]);
    expect(ticksOf(order, sheetsOf(later)).has(tickKey(weed.number, 5))).toBe(true);
    expect(checkLog(head, later, known)).toEqual([]);
  });

  it('should be planned with the rest in its new place, and come back by one undo', () => {
    const sheets = sheetsOf([...FIRST, TAKES]);
    const rest = [...planRest({ ...input, atHand: inTheirPlaces(plan, sheets), rest: { recipes, sheets } }, 20)].at(-1)!;
    expect(rest.sheets.find(({ number }) => number === 5)).toMatchObject({ recipe: 0 });
    expect(inTheirPlaces(rest, sheets)).toBe(rest);
    const undone = sheetsOf([...FIRST, TAKES, event('u', 30, { kind: 'undone', sheet: 1, event: 't' })]);
    expect(undone[4]).toMatchObject({ recipe: 1, use: 'over', done: [0] });
    expect(inTheirPlaces(plan, undone)).toBe(plan);
  });
});
