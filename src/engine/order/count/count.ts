import { EngineError } from '../../base/error.ts';
import { say } from '../../words/en/order/count.ts';
import { atomsOf } from '../atoms.ts';
import { type Graph, graphOf, stripSimplicial, subgraph } from '../graph.ts';
import { countByColourClasses } from './colour-classes.ts';
import { boundPart, countPart, type Effort, type Range } from './part.ts';

/** Largest rest, after easy pulls are taken away, whose parts are looked for. */
const MAX_CORE_PULLS = 500;
/** Some seconds on a 2020s laptop core. */
const SOME_SECONDS: Effort = { colourSteps: 300_000, contractionSteps: 12_000_000 };

/**
 * How many orders of these pulls may print differently, told apart pair by pair, whatever lies over them: the number of acyclic
 * orientations of the overlap graph, exact.
 * @param pulls number of pulls, 0 to 2,000
 * @param overlaps pairs of pulls whose order matters, either way round
 * @throws EngineError 'order.pulls' | 'order.overlaps' | 'order.range' | 'order.loop' for bad
 * input, 'order.too-many' when it would take more than some seconds; its details hold `least` and `most`,
 * proven bounds as text
 * Chordal graphs at any size are quick; the rest grows with the partitions of the narrowest
 * frontier. Source: Stanley (1973); check values tests/published/order/acyclic.json.
 */
export function countOrderClasses(pulls: number, overlaps: readonly (readonly [number, number])[]): bigint {
  const graph = graphOf(pulls, overlaps);
  const { least, most } = toEnd(boundClasses(graph, { ...SOME_SECONDS }));
  if (least === most) return least;
  throw new EngineError(
    'order.too-many',
    say.pullsThatOverlapIn(pulls, graph.edges.length) +
      say.theirOrdersExactlyIn(String(least).length - 1, String(most).length) +
      say.leavePullsOutOr,
    { details: { pulls, overlaps: graph.edges.length, least: String(least), most: String(most) } },
  );
}

/**
 * As countOrderClasses, for a graph already checked, by colour classes alone: walls list all orders where
 * these tell the number in few steps, and a seed's wall stays what it was.
 * @param steps work after which it gives up
 * @returns null when it gave up
 */
export function countClasses(graph: Graph, steps: number): bigint | null {
  const { steps: easy, core } = stripSimplicial(graph);
  let count = 1n;
  for (const { clique } of easy) count *= BigInt(clique.length + 1);
  if (core.length > MAX_CORE_PULLS) return null;
  const rest = subgraph(graph, core);
  const budget = { steps };
  let glued = 1n;
  for (const { pulls, clique } of core.length === 0 ? [] : atomsOf(rest)) {
    const part = toEnd(countByColourClasses(subgraph(rest, pulls), budget));
    if (part === null) return null;
    count *= part;
    glued *= factorial(clique.length);
  }
  return count / glued;
}

/**
 * The number of order classes between proven bounds, which are the same where it can be counted.
 * @param effort how long to count, used up by the call
 * @yields now and then
 */
export function* boundClasses(graph: Graph, effort: Effort): Generator<void, Range> {
  const { steps: easy, core } = stripSimplicial(graph);
  let sure = 1n;
  for (const { clique } of easy) sure *= BigInt(clique.length + 1);
  const rest = subgraph(graph, core);
  const whole = core.length > MAX_CORE_PULLS;
  const parts = core.length === 0 || whole ? [] : atomsOf(rest);
  const range = whole ? yield* boundPart(rest) : { least: 1n, most: 1n };
  let glued = 1n;
  for (const { pulls, clique } of parts) {
    const part = yield* countPart(subgraph(rest, pulls), effort);
    range.least *= part.least;
    range.most *= part.most;
    glued *= factorial(clique.length);
  }
  // Of a whole number at least this, and at most that.
  return { least: (sure * range.least + glued - 1n) / glued, most: (sure * range.most) / glued };
}

function factorial(n: number): bigint {
  let product = 1n;
  for (let k = 2; k <= n; k++) product *= BigInt(k);
  return product;
}

function toEnd<Found>(steps: Generator<void, Found>): Found {
  for (;;) {
    const step = steps.next();
    if (step.done === true) return step.value;
  }
}
