import { describe, expect, it } from 'vitest';
import { recipeOf } from '../../../../src/engine/recipe/write.ts';
import { adviceFigures } from '../../../../src/engine/visit/advice/advice-figures.ts';
import { type Advice, adviseOn } from '../../../../src/engine/visit/advice/advice.ts';
import { bestFirst } from '../../../../src/engine/visit/advice/best-first.ts';
import { changeOf } from '../../../../src/engine/visit/advice/change-of.ts';
import { type Edit, VisitHabits } from '../../../../src/engine/visit/advice/edits.ts';
import { splitOverNight } from '../../../../src/engine/visit/advice/over-night.ts';
import { orderAtHand } from '../../../../src/engine/visit/problem/order-at-hand.ts';
import { visitProblem } from '../../../../src/engine/visit/visit-problem.ts';
import { visitTimes } from '../../../../src/engine/visit/visit-times.ts';
import { type PressPlan, planVisit, type VisitInput } from '../../../../src/engine/visit/visit.ts';
import { CASE_PRESS, inventedVisit } from '../../../helpers/printer-cases.ts';
import { pullOf, smallProject } from '../../../helpers/small-project.ts';

const { drawer } = smallProject();

function last<T>(steps: Iterable<T>): T {
  return [...steps].at(-1)!;
}

/** All that is found, and the steps on the way. */
function advised(input: VisitInput, plan: PressPlan, only?: Edit[]): Advice[] {
  const steps = adviseOn(input, plan, only);
  for (let next = steps.next(); ; next = steps.next()) if (next.done === true) return next.value;
}

/** Screen 1 mostly in rust, once in weed; at two offsets; one pull of two strokes. */
const one = recipeOf([pullOf('a', 's1', 'rust'), pullOf('b', 's2', 'tar', { strokes: 2 })], drawer, { id: 'one', title: 'One' });
const two = recipeOf([pullOf('a', 's1', 'rust', { dxMm: 0.3 }), pullOf('b', 's2', 'tar')], drawer, { id: 'two', title: 'Two' });
const three = recipeOf([pullOf('a', 's1', 'weed'), pullOf('b', 's2', 'tar')], drawer, { id: 'three', title: 'Three' });
const PRESS = { ...CASE_PRESS, registrationMm: 0.5 };
const input: VisitInput = {
  runs: [one, two, three].map((recipe, at) => ({ recipe, sheets: 3 - at })),
  minDeltaE: 1,
  press: PRESS,
  seed: 's',
};

describe('VisitHabits', () => {
  const habits = new VisitHabits(input);
  const changed = (r: number, edit: Edit) => habits.recipeAfter(r, [edit], 'x');

  it('should give a screen its commonest ink, brought along where the recipe has it not', () => {
    expect(changed(0, { kind: 'ink', screen: null })).toBe(one);
    const after = changed(2, { kind: 'ink', screen: '1' });
    expect(after.pulls.map(({ ink }) => after.inks.find((each) => each.id === ink)!.name)).toEqual(
      one.pulls.map(({ ink }) => one.inks.find((each) => each.id === ink)!.name),
    );
    expect(after.inks.some(({ id }) => id === 'weed')).toBe(false);
    expect(changed(2, { kind: 'ink', screen: '2' })).toBe(three);
  });

  it('should draw offsets as one that the table cannot tell apart, and none that it can', () => {
    expect(changed(1, { kind: 'snap' }).pulls[0]!.dxMm).toBe(0);
    const fine = new VisitHabits({ ...input, press: { ...PRESS, registrationMm: 0.3 } });
    expect(fine.recipeAfter(1, [{ kind: 'snap' }], 'x')).toBe(two);
    expect(fine.recipeAfter(1, [{ kind: 'offset', screen: null }], 'x').pulls[0]!.dxMm).toBe(0);
  });

  it('should take strokes and sheets away and leave the rest of the visit as it is', () => {
    expect(changed(0, { kind: 'strokes' }).pulls.map(({ strokes }) => strokes)).toEqual([1, 1]);
    const after = habits.inputAfter(
      [
        { kind: 'sheets', run: 0, fewer: 2 },
        { kind: 'beds', beds: 2 },
      ],
      'x',
    );
    expect(after.runs.map(({ sheets }) => sheets)).toEqual([1, 2, 1]);
    expect(after.runs[0]!.recipe).toBe(one);
    expect(after.press).toEqual({ ...PRESS, beds: 2 });
  });
});

describe('changeOf', () => {
  it('should be nothing for the same print, small for a small move, more for a larger one and for another ink', () => {
    const moved = (dxMm: number) => changeOf(one, { ...one, pulls: one.pulls.map((pull, at) => (at === 0 ? { ...pull, dxMm } : pull)) });
    expect(changeOf(one, one)).toBe(0);
    expect(moved(0.3)).toBeGreaterThan(0);
    expect(moved(3)).toBeGreaterThan(5 * moved(0.3));
    const weed = drawer.inks.find(({ id }) => id === 'weed')!;
    const recoloured = {
      ...one,
      inks: [...one.inks, weed],
      pulls: one.pulls.map((pull, at) => (at === 0 ? { ...pull, ink: 'weed' } : pull)),
    };
    expect(changeOf(one, recoloured)).toBeGreaterThan(moved(0.3));
  });

  it('should come to the ΔE of the film times the area that it leaves and takes', () => {
    // A strip 0.3 mm wide and 100 mm high on either side of a rectangle that moves, on bare paper; of 560 × 760 mm.
    const alone = recipeOf([pullOf('a', 's1', 'rust')], drawer, { id: 'x', title: 'X' });
    const gone = (dxMm: number) => changeOf(alone, { ...alone, pulls: [{ ...alone.pulls[0]!, dxMm }] });
    // Moved by its whole width of 200 mm it is off its old place and on a new one.
    expect(gone(0.3) / gone(200)).toBeCloseTo(0.3 / 200, 4);
  });
});

describe('adviseOn', () => {
  const visit = inventedVisit({ recipes: 3, sheets: 2, pulls: 6, screens: 4, seed: 'advice', odd: 3 }, PRESS);
  const plan = last(planVisit(visit, 60));
  const all = advised(visit, plan);

  it('should plan each way as it says it is printed, with fewer set-ups for one ink a screen', () => {
    const inks = all.find(({ edits }) => edits.length === 1 && edits[0]!.kind === 'ink' && edits[0]!.screen === null)!;
    expect(inks.figures.setUps).toBeLessThan(plan.cards.length);
    expect(inks.deltaE).toBeGreaterThan(0);
    const ofScreen = new Map<string, Set<string>>();
    for (const { screen, ink } of inks.plan.cards) ofScreen.set(screen.key, (ofScreen.get(screen.key) ?? new Set()).add(ink.key));
    expect([...ofScreen.values()].every((each) => each.size === 1)).toBe(true);
    for (const { plan: made, figures, input: after } of all) {
      expect(figures).toEqual(adviceFigures(made));
      expect(made.sheets.length).toBe(after.runs.reduce((sum, { sheets, overs = 0, proofs = 0 }) => sum + sheets + overs + proofs, 0));
    }
    expect(all.some(({ edits }) => edits.some(({ kind }) => kind === 'beds'))).toBe(true);
  });

  it('should put first what saves most of the goal for its change', () => {
    const before = adviceFigures(plan);
    const [first] = bestFirst(all, before, 'mounts');
    expect(first!.figures.mounts).toBeLessThanOrEqual(before.mounts);
    const harmful = { ...first!, deltaE: 50 };
    expect(bestFirst([harmful, first!], before, 'mounts')[0]).toBe(first);
    const days = bestFirst(all, before, 'days').map(({ figures }) => figures.days * 1440 + figures.minutes);
    expect(days[0]).toBeLessThan(before.days * 1440 + before.minutes);
  });

  it('should try what is asked for alone', () => {
    const [fewer, ...more] = advised(visit, plan, [{ kind: 'sheets', run: 0, fewer: 1 }]);
    expect(more).toEqual([]);
    expect(fewer!.input.runs[0]!.sheets).toBe(1);
    expect(fewer!.changes).toEqual([]);
  });
});

describe('splitOverNight', () => {
  it('should begin a set-up in the evening that would wait for the morning, and print the same', () => {
    // By hand: 70 min for the first set-up of 30 sheets, 40 until the first pull of the second, 15 for the last
    // wash-up: of two and a half hours 25 min are left, for 16 sheets of 1.5 min.
    const recipe = recipeOf([pullOf('a', 's1', 'rust'), pullOf('b', 's3', 'foam')], drawer, { id: 'n', title: 'N' });
    const runs = [{ recipe, sheets: 30 }];
    const press = { ...PRESS, hoursPerDay: 2.5, lunchMinutes: 0, days: 2 };
    const plan = last(planVisit({ runs, press, minDeltaE: 1, seed: 'n' }, 20));
    const visit = visitProblem(runs, { minDeltaE: 1, registrationMm: 0.5 });
    const atHand = orderAtHand(plan, visit);
    const { order, split } = splitOverNight(atHand, visit, press);
    expect(split).toEqual([2]);
    expect(order.setUps.map(({ pulls: own }) => own.length)).toEqual([30, 16, 14]);
    const pulls = (of: typeof atHand.setUps): string[] => of.flatMap(({ pulls: own }) => own.map((pull) => pull.join())).sort();
    expect(pulls(order.setUps)).toEqual(pulls(atHand.setUps));
    const [before, after] = [visitTimes(atHand, visit, press), visitTimes(order, visit, press)];
    expect(before.times.map(({ day }) => day)).toEqual([1, 2]);
    expect(after.times.map(({ day }) => day)).toEqual([1, 1, 2]);
    expect(after.ends.day).toBe(2);
    expect(after.ends.minute).toBeLessThan(before.ends.minute);
  });
});
