import { EngineError } from '../../base/error.ts';
import { countClasses } from '../../order/count.ts';
import { classesOf } from '../../order/enumerate.ts';
import { type Graph, graphOf } from '../../order/graph.ts';
import { arrange, type Constraints } from './arrange.ts';
import { orient } from './draw-order.ts';
import { type Layout, pairsOf } from './layout.ts';

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
    try {
      return countClasses(this.graph, steps);
    } catch (error) {
      if (error instanceof EngineError && error.code === 'order.too-many') return null;
      throw error;
    }
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
