import type { RetimedPlan } from '../../../engine/log/now/retimed.ts';
import type { MadePlan } from '../../output/made-plan.ts';
import { say } from '../../words/en/press/sheet.ts';
import { clockText } from '../../words/plan-words.ts';

/** An order as it goes on paper: on the clock of what was ticked, where something was. */
export function madeForPaper(made: MadePlan, now: RetimedPlan | null): MadePlan {
  if (now === null) return made;
  const { outside: _outside, at, pulled, ...plan } = now;
  // How soon any order could end was worked out for one that began as planned.
  return {
    ...made,
    plan: { ...plan, endsAtLeast: null },
    clocked: { planned: made.plan, at: say.day(at.day, clockText(at.minuteOfDay)), done: pulled },
  };
}
