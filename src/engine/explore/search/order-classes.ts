import { boundClasses, countClasses } from '../../order/count/count.ts';
import type { Effort, Range } from '../../order/count/part.ts';
import { classesOf } from '../../order/enumerate.ts';
import { type Graph, graphOf } from '../../order/graph.ts';
import { arrange, type Constraints } from './arrange.ts';
import { orient } from './draw-order.ts';
import { type Layout, pairsOf } from './layout.ts';

/** Each of the two ways to count takes about a second at most. */
const ABOUT_A_SECOND: Effort = { colourSteps: 500_000, contractionSteps: 4_000_000 };

/** The classes of orders of a layout that look different. */
export class OrderClasses {
  readonly pairs: readonly [number, number][];
  private readonly pulls: number;
  private readonly graph: Graph;

  constructor(layout: Layout) {
    this.pulls = layout.pulls.length;
    this.pairs = pairsOf(layout);
    this.graph = graphOf(this.pulls, this.pairs);
  }

  /**
   * The number of classes, whatever must be kept.
   * @returns null where it takes more steps to count
   */
  count(steps: number): bigint | null {
    return countClasses(this.graph, steps);
  }

  /**
   * The number of classes, whatever must be kept, or bounds of it.
   * @yields now and then
   */
  bounds(): Generator<void, Range> {
    return boundClasses(this.graph, { ...ABOUT_A_SECOND });
  }

  /** One order of each class that is left by what must be kept. */
  *admitted(keep: Constraints): Generator<number[]> {
    const ranks = Array.from({ length: this.pulls }, (_, i) => i);
    for (const each of classesOf(this.graph)) {
      const fitted = arrange(this.pulls, { ...keep, arcs: [...keep.arcs, ...orient(this.pairs, each)] }, ranks);
      if (fitted !== null) yield fitted;
    }
  }
}
