import { EngineError } from '../../base/error.ts';
import { cutRings, normalise, subtractRings } from '../../geometry/booleans.ts';
import { grownRings } from '../../geometry/offset.ts';
import { mapRings, placeRings, shapeBounds, turnAbout } from '../../geometry/rings.ts';
import type { Ring } from '../../geometry/types.ts';
import { WorkBudget } from '../../geometry/work.ts';
import type { Shape } from '../types.ts';
import { repeatedAbout, repeatedAlong } from './repeat.ts';
import { shapeOf } from './shape-of.ts';
import { say } from '../../words/en/shapes/draw.ts';

/** Where another shape lies over the chosen one, from middle to middle. */
export interface OverPlace {
  /** mm. */
  rightMm: number;
  /** mm. */
  downMm: number;
  /** Clockwise, degrees. */
  turnDeg: number;
}

/** What is done to a shape. */
export type ShapeChange =
  | { kind: 'join' | 'cut' | 'keep'; other: Shape; over: OverPlace }
  /** Joins, and closes gaps up to so many mm between and in the two. */
  | { kind: 'weld'; other: Shape; over: OverPlace; gapMm: number }
  | { kind: 'mirror'; across: 'left-right' | 'top-bottom' }
  | { kind: 'turn'; turnDeg: number }
  /** Moves all edges out by so many mm, below 0 in. */
  | { kind: 'grow'; mm: number }
  | { kind: 'along'; times: number; rightMm: number; downMm: number }
  | { kind: 'about'; times: number; turnDeg: number; radiusMm: number };

/** Sentences for a change that leaves nothing. */
const NOTHING: Record<'cut' | 'keep' | 'grow' | 'other', string> = {
  cut: say.nothingIsLeftAfter,
  keep: say.twoShapesHaveNothing,
  grow: say.nothingIsLeftShape,
  other: say.nothingIsLeftOf,
};

/**
 * A shape changed as with paper and blade; coordinates stay those of the shape, so that what is not
 * touched stays where it was.
 * @param head of the shape that it becomes
 * @throws EngineError 'draw.nothing' when nothing is left, 'geometry.too-much-work' when it would take over ten seconds
 */
export function changedShape(shape: Shape, change: ShapeChange, head: { id: string; name: string }): Shape {
  const budget = new WorkBudget();
  const rings = ringsOf(normalise(shape, budget), change, budget);
  const changed = shapeOf(rings, head);
  if (changed !== null) return changed;
  const { kind } = change;
  throw new EngineError('draw.nothing', NOTHING[kind === 'cut' || kind === 'keep' || kind === 'grow' ? kind : 'other']);
}

function ringsOf(rings: readonly Ring[], change: ShapeChange, budget: WorkBudget): Float64Array[] {
  switch (change.kind) {
    case 'join':
      return joined(rings, change, budget);
    case 'weld':
      return closed(joined(rings, change, budget), change.gapMm, budget);
    case 'cut':
      return subtractRings(rings, laidOver(rings, change, budget), budget);
    case 'keep':
      return cutRings(rings, laidOver(rings, change, budget), budget);
    case 'grow':
      return grownRings(rings, change.mm, budget);
    case 'turn':
    case 'mirror':
      return united(mapRings(rings, turnOrMirror(rings, change)), budget);
    case 'along':
      return united(repeatedAlong(rings, change), budget);
    case 'about':
      return united(repeatedAbout(rings, change), budget);
  }
}

function turnOrMirror(rings: readonly Ring[], change: Extract<ShapeChange, { kind: 'turn' | 'mirror' }>) {
  const { xMm, yMm } = middleOf(rings);
  if (change.kind === 'turn') return turnAbout(change.turnDeg, xMm, yMm);
  return change.across === 'left-right' ? ([-1, 0, 0, 1, 2 * xMm, 0] as const) : ([1, 0, 0, -1, 0, 2 * yMm] as const);
}

type Paired = { other: Shape; over: OverPlace };

function joined(rings: readonly Ring[], paired: Paired, budget: WorkBudget): Float64Array[] {
  return united([...rings, ...laidOver(rings, paired, budget)], budget);
}

function laidOver(rings: readonly Ring[], { other, over }: Paired, budget: WorkBudget): Float64Array[] {
  const { xMm, yMm } = middleOf(rings);
  const laid = placeRings(other.rings, { xMm: xMm + over.rightMm, yMm: yMm + over.downMm, turnDeg: over.turnDeg, scale: 1 });
  return normalise({ rings: laid, fillRule: other.fillRule }, budget);
}

/** Grown and shrunk by half a gap: narrower gaps stay shut, and corners that go in come round by as much. */
function closed(rings: Float64Array[], gapMm: number, budget: WorkBudget): Float64Array[] {
  return gapMm <= 0 ? rings : grownRings(grownRings(rings, gapMm / 2, budget), -gapMm / 2, budget);
}

function united(rings: readonly Ring[], budget: WorkBudget): Float64Array[] {
  return normalise({ rings, fillRule: 'nonzero' }, budget);
}

function middleOf(rings: readonly Ring[]): { xMm: number; yMm: number } {
  const box = shapeBounds(rings);
  return { xMm: box.xMm + box.widthMm / 2, yMm: box.yMm + box.heightMm / 2 };
}
