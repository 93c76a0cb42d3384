import { entryAt } from '../base/at.ts';
import { cutRings, normalise, subtractRings } from '../geometry/booleans.ts';
import type { Joint } from '../geometry/joints.ts';
import type { Prepared } from '../geometry/meet/shared-area.ts';
import { grownRings } from '../geometry/offset.ts';
import { ringArea, shapeBounds } from '../geometry/rings.ts';
import { strokeRings } from '../geometry/stroke/stroke-outline.ts';
import type { Box, Ring } from '../geometry/types.ts';
import type { WorkBudget } from '../geometry/work.ts';

/** Wider spreads show as a line of their own and are not suggested, mm; from memory, a studio may know better. */
export const WIDEST_TRAP_MM = 2;

/** How far round joins of a strip may be from their circle, mm. */
const ROUND_MM = 0.01;

/** A disc in a right-angled corner leaves a tip that reaches so many of its radii: less than half of one. */
const TIP = 1.5;

/** Of an edge's strip, what counts as thin; a few small bays do not. */
const THIN_SHARE = 0.1;

/** What would be seen in a gap, and whether it may be trapped. */
export interface GapCover {
  /** Share of where it may open that nothing else surely covers, 0–1. */
  bareShare: number;
  /** Positions of the other pulls that surely lie there. */
  covers: number[];
}

/** What lies beside and under the gaps of one stack, by exact areas, when every pull lies within a tolerance of its place. */
export class GapCovers {
  private readonly prepared: readonly Prepared[];
  private readonly toleranceMm: number;
  private readonly budget: WorkBudget;
  private readonly sure: (Float64Array[] | undefined)[] = [];

  /** @param budget of all that is asked */
  constructor(prepared: readonly Prepared[], toleranceMm: number, budget: WorkBudget) {
    [this.prepared, this.toleranceMm, this.budget] = [prepared, toleranceMm, budget];
  }

  /** What a pull surely covers, wherever within the tolerance it lies. */
  private sureOf(place: number): Float64Array[] {
    return (this.sure[place] ??= grownRings(entryAt(this.prepared, place).rings, -this.toleranceMm, this.budget));
  }

  /**
   * What else surely lies where two pulls may come apart.
   * @throws EngineError 'geometry.too-much-work'
   */
  coverOf(joints: readonly Joint[], pair: readonly [a: number, b: number]): GapCover {
    const { budget } = this;
    let bare = strip(joints, 2 * this.toleranceMm, budget);
    for (const place of pair) bare = subtractRings(bare, this.sureOf(place), budget);
    const all = areaOf(bare);
    const covers: number[] = [];
    for (const place of this.prepared.keys()) {
      if (pair.includes(place) || bare.length === 0 || !meets(entryAt(this.prepared, place).box, shapeBounds(bare))) continue;
      const left = subtractRings(bare, this.sureOf(place), budget);
      if (areaOf(left) < areaOf(bare) - all / 1000) covers.push(place);
      bare = left;
    }
    return { bareShare: all > 0 ? areaOf(bare) / all : 0, covers };
  }

  /**
   * The pull of two that is narrower, along where they meet, than a spread is wide: the spread would reach through it, or be
   * more than all of it.
   * @returns its position; null where both are wide enough
   * @throws EngineError 'geometry.too-much-work'
   */
  thinOf(joints: readonly Joint[], pair: readonly [a: number, b: number], spreadMm: number): number | null {
    const along = strip(joints, spreadMm, this.budget);
    return pair.find((place) => this.isThin(entryAt(this.prepared, place).rings, along, spreadMm)) ?? null;
  }

  private isThin(rings: readonly Ring[], along: Float64Array[], spreadMm: number): boolean {
    const { budget } = this;
    const near = cutRings(rings, [boxRing(shapeBounds(along), 2 * spreadMm)], budget);
    const edge = cutRings(near, along, budget);
    const half = spreadMm / 2;
    const wide = grownRings(grownRings(near, -half, budget), TIP * half, budget);
    return areaOf(subtractRings(edge, wide, budget)) > THIN_SHARE * areaOf(edge);
  }
}

/** What lies within a distance of the edges of joints, to both sides but not past their ends. */
function strip(joints: readonly Joint[], mm: number, budget: WorkBudget): Float64Array[] {
  const nib = { width: 2 * mm, cap: 'butt', join: 'round', miterLimit: 1 } as const;
  const rings = joints.flatMap(({ line }) => strokeRings({ points: line, corners: line.map(() => true), closed: false }, nib, ROUND_MM));
  return normalise({ rings, fillRule: 'nonzero' }, budget);
}

function areaOf(rings: readonly Ring[]): number {
  return rings.reduce((sum, ring) => sum + ringArea(ring), 0);
}

function meets(a: Box, b: Box): boolean {
  return a.xMm < b.xMm + b.widthMm && b.xMm < a.xMm + a.widthMm && a.yMm < b.yMm + b.heightMm && b.yMm < a.yMm + a.heightMm;
}

function boxRing({ xMm, yMm, widthMm, heightMm }: Box, roomMm: number): number[] {
  const [left, top, right, bottom] = [xMm - roomMm, yMm - roomMm, xMm + widthMm + roomMm, yMm + heightMm + roomMm];
  return [left, top, right, top, right, bottom, left, bottom];
}
