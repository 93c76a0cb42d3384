import { entryAt } from '../../base/at.ts';
import type { Problem } from '../../base/error.ts';
import { minutesText, rangesText } from '../../base/words.ts';
import { say } from '../../words/en/pullorder/timeline.ts';
import type { SetUpTime, VisitDays } from '../types.ts';

/** 'set-up 3', 'set-ups 1–23, 25', numbered from 1 as on the cards. */
function setUpsText(times: readonly SetUpTime[], before: number): string {
  const numbers = times.map((time) => before + time.setUp + 1).sort((a, b) => a - b);
  return say.setUps(numbers.length, rangesText(numbers));
}

/** What the racks hold up, a sentence. @param before set-ups that are done, behind which these are numbered */
export function rackProblems(times: readonly SetUpTime[], places: number, before = 0): Problem[] {
  const held = times.filter((time) => time.rackWaitMinutes >= 1);
  if (held.length === 0) return [];
  const minutes = held.reduce((sum, time) => sum + time.rackWaitMinutes, 0);
  return [
    {
      code: 'visit.racks',
      message: say.racksHoldWetSheets(places, setUpsText(held, before), minutesText(minutes)),
      where: `set-up ${before + entryAt(held, 0).setUp + 1}`,
    },
  ];
}

/** What lies beyond the days of the visit, a sentence. @param before as `rackProblems` takes it */
export function lateProblems(times: readonly SetUpTime[], daysNeeded: number, visit: VisitDays, before = 0): Problem[] {
  if (daysNeeded <= visit.days) return [];
  const late = times.filter((time) => time.day > visit.days);
  return [
    {
      code: 'visit.too-long',
      message: say.pullOrderNeedsDays({
        daysNeeded,
        hoursPerDay: visit.hoursPerDay,
        days: visit.days,
        setUps: setUpsText(late, before),
        late: late.length,
      }),
      where: 'visit',
    },
  ];
}
