import { entryAt, num } from '../base/at.ts';
import { EngineError } from '../base/error.ts';
import { EdgeGrid } from '../geometry/edge-grid.ts';
import { type Joint, jointsOf, type JointReach } from '../geometry/joints.ts';
import type { Prepared } from '../geometry/meet/shared-area.ts';
import { WorkBudget } from '../geometry/work.ts';
import type { Stack } from '../stack/types.ts';
import type { Studio } from '../studio/studio.ts';
import { say } from '../words/en/order/order.ts';
import { GapCovers, WIDEST_TRAP_MM } from './gap-cover.ts';
import { prepareStack } from './overlaps.ts';
import { toldWork } from './told-work.ts';

/** Shorter stretches are corners and crossings, mm. */
const LEAST_MM = 1;

/** Edges looked at from one step to the next, some ten milliseconds, and for one stack, some ten seconds. */
const EDGES_A_STEP = 300_000;
const MOST_EDGES = 300_000_000;

/** Work of all booleans of one stack, in steps of `WorkBudget`. */
const MOST_WORK = 300_000_000;

/** Two pulls whose edges run along each other so that what lies under them may show between; positions in the stack, a < b. */
export interface Gap {
  a: number;
  b: number;
  /** Of all the places where they meet, measured along the edge of pull a. */
  lengthMm: number;
  /** How much of that nothing else surely covers, so that bare paper may show. */
  bareMm: number;
  /** Other pulls that surely lie in the gap, wherever within the tolerance they lie. */
  covers: number[];
  /** How wide the gap is in the drawing itself; 0 where they touch or overlap. */
  standsMm: number;
  /** How wide it may open: the tolerances of both pulls, less what they overlap; as much spread closes it. */
  opensMm: number;
  /** Which of the two is spread under or over the other: that in the lighter ink. */
  spread: number;
  /** Why no spread is suggested: it would be wider than any trap, or than one of the two pulls there. */
  noTrap: { why: 'wide' } | { why: 'thin'; pull: number } | null;
  /** About the middle of the longest place. */
  xMm: number;
  yMm: number;
}

/** Pulls that meet along less than this are not told of: twice as long as the gap may open, 1 mm at least. */
export function leastJointMm(toleranceMm: number): number {
  return Math.max(LEAST_MM, 4 * toleranceMm);
}

/**
 * Which pairs of pulls only just meet, so that a gap may open between them when every pull lies within a tolerance of
 * its place: two may then come apart by twice that. Pulls meet where they lie no farther apart than the tolerance.
 * Where a third pull surely covers what may open, no paper shows. That the lighter ink is spread is common practice, no source.
 * @param toleranceMm no pull lies farther than this from its place; 0 opens nothing
 * @yields the share that is done, 0–1
 * @returns those where most paper may show first, then the longest
 * @throws EngineError 'stack.unknown-screen', 'screen.unknown-shape', 'screen.too-much-work', 'order.too-much-work'
 */
export function* gapSteps(stack: Stack, studio: Studio, toleranceMm: number): Generator<number, Gap[]> {
  const prepared = prepareStack(stack, studio);
  const grids = prepared.map(({ rings }) => new EdgeGrid(rings));
  const lightness = stack.pulls.map(({ ink }) => studio.inks.find(({ id }) => id === ink)?.overWhite[0] ?? 0);
  const playMm = 2 * toleranceMm;
  let [step, all] = [0, 0];
  const spend = (edges: number): void => {
    step += edges;
    all += edges;
    if (all > MOST_EDGES) throw tooMuch();
  };
  const reach: JointReach = { apartMm: toleranceMm, overlapMm: playMm, leastMm: leastJointMm(toleranceMm), spend };
  const covers = new GapCovers(prepared, toleranceMm, new WorkBudget(MOST_WORK));
  const found: Gap[] = [];
  for (const [a, one] of prepared.entries()) {
    for (let b = a + 1; b < prepared.length; b++) {
      if (!near(one, entryAt(prepared, b), toleranceMm)) continue;
      const joints = jointsOf(one.rings, entryAt(grids, b), reach);
      if (joints.length > 0) {
        const pair = { a, b, playMm, spread: num(lightness, a) >= num(lightness, b) ? a : b };
        found.push(toldWork([a, b], stack, studio, () => gapOf(joints, pair, covers)));
      } else if (step < EDGES_A_STEP) continue;
      step = 0;
      yield (a + (b - a) / (prepared.length - a)) / prepared.length;
    }
  }
  return found.sort((x, y) => y.bareMm - x.bareMm || y.lengthMm - x.lengthMm);
}

function gapOf(
  joints: readonly Joint[],
  { playMm, ...pair }: Pick<Gap, 'a' | 'b' | 'spread'> & { playMm: number },
  beside: GapCovers,
): Gap {
  const apartMm = joints.reduce((most, joint) => Math.max(most, joint.apartMm), -Infinity);
  const lengthMm = joints.reduce((sum, joint) => sum + joint.lengthMm, 0);
  const opensMm = playMm + apartMm;
  const { bareShare, covers } = beside.coverOf(joints, [pair.a, pair.b]);
  const bareMm = bareShare * lengthMm;
  const { xMm, yMm } = joints.reduce((longest, joint) => (joint.lengthMm > longest.lengthMm ? joint : longest));
  return {
    ...pair,
    lengthMm,
    // At the ends of what covers it, a corner stays bare that is no longer than what is not told of.
    bareMm: bareMm < leastJointMm(playMm / 2) ? 0 : bareMm,
    covers,
    standsMm: Math.max(0, apartMm),
    opensMm,
    noTrap: noTrap(joints, { ...pair, opensMm }, beside),
    xMm,
    yMm,
  };
}

function noTrap(joints: readonly Joint[], { a, b, opensMm }: Pick<Gap, 'a' | 'b' | 'opensMm'>, beside: GapCovers): Gap['noTrap'] {
  if (opensMm > WIDEST_TRAP_MM) return { why: 'wide' };
  const pull = beside.thinOf(joints, [a, b], opensMm);
  return pull === null ? null : { why: 'thin', pull };
}

/** Whether two boxes come within a distance of each other. */
function near({ box: a }: Prepared, { box: b }: Prepared, mm: number): boolean {
  return (
    a.xMm <= b.xMm + b.widthMm + mm &&
    b.xMm <= a.xMm + a.widthMm + mm &&
    a.yMm <= b.yMm + b.heightMm + mm &&
    b.yMm <= a.yMm + a.heightMm + mm
  );
}

function tooMuch(): EngineError {
  return new EngineError('order.too-much-work', say.outlinesOfThesePulls);
}
