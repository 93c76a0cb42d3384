import { compareOrders, describe, figuresOf, type Ordered, type PressPlan } from '../press-plan.ts';
import { orderAtHand } from '../problem/order-at-hand.ts';
import { wholeFigures } from '../visit-figures.ts';
import { visitProblem, type VisitProblem } from '../visit-problem.ts';
import type { VisitInput } from '../visit.ts';
import { type AdviceFigures, adviceFigures, leastOf } from './advice-figures.ts';

/**
 * What orders are known of a visit as it stands. A change to the visit is worth what it saves beyond those:
 * each plan of a changed visit is a search with luck of its own, and an order found there may do for the
 * visit without the change too.
 */
export class Standing {
  private readonly input: VisitInput;
  private readonly visit: VisitProblem;
  /** The best order. */
  plan: PressPlan;
  /** The least of each figure that any of the orders has. */
  least: AdviceFigures;

  /** @param plan the order at hand of `input` */
  constructor(input: VisitInput, plan: PressPlan) {
    this.input = input;
    this.visit = visitOf(input);
    this.plan = plan;
    this.least = adviceFigures(plan);
  }

  /** Takes up another order of the visit. */
  know(plan: PressPlan): void {
    this.plan = better(this.plan, plan, this.input);
    this.least = leastOf(this.least, adviceFigures(plan));
  }

  /** Takes up the order of a changed visit where it prints the visit as it stands. */
  learn(changed: PressPlan): void {
    const plan = relaid(changed, { input: this.input, visit: this.visit, bound: this.plan.bound });
    if (plan !== null) this.know(plan);
  }

  /**
   * A plan of a changed visit, or the order known here where that prints the changed visit and does better.
   * @param input the changed visit
   */
  atBest(planned: PressPlan, input: VisitInput): PressPlan {
    return better(planned, relaid(this.plan, { input, visit: visitOf(input), bound: planned.bound }), input);
  }
}

/** A visit as its planner sees it. */
export function visitOf({ runs, minDeltaE, testSheet, press: { registrationMm } }: VisitInput): VisitProblem {
  return visitProblem(runs, { minDeltaE, testSheet, registrationMm });
}

interface Onto {
  input: VisitInput;
  visit: VisitProblem;
  bound: PressPlan['bound'];
}

/** The order of one visit in another with the same sheets; null when it does not print that one. */
function relaid(plan: PressPlan, { input, visit, bound }: Onto): PressPlan | null {
  const { setUps, sound } = orderAtHand(plan, visit);
  return sound ? planOf({ setUps }, input, { visit, bound }) : null;
}

/** An order as a plan that no search is at work on. */
export function planOf(order: Ordered, { press }: VisitInput, { visit, bound }: Omit<Onto, 'input'>): PressPlan {
  const made = describe(order, bound, { visit, press, start: undefined });
  return { ...made, savedSetUps: null, savedMounts: null, worked: 1, done: true };
}

function better(known: PressPlan, other: PressPlan | null, { press }: VisitInput): PressPlan {
  return other !== null && compareOrders(figuresOf(other), figuresOf(known), wholeFigures(press).beds) < 0 ? other : known;
}
