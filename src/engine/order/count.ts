import { EngineError } from '../base/error.ts';
import { atomsOf } from './atoms.ts';
import { countByFrontier, MAX_COUNT_STEPS } from './frontier.ts';
import { type Graph, graphOf, stripSimplicial, subgraph } from './graph.ts';

/** Largest rest, after easy pulls are taken away, whose parts are looked for. */
const MAX_CORE_PULLS = 500;

/**
 * How many orders of these pulls may print differently, told apart pair by pair, whatever lies over them: the number of acyclic
 * orientations of the overlap graph, exact.
 * @param pulls number of pulls, 0 to 2,000
 * @param overlaps pairs of pulls whose order matters, either way round
 * @throws EngineError 'order.pulls' | 'order.overlaps' | 'order.range' | 'order.loop' for bad
 * input, 'order.too-many' when it would take more than 2,000,000 steps (some seconds)
 * Chordal graphs at any size are quick; the rest grows with the partitions of the narrowest
 * frontier. Source: Stanley (1973); check values tests/published/order/acyclic.json.
 */
export function countOrderClasses(pulls: number, overlaps: readonly (readonly [number, number])[]): bigint {
  return countClasses(graphOf(pulls, overlaps));
}

/**
 * As countOrderClasses, for a graph already checked.
 * @param maxSteps work after which it gives up
 * @throws EngineError 'order.too-many'
 */
export function countClasses(graph: Graph, maxSteps = MAX_COUNT_STEPS): bigint {
  const { steps, core } = stripSimplicial(graph);
  let count = 1n;
  for (const { clique } of steps) count *= BigInt(clique.length + 1);
  if (core.length === 0) return count;
  if (core.length > MAX_CORE_PULLS) {
    throw new EngineError(
      'order.too-many',
      `${core.length} pulls hang together without an easy cut, more than the ${MAX_CORE_PULLS} ` +
        'that can be counted; leave pulls out, or raise the ΔE under which a swap is free.',
    );
  }
  const budget = { steps: maxSteps };
  const rest = subgraph(graph, core);
  let glued = 1n;
  for (const { pulls, clique } of atomsOf(rest)) {
    count *= countByFrontier(subgraph(rest, pulls), budget);
    for (let k = 2; k <= clique.length; k++) glued *= BigInt(k);
  }
  return count / glued;
}
