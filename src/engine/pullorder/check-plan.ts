import { entryAt, num } from '../base/at.ts';
import type { Problem } from '../base/error.ts';
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
    if (setUp.pulls.length === 0) fault('plan.empty', where, 'prints nothing; leave it out.');
    for (const [s, p] of setUp.pulls) {
      const pull = problem.sheets[s]?.pulls[p];
      if (!pull) {
        fault('plan.unknown', where, `sheet ${s + 1} has no pull ${p + 1}.`);
        continue;
      }
      if (pull.screen !== setUp.screen || pull.ink !== setUp.ink || (pull.offset ?? '') !== setUp.offset) {
        fault('plan.kind', where, `pull ${p + 1} of sheet ${s + 1} is of another screen, ink or offset.`);
      }
      if (num(entryAt(printedIn, s), p) >= 0) fault('plan.twice', where, `pull ${p + 1} of sheet ${s + 1} was printed before.`);
      for (const a of entryAt(entryAt(before, s), p)) {
        const at = num(entryAt(printedIn, s), a);
        if (at < 0 || at === i) fault('plan.order', where, `pull ${p + 1} of sheet ${s + 1} must wait for pull ${a + 1}.`);
      }
      entryAt(printedIn, s)[p] = i;
    }
  });
  problem.sheets.forEach((sheet, s) => {
    sheet.pulls.forEach((pull, p) => {
      const where = `sheet ${s + 1}, pull ${p + 1}`;
      const at = num(entryAt(printedIn, s), p);
      if (at < 0) return fault('plan.missing', where, 'is never printed.');
      const since = Math.max(-1, ...entryAt(entryAt(before, s), p).map((a) => num(entryAt(printedIn, s), a)));
      for (let i = since + 1; i < at; i++) {
        const setUp = entryAt(plan.setUps, i);
        if (setUp.screen === pull.screen && setUp.ink === pull.ink && setUp.offset === (pull.offset ?? '')) {
          return fault('plan.waits', where, `could have been printed in set-up ${i + 1}, but waits until ${at + 1}.`);
        }
      }
    });
  });
  const counts = { mounts, inkChanges, registerMoves };
  for (const key of ['mounts', 'inkChanges', 'registerMoves'] as const) {
    if (plan[key] !== counts[key]) fault('plan.count', 'plan', `${key} is ${plan[key]}, counted ${counts[key]}.`);
  }
  if (plan.bound.setUps > plan.setUps.length) fault('plan.bound', 'plan', 'the bound on set-ups is above the plan.');
  if (plan.bound.mounts > mounts) fault('plan.bound', 'plan', 'the bound on mounts is above the plan.');
  return problems;
}
