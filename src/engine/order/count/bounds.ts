import { defined, entryAt } from '../../base/at.ts';
import { bitCount } from '../../base/bits.ts';
import type { Graph } from '../graph.ts';

/** Pulls taken away one after the other, always one with fewest overlaps then left, and these overlaps. */
export function fewestFirst(graph: Graph): { pull: number; overlaps: number[] }[] {
  return takeAway(graph, () => {});
}

/**
 * No graph with these overlaps has more acyclic orientations: the least of three bounds.
 * Each overlap goes one of two ways. An acyclic orientation is told by how many each pull lies over (where two
 * tell the same, the overlaps in which they differ go in rings), and for one pull that follows from the others (Manber and Tompa
 * 1984). More overlaps leave no fewer orientations, P(G) = P(G + e) + P(G + e / e) in size, so that
 * those of a chordal graph around it are no fewer: Π (b + 1) (Dirac 1961).
 */
export function mostByOverlaps(graph: Graph): bigint {
  const degrees = graph.neighbours.map(({ length }) => length).sort((a, b) => a - b);
  const byDegrees = product(degrees.slice(0, -1).map((degree) => degree + 1));
  const chordal = takeAway(graph, joinAll);
  const byFill = product(chordal.map(({ overlaps }) => overlaps.length + 1));
  return [byDegrees, byFill].reduce((least, each) => (each < least ? each : least), 1n << BigInt(graph.edges.length));
}

/** Overlapped pulls that are looked at together: their sets are counted in some hundred steps. */
const TOGETHER = 20;

/**
 * A pull that joins others has no more ways in than the pulls that it overlaps have sets of which no two overlap.
 * What it lies over takes along what lies below that, so it is told by the topmost of it, of which none lies below
 * another; and of two that overlap one always does. Pulls that all overlap each other are kept together, and what
 * is counted apart is multiplied.
 * @param beside whom it overlaps
 */
export function mostWaysIn(graph: Graph, beside: readonly number[]): bigint {
  const piles: number[][] = [];
  for (const pull of beside) {
    const neighbours = entryAt(graph.neighbours, pull);
    const pile = piles.find((each) => each.length < TOGETHER && each.every((other) => neighbours.includes(other)));
    if (pile === undefined) piles.push([pull]);
    else pile.push(pull);
  }
  const groups: number[][] = [];
  for (const pile of piles) {
    const group = groups.at(-1);
    if (group === undefined || group.length + pile.length > TOGETHER) groups.push([...pile]);
    else group.push(...pile);
  }
  return product(groups.map((group) => setsWithoutOverlap(graph, group)));
}

/** How many sets of these pulls, the empty one among them, have no two that overlap. @param pulls at most TOGETHER */
function setsWithoutOverlap(graph: Graph, pulls: readonly number[]): number {
  const near = pulls.map((pull) => {
    const neighbours = entryAt(graph.neighbours, pull);
    return pulls.reduce((bits, other, i) => (neighbours.includes(other) ? bits | (1 << i) : bits), 0);
  });
  const count = (left: number): number => {
    let busiest = -1;
    let most = 0;
    near.forEach((bits, i) => {
      const overlaps = ((left >> i) & 1) === 1 ? bitCount(bits & left) : 0;
      if (overlaps > most) [busiest, most] = [i, overlaps];
    });
    if (busiest < 0) return 2 ** bitCount(left);
    const without = left & ~(1 << busiest);
    return count(without) + count(without & ~entryAt(near, busiest));
  };
  return count((1 << pulls.length) - 1);
}

/** @param leave what is done to those that a pull overlapped when it is taken away */
function takeAway(
  graph: Graph,
  leave: (left: readonly Set<number>[], overlaps: readonly number[]) => void,
): { pull: number; overlaps: number[] }[] {
  const left = graph.neighbours.map((list) => new Set(list));
  const still = new Set(left.keys());
  const order: { pull: number; overlaps: number[] }[] = [];
  while (still.size > 0) {
    let pull = -1;
    let least = Infinity;
    for (const each of still) {
      const { size } = entryAt(left, each);
      if (size < least) [pull, least] = [each, size];
    }
    const overlaps = [...entryAt(left, pull)];
    still.delete(pull);
    for (const other of overlaps) defined(left[other]).delete(pull);
    leave(left, overlaps);
    order.push({ pull, overlaps });
  }
  return order;
}

/** Lets pulls all overlap each other. */
function joinAll(left: readonly Set<number>[], pulls: readonly number[]): void {
  for (const one of pulls) for (const other of pulls) if (one !== other) defined(left[one]).add(other);
}

function product(factors: readonly number[]): bigint {
  return factors.reduce((whole, factor) => whole * BigInt(factor), 1n);
}
