import { entryAt } from '../../engine/base/at.ts';
import { minutesText, rangesText } from '../../engine/base/words.ts';
import type { RetimedPlan } from '../../engine/log/now/retimed.ts';
import { DAY_MINUTES } from '../../engine/pullorder/timeline/day-clock.ts';
import type { Moment, PressPlan } from '../../engine/visit/visit.ts';
import { uncapital } from '../../engine/words/language.ts';
import { say } from './en/phrases/log.ts';
import { timeWords, wallClock } from './plan-words.ts';

/** Less than this is as planned: nobody ticks to the minute. */
const AS_PLANNED_MINUTES = 5;

function minuteOf({ day, minute }: Moment): number {
  return (day - 1) * DAY_MINUTES + minute;
}

/** 'now 10:05 to 10:40' beside the planned time of a set-up, with the day where it is another; '' as planned or where nothing is known. */
function nowTimeWords(plan: PressPlan, now: RetimedPlan | null, at: number): string {
  const [planned, real] = [plan.times[at], now?.times[at]];
  if (planned === undefined || real === undefined) return '';
  if (now?.outside.has(at) === true && real.endMinute === real.startMinute) return say.tickedWhileStudioIs;
  const late = minuteOf({ day: real.day, minute: real.startMinute }) - minuteOf({ day: planned.day, minute: planned.startMinute });
  const ends = minuteOf({ day: real.day, minute: real.endMinute }) - minuteOf({ day: planned.day, minute: planned.endMinute });
  if (Math.abs(late) < AS_PLANNED_MINUTES && Math.abs(ends) < AS_PLANNED_MINUTES) return '';
  const day = real.day === planned.day ? '' : say.day(real.day);
  return say.nowTo(day, wallClock(plan, real.startMinute), wallClock(plan, real.endMinute));
}

/** When a set-up is pulled: 'Planned day 1, 9:30 to 10:15, now 10:05 to 10:40'. @param stands alone, or within a sentence */
export function plannedAndNow(plan: PressPlan, now: RetimedPlan | null, at: number, stands: 'alone' | 'within' = 'alone'): string {
  const planned = timeWords(plan, entryAt(plan.times, at));
  const real = nowTimeWords(plan, now, at);
  if (real === '') return planned;
  return (stands === 'within' ? say.plannedWithin : say.planned)(uncapital(planned), real);
}

/** 'By what was ticked the last wash-up ends on day 3 at 16:55, 45 min later than planned (day 3, 16:10).' */
export function nowEndWords(plan: PressPlan, now: PressPlan): string {
  const late = minuteOf(now.ends) - minuteOf(plan.ends);
  const end = say.byWhatWasTicked(now.ends.day, wallClock(plan, now.ends.minute));
  const planned = say.plannedWasDay(plan.ends.day, wallClock(plan, plan.ends.minute));
  if (Math.abs(late) < AS_PLANNED_MINUTES) return say.asPlanned(end);
  if (now.ends.day !== plan.ends.day) return `${end}; ${planned}.`;
  return say.laterThanPlanned(end, minutesText(Math.abs(late)), late > 0, wallClock(plan, plan.ends.minute));
}

/** What became of ticks at night: 'Set-ups 1–3 were ticked while the studio is closed (before 9:30 or after 17:30)…'; '' where there are none. */
export function outsideWords(plan: PressPlan, now: RetimedPlan): string {
  const { clock, cards } = plan;
  const numbers = [...now.outside].map((at) => entryAt(cards, at).number).sort((a, b) => a - b);
  if (numbers.length === 0) return '';
  const open = say.toWallClock(wallClock(plan, 0), wallClock(plan, clock.workMinutes + (clock.lunch?.minutes ?? 0)));
  const those = numbers.length === 1 ? say.setUpWas(rangesText(numbers)) : say.setUpsWere(rangesText(numbers));
  return say.tickedOutsideOpeningHours(those, open);
}
