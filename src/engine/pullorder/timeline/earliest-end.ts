import { entryAt, num } from '../../base/at.ts';
import type { PlanSheet } from '../types.ts';
import { DAY_MINUTES, type DayClock, dayClock } from './day-clock.ts';
import { DEFAULT_PRESS_TIMES } from './default-times.ts';
import { bedsBound, operationsOf, pullMinutes } from './one-day-beds.ts';
import { shopBound } from './one-day-shop.ts';
import type { TimelineInput } from './start-state.ts';

/** What keeps a visit from ending sooner: all work on the beds, one frame, one sheet that dries, or drying between frames. */
export type EndReason = 'work' | 'frame' | 'sheet' | 'drying';

/** No order ends sooner, minutes from the first day's start, and why. */
export interface EarliestEnd {
  minute: number;
  by: EndReason;
}

/**
 * A moment before which no order of the pulls, on however they are shared between the beds, has
 * printed and washed up all, as long as no set-up runs past its day. The latest of five: when the
 * beds have done all that must be pulled, mounted, washed and mixed; when each frame has, which is
 * on one bed at a time; when the longest chain of films is dry, nights counted; and, for the day on
 * which work begins, drying between one frame and the next as a job shop, and what the beds must do
 * between what comes before and what must follow.
 * @param mounts on one bed no order has fewer
 */
export function earliestEnd(input: TimelineInput, mounts: number): EarliestEnd {
  const { problem, times, visit, start = {} } = input;
  const from = start.minute ?? 0;
  const beds = visit.beds ?? 1;
  const { mountMinutes, washUpMinutes } = times;
  const testMinutes = ((times.testPulls ?? 0) * 60) / times.pullsPerHour;
  const kinds = kindsOf(input);
  const { onPress = [] } = start;
  const stays = (screen: string): number => (onPress.some((there) => there?.screen === screen) ? mountMinutes : 0);

  const workDone = (minutesOver: (days: number) => number, daily: (days: number) => number): number =>
    doneAfter({ from, clock: dayClock(visit) }, minutesOver, daily);

  let latest: EarliestEnd = { minute: from, by: 'work' };
  const take = (minute: number, by: EndReason): void => {
    if (minute > latest.minute) latest = { minute, by };
  };
  let minutes = 0;
  let washes = 0;
  let lays = 0;
  for (const [screen, kind] of kinds) {
    const pulled = kind.minutes + kind.setUps.size * testMinutes;
    minutes += pulled;
    washes += kind.inks.size;
    lays += kind.offsets.size;
    // Each ink and each day ends with a wash; the last ink of a day and its end share one.
    const own = (days: number): number => pulled + Math.max(0, kind.inks.size - days) * washUpMinutes;
    take(
      workDone(own, (days) => mountMinutes + washUpMinutes - (days === 1 ? stays(screen) : 0)),
      'frame',
    );
  }
  const inks = new Set([...kinds.values()].flatMap(({ inks: own }) => [...own]));
  for (const ink of start.mixed ?? []) inks.delete(ink);
  const least = beds === 1 ? Math.max(mounts, kinds.size) : kinds.size;
  const there = onPress.filter((each) => each !== null && kinds.has(each.screen)).length;
  const work =
    minutes +
    (least - there) * mountMinutes +
    Math.max(washes, beds === 1 ? least - there : 0) * washUpMinutes +
    // A frame that is mounted twice may stand at another offset each time.
    Math.max(0, lays - least) * Math.min(times.registerMinutes ?? DEFAULT_PRESS_TIMES.registerMinutes, mountMinutes) +
    inks.size * (times.mixMinutes ?? 0);
  take(
    workDone(
      () => Math.max(0, work) / beds,
      () => 0,
    ),
    'work',
  );

  const firstMount = there === 0 ? mountMinutes : 0;
  for (const sheet of new Set(problem.sheets)) take(chainEnd(sheet, input, firstMount), 'sheet');

  const today = onFirstDay(input, firstMount);
  take(today.minute, today.by);
  return latest;
}

/**
 * When work that begins at `from` is done. A day on which any is done costs `daily` before the
 * first minute of it; what is left may depend on how many days, from 1, it is spread over.
 */
function doneAfter(
  { from, clock }: { from: number; clock: DayClock },
  minutesOver: (days: number) => number,
  daily: (days: number) => number,
): number {
  const first = Math.floor(from / DAY_MINUTES);
  let done = 0;
  for (let days = 1; ; days++) {
    const day = first + days - 1;
    const at = days === 1 ? clock.afterLunch(from) : day * DAY_MINUTES;
    const room = clock.closes(day) - at - clock.lunchBetween(at, clock.closes(day)) - daily(days);
    const left = Math.max(0, minutesOver(days) - done);
    // Rounding must not add a day.
    if (left <= room + 1e-6) return clock.workEnd(at, daily(days) + left);
    // Days too short for anything say nothing.
    if (room <= 0 && days > 1) return from;
    done += Math.max(0, room);
  }
}

/** What drying between frames and the work of all beds ask for on the day on which work begins; where that is too short, of the next. */
function onFirstDay(input: TimelineInput, firstMount: number): EarliestEnd {
  const { times, visit, start = {} } = input;
  const from = start.minute ?? 0;
  const today = Math.floor(from / DAY_MINUTES);
  const operations = operationsOf(input);
  const drying = from + shopBound(operations, firstMount, times.washUpMinutes);
  const work = bedsBound(input, operations);
  const by = drying > work ? 'drying' : 'work';
  const minute = Math.max(drying, work);
  if (minute <= dayClock(visit).closes(today) + 1e-6) return { minute, by };
  return { minute: (today + 1) * DAY_MINUTES + times.mountMinutes + 60 / times.pullsPerHour + times.washUpMinutes, by };
}

/** What a frame is used for over all sheets. */
interface Kind {
  /** What all its pulls take. */
  minutes: number;
  inks: Set<string>;
  offsets: Set<string>;
  /** Inks at offsets: each is a set-up at least. */
  setUps: Set<string>;
}

function kindsOf({ problem, times }: TimelineInput): Map<string, Kind> {
  const kinds = new Map<string, Kind>();
  for (const sheet of problem.sheets) {
    for (const pull of sheet.pulls) {
      const { screen, ink, offset = '' } = pull;
      let kind = kinds.get(screen);
      if (kind === undefined) kinds.set(screen, (kind = { minutes: 0, inks: new Set(), offsets: new Set(), setUps: new Set() }));
      kind.minutes += pullMinutes(pull, times);
      kind.inks.add(ink);
      kind.offsets.add(offset);
      kind.setUps.add(JSON.stringify([ink, offset]));
    }
  }
  return kinds;
}

/** When one sheet can be done at the earliest, by itself, washed up, nights and lunch counted. */
function chainEnd(sheet: PlanSheet, { times, visit, dryMinutesByInk, start = {} }: TimelineInput, firstMount: number): number {
  const from = start.minute ?? 0;
  const firstDay = Math.floor(from / DAY_MINUTES);
  const clock = dayClock(visit);
  const ends = sheet.pulls.map(() => 0);
  // Overlaps name positions, the lower first.
  const under: number[][] = sheet.pulls.map(() => []);
  for (const [a, b] of sheet.overlaps) entryAt(under, b).push(a);
  let last = from;
  for (const p of sheet.pulls.keys()) {
    const minutes = pullMinutes(entryAt(sheet.pulls, p), times);
    let ready = from;
    for (const q of entryAt(under, p)) ready = Math.max(ready, num(ends, q) + (dryMinutesByInk[entryAt(sheet.pulls, q).ink] ?? 0));
    for (let day = Math.floor(ready / DAY_MINUTES); ; day++) {
      const opens = day === firstDay ? from + firstMount : day * DAY_MINUTES + times.mountMinutes;
      const end = clock.pieceStart(Math.max(ready, opens), minutes) + minutes;
      if (clock.workEnd(end, times.washUpMinutes) <= clock.closes(day) + 1e-6) {
        ends[p] = end;
        break;
      }
      // A day too short for one pull: no chain says anything then.
      if (day * DAY_MINUTES > ready) return from;
    }
    last = Math.max(last, clock.workEnd(num(ends, p), times.washUpMinutes));
  }
  return last;
}
