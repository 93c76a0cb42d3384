import { describe, expect, it } from 'vitest';
import { randomFrom } from '../../../src/engine/base/random.ts';
import { checkPlan } from '../../../src/engine/pullorder/check-plan.ts';
import { createPlanner, planPulls } from '../../../src/engine/pullorder/planner.ts';
import type { PlanProblem } from '../../../src/engine/pullorder/types.ts';
import { bruteForce } from './brute-force.ts';
import { smallProblem } from './small-problem.ts';

describe('planPulls', () => {
  it('should match an independent brute force on 500 random small problems', () => {
    for (let i = 0; i < 500; i++) {
      const problem = smallProblem(randomFrom(`small ${i}`));
      const plan = planPulls(problem, { budgetMs: 30, seed: i });
      const truth = bruteForce(problem, i % 10 === 0 && problem.sheets.reduce((n, s) => n + s.pulls.length, 0) < 9);
      expect(checkPlan(problem, plan), `case ${i}`).toEqual([]);
      expect(plan.bound.setUps, `case ${i}`).toBeLessThanOrEqual(truth.setUps);
      expect(plan.bound.mounts, `case ${i}`).toBeLessThanOrEqual(truth.mounts);
      const cost = [plan.mounts, plan.inkChanges, plan.registerMoves, plan.setUps.length];
      expect(cost, `case ${i}: ${JSON.stringify(problem)}`).toEqual(truth.best);
    }
  });

  it('should give the same plan for the same seed and budget', () => {
    const random = randomFrom('same');
    const problem = { sheets: Array.from({ length: 6 }, () => smallProblem(random).sheets[0]!) };
    expect(planPulls(problem, { budgetMs: 40, seed: 3 })).toEqual(planPulls(problem, { budgetMs: 40, seed: 3 }));
  });

  it('should give an empty plan for no sheets and for empty sheets', () => {
    const empty = { setUps: [], mounts: 0, inkChanges: 0, registerMoves: 0, bound: { setUps: 0, mounts: 0 } };
    expect(planPulls({ sheets: [] }, { budgetMs: 10, seed: 1 })).toEqual(empty);
    expect(planPulls({ sheets: [{ pulls: [], overlaps: [] }] }, { budgetMs: 10, seed: 1 })).toEqual(empty);
  });

  it('should stop when asked, with a whole plan', () => {
    const problem = smallProblem(randomFrom('stop'));
    const plan = planPulls(problem, { budgetMs: 1e6, seed: 1, shouldStop: () => true });
    expect(checkPlan(problem, plan)).toEqual([]);
  });

  it('should say where an overlap is wrong', () => {
    const pulls = [
      { screen: 'a', ink: 'i' },
      { screen: 'b', ink: 'i' },
    ];
    const plan = (overlaps: unknown) => () =>
      planPulls({ sheets: [{ pulls, overlaps: overlaps as [number, number][] }] }, { budgetMs: 10, seed: 1 });
    expect(plan([[1, 0]])).toThrow('Sheet 1, overlap 1 is [1, 0]');
    expect(plan([[0, 2]])).toThrow('from 0 to 1');
    expect(plan([[0, Number.NaN]])).toThrow('NaN');
    expect(plan(null)).toThrow('Sheet 1 must have a list of overlaps');
  });

  it('should refuse a budget that is no number and problems without sheets', () => {
    expect(() => planPulls({ sheets: [] }, { budgetMs: Number.NaN, seed: 1 })).toThrow('give a number, 0 or more');
    expect(() => planPulls({ sheets: [] }, { budgetMs: Infinity, seed: 1 })).toThrow('Infinity ms');
    expect(() => planPulls({ sheets: [] }, undefined as never)).toThrow('undefined ms');
    expect(() => planPulls({ sheets: [] }, { budgetMs: 1 } as never)).toThrow('The seed is undefined');
    expect(() => planPulls(null as unknown as PlanProblem, { budgetMs: 1, seed: 1 })).toThrow('list of sheets');
  });

  it('should merge 10,000 alike sheets and refuse 10,000 different ones', () => {
    const sheet = (s: number) => ({
      pulls: [`${s}`, 'b', 'c'].map((screen) => ({ screen, ink: 'i' })),
      overlaps: [
        [0, 1],
        [1, 2],
      ] as [number, number][],
    });
    const alike = { sheets: Array.from({ length: 10_000 }, () => sheet(0)) };
    const plan = planPulls(alike, { budgetMs: 50, seed: 1 });
    expect(plan.mounts).toBe(3);
    expect(plan.setUps[0]!.pulls).toHaveLength(10_000);
    const different = { sheets: Array.from({ length: 10_000 }, (_, s) => sheet(s)) };
    expect(() => planPulls(different, { budgetMs: 50, seed: 1 })).toThrow('different sheets: plan fewer');
  });
});

describe('createPlanner', () => {
  it('should improve step by step and end when nothing can be gained', () => {
    const problem = smallProblem(randomFrom('steps'));
    const planner = createPlanner(problem, { seed: 1 });
    let last = planner.step(1);
    for (let i = 0; i < 50 && !last.done; i++) last = planner.step(100_000);
    expect(last.done).toBe(true);
    expect(checkPlan(problem, last.best)).toEqual([]);
  });
});
