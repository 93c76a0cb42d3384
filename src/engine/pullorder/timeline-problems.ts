import type { Problem } from '../base/error.ts';
import type { SetUpTime, VisitDays } from './types.ts';

/** What the racks hold up, a sentence. */
export function rackProblems(times: readonly SetUpTime[], places: number): Problem[] {
  const held = times.filter((time) => time.rackWaitMinutes >= 1);
  if (held.length === 0) return [];
  const minutes = Math.round(held.reduce((sum, time) => sum + time.rackWaitMinutes, 0));
  return [
    {
      code: 'visit.racks',
      message: `The racks hold ${places} wet ${places === 1 ? 'sheet' : 'sheets'}, too few for set-up ${held.map((time) => time.setUp + 1).join(', ')}: the press waits ${minutes} min for sheets that can be stacked; find more places or print fewer sheets.`,
      where: `set-up ${held[0]!.setUp + 1}`,
    },
  ];
}

/** What lies beyond the days of the visit, a sentence. */
export function lateProblems(times: readonly SetUpTime[], daysNeeded: number, visit: VisitDays): Problem[] {
  if (daysNeeded <= visit.days) return [];
  const late = times.filter((time) => time.day > visit.days).map((time) => time.setUp + 1);
  const straight = late.at(-1)! - late[0]! === late.length - 1;
  const which = late.length === 1 ? `set-up ${late[0]} does` : `set-ups ${straight ? `${late[0]} to ${late.at(-1)}` : late.join(', ')} do`;
  return [
    {
      code: 'visit.too-long',
      message: `The pull order needs ${daysNeeded} days of ${visit.hoursPerDay} h and the visit has ${visit.days}: ${which} not fit; leave out recipes or sheets, or lengthen the visit.`,
      where: 'visit',
    },
  ];
}
