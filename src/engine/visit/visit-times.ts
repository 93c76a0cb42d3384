import { defined, entryAt } from '../base/at.ts';
import type { Problem } from '../base/error.ts';
import { stackMinutesOf } from '../ink/film/drying.ts';
import type { Ink } from '../ink/types.ts';
import { endOf } from '../pullorder/timeline/beds.ts';
import { DAY_MINUTES } from '../pullorder/timeline/day-clock.ts';
import type { TimelineInput, TimelineStart } from '../pullorder/timeline/start-state.ts';
import { timelineOf } from '../pullorder/timeline/timeline.ts';
import type { DayPart, SetUp } from '../pullorder/types.ts';
import type { Registry } from './registry.ts';
import { type VisitFigures, wholeFigures } from './visit-figures.ts';
import type { VisitProblem } from './visit-problem.ts';

/** When a set-up runs, minutes of press time. */
export interface CardTime {
  /** From 1. */
  day: number;
  /** From the day's start, minutes. */
  startMinute: number;
  endMinute: number;
  /** From 0. */
  bed: number;
  /** Waiting before it or between its sheets, minutes. */
  waitMinutes: number;
  /** Keys of the inks that must dry first, the longest wait first. */
  waitFor: string[];
  /** Of the waiting, what is for want of a place in the racks. */
  rackWaitMinutes: number;
  /** When the last of its sheets can be printed on, and stacked; from the day's start, minutes. */
  dryMinute: number;
  stackMinute: number;
  /** False when it lies beyond the days of the visit. */
  fits: boolean;
}

/** A moment of the visit: days from 1, minutes from the day's start. */
export interface Moment {
  day: number;
  minute: number;
}

/** The visit in time. */
export interface VisitTimes {
  times: CardTime[];
  /** What each bed does when, by day, bed and time. */
  parts: DayPart[];
  /** The day's clock: minutes after midnight at which it begins, minutes from then on. */
  clock: { startMinute: number; workMinutes: number; lunch: { fromMinute: number; minutes: number } | null };
  daysNeeded: number;
  /** When all is washed up, minutes from the start of its day. */
  ends: Moment;
  /** Most sheets that lie wet at once. */
  racksNeeded: number;
  /** What does not fit, a sentence each. */
  problems: Problem[];
}

/** A moment of so many minutes from the first day's start. */
export function momentOf(minutes: number): Moment {
  const day = Math.floor(minutes / DAY_MINUTES);
  return { day: day + 1, minute: Math.round(minutes - day * DAY_MINUTES) };
}

/** What of a visit its clock goes by. */
export type TimedVisit = Pick<VisitProblem, 'problem' | 'sheets' | 'drying' | 'testSheet'> & { registry: Pick<Registry, 'inks'> };

/** What the timeline of a visit is laid out from. */
export function timelineInput(visit: TimedVisit, given: VisitFigures, start?: TimelineStart): TimelineInput {
  const figures = wholeFigures(given);
  const { lunch } = clockOf(figures);
  return {
    problem: visit.problem,
    times: { ...figures, strokeMinutes: figures.strokeSeconds / 60, testPulls: visit.testSheet === null ? 0 : 1 },
    dryMinutesByInk: byInk(visit, (ink) => ink.dryMinutes),
    visit: {
      days: figures.days,
      hoursPerDay: figures.hoursPerDay,
      beds: figures.beds,
      ...(lunch === null ? {} : { lunch }),
      ...(figures.rackPlaces > 0 ? { rackPlaces: figures.rackPlaces } : {}),
    },
    touching: visit.sheets.map((sheet) => entryAt(visit.drying, sheet.recipe)),
    stackMinutesByInk: byInk(visit, stackMinutesOf),
    start,
  };
}

function byInk(visit: TimedVisit, minutes: (ink: Ink) => number): Record<string, number> {
  return Object.fromEntries(visit.registry.inks.map(({ key, ink }) => [key, minutes(ink)]));
}

function clockOf({ dayStartMinute, lunchStartMinute, lunchMinutes, hoursPerDay }: Required<VisitFigures>): VisitTimes['clock'] {
  const fromMinute = lunchStartMinute - dayStartMinute;
  const lunch = lunchMinutes > 0 && fromMinute > 0 && fromMinute < hoursPerDay * 60 ? { fromMinute, minutes: lunchMinutes } : null;
  return { startMinute: dayStartMinute, workMinutes: hoursPerDay * 60, lunch };
}

/**
 * Lays a plan out over the days of a visit, with drying.
 * @param plan with the bed of each set-up; without, each takes the bed that is done with it first
 * @throws EngineError 'visit.bad-number' with a sentence when a figure is none
 */
export function visitTimes(
  plan: { setUps: readonly SetUp[]; beds?: readonly number[] | undefined },
  visit: TimedVisit,
  given: VisitFigures,
  start?: TimelineStart,
): VisitTimes {
  const input = timelineInput(visit, given, start);
  const { timeline, problems } = timelineOf(input)(plan.setUps, plan.beds);
  const { dryMinutesByInk: dry, stackMinutesByInk: stack = dry } = input;
  return {
    times: timeline.times.map(({ setUp, day, bed, startMinute, endMinute, waitMinutes, waitFor, rackWaitMinutes, fits }) => ({
      day,
      bed,
      startMinute: Math.round(startMinute),
      endMinute: Math.round(endMinute),
      waitMinutes: Math.round(waitMinutes),
      waitFor,
      rackWaitMinutes: Math.round(rackWaitMinutes),
      dryMinute: Math.round(endMinute + defined(dry[entryAt(plan.setUps, setUp).ink])),
      stackMinute: Math.round(endMinute + defined(stack[entryAt(plan.setUps, setUp).ink])),
      fits,
    })),
    parts: timeline.parts,
    clock: clockOf(wholeFigures(given)),
    daysNeeded: timeline.daysNeeded,
    ends: momentOf(endOf(timeline)),
    racksNeeded: timeline.racksNeeded,
    problems,
  };
}

/**
 * Minutes at the press: those in which a bed is busy or waits, from the first mount of each day to its
 * last wash-up, lunch left out. Of several beds each counts, as each has its printer.
 */
export function workMinutes({ parts, clock }: Pick<VisitTimes, 'parts' | 'clock'>): number {
  const from = clock.lunch?.fromMinute ?? 0;
  const to = from + (clock.lunch?.minutes ?? 0);
  return parts.reduce((sum, { fromMinute, toMinute }) => {
    const lunch = Math.max(0, Math.min(toMinute, to) - Math.max(fromMinute, from));
    return sum + toMinute - fromMinute - lunch;
  }, 0);
}
