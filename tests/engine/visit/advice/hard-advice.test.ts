import { beforeAll, describe, expect, it } from 'vitest';
import type { RestInput } from '../../../../src/engine/log/rest.ts';
import { adviceFigures } from '../../../../src/engine/visit/advice/advice-figures.ts';
import { type Advice, adviseOn } from '../../../../src/engine/visit/advice/advice.ts';
import { bestFirst } from '../../../../src/engine/visit/advice/best-first.ts';
import { orderAtHand } from '../../../../src/engine/visit/problem/order-at-hand.ts';
import { visitProblem } from '../../../../src/engine/visit/visit-problem.ts';
import { visitTimes, workMinutes } from '../../../../src/engine/visit/visit-times.ts';
import { type PressPlan, planVisit } from '../../../../src/engine/visit/visit.ts';
import { hardVisit } from '../../../helpers/hard-job.ts';
import { countedBy, pullsOf, unsound } from '../../../helpers/rest-checks.ts';

const input = hardVisit();

/** Kinds of pull of a visit, told apart by hand: no plan has fewer set-ups. */
function kindsOf({ runs }: Advice['input']): number {
  const kinds = runs.flatMap(({ recipe }) =>
    recipe.pulls.map(({ screen, ink, dxMm }) => [screen, recipe.inks.find(({ id }) => id === ink)!.name, dxMm].join()),
  );
  return new Set(kinds).size;
}

/** What an order takes, laid out anew from its cards alone; its faults by a check that is no part of the planner. */
function laidOut({ input: after, plan }: Advice): { faults: string[]; figures: Record<string, number>; pulls: number } {
  const { press, minDeltaE, testSheet } = after;
  const visit = visitProblem(after.runs, { minDeltaE, testSheet, registrationMm: press.registrationMm });
  const order = orderAtHand(plan, visit);
  const times = visitTimes(order, visit, press);
  const sheets = visit.sheets.map(({ number, recipe }) => ({ number, recipe, done: [], spoiled: false }));
  const rest = { rest: { recipes: visit.recipes, sheets } } as unknown as RestInput;
  return {
    faults: unsound(plan, rest),
    figures: { setUps: order.setUps.length, minutes: Math.round(workMinutes(times)), days: times.daysNeeded },
    pulls: plan.cards.flatMap(pullsOf).length,
  };
}

describe('adviseOn 30 unique prints of 20 pulls, in many inks and at many offsets', () => {
  let plan: PressPlan;
  const all: Advice[] = [];
  const ways = (): string[] =>
    all.map(({ edits }) => edits.map((edit) => ('screen' in edit && edit.screen ? 'screen' : edit.kind)).join(' '));

  beforeAll(() => {
    plan = [...planVisit(input, 140)].at(-1)!;
    for (const { found } of adviseOn(input, plan)) if (found !== null) all.push(found);
  }, 300_000);

  it('should have about 200 set-ups as it is', () => {
    expect(plan.cards.length).toBeGreaterThanOrEqual(190);
    expect(plan.cards.length).toBeLessThanOrEqual(230);
  });

  it('should find each way by itself and together', () => {
    expect(ways()).toEqual(
      expect.arrayContaining([
        'ink',
        'offset',
        'strokes',
        'ink offset',
        'offset strokes',
        'ink offset strokes',
        'ink offset strokes beds',
        'beds',
      ]),
    );
  });

  it('should save more than half of the set-ups and a third of the hours by the best way', () => {
    const before = adviceFigures(plan);
    const simple = all[ways().indexOf('ink offset strokes')]!.figures;
    expect(simple.setUps).toBeLessThan(before.setUps / 2);
    expect(simple.minutes).toBeLessThan((before.minutes * 2) / 3);
  });

  it('should put first for days what ends sooner, and for inks what needs fewer on a day', () => {
    const before = adviceFigures(plan);
    expect(bestFirst(all, before, 'days')[0]!.figures.days).toBeLessThan(before.days);
    if (all.some(({ figures }) => figures.inksADay < before.inksADay))
      expect(bestFirst(all, before, 'inks')[0]!.figures.inksADay).toBeLessThan(before.inksADay);
  });

  it('should offer only what an order that prints every pull in turn comes to when it is laid out anew', () => {
    for (const advice of all) {
      const { faults, figures, pulls } = laidOut(advice);
      expect(faults).toEqual([]);
      expect(pulls).toBe(
        advice.input.runs.reduce(
          (sum, { recipe, sheets, overs = 0, proofs = 0 }) => sum + (sheets + overs + proofs) * recipe.pulls.length,
          0,
        ),
      );
      expect(advice.figures).toMatchObject(figures);
      expect(advice.figures.setUps).toBeGreaterThanOrEqual(kindsOf(advice.input));
      if ((advice.input.press.beds ?? 1) === 1) expect(advice.figures.mounts).toBe(countedBy(advice.plan.cards)[0]);
    }
  });
});
