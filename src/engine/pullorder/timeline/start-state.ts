import type { Problem } from '../../base/error.ts';
import type { PlanProblem, PressTimes, SetUp, VisitDays, VisitTimeline } from '../types.ts';

/** By bed a screen with its ink at its offset. */
export type OnPress = readonly (Pick<SetUp, 'screen' | 'ink' | 'offset'> | null)[];

/** How a visit stands when its plan begins: one that is under way, or all at rest. */
export interface TimelineStart {
  /** When work begins, minutes from the first day's start; absent = 0. */
  minute?: number;
  /** By bed what is on it, null where nothing is; it stays when it can be used on the same day. Absent = all are bare. */
  onPress?: OnPress;
  /** For each sheet and pull the minute at which the sheet is dry enough under it, and the ink that is wet until then. */
  readyAt?: readonly (readonly { minute: number; ink: string | null }[])[];
  /** For each sheet the minute at which it leaves the racks. */
  stackAt?: readonly number[];
  /** The same of the test sheet; absent = it is in none. */
  testStackAt?: number;
  /** Set-ups that are done: those of the plan are numbered behind them; absent = none. */
  setUpsBefore?: number;
  /** Inks that stand mixed. */
  mixed?: readonly string[];
}

/** What a timeline is laid out for. */
export interface TimelineInput {
  problem: PlanProblem;
  times: PressTimes;
  /** Minutes until another film can go over an ink; common practice, no source. */
  dryMinutesByInk: Readonly<Record<string, number>>;
  visit: VisitDays;
  /**
   * For each sheet the pairs of pulls that touch, whichever comes first; absent = the problem's
   * overlaps. Free swaps touch too, so give them here.
   */
  touching?: readonly (readonly (readonly [number, number])[])[] | undefined;
  /** Minutes until sheets can be stacked and leave the racks; absent = as soon as they can be printed on. */
  stackMinutesByInk?: Readonly<Record<string, number>> | undefined;
  start?: TimelineStart | undefined;
}

/** A plan laid out in time. */
export interface LaidOut {
  timeline: VisitTimeline;
  problems: Problem[];
}
