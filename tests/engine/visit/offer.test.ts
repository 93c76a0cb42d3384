import { describe, expect, it } from 'vitest';
import { createPlanner } from '../../../src/engine/pullorder/planner.ts';
import { Offer } from '../../../src/engine/visit/offer.ts';
import { figuresOf, type Ordered } from '../../../src/engine/visit/press-plan.ts';
import { setUpOf } from '../../../src/engine/visit/problem/order-at-hand.ts';
import { visitProblem } from '../../../src/engine/visit/visit-problem.ts';
import { CASE_PRESS, inventedVisit } from '../../helpers/printer-cases.ts';

const input = inventedVisit({ recipes: 3, sheets: 1, pulls: 5, screens: 4, seed: 'offer', odd: 3 }, CASE_PRESS);
const visit = visitProblem(input.runs, { minDeltaE: 1, registrationMm: 0.5 });
const planned = { visit, press: { ...CASE_PRESS, beds: 1 }, start: undefined };
const none = { setUps: 0, mounts: 0 };
/** Sheet by sheet and pull by pull: as many set-ups as there can be. */
const dear: Ordered = {
  setUps: visit.problem.sheets.flatMap((sheet, s) => sheet.pulls.map((_, p) => setUpOf(visit.problem, [[s, p]]))),
};
const cheap: Ordered = { setUps: createPlanner(visit.problem, { seed: 1 }).step(1e6).best.setUps };

describe('Offer', () => {
  it('should offer no order that is worse than one before, with what was proven since', () => {
    const offer = new Offer(planned, null, none);
    const [first, second] = [figuresOf(offer.of(dear, none)), figuresOf(offer.of(cheap, none))];
    expect(second.mounts).toBeLessThan(first.mounts);
    // The search may go on to one that it holds for better, as it knows nothing of the clock.
    const third = offer.of({ setUps: [...dear.setUps] }, { setUps: 3, mounts: 2 });
    expect(figuresOf(third)).toEqual(second);
    expect(third.bound).toEqual({ setUps: 3, mounts: 2 });
    expect(third.kept).toBeUndefined();
    expect(offer.best(dear)).toBe(cheap);
  });

  it('should say when the order at hand stays the best, and begin with another', () => {
    const held = { setUps: [...cheap.setUps], beds: cheap.setUps.map(() => 0), sound: true };
    const offer = new Offer(planned, held, none);
    expect(offer.of(dear, none)).toMatchObject({ kept: true, before: { mounts: figuresOf(offer.of(dear, none)).mounts } });
    expect(offer.best(dear)).toBe(dear);
  });
});
