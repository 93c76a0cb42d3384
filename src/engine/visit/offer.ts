import type { PullPlan } from '../pullorder/types.ts';
import { compareOrders, describe, type Described, figuresOf, type Ordered, type Planned } from './press-plan.ts';
import type { OrderAtHand } from './problem/order-at-hand.ts';
import { wholeFigures } from './visit-figures.ts';

/** Never offers an order that is worse than one offered before, or than the one at hand. */
export class Offer {
  private readonly planned: Planned;
  private readonly beds: number;
  /** The order at hand as it would go on; null when there is none that prints all. */
  readonly held: OrderAtHand | null;
  private readonly heldPlan: Described | null;
  /** Bounds that were found for the same visit before. */
  private readonly known: PullPlan['bound'];
  /** The best order so far as it lies on the clock, where what stays on the press or is washed up overnight counts too. */
  private top: { order: Ordered; made: Described } | null = null;
  /** The order that was given last, and what was offered: most steps find nothing better. */
  private last: { order: Ordered; made: Described } | null = null;

  constructor(planned: Planned, atHand: OrderAtHand | null, known: PullPlan['bound']) {
    this.planned = planned;
    this.beds = wholeFigures(planned.press).beds;
    this.held = atHand?.sound === true ? atHand : null;
    this.heldPlan = this.held === null ? null : describe(this.held, known, planned);
    if (this.held !== null && this.heldPlan !== null) this.top = { order: this.held, made: this.heldPlan };
    this.known = known;
  }

  /** An order, or the best before it unless that is worse. */
  of(order: Ordered, bound: PullPlan['bound']): Described {
    if (this.last?.order !== order) this.last = { order, made: this.made(order, bound) };
    return this.last.made;
  }

  /** The best that was offered; the order given where nothing but the one at hand was. */
  best(order: Ordered): Ordered {
    return this.top === null || this.top.order === this.held ? order : this.top.order;
  }

  private made(order: Ordered, bound: PullPlan['bound']): Described {
    const made = describe(order, bound, this.planned);
    const sure = { setUps: Math.max(made.bound.setUps, this.known.setUps), mounts: Math.max(made.bound.mounts, this.known.mounts) };
    if (this.top === null || compareOrders(figuresOf(made), figuresOf(this.top.made), this.beds) < 0) this.top = { order, made };
    const before = this.heldPlan === null ? {} : { before: figuresOf(this.heldPlan) };
    if (this.top.made === made) return { ...made, bound: sure, ...before };
    const { endsAtLeast = null, endsAtLeastBy } = made;
    const still = { ...this.top.made, bound: sure, endsAtLeast, ...(endsAtLeastBy === undefined ? {} : { endsAtLeastBy }), ...before };
    return this.top.order === this.held ? { ...still, kept: true } : still;
  }
}
