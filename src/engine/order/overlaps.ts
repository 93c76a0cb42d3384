import { atOnce } from '../base/at-once.ts';
import { entryAt, f64, num } from '../base/at.ts';
import { EngineError } from '../base/error.ts';
import { REFLECTANCE, within } from '../base/limits.ts';
import { boxesMeet, type Prepared, prepareOutline, sharedArea } from '../geometry/meet/shared-area.ts';
import { surelyApart } from '../geometry/meet/surely-apart.ts';
import { surelyMeet } from '../geometry/meet/surely-meet.ts';
import type { Box } from '../geometry/types.ts';
import { WorkBudget } from '../geometry/work.ts';
import { screenOutline, screenRings, type SheetOutline } from '../shapes/place/placed.ts';
import { buildCellMap } from '../stack/cell-map.ts';
import { placedSpans } from '../stack/screen-spans.ts';
import type { Pull, Stack } from '../stack/types.ts';
import type { Studio } from '../studio/studio.ts';
import { say } from '../words/en/order/order.ts';
import { cellsOf, raiseSteps } from './cell-swaps.ts';
import { Piles } from './pile-colours.ts';
import { SwapDeltas } from './swap-delta.ts';
import { toldWork } from './told-work.ts';

/** Overlaps nowhere wider than this count as touching: finer than any table registers, mm. */
export const OVERLAP_TOLERANCE_MM = 0.05;

// Parts of the print that no row of this height goes through are too small to look at.
const ROW_MM = 0.5;
const MOST_ROWS = 1500;

/** Pairs clipped, and pairs whose films are compared, from one step to the next: some ten milliseconds each. */
const CLIPPED_A_STEP = 4;
const COMPARED_A_STEP = 16;
/** Shares of all work that clipping takes, and comparing films; the rest looks into the cells. */
const CLIPPING_SHARE = 0.6;
const COMPARING_SHARE = 0.2;

/** Work of all clippings of a stack, in steps of about a tenth of a microsecond; 200 pulls of icons all over each other take half of it. */
const MOST_WORK = 300_000_000;

/** Two pulls that meet on the sheet; positions in the stack, a < b, first down 0. */
export interface MeetingPair {
  a: number;
  b: number;
}

/** Two pulls that share area on the sheet. */
export interface SharedPair extends MeetingPair {
  areaMm2: number;
}

/** How much it shows which of two pulls goes down first. */
interface Shown {
  /** Largest ΔE00 between their two orders, by themselves or together with other pairs that could be as free. */
  deltaE: number;
}

/** Two pulls whose order matters, and how much. */
export interface Overlap extends SharedPair, Shown {}

/** What two outlines share, or null where they do not meet. */
type Look<T> = (a: Prepared, b: Prepared, how: { toleranceMm: number; within: Box; budget: WorkBudget }) => T | null;

/** By exact clipping. */
const areaOf: Look<{ areaMm2: number }> = (a, b, how) => {
  const areaMm2 = sharedArea(a, b, how);
  return areaMm2 > 0 ? { areaMm2 } : null;
};

/** The same pairs, nearly all of them without clipping: 80 pulls of drawings in a sixth of the time. */
const meeting: Look<object> = (a, b, how) => {
  if (!boxesMeet(a.box, b.box)) return null;
  if (surelyMeet(a, b, how)) return {};
  return surelyApart(a, b) || sharedArea(a, b, how) === 0 ? null : {};
};

/** From where on two pulls meet, and from where on their order shows. */
export interface OverlapOptions {
  /** An area nowhere wider than this counts as touching, mm. */
  toleranceMm: number;
  /** Pairs whose two orders differ by less than this (ΔE00) may change places freely. */
  minDeltaE: number;
}

/**
 * The pairs of pulls whose order matters: they share area, and their two orders differ by at least
 * minDeltaE. ΔE00 is the largest over bare paper and over paper carrying one other pull that overlaps
 * both; where that would leave a pair free, also in every part of the print in which both lie, with
 * the stack's own films under, between and over them. Orders that agree in all pairs given here
 * differ by less than minDeltaE: where several free swaps would add up to more, the largest is held.
 * Piles of up to five films are looked at in all orders, deeper ones as the stack lies.
 * @returns sorted by a, then b; areaMm2 is all that they share on the sheet, by exact clipping
 * @throws EngineError 'order.stack', 'order.drawer', 'order.tolerance', 'order.min-delta-e', 'order.too-much-work',
 * 'stack.unknown-screen', 'stack.unknown-ink', 'screen.unknown-shape', 'screen.too-much-work'
 * Cost: a clipping for each pair whose boxes meet.
 */
export function overlapsOf(stack: Stack, studio: Studio, options: OverlapOptions): Overlap[] {
  return atOnce(overlapSteps(stack, studio, options));
}

/**
 * As overlapsOf, in steps of some ten milliseconds.
 * @yields the share that is done, 0–1
 * @throws EngineError as overlapsOf, at the first step
 */
export function* overlapSteps(stack: Stack, studio: Studio, options: OverlapOptions): Generator<number, Overlap[]> {
  checkInput(stack, studio);
  checkMinDeltaE(options?.minDeltaE);
  const all = yield* allOverlaps(stack, studio, options, areaOf);
  return all.filter(({ deltaE }) => deltaE >= options.minDeltaE);
}

/**
 * All pairs of pulls that share area, those whose order matters among them, for one look at both; in
 * steps as overlapSteps, and much quicker, as it does not say how much they share.
 * @returns the pairs that dryingPairs (`touching`) and overlapsOf (`mattering`) give
 */
export function* pairSteps(
  stack: Stack,
  studio: Studio,
  options: OverlapOptions,
): Generator<number, { touching: MeetingPair[]; mattering: MeetingPair[] }> {
  checkInput(stack, studio);
  checkMinDeltaE(options?.minDeltaE);
  const touching = yield* allOverlaps(stack, studio, options, meeting);
  return { touching, mattering: touching.filter(({ deltaE }) => deltaE >= options.minDeltaE) };
}

/** The pairs that share area but may change places: the complement of overlapsOf. */
export function freeSwaps(stack: Stack, studio: Studio, options: OverlapOptions): Overlap[] {
  checkInput(stack, studio);
  checkMinDeltaE(options?.minDeltaE);
  return atOnce(allOverlaps(stack, studio, options, areaOf)).filter(({ deltaE }) => deltaE < options.minDeltaE);
}

/**
 * All pairs of pulls that share area, whatever the inks: one must dry before the other goes down,
 * also where the order makes no difference to the eye.
 * @param options `across`: only pairs of a pull before this place and one from it on; absent = all
 * @returns sorted by a, then b
 * @throws EngineError 'order.stack', 'order.drawer', 'order.tolerance', 'order.too-much-work',
 * 'stack.unknown-screen', 'screen.unknown-shape', 'screen.too-much-work'
 */
export function dryingPairs(stack: Stack, studio: Studio, options: { toleranceMm: number; across?: number }): SharedPair[] {
  checkInput(stack, studio);
  const toleranceMm = options?.toleranceMm;
  checkTolerance(toleranceMm);
  return atOnce(pairsSeen(stack, studio, options, areaOf));
}

/**
 * The pairs that dryingPairs gives, much quicker, as it does not say how much they share.
 * @param options as dryingPairs takes them
 * @throws EngineError as dryingPairs
 */
export function meetingPairs(stack: Stack, studio: Studio, options: { toleranceMm: number; across?: number }): MeetingPair[] {
  checkInput(stack, studio);
  checkTolerance(options.toleranceMm);
  return atOnce(pairsSeen(stack, studio, options, meeting));
}

/** @yields the share of the pairs that is looked at */
function* pairsSeen<T extends object>(
  stack: Stack,
  studio: Studio,
  { toleranceMm, across }: { toleranceMm: number; across?: number },
  look: Look<T>,
): Generator<number, (MeetingPair & T)[]> {
  const outlines = prepareStack(stack, studio);
  const sheet = { xMm: 0, yMm: 0, widthMm: studio.paper.widthMm, heightMm: studio.paper.heightMm };
  const how = { toleranceMm, within: sheet, budget: new WorkBudget(MOST_WORK) };
  const pairs: (MeetingPair & T)[] = [];
  const all = (outlines.length * (outlines.length - 1)) / 2;
  let clipped = 0;
  for (let a = 0; a < (across ?? outlines.length); a++) {
    for (let b = across ?? a + 1; b < outlines.length; b++) {
      const seen = toldWork([a, b], stack, studio, () => look(entryAt(outlines, a), entryAt(outlines, b), how));
      if (seen !== null) pairs.push({ a, b, ...seen });
      if (++clipped % CLIPPED_A_STEP === 0) yield clipped / all;
    }
  }
  return pairs;
}

/** How much an order matters: shared area × ΔE00, mm². */
export function edgeWeight(overlap: Pick<Overlap, 'areaMm2' | 'deltaE'>): number {
  return overlap.areaMm2 * overlap.deltaE;
}

function* allOverlaps<T extends object>(
  stack: Stack,
  studio: Studio,
  { toleranceMm, minDeltaE }: OverlapOptions,
  look: Look<T>,
): Generator<number, (MeetingPair & T & Shown)[]> {
  const deltas = new SwapDeltas(studio);
  const films = stack.pulls.map((pull) => deltas.filmOf(pull));
  checkTolerance(toleranceMm);
  const clipping = pairsSeen(stack, studio, { toleranceMm }, look);
  let clipped = clipping.next();
  for (; clipped.done !== true; clipped = clipping.next()) yield CLIPPING_SHARE * clipped.value;
  const pairs = clipped.value;
  const meets: Set<number>[] = films.map(() => new Set());
  for (const { a, b } of pairs) {
    entryAt(meets, a).add(b);
    entryAt(meets, b).add(a);
  }
  const deltaE = new Float64Array(films.length * films.length).fill(-1);
  for (const [at, { a, b }] of pairs.entries()) {
    if (at % COMPARED_A_STEP === COMPARED_A_STEP - 1) yield CLIPPING_SHARE + (COMPARING_SHARE * at) / pairs.length;
    const unders = [...entryAt(meets, a)].filter((k) => entryAt(meets, b).has(k)).map((k) => num(films, k));
    deltaE[a * films.length + b] = deltas.largest(num(films, a), num(films, b), unders);
  }
  if (pairs.some(({ a, b }) => f64(deltaE, a * films.length + b) < minDeltaE)) {
    const { widthMm, heightMm } = studio.paper;
    const grid = { widthMm, heightMm, rows: Math.min(MOST_ROWS, Math.ceil(heightMm / ROW_MM)) };
    const cells = cellsOf(buildCellMap(placedSpans(stack, studio, grid), grid));
    const raising = raiseSteps(cells, { films, deltaE, minDeltaE }, new Piles(deltas, studio.paper.reflectance));
    for (const share of raising) yield CLIPPING_SHARE + COMPARING_SHARE + (1 - CLIPPING_SHARE - COMPARING_SHARE) * share;
  }
  return pairs.map((pair) => ({ ...pair, deltaE: f64(deltaE, pair.a * films.length + pair.b) }));
}

function checkTolerance(toleranceMm: number): void {
  if (toleranceMm >= 0 && toleranceMm < Infinity) return;
  throw new EngineError('order.tolerance', say.overlapToleranceIsMm(toleranceMm));
}

/**
 * The outline of each pull on the sheet, made ready for comparisons.
 * @throws EngineError 'stack.unknown-screen', 'screen.unknown-shape', 'screen.too-much-work', 'order.too-much-work'
 */
export function prepareStack(stack: Stack, studio: Studio): Prepared[] {
  const shapes = new Map(studio.shapes.map((shape) => [shape.id, shape]));
  const screens = new Map(studio.screens.map((screen) => [screen.id, screen]));
  const rest = new Map<string, SheetOutline>();
  return stack.pulls.map((pull, index) => {
    let outline = rest.get(pull.screen);
    if (outline === undefined) {
      const screen = screens.get(pull.screen);
      if (screen === undefined) {
        throw new EngineError('stack.unknown-screen', say.pullUsesScreenWhich(index + 1, pull.screen), {
          path: ['pulls', index, 'screen'],
          details: { screen: pull.screen },
        });
      }
      outline = screenRings(screen, shapes);
      rest.set(pull.screen, outline);
    }
    const sheetOutline = screenOutline(outline, pull, studio.paper);
    return toldWork([index], stack, studio, () => prepareOutline(sheetOutline));
  });
}

function checkInput(stack: Stack, studio: Studio): void {
  if (!Array.isArray(stack?.pulls)) {
    throw new EngineError('order.stack', 'The stack must have a list of pulls, first down first: { pulls }.', { path: ['pulls'] });
  }
  if (![studio?.shapes, studio?.screens, studio?.inks].every(Array.isArray) || !studio.paper) {
    throw new EngineError('order.drawer', say.drawerMustHaveLists);
  }
  const { reflectance, widthMm, heightMm } = studio.paper;
  const lit = Array.from(reflectance ?? []).every((r) => within(REFLECTANCE, r));
  if (!lit || !(widthMm > 0 && widthMm < Infinity && heightMm > 0 && heightMm < Infinity)) {
    throw new EngineError('order.drawer', say.paperMustHaveWidth(REFLECTANCE.most));
  }
  stack.pulls.forEach((pull: Pull | null, index) => {
    if (pull !== null && [pull?.dxMm, pull?.dyMm, pull?.turnDeg, pull?.strokes].every(Number.isFinite)) return;
    throw new EngineError('order.stack', say.pullOfStackMust(index + 1), {
      path: ['pulls', index],
    });
  });
}

/** @throws EngineError 'order.min-delta-e' when it is no number of 0 or more */
export function checkMinDeltaE(minDeltaE: number): void {
  if (!(minDeltaE >= 0 && minDeltaE < Infinity)) {
    throw new EngineError('order.min-delta-e', say.deltaEUnderWhichSwap(minDeltaE));
  }
}
