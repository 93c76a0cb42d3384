import { entryAt } from '../../engine/base/at.ts';
import { minutesText } from '../../engine/base/words.ts';
import { DAY_MINUTES } from '../../engine/pullorder/timeline/day-clock.ts';
import type { Moment, PressPlan } from '../../engine/visit/visit.ts';
import { timeWords, wallClock } from './plan-words.ts';

/** Less than this is as planned: nobody ticks to the minute. */
const AS_PLANNED_MINUTES = 5;

function minuteOf({ day, minute }: Moment): number {
  return (day - 1) * DAY_MINUTES + minute;
}

/** 'now 10:05 to 10:40' beside the planned time of a set-up, with the day where it is another; '' as planned or where nothing is known. */
function nowTimeWords(plan: PressPlan, now: PressPlan | null, at: number): string {
  const [planned, real] = [plan.times[at], now?.times[at]];
  if (planned === undefined || real === undefined) return '';
  const late = minuteOf({ day: real.day, minute: real.startMinute }) - minuteOf({ day: planned.day, minute: planned.startMinute });
  const ends = minuteOf({ day: real.day, minute: real.endMinute }) - minuteOf({ day: planned.day, minute: planned.endMinute });
  if (Math.abs(late) < AS_PLANNED_MINUTES && Math.abs(ends) < AS_PLANNED_MINUTES) return '';
  const day = real.day === planned.day ? '' : `day ${real.day}, `;
  return `now ${day}${wallClock(plan, real.startMinute)} to ${wallClock(plan, real.endMinute)}`;
}

/** When a set-up is pulled: 'Planned day 1, 9:30 to 10:15, now 10:05 to 10:40'. */
export function plannedAndNow(plan: PressPlan, now: PressPlan | null, at: number): string {
  const planned = timeWords(plan, entryAt(plan.times, at));
  const real = nowTimeWords(plan, now, at);
  return real === '' ? planned : `Planned ${planned.charAt(0).toLowerCase()}${planned.slice(1)}, ${real}`;
}

/** 'By what was ticked the last wash-up ends on day 3 at 16:55, 45 min later than planned (day 3, 16:10).' */
export function nowEndWords(plan: PressPlan, now: PressPlan): string {
  const late = minuteOf(now.ends) - minuteOf(plan.ends);
  const end = `By what was ticked, all is washed up on day ${now.ends.day} at ${wallClock(plan, now.ends.minute)}`;
  const planned = `planned was day ${plan.ends.day}, ${wallClock(plan, plan.ends.minute)}`;
  if (Math.abs(late) < AS_PLANNED_MINUTES) return `${end}, as planned.`;
  if (now.ends.day !== plan.ends.day) return `${end}; ${planned}.`;
  return `${end}, ${minutesText(Math.abs(late))} ${late > 0 ? 'later' : 'sooner'} than planned (${wallClock(plan, plan.ends.minute)}).`;
}
