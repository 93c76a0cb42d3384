import { EngineError } from '../../base/error.ts';
import { say } from '../../words/en/pullorder/timeline.ts';
import type { PressTimes, VisitDays } from '../types.ts';

/**
 * Refuses figures that no visit can be laid out with.
 * @throws EngineError 'visit.bad-number' naming the figure and what it may be
 */
export function checkTimes(times: PressTimes, dryMinutes: Readonly<Record<string, number>>, visit: VisitDays): void {
  const need = (ok: boolean, name: string, value: number, allowed: string): void => {
    if (!ok) throw new EngineError('visit.bad-number', say.isGive(name, value, allowed), { path: [name] });
  };
  need(times.pullsPerHour > 0 && times.pullsPerHour < 1e6, say.numberOfPullsPer, times.pullsPerHour, say.moreThan0);
  for (const [name, value] of [
    [say.timeOfFurtherStroke, times.strokeMinutes ?? 0],
    [say.mountTime, times.mountMinutes],
    [say.washUpTime, times.washUpMinutes],
    [say.registerTime, times.registerMinutes ?? 0],
    [say.mixingTime, times.mixMinutes ?? 0],
    [say.lengthOfLunch, visit.lunch?.minutes ?? 0],
    ...Object.entries(dryMinutes).map(([ink, minutes]) => [say.dryingTimeOfInk(ink), minutes] as const),
  ] as const) {
    need(value >= 0 && value < 1e6, name, value, say.n0MinutesOrMore);
  }
  need(Number.isInteger(visit.days) && visit.days >= 1, say.numberOfDays, visit.days, say.wholeNumberFrom1);
  need(visit.hoursPerDay > 0 && visit.hoursPerDay <= 24, say.lengthOfDay, visit.hoursPerDay, say.moreThan0And);
  const lunch = visit.lunch?.minutes ?? 0;
  need(visit.hoursPerDay * 60 + lunch <= 24 * 60, say.lengthOfDayWith, visit.hoursPerDay + lunch / 60, say.atMost24Hours);
  const places = visit.rackPlaces ?? 1;
  need(Number.isInteger(places) && places >= 1, say.numberOfRackPlaces, places, say.wholeNumberFrom1);
  const beds = visit.beds ?? 1;
  need(Number.isInteger(beds) && beds >= 1 && beds <= 8, say.numberOfPressBeds, beds, say.wholeNumberFrom1To);
}
