import { entryAt, f64, num } from '../base/at.ts';
import { VariantMeter } from '../explore/measure/variant-measures.ts';
import { groupOrders } from '../order/groups/group-orders.ts';
import type { PictureLimits } from '../order/groups/order-difference.ts';
import type { PairOrder } from '../order/groups/pair-reasons.ts';
import { OVERLAP_TOLERANCE_MM } from '../order/overlaps.ts';
import { buildCellMap } from '../stack/cell-map.ts';
import { stackLayers } from '../stack/layers.ts';
import { placedSpans } from '../stack/screen-spans.ts';
import type { CellMap, Pull } from '../stack/types.ts';
import type { Studio } from '../studio/studio.ts';
import type { GoalKind } from './goal-kinds.ts';
import { type InkChange, lessonStudio } from './lesson-sheet.ts';

/** Pulls of a lesson as they lie, and its changed inks. */
export interface GoalState {
  /** First down first. */
  pulls: readonly Pull[];
  inks: readonly InkChange[];
}

/** A goal, how the sheet was when it was given, and how it is now. */
export interface GoalQuestion {
  studio: Studio;
  limits: PictureLimits;
  start: GoalState;
  now: GoalState;
}

/** A goal that is made by moving shapes, by other inks or by another order. */
export type MadeGoal = Exclude<GoalKind, 'on-top' | 'alike' | 'found-back'>;

/** Whether a goal is reached, and what stands in the way. */
export type GoalVerdict =
  | { done: boolean; why: 'pictures'; pictures: number }
  | { done: boolean; why: 'overprint'; areaMm2: number }
  | { done: boolean; why: 'contrast'; share: number }
  | { done: false; why: 'off-sheet' | 'apart'; pull: string };

/** Rows of 1 mm on the papers of a lesson. */
const ROW_MM = 1;
/** Each pull prints so much of the sheet at the least, or it was moved out of the way, mm². */
const LEAST_PRINTED_MM2 = 1000;
/** So much of the sheet is an overprint colour that was made, mm²; no more than the lesson overlooks is one avoided. */
export const MADE_OVERPRINT_MM2 = 500;
/** Contrast of edges that counts as softened, as a share of that at the start. */
export const SOFTER_SHARE = 0.8;

/**
 * Checks a goal that is made.
 * @returns whether it is reached, and by how much it is or is not
 * @throws EngineError as groupOrders, stackLayers and lessonStudio
 */
export function checkGoal(kind: MadeGoal, { studio, limits, start, now }: GoalQuestion): GoalVerdict {
  const printed = lessonStudio(studio, now.inks);
  const map = mapOf(now.pulls, printed);
  const gone = now.pulls.find((_, bit) => printedMm2(map, bit) < LEAST_PRINTED_MM2);
  if (gone !== undefined) return { done: false, why: 'off-sheet', pull: gone.id };
  switch (kind) {
    case 'three-pictures':
      return pictures(3, now, printed, limits);
    case 'one-picture':
      return lone(now, printed, limits) ?? pictures(1, now, printed, limits);
    case 'overprint-made': {
      const areaMm2 = overprintMm2(map, now, printed);
      return { done: areaMm2 >= MADE_OVERPRINT_MM2, why: 'overprint', areaMm2 };
    }
    case 'overprint-avoided': {
      const parted = partedFrom(start, now, studio, limits);
      if (parted !== null) return { done: false, why: 'apart', pull: parted };
      const areaMm2 = overprintMm2(map, now, printed);
      return { done: areaMm2 <= limits.minAreaMm2, why: 'overprint', areaMm2 };
    }
    case 'less-contrast': {
      const before = lessonStudio(studio, start.inks);
      const share = measured(map, now, printed).edgeContrast / measured(mapOf(start.pulls, before), start, before).edgeContrast;
      return { done: share <= SOFTER_SHARE, why: 'contrast', share };
    }
  }
}

function mapOf(pulls: readonly Pull[], studio: Studio): CellMap {
  const { widthMm, heightMm } = studio.paper;
  const grid = { widthMm, heightMm, rows: Math.max(1, Math.round(heightMm / ROW_MM)) };
  return buildCellMap(placedSpans({ pulls }, studio, grid), grid);
}

function printedMm2(map: CellMap, bit: number): number {
  let sum = 0;
  for (let cell = 1; cell < map.cells; cell++) if ((num(map.cover, cell * map.words) & (1 << bit)) !== 0) sum += f64(map.areaMm2, cell);
  return sum;
}

function measured(map: CellMap, { pulls }: GoalState, studio: Studio) {
  return new VariantMeter(studio).measure(map, stackLayers({ pulls }, studio), pulls);
}

function overprintMm2(map: CellMap, state: GoalState, studio: Studio): number {
  return (measured(map, state, studio).overprintColour / 100) * map.widthMm * map.heightMm;
}

function pictures(wanted: number, { pulls }: GoalState, studio: Studio, limits: PictureLimits): GoalVerdict {
  const { count } = groupOrders({ pulls }, studio, { ...limits, toleranceMm: OVERLAP_TOLERANCE_MM });
  return { done: count === wanted, why: 'pictures', pictures: count };
}

function pairsOf({ pulls }: GoalState, studio: Studio, limits: PictureLimits): PairOrder[] {
  return groupOrders({ pulls }, studio, { ...limits, toleranceMm: OVERLAP_TOLERANCE_MM }).pairs;
}

/** A pull that meets no other one any more. */
function lone(now: GoalState, studio: Studio, limits: PictureLimits): GoalVerdict | null {
  const meeting = pairsOf(now, studio, limits).filter(({ areaMm2 }) => areaMm2 > limits.minAreaMm2);
  const alone = now.pulls.find((_, at) => !meeting.some(({ a, b }) => a === at || b === at));
  return alone === undefined ? null : { done: false, why: 'apart', pull: alone.id };
}

/** A pull that met another at the start and does not now; null where all still meet. */
function partedFrom(start: GoalState, now: GoalState, studio: Studio, limits: PictureLimits): string | null {
  const names = (state: GoalState): string[] =>
    pairsOf(state, studio, limits)
      .filter(({ areaMm2 }) => areaMm2 > limits.minAreaMm2)
      .map(({ a, b }) => [entryAt(state.pulls, a).id, entryAt(state.pulls, b).id].sort().join(' '));
  const meet = new Set(names(now));
  return (
    names(start)
      .find((pair) => !meet.has(pair))
      ?.split(' ')[0] ?? null
  );
}
