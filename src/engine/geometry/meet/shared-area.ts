import { FillRule as ClipperFillRule } from 'clipper2-ts';
import type { Path64, Paths64 } from 'clipper2-ts';
import { entryAt, num } from '../../base/at.ts';
import { BOOLEAN_GRID_MM, normalise } from '../booleans.ts';
import { intersect } from '../clipper.ts';
import { ringArea, shapeBounds } from '../rings.ts';
import type { Box, Outline, Ring } from '../types.ts';
import { widened } from '../widened.ts';
import type { WorkBudget } from '../work.ts';

/** An outline made ready for many comparisons. */
export interface Prepared {
  /** Without overlaps, on the boolean grid. */
  rings: Float64Array[];
  box: Box;
}

/** Areas below this are rounding of the boolean grid, mm². */
const LEAST_AREA_MM2 = 1e-6;

/**
 * Does once what every comparison of an outline needs.
 * @throws EngineError 'geometry.too-much-work' where that would take seconds
 */
export function prepareOutline(outline: Outline): Prepared {
  const rings = normalise(outline);
  return { rings, box: shapeBounds(rings) };
}

/** Whether two boxes share more than an edge. */
export function boxesMeet(a: Box, b: Box): boolean {
  return a.xMm < b.xMm + b.widthMm && b.xMm < a.xMm + a.widthMm && a.yMm < b.yMm + b.heightMm && b.yMm < a.yMm + a.heightMm;
}

/**
 * Area that two outlines share, unless they only touch.
 * @param toleranceMm an area nowhere wider than this counts as touching; 0 counts any area
 * @param within only what lies inside this box counts, mm
 * @param budget of all that are compared
 * @returns mm², all of the shared area; 0 when they do not meet or only touch
 * @throws EngineError 'geometry.too-much-work' when the work is more than the budget has left, or takes seconds
 */
export function sharedArea(
  a: Prepared,
  b: Prepared,
  { toleranceMm, within, budget }: { toleranceMm: number; within: Box; budget: WorkBudget },
): number {
  if (!boxesMeet(a.box, b.box) || !boxesMeet(a.box, within) || !boxesMeet(b.box, within)) return 0;
  const both = (one: Paths64, other: Paths64): Paths64 =>
    budget.run([...one, ...other], () => intersect(one, other, ClipperFillRule.NonZero));
  let shared = both(toPaths(a.rings), toPaths(b.rings));
  if (shared.length === 0) return 0;
  if (!inside(a.box, within) && !inside(b.box, within)) shared = both(shared, [boxPath(within)]);
  const area = areaOf(shared);
  if (area < LEAST_AREA_MM2) return 0;
  return widerThan(shared, area, { widthMm: toleranceMm, budget }) ? area : 0;
}

/**
 * Whether some disc of this diameter fits in: what is left when all edges move in by half of it.
 * Most areas are settled without moving edges: points within r of the edge fill at most
 * perimeter·r, and a sector of at most πr²/2 at each corner.
 */
function widerThan(paths: Paths64, areaMm2: number, { widthMm, budget }: { widthMm: number; budget: WorkBudget }): boolean {
  const r = widthMm / 2;
  if (r < BOOLEAN_GRID_MM) return true;
  let perimeter = 0;
  let corners = 0;
  for (const path of paths) {
    corners += path.length;
    path.forEach((p, i) => {
      const q = entryAt(path, (i + 1) % path.length);
      perimeter += Math.hypot(q.x - p.x, q.y - p.y) * BOOLEAN_GRID_MM;
    });
  }
  if (areaMm2 > perimeter * r + (corners * Math.PI * r * r) / 2) return true;
  const moved = budget.run(paths, () => widened(paths, -r / BOOLEAN_GRID_MM));
  return areaOf(moved) >= LEAST_AREA_MM2;
}

function inside(a: Box, b: Box): boolean {
  return a.xMm >= b.xMm && a.yMm >= b.yMm && a.xMm + a.widthMm <= b.xMm + b.widthMm && a.yMm + a.heightMm <= b.yMm + b.heightMm;
}

function boxPath({ xMm, yMm, widthMm, heightMm }: Box): Path64 {
  const onGrid = (mm: number): number => Math.round(mm / BOOLEAN_GRID_MM);
  const [x0, y0, x1, y1] = [onGrid(xMm), onGrid(yMm), onGrid(xMm + widthMm), onGrid(yMm + heightMm)];
  return [
    { x: x0, y: y0 },
    { x: x1, y: y0 },
    { x: x1, y: y1 },
    { x: x0, y: y1 },
  ];
}

function toPaths(rings: readonly Ring[]): Paths64 {
  return rings.map((ring) => {
    const path: Path64 = [];
    for (let i = 0; i + 1 < ring.length; i += 2) {
      path.push({
        x: Math.round(num(ring, i) / BOOLEAN_GRID_MM),
        y: Math.round(num(ring, i + 1) / BOOLEAN_GRID_MM),
      });
    }
    return path;
  });
}

function areaOf(paths: Paths64): number {
  let sum = 0;
  for (const path of paths) {
    sum += ringArea(path.flatMap(({ x, y }) => [x * BOOLEAN_GRID_MM, y * BOOLEAN_GRID_MM]));
  }
  return Math.abs(sum);
}
