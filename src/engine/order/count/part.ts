import { type Graph, subgraph } from '../graph.ts';
import { fewestFirst, mostByOverlaps, mostWaysIn } from './bounds.ts';
import { countByColourClasses } from './colour-classes.ts';
import { countByContraction } from './contraction.ts';
import { narrowOrder } from './narrow-order.ts';

/** How long to count, steps left of either way; counted down across calls. */
export interface Effort {
  /** About a microsecond each. */
  colourSteps: number;
  /** About a fifth of that. */
  contractionSteps: number;
}

/** Proven bounds of a number; the same where it is known. */
export interface Range {
  least: bigint;
  most: bigint;
}

/** Parts of a part are counted exactly, each by so many pulls larger than the one before, as far as this takes. */
const FEWEST_PULLS = 10;
const MORE_PULLS = 2;
const BOUND_STEPS = 1_500_000;

/**
 * The number of acyclic orientations of a graph that no clique cuts: exact, or between bounds.
 * @yields now and then
 */
export function* countPart(graph: Graph, effort: Effort): Generator<void, Range> {
  const colours = { steps: effort.colourSteps };
  let count = yield* countByColourClasses(graph, colours);
  effort.colourSteps = Math.max(0, colours.steps);
  if (count === null) {
    const contraction = { steps: effort.contractionSteps };
    count = yield* contracted(graph, contraction);
    effort.contractionSteps = Math.max(0, contraction.steps);
  }
  return count === null ? yield* boundPart(graph) : { least: count, most: count };
}

function contracted(graph: Graph, budget: { steps: number }): Generator<void, bigint | null> {
  return countByContraction(graph, narrowOrder(graph), mostByOverlaps(graph), budget);
}

/**
 * Bounds by a core that can be counted, which the other pulls join one by one. A pull that joins an acyclic order of b whom it
 * overlaps has at least b + 1 ways in: above the first 0, 1, … b of them; and at most as many as mostWaysIn tells.
 */
export function* boundPart(graph: Graph): Generator<void, Range> {
  const joins = fewestFirst(graph);
  const budget = { steps: BOUND_STEPS };
  const range = { least: 1n, most: 1n };
  let size = 0;
  for (let next = FEWEST_PULLS; next < graph.pulls; next += MORE_PULLS) {
    const core = joins.slice(graph.pulls - next).map(({ pull }) => pull);
    const count = yield* contracted(subgraph(graph, core), budget);
    if (count === null) break;
    size = next;
    range.least = range.most = count;
  }
  for (const { overlaps } of joins.slice(0, graph.pulls - size)) {
    range.least *= BigInt(overlaps.length + 1);
    range.most *= mostWaysIn(graph, overlaps);
  }
  const most = mostByOverlaps(graph);
  return { least: range.least, most: most < range.most ? most : range.most };
}
