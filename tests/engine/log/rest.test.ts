import { describe, expect, it } from 'vitest';
import { sheetsAsPulled } from '../../../src/engine/log/as-pulled.ts';
import { planRest, type RestInput, type RestPlan } from '../../../src/engine/log/rest.ts';
import type { LogEvent, VisitHead } from '../../../src/engine/log/types.ts';
import { dryingPairs, overlapsOf } from '../../../src/engine/order/overlaps.ts';
import { studioOfRecipe, recipeOf } from '../../../src/engine/recipe/write.ts';
import { type PressPlan, planVisit } from '../../../src/engine/visit/visit.ts';
import { pullOf, smallProject } from '../../helpers/small-project.ts';

const { drawer, bench, press } = smallProject();
const first = recipeOf(bench, drawer, { id: 'a', title: 'First' });
const turned = recipeOf([...bench].reverse(), drawer, { id: 'b', title: 'Turned' });
const recipes = [first, turned];
const head: VisitHead = {
  id: 'v',
  title: 'Visit',
  begunMs: 0,
  recipes,
  sheets: [0, 0, 0, 1, 1].map((recipe, i) => ({ number: i + 1, recipe })),
};
const visit = {
  runs: [
    { recipe: first, sheets: 3 },
    { recipe: turned, sheets: 2 },
  ],
  minDeltaE: 1,
  press,
  seed: 'x',
};

function inputOf(events: LogEvent[]): RestInput {
  return { ...visit, rest: { recipes, sheets: sheetsAsPulled(head, events) } };
}
function last(steps: Iterable<PressPlan>): PressPlan {
  let plan: PressPlan | null = null;
  for (const step of steps) plan = step;
  return plan!;
}
const pulled = (sheet: number, ...pulls: string[]): LogEvent => ({
  id: `${sheet} ${pulls.join()}`,
  atMs: 1,
  device: 'd',
  sheet,
  kind: 'pulled',
  pulls,
});

/** Replays the rest on paper: every sheet ends complete, and what overlaps visibly lies in order. */
function replay(plan: PressPlan, input: RestInput): void {
  for (const sheet of input.rest.sheets) {
    const order = [...sheet.done];
    for (const card of plan.cards) {
      for (const state of card.states) {
        if (!state.sheets.includes(sheet.number)) continue;
        expect(state.recipe).toBe(sheet.recipe);
        order.push(...state.prints);
        expect(state.after.map((pull) => pull.screen)).toEqual(order.map((at) => recipes[sheet.recipe]!.pulls[at]!.screen));
      }
    }
    if (sheet.spoiled) {
      expect(order).toEqual(sheet.done);
      continue;
    }
    expect([...order].sort()).toEqual([0, 1, 2]);
    const recipe = recipes[sheet.recipe]!;
    for (const { a, b } of overlapsOf({ pulls: recipe.pulls }, studioOfRecipe(recipe), { toleranceMm: 0.05, minDeltaE: 1 })) {
      expect(order.indexOf(a)).toBeLessThan(order.indexOf(b));
    }
  }
}

describe('planRest', () => {
  it('should be the whole visit while nothing is done', () => {
    const input = inputOf([]);
    const rest = last(planRest(input, 200));
    const whole = last(planVisit(visit, 200));
    replay(rest, input);
    expect([rest.cards.length, rest.mounts, rest.sheets.length]).toEqual([whole.cards.length, whole.mounts, 5]);
  });
  it('should pull only what is left, under the numbers on the backs of the sheets', () => {
    const spoiled: LogEvent = { id: 's', atMs: 2, device: 'd', sheet: 2, kind: 'spoiled', note: '' };
    const input = inputOf([pulled(1, 'p1'), pulled(3, 'p1', 'p2'), pulled(2, 'p1'), spoiled, pulled(4, 'p3', 'p2', 'p1')]);
    const plan = last(planRest(input, 200));
    replay(plan, input);
    expect(plan.sheets.map((sheet) => sheet.number)).toEqual([1, 3, 5]);
    expect(plan.recipes.map((recipe) => recipe.sheets)).toEqual([[1, 3], [5]]);
  });
  it('should number what is left behind the set-ups that are done, on cards and in what it says', () => {
    const input = inputOf([pulled(1, 'p1')]);
    const short = { ...input, press: { ...input.press, days: 1, hoursPerDay: 1 } };
    const numbersOf = (before?: number) => {
      const plan = last(planRest({ ...short, rest: { ...input.rest, ...(before === undefined ? {} : { setUpsBefore: before }) } }, 100));
      const late = plan.problems.find(({ code }) => code === 'visit.too-long')!.message;
      return { plan, numbers: plan.cards.map(({ number }) => number), late: late.match(/set-ups? \D*(\d+)/)![1] };
    };
    const [from, on] = [numbersOf(), numbersOf(7)];
    expect(from.numbers[0]).toBe(1);
    expect(on.numbers).toEqual(from.numbers.map((number) => number + 7));
    expect(Number(on.late)).toBe(Number(from.late) + 7);
    expect([from.plan.setUpsBefore, on.plan.setUpsBefore]).toEqual([undefined, 7]);
  });
  it('should lay what went otherwise under what is left', () => {
    const otherwise: LogEvent = {
      id: 'o',
      atMs: 1,
      device: 'd',
      sheet: 1,
      kind: 'otherwise',
      pulls: ['p1'],
      how: { strokes: 3, dxMm: 0, dyMm: 0 },
      note: '',
    };
    const plan = last(planRest(inputOf([otherwise, pulled(2, 'p1')]), 200));
    const strokes = (sheet: number): number[] =>
      plan.cards
        .flatMap((card) => card.states)
        .find((state) => state.sheets.includes(sheet))!
        .before.map((pull) => pull.strokes);
    expect(strokes(1)).toEqual([3]);
    expect(strokes(2)).toEqual([1]);
  });
  describe('amid a day', () => {
    const noon = 12 * 60;
    const nowMs = 1_000_000_000;
    const [rust] = drawer.inks;
    // Day 2, noon; the studio begins at 9:30, so it is minute 1440 + 150.
    const at = (sheet: number, minutesAgo: number, ...pulls: string[]): LogEvent => ({
      ...pulled(sheet, ...pulls),
      atMs: nowMs - minutesAgo * 60_000,
    });
    const amid = (events: LogEvent[]): RestInput => {
      const input = inputOf(events);
      return { ...input, rest: { ...input.rest, now: { atMs: nowMs, day: 2, minuteOfDay: noon } } };
    };
    const absolute = (plan: PressPlan, i: number): number => (plan.times[i]!.day - 1) * 1440 + plan.times[i]!.startMinute;

    it('should begin now, not on the first morning', () => {
      const plan = last(planRest(amid([at(1, 600, 'p1')]), 100)) as RestPlan;
      expect(plan.begins).toMatchObject({ day: 2, minute: 150, wetSheets: 0, stays: null });
      for (const i of plan.cards.keys()) expect(absolute(plan, i)).toBeGreaterThanOrEqual(1440 + 150);
    });

    it('should let what was pulled just now dry before another film goes over it', () => {
      const wait = rust!.dryMinutes;
      expect(wait).toBeGreaterThan(0);
      const events = [1, 2, 3].map((sheet) => at(sheet, 2, 'p1'));
      const plan = last(planRest(amid(events), 100)) as RestPlan;
      expect(plan.begins!.wetSheets).toBe(3);
      const touching = dryingPairs({ pulls: bench }, drawer, { toleranceMm: 0.05 })
        .filter(({ a }) => a === 0)
        .map(({ b }) => b);
      expect(touching.length).toBeGreaterThan(0);
      let waited = 0;
      for (const [i, card] of plan.cards.entries()) {
        const over = card.states.some((state) => state.recipe === 0 && state.prints.some((print) => touching.includes(print)));
        if (!over) continue;
        waited++;
        const own = plan.parts.filter((part) => part.setUp === i && part.kind === 'print').at(-1)!;
        // The last pull of the set-up is one that waited.
        expect((own.day - 1) * 1440 + own.toMinute).toBeGreaterThanOrEqual(1440 + 150 - 2 + wait);
      }
      expect(waited).toBeGreaterThan(0);
      const dry = last(planRest(amid([1, 2, 3].map((sheet) => at(sheet, 2 + wait, 'p1'))), 100)) as RestPlan;
      expect(dry.begins!.wetSheets).toBe(0);
    });

    it('should keep the frame that is on the press when more is to be pulled with it', () => {
      const plan = last(planRest(amid([at(1, 5, 'p1')]), 100)) as RestPlan;
      const key = plan.begins!.stays;
      expect(key).toEqual(['1']);
      expect(plan.cards[0]!.screen.key).toBe('1');
      expect(plan.cards[0]!.mount).toBe(false);
      const first = plan.parts.filter((part) => part.setUp === 0).map((part) => part.kind);
      expect(first).not.toContain('mount');
      expect(first).not.toContain('mix');
      // Yesterday's frame was washed up overnight.
      const morning = last(planRest(amid([at(1, 1000, 'p1')]), 100)) as RestPlan;
      expect(morning.begins!.stays).toBeNull();
      expect(morning.cards[0]!.mount).toBe(true);
    });
  });

  it('should say that nothing is left', () => {
    const one = recipeOf([pullOf('x', 's1', 'rust')], drawer, { id: 'o', title: 'One' });
    const input: RestInput = {
      ...visit,
      rest: { recipes: [one], sheets: [{ number: 1, recipe: 0, pulls: one.pulls, done: [0], spoiled: false }] },
    };
    expect(() => last(planRest(input, 50))).toThrow(/Nothing is left to pull/);
  });
});
