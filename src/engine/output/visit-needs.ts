import type { Problem } from '../base/error.ts';
import { intersectionArea } from '../geometry/booleans.ts';
import { stackMinutesOf } from '../ink/drying.ts';
import type { Ink } from '../ink/types.ts';
import { meshVolumeCm3PerM2 } from '../ink/mesh.ts';
import { visitTimeline } from '../pullorder/timeline.ts';
import type { DayPart, PullPlan } from '../pullorder/types.ts';
import { inkGrams, stockGrams } from '../quantities/ink.ts';
import { sheetsWithOvers } from '../quantities/sheets.ts';
import type { InkRun } from '../quantities/types.ts';
import type { Recipe } from '../recipe/types.ts';
import { pullRings } from '../shapes/placed.ts';
import { inkText } from './registry.ts';
import { type VisitFigures, wholeFigures } from './visit-figures.ts';
import type { VisitProblem } from './visit-problem.ts';

/** What one ink needs over the whole visit. */
export interface InkNeed {
  key: string;
  name: string;
  /** Area printed, all pulls on all sheets with overs, m². */
  areaM2: number;
  /** Wet ink to mix, with what stays in screen and bucket, g. */
  grams: number;
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

/** The visit in time. */
export interface VisitTimes {
  times: CardTime[];
  /** What each bed does when, by day, bed and time. */
  parts: DayPart[];
  /** The day's clock: minutes after midnight at which it begins, minutes from then on. */
  clock: { startMinute: number; workMinutes: number; lunch: { fromMinute: number; minutes: number } | null };
  daysNeeded: number;
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
  return recipe.pulls.map((pull) => intersectionArea(pullRings(screens.get(pull.screen)!, recipe.shapes, pull, recipe.paper), sheet));
}

/** Sheets to print of a run so that overs are there to spoil. */
export function withOvers(sheets: number, overs: number): number {
  return Math.ceil(sheets * (1 + overs) - 1e-9);
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
export function visitInks(visit: VisitProblem, figures: VisitFigures): InkNeed[] {
  const { registry } = visit;
  const densityGPerCm3 = Object.fromEntries(registry.inks.map(({ key, ink }) => [key, ink.densityGPerCm3]));
  const needs = new Map<string, InkNeed>(registry.inks.map(({ key, ink }) => [key, { key, name: ink.name, areaM2: 0, grams: 0 }]));
  const losses = new Set<string>();
  for (const [r, recipe] of visit.recipes.entries()) {
    const areas = pullAreas(recipe);
    const sheets = withOvers(visit.sheets.filter((sheet) => sheet.recipe === r).length, figures.overs);
    const meshes = new Map(recipe.screens.map((screen) => [screen.id, screen.mesh]));
    const runs: InkRun[] = recipe.pulls.map((pull, p) => ({
      ink: registry.inkKey[r]!.get(pull.ink)!,
      areaMm2: areas[p]!,
      sheets,
      strokes: pull.strokes,
      volumeCm3PerM2: meshVolumeCm3PerM2(meshes.get(pull.screen)!),
    }));
    // Each recipe has its own stroke gain; what stays in screen and bucket is counted once an ink.
    const { strokeGain } = recipe;
    for (const need of inkGrams(runs, { transfer: figures.transfer, lossMl: figures.lossMl, strokeGain, densityGPerCm3 })) {
      const sum = needs.get(need.ink)!;
      sum.areaM2 += need.areaM2;
      sum.grams += need.printedG + (losses.has(need.ink) ? 0 : need.lossG);
      losses.add(need.ink);
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
  const wet = needs.map(({ key, areaM2, grams }) => ({ ink: key, areaM2, printedG: grams, lossG: 0, totalG: grams }));
  return [...stockGrams(wet, mixes)].map(([stock, grams]) => ({ name: names.get(stock)!, grams }));
}

/**
 * Lays a plan out over the days of a visit, with drying.
 * @throws EngineError 'visit.bad-number' with a sentence when a figure is none
 */
export function visitTimes(plan: Pick<PullPlan, 'setUps'>, visit: VisitProblem, given: VisitFigures): VisitTimes {
  const figures = wholeFigures(given);
  const { dayStartMinute, lunchStartMinute, lunchMinutes, hoursPerDay } = figures;
  const fromMinute = lunchStartMinute - dayStartMinute;
  const lunch = lunchMinutes > 0 && fromMinute > 0 && fromMinute < hoursPerDay * 60 ? { fromMinute, minutes: lunchMinutes } : null;
  const byInk = (minutes: (ink: Ink) => number): Record<string, number> =>
    Object.fromEntries(visit.registry.inks.map(({ key, ink }) => [key, minutes(ink)]));
  const dry = byInk((ink) => ink.dryMinutes);
  const stack = byInk(stackMinutesOf);
  const { timeline, problems } = visitTimeline(
    visit.problem,
    plan,
    figures,
    dry,
    {
      days: figures.days,
      hoursPerDay,
      beds: figures.beds,
      ...(lunch === null ? {} : { lunch }),
      ...(figures.rackPlaces > 0 ? { rackPlaces: figures.rackPlaces } : {}),
    },
    visit.sheets.map((sheet) => visit.drying[sheet.recipe]!),
    stack,
  );
  return {
    times: timeline.times.map(({ setUp, day, bed, startMinute, endMinute, waitMinutes, waitFor, rackWaitMinutes, fits }) => ({
      day,
      bed,
      startMinute: Math.round(startMinute),
      endMinute: Math.round(endMinute),
      waitMinutes: Math.round(waitMinutes),
      waitFor,
      rackWaitMinutes: Math.round(rackWaitMinutes),
      dryMinute: Math.round(endMinute + dry[plan.setUps[setUp]!.ink]!),
      stackMinute: Math.round(endMinute + stack[plan.setUps[setUp]!.ink]!),
      fits,
    })),
    parts: timeline.parts,
    clock: { startMinute: dayStartMinute, workMinutes: hoursPerDay * 60, lunch },
    daysNeeded: timeline.daysNeeded,
    racksNeeded: timeline.racksNeeded,
    problems,
  };
}
