import { defined, entryAt, num } from '../base/at.ts';
import type { Problem } from '../base/error.ts';
import { intersectionArea } from '../geometry/booleans.ts';
import { stackMinutesOf } from '../ink/film/drying.ts';
import { meshVolumeCm3PerM2 } from '../ink/film/mesh.ts';
import type { Ink } from '../ink/types.ts';
import { endOf } from '../pullorder/timeline/beds.ts';
import { DAY_MINUTES } from '../pullorder/timeline/day-clock.ts';
import type { TimelineInput, TimelineStart } from '../pullorder/timeline/start-state.ts';
import { timelineOf } from '../pullorder/timeline/timeline.ts';
import type { DayPart, SetUp } from '../pullorder/types.ts';
import type { Recipe } from '../recipe/types.ts';
import { pullRings } from '../shapes/place/placed.ts';
import { inkGrams, stockGrams } from './quantities/ink.ts';
import { sheetsWithOvers } from './quantities/sheets.ts';
import type { InkRun } from './quantities/types.ts';
import { inkText } from './registry.ts';
import { type VisitFigures, wholeFigures } from './visit-figures.ts';
import type { VisitProblem } from './visit-problem.ts';

/** What one ink needs over the whole visit. */
export interface InkNeed {
  key: string;
  name: string;
  /** Area printed, all pulls on all sheets with overs and proofs, m². */
  areaM2: number;
  /** Wet ink to mix, g: what the four below come to. */
  grams: number;
  /** On sheets and overs, on proofs, left in screen and bucket, and for safety, g. */
  printedG: number;
  proofsG: number;
  lossG: number;
  safetyG: number;
}

/** What to have of one stock ink over the whole visit. */
export interface StockNeed {
  name: string;
  grams: number;
}

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

/** Area that each pull of a recipe prints on the sheet, mm². */
function pullAreas(recipe: Recipe): number[] {
  const { widthMm, heightMm } = recipe.paper;
  const sheet = { rings: [[0, 0, widthMm, 0, widthMm, heightMm, 0, heightMm]], fillRule: 'nonzero' as const };
  const screens = new Map(recipe.screens.map((screen) => [screen.id, screen]));
  return recipe.pulls.map((pull) =>
    intersectionArea(pullRings(defined(screens.get(pull.screen)), recipe.shapes, pull, recipe.paper), sheet),
  );
}

/** Sheets to print of a run so that overs are there to spoil. */
export function withOvers(sheets: number, overs: number): number {
  return Math.ceil(sheets * (1 + overs) - 1e-9);
}

/** Paper to cut for a run: good sheets, overs and proofs. */
export function paperToCut(good: number, given: VisitFigures): { good: number; overs: number; proofs: number; cut: number } {
  const { overs: share, proofs } = wholeFigures(given);
  const overs = withOvers(good, share) - good;
  return { good, overs, proofs, cut: good + overs + proofs };
}

/** Spoiled at each pull, share, to show how rejects compound; common practice, no source. */
export const REJECTS_A_PULL = 0.02;

/**
 * Sheets to begin with when a share is spoiled at each pull, beside the flat share of overs.
 * @param good sheets wanted
 * @param pulls of the recipe: how often each sheet goes over the press
 */
export function withRejects(good: number, pulls: number): number {
  return sheetsWithOvers(good, REJECTS_A_PULL, pulls);
}

/**
 * Wet ink to mix for a visit, by ink.
 * @throws EngineError 'quantities.bad-number', 'ink.bad-mesh' with a sentence
 */
export function visitInks(visit: VisitProblem, given: VisitFigures): InkNeed[] {
  const { transfer, lossMl, overs, proofs, safety } = wholeFigures(given);
  const { registry } = visit;
  const densityGPerCm3 = Object.fromEntries(registry.inks.map(({ key, ink }) => [key, ink.densityGPerCm3]));
  const nothing = { areaM2: 0, grams: 0, printedG: 0, proofsG: 0, lossG: 0, safetyG: 0 };
  const needs = new Map<string, InkNeed>(registry.inks.map(({ key, ink }) => [key, { key, name: ink.name, ...nothing }]));
  for (const [r, recipe] of visit.recipes.entries()) {
    const areas = pullAreas(recipe);
    const sheets = withOvers(visit.sheets.filter((sheet) => sheet.recipe === r).length, overs);
    const meshes = new Map(recipe.screens.map((screen) => [screen.id, screen.mesh]));
    const runs: InkRun[] = recipe.pulls.map((pull, p) => ({
      ink: defined(entryAt(registry.inkKey, r).get(pull.ink)),
      areaMm2: num(areas, p),
      sheets,
      proofs,
      strokes: pull.strokes,
      volumeCm3PerM2: meshVolumeCm3PerM2(defined(meshes.get(pull.screen))),
    }));
    // Each recipe has its own stroke gain; what stays in screen and bucket is counted once an ink.
    const { strokeGain } = recipe;
    for (const need of inkGrams(runs, { transfer, lossMl, strokeGain, densityGPerCm3, safety })) {
      const sum = defined(needs.get(need.ink));
      sum.areaM2 += need.areaM2;
      sum.printedG += need.printedG;
      sum.proofsG += need.proofsG;
      sum.lossG = need.lossG;
      const wanted = sum.printedG + sum.proofsG + sum.lossG;
      sum.safetyG = wanted * safety;
      sum.grams = wanted + sum.safetyG;
    }
  }
  return [...needs.values()];
}

/**
 * Ink to weigh out for a visit, by stock ink: mixes taken apart by their parts, inks that are no
 * mixes as they are.
 * @param needs as visitInks gives them
 * @returns in the order in which the inks first ask for them
 */
export function visitStocks(visit: VisitProblem, needs: readonly InkNeed[]): StockNeed[] {
  const names = new Map<string, string>();
  const mixes = Object.fromEntries(
    visit.registry.inks.map(({ key, stocks }) => [
      key,
      stocks.map(({ ink, parts }) => {
        const stock = inkText(ink);
        names.set(stock, ink.name);
        return { stock, parts };
      }),
    ]),
  );
  const wet = needs.map(({ key, grams }) => ({ ink: key, totalG: grams }));
  return [...stockGrams(wet, mixes)].map(([stock, grams]) => ({ name: defined(names.get(stock)), grams }));
}

/** A moment of so many minutes from the first day's start. */
export function momentOf(minutes: number): Moment {
  const day = Math.floor(minutes / DAY_MINUTES);
  return { day: day + 1, minute: Math.round(minutes - day * DAY_MINUTES) };
}

/** What the timeline of a visit is laid out from. */
export function timelineInput(visit: VisitProblem, given: VisitFigures, start?: TimelineStart): TimelineInput {
  const figures = wholeFigures(given);
  const { lunch } = clockOf(figures);
  return {
    problem: visit.problem,
    times: figures,
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

function byInk(visit: VisitProblem, minutes: (ink: Ink) => number): Record<string, number> {
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
  plan: { setUps: readonly SetUp[]; beds?: readonly number[] },
  visit: VisitProblem,
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
