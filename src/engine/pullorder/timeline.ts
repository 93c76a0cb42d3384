import { EngineError, type Problem } from '../base/error.ts';
import type { PlanProblem, PressTimes, PullPlan, SetUpTime, VisitDays, VisitTimeline } from './types.ts';

/** Common practice, no source: from memory, paper by hand 30–80 pulls/h, mount 10–20 min, wash-up 10–20 min. */
export const DEFAULT_PRESS_TIMES: Required<PressTimes> = {
  pullsPerHour: 45,
  mountMinutes: 15,
  washUpMinutes: 15,
  registerMinutes: 5,
};

const DAY_MINUTES = 24 * 60;

/**
 * Lays a plan out over the days of a visit: one press, one set-up after another, each as soon as it
 * can. Within a set-up the sheets that dry first go first; a pull waits until every film it touches
 * is dry, and nights dry too. A set-up that does not end within its day, washed up, begins the next
 * morning; every morning the screen is mounted anew.
 * @param dryMinutesByInk minutes until another film can go over an ink; common practice, no source
 * @param touching for each sheet the pairs of pulls that touch, whichever comes first; absent =
 *   the problem's overlaps. Free swaps touch too, so give them here.
 * @returns the times, and problems 'visit.too-long', 'visit.long-set-up'
 * @throws EngineError 'visit.bad-number' for figures that are none, 'visit.unknown-ink' when a
 *   drying time is missing
 */
export function visitTimeline(
  problem: PlanProblem,
  plan: Pick<PullPlan, 'setUps'>,
  times: PressTimes,
  dryMinutesByInk: Readonly<Record<string, number>>,
  visit: VisitDays,
  touching?: readonly (readonly (readonly [number, number])[])[],
): { timeline: VisitTimeline; problems: Problem[] } {
  checkNumbers(times, dryMinutesByInk, visit);
  const { pullsPerHour, mountMinutes, washUpMinutes } = times;
  const registerMinutes = times.registerMinutes ?? DEFAULT_PRESS_TIMES.registerMinutes;
  const pullMinutes = 60 / pullsPerHour;
  const dayMinutes = visit.hoursPerDay * 60;
  const neighbours = problem.sheets.map((sheet, s) => {
    const lists: number[][] = sheet.pulls.map(() => []);
    for (const [a, b] of touching?.[s] ?? sheet.overlaps) {
      lists[a]!.push(b);
      lists[b]!.push(a);
    }
    return lists;
  });
  const dryAt = problem.sheets.map((sheet) => new Float64Array(sheet.pulls.length).fill(-1));
  const wetUntil = new Float64Array(problem.sheets.length);
  const out: SetUpTime[] = [];
  const problems: Problem[] = [];
  let clock = 0;

  plan.setUps.forEach((setUp, i) => {
    const previous = plan.setUps[i - 1];
    const dry = dryMinutesByInk[setUp.ink];
    if (dry === undefined) {
      throw new EngineError('visit.unknown-ink', `Ink ${setUp.ink} has no drying time: give it one.`, { path: ['dryMinutesByInk', setUp.ink] });
    }
    const queue = setUp.pulls
      .map(([s, p]) => ({ s, p, ready: Math.max(0, ...neighbours[s]![p]!.map((q) => dryAt[s]![q]!)) }))
      .sort((a, b) => a.ready - b.ready || a.s - b.s || a.p - b.p);
    const layOut = (start: number, fresh: boolean): { first: number; ends: number[]; wait: number } => {
      let now = start;
      if (!fresh && (previous!.screen !== setUp.screen || previous!.ink !== setUp.ink)) now += washUpMinutes;
      if (fresh || previous!.screen !== setUp.screen) now += mountMinutes;
      else if (previous!.offset !== setUp.offset) now += registerMinutes;
      let first = -1;
      let wait = 0;
      const ends = queue.map(({ ready }) => {
        wait += Math.max(0, ready - now);
        now = Math.max(now, ready);
        if (first < 0) first = now;
        return (now += pullMinutes);
      });
      return { first: first < 0 ? now : first, ends, wait };
    };
    let day = Math.floor(clock / DAY_MINUTES);
    let start = clock;
    let laid = layOut(start, i === 0);
    const endsInDay = (): boolean => Math.max(start, ...laid.ends.slice(-1)) + washUpMinutes <= day * DAY_MINUTES + dayMinutes + 1e-9;
    const startDay = (next: number): void => {
      day = next;
      start = day * DAY_MINUTES;
      laid = layOut(start, true);
    };
    if (!endsInDay() && i > 0) startDay(day + 1);
    // Sheets that dry overnight may hold a morning up; later mornings find them dry.
    const lastReady = queue.length > 0 ? queue[queue.length - 1]!.ready : 0;
    while (!endsInDay() && start < lastReady) startDay(day + 1);
    const end = laid.ends.length > 0 ? laid.ends[laid.ends.length - 1]! : start;
    if (!endsInDay()) {
      problems.push({
        code: 'visit.long-set-up',
        message: `Set-up ${i + 1} takes ${Math.ceil(end - start + washUpMinutes)} minutes with washing up, more than a day of ${visit.hoursPerDay} h: print fewer sheets in it or make the day longer.`,
        where: `set-up ${i + 1}`,
      });
    }
    queue.forEach(({ s, p }, k) => {
      dryAt[s]![p] = laid.ends[k]! + dry;
      wetUntil[s] = Math.max(wetUntil[s]!, dryAt[s]![p]!);
    });
    const from = day * DAY_MINUTES;
    out.push({
      setUp: i,
      day: day + 1,
      startMinute: start - from,
      firstPullMinute: laid.first - from,
      endMinute: end - from,
      waitMinutes: laid.wait,
      wetSheets: wetUntil.reduce((n, until) => n + (until > end ? 1 : 0), 0),
      fits: day < visit.days && endsInDay(),
    });
    // A set-up that overran its day pushes the next one to the morning after.
    clock = end;
  });
  const daysNeeded = out.reduce((most, t) => Math.max(most, t.day), 0);
  if (daysNeeded > visit.days) {
    const firstLate = out.findIndex((t) => t.day > visit.days);
    const late = out.length - firstLate;
    problems.push({
      code: 'visit.too-long',
      message: `The pull order needs ${daysNeeded} days of ${visit.hoursPerDay} h and the visit has ${visit.days}: ${late === 1 ? `set-up ${firstLate + 1} does` : `set-ups ${firstLate + 1} to ${out.length} do`} not fit; leave out recipes or sheets, or lengthen the visit.`,
      where: 'visit',
    });
  }
  return {
    timeline: {
      times: out,
      daysNeeded,
      waitMinutes: out.reduce((sum, t) => sum + t.waitMinutes, 0),
      racksNeeded: out.reduce((most, t) => Math.max(most, t.wetSheets), 0),
    },
    problems,
  };
}

function checkNumbers(times: PressTimes, dryMinutes: Readonly<Record<string, number>>, visit: VisitDays): void {
  const need = (ok: boolean, name: string, value: number, allowed: string): void => {
    if (!ok) throw new EngineError('visit.bad-number', `The ${name} is ${value}: give ${allowed}.`, { path: [name] });
  };
  need(times.pullsPerHour > 0 && times.pullsPerHour < 1e6, 'number of pulls per hour', times.pullsPerHour, 'more than 0');
  for (const [name, value] of [
    ['mount time', times.mountMinutes],
    ['wash-up time', times.washUpMinutes],
    ['register time', times.registerMinutes ?? 0],
    ...Object.entries(dryMinutes).map(([ink, minutes]) => [`drying time of ink ${ink}`, minutes] as const),
  ] as const) {
    need(value >= 0 && value < 1e6, name, value, '0 minutes or more');
  }
  need(Number.isInteger(visit.days) && visit.days >= 1, 'number of days', visit.days, 'a whole number from 1');
  need(visit.hoursPerDay > 0 && visit.hoursPerDay <= 24, 'length of a day', visit.hoursPerDay, 'more than 0 and at most 24 hours');
}
