import { EngineError } from '../../base/error.ts';
import type { PressTimes, VisitDays } from '../types.ts';

/**
 * Refuses figures that no visit can be laid out with.
 * @throws EngineError 'visit.bad-number' naming the figure and what it may be
 */
export function checkTimes(times: PressTimes, dryMinutes: Readonly<Record<string, number>>, visit: VisitDays): void {
  const need = (ok: boolean, name: string, value: number, allowed: string): void => {
    if (!ok) throw new EngineError('visit.bad-number', `The ${name} is ${value}: give ${allowed}.`, { path: [name] });
  };
  need(times.pullsPerHour > 0 && times.pullsPerHour < 1e6, 'number of pulls per hour', times.pullsPerHour, 'more than 0');
  for (const [name, value] of [
    ['time of a further stroke', times.strokeMinutes ?? 0],
    ['mount time', times.mountMinutes],
    ['wash-up time', times.washUpMinutes],
    ['register time', times.registerMinutes ?? 0],
    ['mixing time', times.mixMinutes ?? 0],
    ['length of lunch', visit.lunch?.minutes ?? 0],
    ...Object.entries(dryMinutes).map(([ink, minutes]) => [`drying time of ink ${ink}`, minutes] as const),
  ] as const) {
    need(value >= 0 && value < 1e6, name, value, '0 minutes or more');
  }
  need(Number.isInteger(visit.days) && visit.days >= 1, 'number of days', visit.days, 'a whole number from 1');
  need(visit.hoursPerDay > 0 && visit.hoursPerDay <= 24, 'length of a day', visit.hoursPerDay, 'more than 0 and at most 24 hours');
  const lunch = visit.lunch?.minutes ?? 0;
  need(visit.hoursPerDay * 60 + lunch <= 24 * 60, 'length of a day with lunch', visit.hoursPerDay + lunch / 60, 'at most 24 hours');
  const places = visit.rackPlaces ?? 1;
  need(Number.isInteger(places) && places >= 1, 'number of rack places', places, 'a whole number from 1');
  const beds = visit.beds ?? 1;
  need(Number.isInteger(beds) && beds >= 1 && beds <= 8, 'number of press beds', beds, 'a whole number from 1 to 8');
}
