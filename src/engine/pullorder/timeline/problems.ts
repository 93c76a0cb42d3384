import { entryAt } from '../../base/at.ts';
import type { Problem } from '../../base/error.ts';
import { minutesText, rangesText } from '../../base/words.ts';
import type { SetUpTime, VisitDays } from '../types.ts';

/** 'set-up 3', 'set-ups 1–23, 25', numbered from 1 as on the cards. */
function setUpsText(times: readonly SetUpTime[], before: number): string {
  const numbers = times.map((time) => before + time.setUp + 1).sort((a, b) => a - b);
  return `${numbers.length === 1 ? 'set-up' : 'set-ups'} ${rangesText(numbers)}`;
}

/** What the racks hold up, a sentence. @param before set-ups that are done, behind which these are numbered */
export function rackProblems(times: readonly SetUpTime[], places: number, before = 0): Problem[] {
  const held = times.filter((time) => time.rackWaitMinutes >= 1);
  if (held.length === 0) return [];
  const minutes = held.reduce((sum, time) => sum + time.rackWaitMinutes, 0);
  return [
    {
      code: 'visit.racks',
      message: `The racks hold ${places} wet ${places === 1 ? 'sheet' : 'sheets'}, too few for ${setUpsText(held, before)}: the press waits ${minutesText(minutes)} for sheets that can be stacked; find more places or print fewer sheets.`,
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
      message: `The pull order needs ${daysNeeded} days of ${visit.hoursPerDay} h and the visit has ${visit.days}: ${setUpsText(late, before)} ${late.length === 1 ? 'does' : 'do'} not fit; leave out recipes or sheets, or lengthen the visit.`,
      where: 'visit',
    },
  ];
}
