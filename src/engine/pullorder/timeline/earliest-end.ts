import { entryAt, num } from '../../base/at.ts';
import type { PlanSheet } from '../types.ts';
import { DAY_MINUTES, dayClock } from './day-clock.ts';
import { DEFAULT_PRESS_TIMES } from './default-times.ts';
import { type ShopOperation, shopBound } from './one-day-shop.ts';
import type { TimelineInput } from './start-state.ts';

/**
 * A moment before which no order of the pulls, on however they are shared between the beds, has
 * printed and washed up all, as long as no set-up runs past its day. The latest of four: when the
 * beds have done all that must be pulled, mounted, washed and mixed; when each frame has, which is
 * on one bed at a time; when the longest chain of films is dry, nights counted; and, for the day on
 * which work begins, drying between one frame and the next as a job shop.
 * @param mounts on one bed no order has fewer
 * @returns minutes from the first day's start
 */
export function earliestEnd(input: TimelineInput, mounts: number): number {
  const { problem, times, visit, start = {} } = input;
  const from = start.minute ?? 0;
  const beds = visit.beds ?? 1;
  const pullMinutes = 60 / times.pullsPerHour;
  const { mountMinutes, washUpMinutes } = times;
  const clock = dayClock(visit);
  const kinds = kindsOf(problem.sheets);
  const stays = (screen: string): number => (start.onPress?.screen === screen ? mountMinutes : 0);

  /**
   * When work that begins at `from` is done. A day on which any is done costs `daily` before the
   * first minute of it; what is left may depend on how many days, from 1, it is spread over.
   */
  const workDone = (minutesOver: (days: number) => number, daily: (days: number) => number): number => {
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
  };

  let latest = from;
  let pulls = 0;
  let washes = 0;
  let lays = 0;
  for (const [screen, kind] of kinds) {
    pulls += kind.pulls;
    washes += kind.inks.size;
    lays += kind.offsets.size;
    // Each ink and each day ends with a wash; the last ink of a day and its end share one.
    const own = (days: number): number => kind.pulls * pullMinutes + Math.max(0, kind.inks.size - days) * washUpMinutes;
    latest = Math.max(
      latest,
      workDone(own, (days) => mountMinutes + washUpMinutes - (days === 1 ? stays(screen) : 0)),
    );
  }
  const inks = new Set([...kinds.values()].flatMap(({ inks: own }) => [...own]));
  for (const ink of start.mixed ?? []) inks.delete(ink);
  const least = beds === 1 ? Math.max(mounts, kinds.size) : kinds.size;
  const there = start.onPress === undefined ? 0 : 1;
  const work =
    pulls * pullMinutes +
    (least - there) * mountMinutes +
    Math.max(washes, beds === 1 ? least - there : 0) * washUpMinutes +
    // A frame that is mounted twice may stand at another offset each time.
    Math.max(0, lays - least) * Math.min(times.registerMinutes ?? DEFAULT_PRESS_TIMES.registerMinutes, mountMinutes) +
    inks.size * (times.mixMinutes ?? 0);
  latest = Math.max(
    latest,
    workDone(
      () => Math.max(0, work) / beds,
      () => 0,
    ),
  );

  const firstMount = start.onPress === undefined ? mountMinutes : 0;
  for (const sheet of new Set(problem.sheets)) latest = Math.max(latest, chainEnd(sheet, input, firstMount));

  const today = Math.floor(from / DAY_MINUTES);
  const inOneDay = from + shopBound(operationsOf(input, pullMinutes), firstMount, washUpMinutes);
  if (inOneDay <= clock.closes(today) + 1e-6) return Math.max(latest, inOneDay);
  return Math.max(latest, (today + 1) * DAY_MINUTES + mountMinutes + pullMinutes + washUpMinutes);
}

/** What a frame is used for over all sheets. */
interface Kind {
  pulls: number;
  inks: Set<string>;
  offsets: Set<string>;
}

function kindsOf(sheets: readonly PlanSheet[]): Map<string, Kind> {
  const kinds = new Map<string, Kind>();
  for (const sheet of sheets) {
    for (const { screen, ink, offset = '' } of sheet.pulls) {
      let kind = kinds.get(screen);
      if (kind === undefined) kinds.set(screen, (kind = { pulls: 0, inks: new Set(), offsets: new Set() }));
      kind.pulls++;
      kind.inks.add(ink);
      kind.offsets.add(offset);
    }
  }
  return kinds;
}

/** Each pull waits for those that must lie under it to dry; a frame prints one sheet at a time. */
function operationsOf({ problem, dryMinutesByInk }: TimelineInput, pullMinutes: number): ShopOperation[] {
  const operations: ShopOperation[] = [];
  for (const sheet of problem.sheets) {
    const base = operations.length;
    const after: { operation: number; lagMinutes: number }[][] = sheet.pulls.map(() => []);
    for (const [a, b] of sheet.overlaps)
      entryAt(after, b).push({ operation: base + a, lagMinutes: dryMinutesByInk[entryAt(sheet.pulls, a).ink] ?? 0 });
    for (const [p, { screen }] of sheet.pulls.entries())
      operations.push({ machine: screen, minutes: pullMinutes, after: entryAt(after, p) });
  }
  return operations;
}

/** When one sheet can be done at the earliest, by itself, washed up, nights and lunch counted. */
function chainEnd(sheet: PlanSheet, { times, visit, dryMinutesByInk, start = {} }: TimelineInput, firstMount: number): number {
  const from = start.minute ?? 0;
  const firstDay = Math.floor(from / DAY_MINUTES);
  const pullMinutes = 60 / times.pullsPerHour;
  const clock = dayClock(visit);
  const ends = sheet.pulls.map(() => 0);
  // Overlaps name positions, the lower first.
  const under: number[][] = sheet.pulls.map(() => []);
  for (const [a, b] of sheet.overlaps) entryAt(under, b).push(a);
  let last = from;
  for (const p of sheet.pulls.keys()) {
    let ready = from;
    for (const q of entryAt(under, p)) ready = Math.max(ready, num(ends, q) + (dryMinutesByInk[entryAt(sheet.pulls, q).ink] ?? 0));
    for (let day = Math.floor(ready / DAY_MINUTES); ; day++) {
      const opens = day === firstDay ? from + firstMount : day * DAY_MINUTES + times.mountMinutes;
      const end = clock.pieceStart(Math.max(ready, opens), pullMinutes) + pullMinutes;
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
