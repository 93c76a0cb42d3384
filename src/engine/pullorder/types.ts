/** One pull as the planner sees it. Pulls of one kind have the same screen, ink and offset. */
export interface PlanPull {
  screen: string;
  ink: string;
  /** Any text that names the offset; absent = ''. */
  offset?: string | undefined;
  /** How often the squeegee goes over it; absent = 1. No part of its kind: a set-up pulls sheets with one and with more. */
  strokes?: number | undefined;
}

/** One sheet: its pulls first down first, and which positions [a, b], a < b, must keep their order. */
export interface PlanSheet {
  pulls: readonly PlanPull[];
  overlaps: readonly (readonly [number, number])[];
}

export interface PlanProblem {
  sheets: readonly PlanSheet[];
}

/** A screen on the press with an ink at an offset, and the [sheet, pull] it prints. */
export interface SetUp {
  screen: string;
  ink: string;
  offset: string;
  pulls: [number, number][];
}

export interface PullPlan {
  setUps: SetUp[];
  /** Set-ups whose screen is other than the set-up's before; the first counts. */
  mounts: number;
  /** Set-ups whose ink is other than the set-up's before; the first counts. */
  inkChanges: number;
  /** Set-ups with the same screen as the one before at another offset. */
  registerMoves: number;
  /** No plan has fewer. */
  bound: { setUps: number; mounts: number };
}

/** The studio's own times; the defaults are common practice, no source. */
export interface PressTimes {
  pullsPerHour: number;
  /** Mounting a screen and registering it. */
  mountMinutes: number;
  /** A stroke after the first of a pull; absent = 0. */
  strokeMinutes?: number;
  /** Washing up after a screen or an ink. */
  washUpMinutes: number;
  /** Moving the lays to another offset under the same screen; absent = 5. */
  registerMinutes?: number;
  /** Mixing an ink before its first pull; absent = 0. */
  mixMinutes?: number;
  /** Pulls on a test sheet before the first of each set-up; absent = none. */
  testPulls?: number;
}

/** When the press can be used, and what stands beside it. */
export interface VisitDays {
  days: number;
  /** Hours of press work a day, lunch not counted; more than 0, at most 24. */
  hoursPerDay: number;
  /** Minutes from the day's start to lunch, and its length; absent = no lunch. Ink dries meanwhile. */
  lunch?: { fromMinute: number; minutes: number } | undefined;
  /** Sheets that can lie wet at once; absent = as many as need be. */
  rackPlaces?: number;
  /** Press beds, each with a printer; absent = 1. */
  beds?: number;
}

/** What a bed is busy with. */
export type PartKind = 'mix' | 'mount' | 'register' | 'print' | 'wait' | 'wash';

/** A stretch of a bed's day, minutes from the day's start; lunch may lie within. */
export interface DayPart {
  kind: PartKind;
  /** Index in the plan of the set-up it belongs to. */
  setUp: number;
  day: number;
  bed: number;
  fromMinute: number;
  toMinute: number;
}

/** One set-up in time. Minutes count from the start of its day. */
export interface SetUpTime {
  /** Index in the plan. */
  setUp: number;
  /** From 1. */
  day: number;
  /** From 0. */
  bed: number;
  startMinute: number;
  /** First pull; before it the screen is mounted or the lays are moved. */
  firstPullMinute: number;
  endMinute: number;
  /** Time in which the press stands ready and waits for sheets to dry. */
  waitMinutes: number;
  /** Inks that it waits for, the longest wait first. */
  waitFor: string[];
  /** Of the waiting, what is for want of a place in the racks. */
  rackWaitMinutes: number;
  /** Sheets not yet dry enough to stack when it ends: places taken in the racks. */
  wetSheets: number;
  /** Whether it lies within the days of the visit. */
  fits: boolean;
}

export interface VisitTimeline {
  times: SetUpTime[];
  /** What each bed does when, by bed and in time. */
  parts: DayPart[];
  daysNeeded: number;
  waitMinutes: number;
  /** Most sheets that are wet at once. */
  racksNeeded: number;
}
