import { entryAt, num } from '../base/at.ts';
import type { Problem } from '../base/error.ts';
import { say } from '../words/en/pullorder/pullorder.ts';
import type { PlanProblem, PullPlan } from './types.ts';

/**
 * Replays a plan pull by pull and lists what is wrong with it. Shares no code with the planner.
 * Checks that each pull is printed once, by a set-up of its kind, after all earlier overlapping
 * pulls of its sheet were printed by earlier set-ups; that none whose turn had come was passed over
 * by a set-up of its kind; and that the counted mounts, ink changes and changes of offset are right.
 * @returns an empty list for a sound plan; codes 'plan.*', sheets and set-ups counted from 1
 */
export function checkPlan(problem: PlanProblem, plan: PullPlan): Problem[] {
  const problems: Problem[] = [];
  const fault = (code: string, where: string, message: string): void => {
    problems.push({ code, message: `${where}: ${message}`, where });
  };
  const printedIn = problem.sheets.map((sheet) => sheet.pulls.map(() => -1));
  const before = problem.sheets.map((sheet) => {
    const lists: number[][] = sheet.pulls.map(() => []);
    for (const [a, b] of sheet.overlaps) lists[b]?.push(a);
    return lists;
  });
  let mounts = 0;
  let inkChanges = 0;
  let registerMoves = 0;
  plan.setUps.forEach((setUp, i) => {
    const where = `set-up ${i + 1}`;
    const previous = plan.setUps[i - 1];
    if (previous?.screen !== setUp.screen) mounts++;
    else if (previous.offset !== setUp.offset) registerMoves++;
    if (previous?.ink !== setUp.ink) inkChanges++;
    if (setUp.pulls.length === 0) fault('plan.empty', where, say.printsNothingLeaveIt);
    for (const [s, p] of setUp.pulls) {
      const pull = problem.sheets[s]?.pulls[p];
      if (!pull) {
        fault('plan.unknown', where, say.sheetHasNoPull(s + 1, p + 1));
        continue;
      }
      if (pull.screen !== setUp.screen || pull.ink !== setUp.ink || (pull.offset ?? '') !== setUp.offset) {
        fault('plan.kind', where, say.pullOfSheetIs(p + 1, s + 1));
      }
      if (num(entryAt(printedIn, s), p) >= 0) fault('plan.twice', where, say.pullOfSheetWas(p + 1, s + 1));
      for (const a of entryAt(entryAt(before, s), p)) {
        const at = num(entryAt(printedIn, s), a);
        if (at < 0 || at === i) fault('plan.order', where, say.pullOfSheetMust(p + 1, s + 1, a + 1));
      }
      entryAt(printedIn, s)[p] = i;
    }
  });
  problem.sheets.forEach((sheet, s) => {
    sheet.pulls.forEach((pull, p) => {
      const where = `sheet ${s + 1}, pull ${p + 1}`;
      const at = num(entryAt(printedIn, s), p);
      if (at < 0) return fault('plan.missing', where, say.isNeverPrinted);
      const since = Math.max(-1, ...entryAt(entryAt(before, s), p).map((a) => num(entryAt(printedIn, s), a)));
      for (let i = since + 1; i < at; i++) {
        const setUp = entryAt(plan.setUps, i);
        if (setUp.screen === pull.screen && setUp.ink === pull.ink && setUp.offset === (pull.offset ?? '')) {
          return fault('plan.waits', where, say.couldHaveBeenPrinted(i + 1, at + 1));
        }
      }
    });
  });
  const counts = { mounts, inkChanges, registerMoves };
  for (const key of ['mounts', 'inkChanges', 'registerMoves'] as const) {
    if (plan[key] !== counts[key]) fault('plan.count', 'plan', say.isCounted(key, plan[key], counts[key]));
  }
  if (plan.bound.setUps > plan.setUps.length) fault('plan.bound', 'plan', say.boundOnSetUps);
  if (plan.bound.mounts > mounts) fault('plan.bound', 'plan', say.boundOnMountsIs);
  return problems;
}
