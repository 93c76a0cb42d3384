import { describe, expect, it } from 'vitest';
import { sheetsAsPulled } from '../../../src/engine/log/as-pulled.ts';
import { checkLog } from '../../../src/engine/log/check.ts';
import { readLog, writeLog } from '../../../src/engine/log/log-file.ts';
import { planRest } from '../../../src/engine/log/rest.ts';
import { exchangedTest, filmsOfTest, testRecipe, testSheetOf, tickedTest, triedIn } from '../../../src/engine/log/test-sheet.ts';
import type { Happening, LogEvent } from '../../../src/engine/log/types.ts';
import { visitHeadOf } from '../../../src/engine/log/visit-head.ts';
import { recipeSchema } from '../../../src/engine/recipe/schema.ts';
import { recipeOf } from '../../../src/engine/recipe/write.ts';
import { type PressPlan, planVisit, type VisitInput } from '../../../src/engine/visit/visit.ts';
import { readPlan, writePlan } from '../../../src/engine/visitfile/plan-file.ts';
import { pullOf, smallProject } from '../../helpers/small-project.ts';

const { drawer, bench, press } = smallProject();
const recipes = [
  recipeOf(bench, drawer, { id: 'a', title: 'First' }),
  recipeOf([pullOf('x', 's1', 'rust')], drawer, { id: 'o', title: 'One' }),
];
const input: VisitInput = {
  runs: recipes.map((recipe) => ({ recipe, sheets: 1 })),
  minDeltaE: 1,
  press,
  seed: 'x',
  testSheet: true,
};
const planned = (change: Partial<VisitInput> = {}): PressPlan => [...planVisit({ ...input, ...change }, 20)].at(-1)!;
const plan = planned();
const head = visitHeadOf(plan, recipes, { id: 'v', title: 'v', begunMs: 0, minDeltaE: 1 });

let next = 0;
const stamped = (happenings: readonly Happening[]): LogEvent[] =>
  happenings.map((happening): LogEvent => ({ ...happening, id: `e${next++}`, atMs: 1000 * next, device: 'd' }));

describe('the test sheet of a visit', () => {
  it('should have a number behind all others, and a pull of a sheet of each set-up', () => {
    expect(plan.sheets.map(({ number }) => number)).toEqual([1, 2]);
    expect(plan.testNumber).toBe(3);
    expect(head.test).toBe(3);
    for (const { test, states, sheets } of plan.cards) {
      expect(sheets).toContain(test!.sheet);
      const state = states.find(({ recipe }) => recipe === test!.recipe)!;
      expect(state.prints).toContain(test!.at);
    }
    expect(planned({ testSheet: false }).testNumber).toBeUndefined();
  });

  it('should take a place in the racks', () => {
    // One sheet in the only place: with a test sheet the second wet one must wait until the first is dry.
    const single = { ...press, mountMinutes: 0, washUpMinutes: 0, mixMinutes: 0, lunchMinutes: 0 };
    const runs = [{ recipe: recipes[1]!, sheets: 1 }];
    const waits = (rackPlaces: number): number => {
      const { times } = planned({ runs, press: { ...single, rackPlaces } });
      return times[0]!.rackWaitMinutes;
    };
    expect(waits(1)).toBeGreaterThan(0);
    expect(waits(2)).toBe(0);
    expect(planned({ runs, press: single }).racksNeeded).toBe(2);
  });

  it('should be logged, taken back and read from a file', () => {
    const [card] = plan.cards;
    const bare = testSheetOf(head, []);
    const events = stamped(tickedTest(card!, bare, recipes, true));
    const sheet = testSheetOf(head, events)!;
    expect(sheet.tried).toHaveLength(1);
    expect(triedIn(card!, sheet, recipes)?.id).toBe(events[0]!.id);
    expect(tickedTest(card!, sheet, recipes, true)).toEqual([]);
    expect(checkLog(head, events, () => null)).toEqual([]);
    expect(readLog(writeLog(head, events), 'v.json').value).toMatchObject({ head: { test: 3 }, events });
    const after = [...events, ...stamped(tickedTest(card!, sheet, recipes, false))];
    expect(testSheetOf(head, after)!.tried).toEqual([]);
  });

  it('should be refused where it is said to have what no sheet has', () => {
    const [problem] = checkLog(head, stamped([{ kind: 'tested', sheet: 3, of: 1, pull: 'none' }]), () => null);
    expect(problem).toMatchObject({ code: 'log.pull', message: expect.stringContaining('Test sheet 3') });
    expect(testSheetOf(head, stamped([{ kind: 'tested', sheet: 3, of: 9, pull: 'x' }]))!.tried).toEqual([]);
  });

  it('should keep its number when the rest is planned, and a try that was made counts for the set-up that is still to come', () => {
    const [card] = plan.cards;
    const events = stamped(tickedTest(card!, testSheetOf(head, []), recipes, true));
    const test = testSheetOf(head, events)!;
    const sheets = sheetsAsPulled(head, events, () => null);
    const rest = [...planRest({ ...input, atHand: plan, rest: { recipes, sheets, test } }, 20)].at(-1)!;
    expect(rest.testNumber).toBe(3);
    expect(rest.cards.filter((each) => triedIn(each, test, recipes) !== null)).toHaveLength(1);
  });

  it('should be drawn from a recipe of its own, and stand in the file of the order', () => {
    const whole = testRecipe(recipes);
    expect(recipeSchema.safeParse(whole).success).toBe(true);
    expect(new Set(whole.pulls.map(({ id }) => id)).size).toBe(whole.pulls.length);
    const read = readPlan(writePlan({ plan, input, recipes }), 'plan.json');
    expect(read.problems).toEqual([]);
    expect(read.value!.plan.testNumber).toBe(3);
    expect(read.value!.plan.cards[0]!.test).toEqual(plan.cards[0]!.test);
  });

  it('should be exchanged for a fresh one where it is torn, on which nothing lies yet', () => {
    const card = plan.cards[0]!;
    const tick = stamped(tickedTest(card, testSheetOf(head, []), recipes, true));
    const torn = stamped(exchangedTest(testSheetOf(head, tick)!, true));
    const fresh = testSheetOf(head, [...tick, ...torn])!;
    expect([fresh.number, fresh.tried.length, fresh.triedBefore.length, fresh.torn.length]).toEqual([3, 0, 1, 1]);
    // The set-up was tried all the same, and can still be said not to have been.
    expect(triedIn(card, fresh, recipes)?.id).toBe(tick[0]!.id);
    expect(tickedTest(card, fresh, recipes, false)).toEqual([{ kind: 'undone', sheet: 3, event: tick[0]!.id }]);
    // A wet film on the torn one holds nothing up.
    expect(filmsOfTest(testSheetOf(head, tick)!, recipes)).toHaveLength(1);
    expect(filmsOfTest(fresh, recipes)).toEqual([]);
    const back = stamped(exchangedTest(fresh, false));
    const again = testSheetOf(head, [...tick, ...torn, ...back])!;
    expect([again.tried.length, again.torn.length]).toEqual([1, 0]);
    expect(checkLog(head, [...tick, ...torn, ...back], () => null)).toEqual([]);
    expect(readLog(writeLog(head, [...tick, ...torn]), 'a').problems).toEqual([]);
  });
});
