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

/** Recipes printed on some sheets each, every sheet with lay offsets of its own on some screens. */
function shifted(recipes: number, sheetsEach: number, seed: string): PlanProblem {
  const { free } = studio(recipes, 9, 8, 60, 25, `shifted ${seed}`);
  const random = randomFrom(`offsets ${seed}`);
  return {
    sheets: free.sheets.flatMap((sheet) =>
      Array.from({ length: sheetsEach }, () => ({
        ...sheet,
        pulls: sheet.pulls.map((pull) => (random.chance(1, 4) ? { ...pull, offset: `${random.int(4)}` } : pull)),
      })),
    ),
  };
}

interface Row {
  name: string;
  sheets: number;
  pulls: number;
  swaps: number;
  budgetMs: number;
  /** Problems that the means are over. */
  seeds: number;
  /** Of these, how many are planned with ten times the work too. */
  longer?: number;
}

// The largest ones with two seeds, so that all ends within some minutes.
const rows: Row[] = [
  { name: '5 sheets × 20, mild', sheets: 5, pulls: 20, swaps: 20, budgetMs: 500, seeds: 10 },
  { name: '5 sheets × 20, shuffled', sheets: 5, pulls: 20, swaps: Infinity, budgetMs: 1000, seeds: 10 },
  { name: '10 sheets × 20, mild', sheets: 10, pulls: 20, swaps: 20, budgetMs: 1000, seeds: 10 },
  { name: '10 sheets × 20, shuffled', sheets: 10, pulls: 20, swaps: Infinity, budgetMs: 1000, seeds: 10 },
  { name: '30 sheets × 20, mild', sheets: 30, pulls: 20, swaps: 30, budgetMs: 2000, seeds: 10, longer: 3 },
  { name: '30 sheets × 20, shuffled', sheets: 30, pulls: 20, swaps: Infinity, budgetMs: 2000, seeds: 10, longer: 2 },
  { name: '60 sheets × 24, shuffled', sheets: 60, pulls: 24, swaps: Infinity, budgetMs: 5000, seeds: 2 },
  { name: '12 sheets × 80, mild', sheets: 12, pulls: 80, swaps: 200, budgetMs: 5000, seeds: 2 },
];

const percent = (part: number, of: number): string => `${((100 * part) / of).toFixed(1)} %`;
for (const { name, sheets, pulls, swaps, budgetMs, seeds, longer = 0 } of rows) {
  {
    const sum = { mounts: 0, inks: 0, bound: 0, greedy: 0, rigid: 0, closed: 0, short: 0, long: 0 };
    const started = performance.now();
    let ms = 0;
    for (let seed = 0; seed < seeds; seed++) {
      const { free, rigid } = studio(sheets, pulls, swaps, 40, 25, `${name} ${seed}`);
      const begun = performance.now();
      const plan: PullPlan = planPulls(free, { budgetMs, seed });
      ms += (performance.now() - begun) / seeds;
      sum.mounts += plan.mounts / seeds;
      sum.inks += plan.inkChanges / seeds;
      sum.bound += plan.bound.mounts / seeds;
      sum.greedy += greedyMounts(free) / seeds;
      sum.rigid += planPulls(rigid, { budgetMs, seed }).mounts / seeds;
      if (plan.bound.mounts === plan.mounts) sum.closed++;
      if (seed < longer) {
        sum.short += plan.mounts / longer;
        sum.long += planPulls(free, { budgetMs: 10 * budgetMs, seed }).mounts / longer;
      }
    }
    console.log(
      `${name}, ${budgetMs} ms (took ${ms.toFixed(0)}), mean of ${seeds}: ${sum.mounts.toFixed(1)} mounts, ${sum.inks.toFixed(1)} ink changes; ` +
        `against greedy merging ${sum.greedy.toFixed(1)} (${percent(sum.greedy - sum.mounts, sum.greedy)} saved), ` +
        `without free swaps ${sum.rigid.toFixed(1)} (${percent(sum.rigid - sum.mounts, sum.rigid)} saved); ` +
        `bound ${sum.bound.toFixed(1)}, gap ${percent(sum.mounts - sum.bound, sum.mounts)}, shown to be fewest in ${sum.closed} of ${seeds}` +
        (longer > 0
          ? `; with ten times the work ${sum.long.toFixed(1)} instead of ${sum.short.toFixed(1)}, mean of ${longer} (${percent(sum.short - sum.long, sum.long)} above)`
          : '') +
        `; row took ${((performance.now() - started) / 1000).toFixed(0)} s`,
    );
  }
}

{
  const seeds = 5;
  const sum = { mounts: 0, setUps: 0, boundMounts: 0, boundSetUps: 0 };
  for (let seed = 0; seed < seeds; seed++) {
    const plan = planPulls(shifted(10, 6, `${seed}`), { budgetMs: 2000, seed });
    sum.mounts += plan.mounts / seeds;
    sum.setUps += plan.setUps.length / seeds;
    sum.boundMounts += plan.bound.mounts / seeds;
    sum.boundSetUps += plan.bound.setUps / seeds;
  }
  console.log(
    `10 recipes × 6 sheets with offsets of their own, 2000 ms, mean of ${seeds}: ${sum.mounts.toFixed(1)} mounts (bound ${sum.boundMounts.toFixed(1)}), ` +
      `${sum.setUps.toFixed(1)} set-ups (bound ${sum.boundSetUps.toFixed(1)})`,
  );
}
