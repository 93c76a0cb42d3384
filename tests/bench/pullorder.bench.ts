import { bench, describe } from 'vitest';
import { randomFrom } from '../../src/engine/base/random.ts';
import { planPulls } from '../../src/engine/pullorder/planner.ts';
import type { PlanProblem, PlanSheet, PullPlan } from '../../src/engine/pullorder/types.ts';

/**
 * Sheets as an explorer leaves them: all go through the same screens, each in an order of its own,
 * some pulls left out; part of the pairs overlap.
 * @param swaps exchanges of neighbours away from a common order; Infinity shuffles
 * @param overlapPercent pairs of pulls that touch
 * @param freePercent touching pairs that may change places all the same
 */
function studio(sheets: number, pulls: number, swaps: number, overlapPercent: number, freePercent: number, seed: string) {
  const random = randomFrom(`studio ${seed}`);
  const screens = Array.from({ length: pulls }, (_, i) => ({ screen: `S-${i}`, ink: `ink ${random.int(8)}` }));
  const common = random.shuffle(screens);
  const free: PlanProblem['sheets'][number][] = [];
  const rigid: PlanProblem['sheets'][number][] = [];
  for (let s = 0; s < sheets; s++) {
    const order = swaps === Infinity ? random.shuffle(common) : [...common];
    for (let k = 0; k < swaps && swaps !== Infinity; k++) {
      const i = random.int(pulls - 1);
      [order[i], order[i + 1]] = [order[i + 1]!, order[i]!];
    }
    const kept = order.filter(() => !random.chance(1, 10));
    const touching: [number, number][] = [];
    for (let b = 1; b < kept.length; b++) for (let a = 0; a < b; a++) if (random.chance(overlapPercent, 100)) touching.push([a, b]);
    rigid.push({ pulls: kept, overlaps: touching });
    free.push({ pulls: kept, overlaps: touching.filter(() => !random.chance(freePercent, 100)) });
  }
  return { free: { sheets: free }, rigid: { sheets: rigid } };
}

/** What a careful person does by hand: always the screen that prints on most sheets now. */
function greedyMounts(problem: PlanProblem): number {
  const left = problem.sheets.map((sheet: PlanSheet) => new Set(sheet.pulls.keys()));
  const ready = (s: number, p: number): boolean => problem.sheets[s]!.overlaps.every(([a, b]) => b !== p || !left[s]!.has(a));
  let mounts = 0;
  while (left.some((set) => set.size > 0)) {
    const counts = new Map<string, [number, number][]>();
    left.forEach((set, s) => {
      for (const p of set) {
        if (!ready(s, p)) continue;
        const screen = problem.sheets[s]!.pulls[p]!.screen;
        counts.set(screen, [...(counts.get(screen) ?? []), [s, p]]);
      }
    });
    const [, most] = [...counts].reduce((a, b) => (b[1].length > a[1].length ? b : a));
    for (const [s, p] of most) left[s]!.delete(p);
    mounts++;
  }
  return mounts;
}

const rows: [string, number, number, number, number][] = [
  ['5 sheets × 20, mild', 5, 20, 20, 500],
  ['5 sheets × 20, shuffled', 5, 20, Infinity, 2000],
  ['10 sheets × 20, mild', 10, 20, 20, 2000],
  ['30 sheets × 20, mild', 30, 20, 30, 2000],
  ['30 sheets × 20, shuffled', 30, 20, Infinity, 2000],
  ['60 sheets × 24, shuffled', 60, 24, Infinity, 5000],
  ['12 sheets × 80, mild', 12, 80, 200, 5000],
];

describe('pull order', () => {
  // The runner calls a bench several times; the figures are the same each time, so once is enough.
  const told = new Set<string>();
  for (const [name, sheets, pulls, swaps, budgetMs] of rows) {
    bench(
      name,
      () => {
        if (told.has(name)) return;
        told.add(name);
        const sum = { mounts: 0, inks: 0, bound: 0, greedy: 0, rigid: 0, closed: 0, longer: 0 };
        const seeds = 10;
        for (let seed = 0; seed < seeds; seed++) {
          const { free, rigid } = studio(sheets, pulls, swaps, 40, 25, `${name} ${seed}`);
          const plan: PullPlan = planPulls(free, { budgetMs, seed });
          sum.mounts += plan.mounts / seeds;
          sum.inks += plan.inkChanges / seeds;
          sum.bound += plan.bound.mounts / seeds;
          sum.greedy += greedyMounts(free) / seeds;
          sum.rigid += planPulls(rigid, { budgetMs, seed }).mounts / seeds;
          if (plan.bound.mounts === plan.mounts) sum.closed++;
          if (sheets === 30 && swaps !== Infinity) sum.longer += planPulls(free, { budgetMs: 10 * budgetMs, seed }).mounts / seeds;
        }
        const percent = (part: number, of: number): string => `${((100 * part) / of).toFixed(1)} %`;
        console.log(
          `${name}, ${budgetMs} ms, mean of ${seeds}: ${sum.mounts.toFixed(1)} mounts, ${sum.inks.toFixed(1)} ink changes; ` +
            `against greedy merging ${sum.greedy.toFixed(1)} (${percent(sum.greedy - sum.mounts, sum.greedy)} saved), ` +
            `without free swaps ${sum.rigid.toFixed(1)} (${percent(sum.rigid - sum.mounts, sum.rigid)} saved); ` +
            `bound ${sum.bound.toFixed(1)}, gap ${percent(sum.mounts - sum.bound, sum.mounts)}, shown to be fewest in ${sum.closed} of ${seeds}` +
            (sum.longer > 0 ? `; with ten times the work ${sum.longer.toFixed(1)}` : ''),
        );
      },
      { iterations: 1, time: 0, warmupIterations: 0, warmupTime: 0 },
    );
  }
});
