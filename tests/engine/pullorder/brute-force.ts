import type { PlanProblem } from '../../../src/engine/pullorder/types.ts';

/** (mounts, ink changes, changes of offset, set-ups), compared from the left. */
export type Cost = [number, number, number, number];

const less = (a: Cost, b: Cost): boolean => {
  for (let i = 0; i < 4; i++) if (a[i] !== b[i]) return a[i]! < b[i]!;
  return false;
};

/**
 * Cheapest plan by plain label correcting over all sets of printed pulls, with lists and strings
 * only; independent of the planner. Also the fewest set-ups and mounts of any plan whatever else it
 * costs. A set-up may be any kind at any time; eager printing is NOT assumed: every subset of the
 * ready pulls of a kind is tried when `allSubsets` is set.
 */
export function bruteForce(problem: PlanProblem, allSubsets = false): { best: Cost; setUps: number; mounts: number } {
  const pulls = problem.sheets.flatMap((sheet, s) =>
    sheet.pulls.map((pull, p) => ({
      kind: [pull.screen, pull.ink, pull.offset ?? ''],
      before: sheet.overlaps.filter(([, b]) => b === p).map(([a]) => `${s}.${a}`),
      id: `${s}.${p}`,
    })),
  );
  const kinds = [...new Map(pulls.map((p) => [p.kind.join('|'), p.kind])).values()];
  const at = new Map(pulls.map((p, i) => [p.id, i]));
  const need = pulls.map((p) => p.before.reduce((m, id) => m | (1 << at.get(id)!), 0));
  const full = 2 ** pulls.length - 1;
  const search = (weigh: (from: string[] | null, to: string[]) => Cost): Cost => {
    const labels = new Map<string, { mask: number; last: string[] | null; cost: Cost }>();
    let front = [{ mask: 0, last: null as string[] | null, cost: [0, 0, 0, 0] as Cost }];
    let best: Cost | null = pulls.length === 0 ? [0, 0, 0, 0] : null;
    while (front.length > 0) {
      const next: typeof front = [];
      for (const node of front) {
        if (labels.get(`${node.mask}/${node.last?.join('|')}`)?.cost !== node.cost && node.last) continue;
        for (const kind of kinds) {
          const ready = pulls.flatMap((p, i) =>
            !(node.mask & (1 << i)) && (need[i]! & ~node.mask) === 0 && p.kind.join('|') === kind.join('|') ? [1 << i] : [],
          );
          if (ready.length === 0) continue;
          const choices = allSubsets ? 2 ** ready.length - 1 : 1;
          for (let choice = 0; choice < choices; choice++) {
            const printed = ready.reduce((m, bit, i) => (choice & (1 << i) ? m : m | bit), 0);
            const mask = node.mask | printed;
            const step = weigh(node.last, kind);
            const cost = node.cost.map((c, i) => c + step[i]!) as Cost;
            if (best && !less(cost, best)) continue;
            if (mask === full) {
              best = cost;
              continue;
            }
            const key = `${mask}/${kind.join('|')}`;
            const known = labels.get(key);
            if (known && !less(cost, known.cost)) continue;
            const label = { mask, last: kind, cost };
            labels.set(key, label);
            next.push(label);
          }
        }
      }
      front = next;
    }
    return best!;
  };
  const mount = (from: string[] | null, to: string[]): number => (from?.[0] === to[0] ? 0 : 1);
  return {
    best: search((from, to) => [mount(from, to), from?.[1] === to[1] ? 0 : 1, from?.[0] === to[0] && from?.[2] !== to[2] ? 1 : 0, 1]),
    setUps: search(() => [1, 0, 0, 0])[0],
    mounts: search((from, to) => [mount(from, to), 0, 0, 0])[0],
  };
}
