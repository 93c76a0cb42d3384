import { z } from 'zod';
import { LONGEST_NAME } from '../base/limits.ts';
import { explainIssues } from '../recipe/explain.ts';
import { say } from '../words/en/visitfile/visitfile.ts';
import type { DatedVisit } from './calendar.ts';

/** Visits that one press is given to; more are refused. */
export const MOST_VISITS = 50;
const MOST_DAYS = 1000;

/** A visit out of its file, as the week keeps it. */
export interface WeekVisit extends DatedVisit {
  /** What the visit is known by in its log. */
  id: string;
}

/** Several visits on one press. */
export interface Week {
  /** The first day of the visit that is open, whole days since 1970, and which visit that was; null while none was chosen. */
  own: { id: string; firstDay: number } | null;
  others: WeekVisit[];
}

/** A week of nobody else. */
export const EMPTY_WEEK: Week = { own: null, others: [] };

// The years 1970 to 2243 as days.
const date = z.int().min(0).max(100_000);
const id = z.string().min(1).max(200);
// A day's wash-up may end after midnight.
const minute = z.number().min(-1440).max(10_080);

const ownSchema = z.object({ id, firstDay: date }).nullable();
const visitSchema = z.object({
  id,
  title: z.string().max(LONGEST_NAME),
  firstDay: date,
  days: z
    .array(
      z.object({
        day: z.int().min(1).max(10_000),
        bed: z.int().min(0).max(10),
        fromMinute: minute,
        toMinute: minute,
        setUps: z.int().min(0).max(1_000_000),
      }),
    )
    .max(MOST_DAYS),
});

/** A week that was read, and what of it could not be. */
export interface ReadWeek {
  week: Week;
  /** As it was kept, part by part; to be put aside. */
  bad: unknown[];
  /** What is wrong with the first of them, naming the field; null when all was read. */
  sentence: string | null;
}

/**
 * Reads a week that was kept, visit by visit: one that cannot be read costs no other.
 * @param kept as it was kept; undefined when none was
 */
export function readWeek(kept: unknown): ReadWeek {
  if (kept === undefined || kept === null) return { week: EMPTY_WEEK, bad: [], sentence: null };
  const { own, others } = (typeof kept === 'object' ? kept : {}) as { own?: unknown; others?: unknown };
  if (!Array.isArray(others)) return { week: EMPTY_WEEK, bad: [kept], sentence: say.weekOnThisPress };
  const week: Week = { own: null, others: [] };
  const read: ReadWeek = { week, bad: [], sentence: null };
  const refuse = (value: unknown, where: string, issues: z.core.$ZodIssue[]): void => {
    read.bad.push(value);
    read.sentence ??= explainIssues(issues, value, say.weekOnThisPressWhere(where), 'week')[0]?.message ?? null;
  };
  const parsed = ownSchema.safeParse(own ?? null);
  if (parsed.success) week.own = parsed.data;
  else refuse(own, 'own', parsed.error.issues);
  for (const [at, value] of others.entries()) {
    const visit = visitSchema.safeParse(value);
    if (visit.success) week.others.push(visit.data);
    else refuse(value, `others[${at}]`, visit.error.issues);
  }
  return read;
}

/**
 * Adds a visit to a week; a newer order of one that is there takes the place of its older, on the same first day.
 * @returns the week, and whether it took a place
 */
export function withVisit(week: Week, visit: WeekVisit): { week: Week; replaced: boolean } {
  const at = week.others.findIndex((each) => each.id === visit.id);
  if (at < 0) return { week: { ...week, others: [...week.others, visit] }, replaced: false };
  return {
    week: { ...week, others: week.others.map((each, i) => (i === at ? { ...visit, title: each.title, firstDay: each.firstDay } : each)) },
    replaced: true,
  };
}
