import { defined, entryAt, f64, num } from '../../base/at.ts';
import { EngineError, type Problem } from '../../base/error.ts';
import type { DayPart, PartKind, PressTimes, SetUp, SetUpTime } from '../types.ts';
import { checkTimes } from './check-times.ts';
import { DAY_MINUTES, dayClock } from './day-clock.ts';
import { lateProblems, rackProblems } from './problems.ts';
import type { LaidOut, TimelineInput } from './start-state.ts';

/** Common practice, no source: from memory, paper by hand 30–80 pulls/h, mount 10–20 min, wash-up 10–20 min. */
export const DEFAULT_PRESS_TIMES: Required<PressTimes> = {
  pullsPerHour: 45,
  mountMinutes: 15,
  washUpMinutes: 15,
  registerMinutes: 5,
  mixMinutes: 10,
};

const AT_REST: { minute: number; ink: string | null } = { minute: 0, ink: null };

interface Bed {
  /** Free from here on, minutes from the first day's start. */
  clock: number;
  previous: SetUp | null;
}

/** A set-up tried on a bed; nothing is booked yet. */
interface Trial {
  bed: number;
  day: number;
  start: number;
  first: number;
  end: number;
  ends: number[];
  parts: { kind: PartKind; from: number; to: number }[];
  wait: number;
  rackWait: number;
  waitFor: Map<string, number>;
  inDay: boolean;
}

/**
 * A function that lays set-ups out over the days of a visit, one after another, each as soon as it
 * can, on the bed named for it or on the one that is done with it first. Within a set-up the sheets
 * that dry first go first; a pull waits until every film it touches is dry, the sheet is off the
 * other bed and a place in the racks is free; lunch and nights dry too. A set-up that does not end
 * within its day, washed up, begins the next morning; every morning the screen is mounted anew.
 * Problems are 'visit.too-long', 'visit.long-set-up', 'visit.racks'.
 * @throws EngineError 'visit.bad-number' for figures that are none, and when laying out
 *   'visit.unknown-ink' when a drying time is missing
 */
export function timelineOf(input: TimelineInput): (setUps: readonly SetUp[], bedOf?: readonly number[]) => LaidOut {
  const { problem, times, dryMinutesByInk, visit, touching, stackMinutesByInk = dryMinutesByInk, start: begin = {} } = input;
  checkTimes(times, dryMinutesByInk, visit);
  const { pullsPerHour, mountMinutes, washUpMinutes } = times;
  const registerMinutes = times.registerMinutes ?? DEFAULT_PRESS_TIMES.registerMinutes;
  const pullMinutes = 60 / pullsPerHour;
  const places = visit.rackPlaces ?? Infinity;
  const clock = dayClock(visit);
  const neighbours = problem.sheets.map((sheet, s) => {
    const lists: number[][] = sheet.pulls.map(() => []);
    for (const [a, b] of touching?.[s] ?? sheet.overlaps) {
      entryAt(lists, a).push(b);
      entryAt(lists, b).push(a);
    }
    return lists;
  });
  return (setUps, bedOf) => {
    const dryAt = problem.sheets.map((sheet) => new Float64Array(sheet.pulls.length).fill(-1));
    const stackAt = begin.stackAt === undefined ? new Float64Array(problem.sheets.length) : Float64Array.from(begin.stackAt);
    const freeAt = new Float64Array(problem.sheets.length);
    const beds: Bed[] = Array.from({ length: visit.beds ?? 1 }, () => ({ clock: begin.minute ?? 0, previous: null }));
    if (begin.onPress !== undefined) entryAt(beds, 0).previous = { ...begin.onPress, pulls: [] };
    const screenFree = new Map<string, { bed: number; at: number }>();
    const mixed = new Set<string>(begin.mixed);
    const out: SetUpTime[] = [];
    const parts: DayPart[] = [];
    const problems: Problem[] = [];

    const tryOn = (bed: number, setUp: SetUp, stack: number): Trial => {
      const { previous } = entryAt(beds, bed);
      const queue = queueOf(setUp);
      const lastReady = queue.length > 0 ? entryAt(queue, queue.length - 1).ready : 0;
      const elsewhere = screenFree.get(setUp.screen);
      const screenAt = elsewhere !== undefined && elsewhere.bed !== bed ? clock.workEnd(elsewhere.at, washUpMinutes) : 0;
      const layOut = (start: number, day: number, fresh: boolean): Trial => {
        const trial: Trial = {
          bed,
          day,
          start,
          first: -1,
          end: start,
          ends: [],
          parts: [],
          wait: 0,
          rackWait: 0,
          waitFor: new Map(),
          inDay: false,
        };
        const work = (kind: PartKind, minutes: number): void => {
          if (minutes <= 0) return;
          const from = clock.afterLunch(trial.end);
          trial.end = clock.workEnd(from, minutes);
          trial.parts.push({ kind, from, to: trial.end });
        };
        if (!fresh && (defined(previous).screen !== setUp.screen || defined(previous).ink !== setUp.ink)) work('wash', washUpMinutes);
        if (!mixed.has(setUp.ink)) work('mix', times.mixMinutes ?? 0);
        if (fresh || defined(previous).screen !== setUp.screen) work('mount', mountMinutes);
        else if (defined(previous).offset !== setUp.offset) work('register', registerMinutes);
        const wet = places < Infinity ? Float64Array.from(stackAt) : stackAt;
        for (const { s, ready, ink } of queue) {
          const now = trial.end;
          const racked = places < Infinity ? rackFree(wet, s, Math.max(now, ready), places) : 0;
          const until = Math.max(now, ready, racked);
          if (until > now) {
            const minutes = until - now - clock.lunchBetween(now, until);
            const forRacks = racked > Math.max(now, ready) ? racked - Math.max(now, ready) : 0;
            trial.wait += minutes;
            trial.rackWait += Math.min(minutes, forRacks);
            if (ready > now && ink !== null) trial.waitFor.set(ink, (trial.waitFor.get(ink) ?? 0) + ready - now);
            trial.parts.push({ kind: 'wait', from: now, to: until });
          }
          const at = clock.pieceStart(until, pullMinutes);
          if (trial.first < 0) trial.first = at;
          trial.end = at + pullMinutes;
          trial.ends.push(trial.end);
          wet[s] = Math.max(f64(wet, s), places < Infinity ? trial.end + stack : 0);
          const last = trial.parts.at(-1);
          if (last?.kind === 'print') last.to = trial.end;
          else trial.parts.push({ kind: 'print', from: at, to: trial.end });
        }
        if (trial.first < 0) trial.first = trial.end;
        trial.inDay = clock.workEnd(trial.end, washUpMinutes) <= clock.closes(day) + 1e-9;
        return trial;
      };
      const from = Math.max(entryAt(beds, bed).clock, screenAt);
      let day = Math.floor(from / DAY_MINUTES);
      const newDay = previous === null || day > Math.floor(Math.max(0, entryAt(beds, bed).clock - 1e-9) / DAY_MINUTES);
      let trial = layOut(from, day, newDay);
      const next = (): void => {
        day++;
        trial = layOut(Math.max(day * DAY_MINUTES, screenAt), day, true);
      };
      if (!trial.inDay && from > day * DAY_MINUTES) next();
      // Sheets that dry overnight may hold a morning up; later mornings find them dry.
      while (!trial.inDay && trial.start < Math.max(lastReady, trial.rackWait > 0 ? mostOf(stackAt) : 0)) next();
      return trial;
    };

    const queueOf = (setUp: SetUp): { s: number; p: number; ready: number; ink: string | null }[] =>
      setUp.pulls
        .map(([s, p]) => {
          let { minute: ready, ink } = begin.readyAt?.[s]?.[p] ?? AT_REST;
          for (const q of entryAt(entryAt(neighbours, s), p)) {
            if (f64(entryAt(dryAt, s), q) <= ready) continue;
            ready = f64(entryAt(dryAt, s), q);
            ink = entryAt(entryAt(problem.sheets, s).pulls, q).ink;
          }
          if (f64(freeAt, s) > ready) return { s, p, ready: f64(freeAt, s), ink: null };
          return { s, p, ready, ink };
        })
        .sort((a, b) => a.ready - b.ready || a.s - b.s || a.p - b.p);

    setUps.forEach((setUp, i) => {
      const dry = dryMinutesByInk[setUp.ink];
      if (dry === undefined) {
        throw new EngineError('visit.unknown-ink', `Ink ${setUp.ink} has no drying time: give it one.`, {
          path: ['dryMinutesByInk', setUp.ink],
        });
      }
      const stack = stackMinutesByInk[setUp.ink] ?? dry;
      const named = bedOf?.[i];
      let best = tryOn(named ?? 0, setUp, stack);
      for (let bed = 1; bed < beds.length && named === undefined; bed++) {
        const other = tryOn(bed, setUp, stack);
        if (other.end < best.end - 1e-9) best = other;
      }
      if (!best.inDay) {
        problems.push({
          code: 'visit.long-set-up',
          message: `Set-up ${i + 1} takes ${Math.ceil(best.end - best.start + washUpMinutes)} minutes with washing up, more than a day of ${visit.hoursPerDay} h: print fewer sheets in it or make the day longer.`,
          where: `set-up ${i + 1}`,
        });
      }
      for (const [k, { s, p }] of queueOf(setUp).entries()) {
        entryAt(dryAt, s)[p] = num(best.ends, k) + dry;
        stackAt[s] = Math.max(f64(stackAt, s), num(best.ends, k) + stack);
        freeAt[s] = Math.max(f64(freeAt, s), num(best.ends, k));
      }
      const from = best.day * DAY_MINUTES;
      const place = { setUp: i, day: best.day + 1, bed: best.bed };
      out.push({
        ...place,
        startMinute: best.start - from,
        firstPullMinute: best.first - from,
        endMinute: best.end - from,
        waitMinutes: best.wait,
        waitFor: [...best.waitFor].sort((a, b) => b[1] - a[1]).map(([ink]) => ink),
        rackWaitMinutes: best.rackWait,
        wetSheets: stackAt.reduce((n, until) => n + (until > best.end ? 1 : 0), 0),
        fits: best.day < visit.days && best.inDay,
      });
      for (const part of best.parts) parts.push({ ...place, kind: part.kind, fromMinute: part.from - from, toMinute: part.to - from });
      mixed.add(setUp.ink);
      screenFree.set(setUp.screen, { bed: best.bed, at: best.end });
      // A set-up that overran its day pushes the next one to the morning after.
      beds[best.bed] = { clock: best.end, previous: setUp };
      // A frame that went to another bed is to be mounted again where it was.
      for (const [b, { previous }] of beds.entries()) {
        if (b !== best.bed && previous?.screen === setUp.screen) entryAt(beds, b).previous = { ...previous, screen: '' };
      }
    });

    for (const [k, time] of out.entries()) {
      if (washUpMinutes <= 0 || out.slice(k + 1).some(({ bed, day }) => bed === time.bed && day === time.day)) continue;
      const { setUp, day, bed, endMinute } = time;
      const fromMinute = clock.afterLunch(endMinute);
      parts.push({ kind: 'wash', setUp, day, bed, fromMinute, toMinute: clock.workEnd(fromMinute, washUpMinutes) });
    }
    parts.sort((a, b) => a.day - b.day || a.bed - b.bed || a.fromMinute - b.fromMinute);
    const daysNeeded = out.reduce((most, t) => Math.max(most, t.day), 0);
    problems.push(...rackProblems(out, places), ...lateProblems(out, daysNeeded, visit));
    return {
      timeline: {
        times: out,
        parts,
        daysNeeded,
        waitMinutes: out.reduce((sum, t) => sum + t.waitMinutes, 0),
        racksNeeded: out.reduce((most, t) => Math.max(most, t.wetSheets), 0),
      },
      problems,
    };
  };
}

/** When a sheet finds a place: the first moment from `at` when fewer than `places` others are wet. */
function rackFree(wet: Float64Array, sheet: number, at: number, places: number): number {
  let count = 0;
  for (let s = 0; s < wet.length; s++) if (s !== sheet && f64(wet, s) > at) count++;
  if (count < places) return at;
  const others = [...wet].filter((until, s) => s !== sheet && until > at).sort((a, b) => a - b);
  return num(others, count - places);
}

function mostOf(values: Float64Array): number {
  return values.reduce((most, value) => Math.max(most, value), 0);
}
