import { entryAt } from '../../base/at.ts';
import { changeOfLeavingOut } from '../leave-out.ts';
import type { PressPlan } from '../press-plan.ts';
import { orderAtHand } from '../problem/order-at-hand.ts';
import type { VisitRunInput } from '../visit-problem.ts';
import { planVisit, type VisitInput } from '../visit.ts';
import { type AdviceFigures, adviceFigures, isLess } from './advice-figures.ts';
import { changeOf } from './change-of.ts';
import { type Edit, VisitHabits } from './edits.ts';
import { type Idea, ideasOf } from './ideas.ts';
import { splitOverNight } from './over-night.ts';
import { planOf, Standing, visitOf } from './standing.ts';

/** How one print changes. */
interface PrintChange {
  /** Index into the visit's runs. */
  run: number;
  /** Sheets of it that are wanted. */
  sheets: number;
  /** Mean ΔE00 over the sheet. */
  deltaE: number;
}

/** A change to the visit, planned as it would be printed. */
export interface Advice {
  edits: Edit[];
  input: VisitInput;
  plan: PressPlan;
  figures: AdviceFigures;
  /** Prints that look otherwise, the most changed first. */
  changes: PrintChange[];
  /** Mean ΔE00 over all sheets of the visit; a sheet that is left out counts as bare paper. */
  deltaE: number;
}

/**
 * Work for each plan, ms: what is offered was planned, not guessed. Five times as much saves a few
 * set-ups in a hundred more and makes a printer wait a minute or longer.
 */
const PLAN_MS = 100;

/** How far a search for advice is. */
export interface AdviceStep {
  /** Of the work, 0–1. */
  share: number;
  /** What was found with it; null when the idea gives nothing. */
  found: Advice | null;
  /** The best order known of the visit as it stands, planned with as much work as each change. */
  standing: PressPlan;
  /** The least of each figure that any order known of the visit as it stands has: a change is credited with what it saves of these. */
  before: AdviceFigures;
}

/**
 * What a printer would change in a visit to have less work: each idea planned anew, and the visit as it
 * stands with the same work, seed and beginning, so that an idea is credited with what it brings alone.
 * @param plan the order at hand of `input`
 * @param only changes that are wanted: these together are tried, and no others
 * @yields how far it is, and what was found; an order that is found later for the visit as it stands
 *   may leave nothing of it
 * @returns all that was found, in the order of the ideas
 */
export function* adviseOn(input: VisitInput, plan: PressPlan, only?: Edit[]): Generator<AdviceStep, Advice[]> {
  const habits = new VisitHabits(input);
  const ideasFrom = (order: PressPlan): Idea[] => (only === undefined ? ideasOf(habits, order) : [{ edits: only, name: '' }]);
  let ideas = ideasFrom(plan);
  const standing = new Standing(input, plan);
  const all: Advice[] = [];
  let done = 0;
  const told = (share: number, found: Advice | null = null): AdviceStep => ({
    share: Math.min(1, (done + share) / (ideas.length + 1)),
    found,
    standing: standing.plan,
    before: standing.least,
  });
  const again = planned(input, plan);
  for (let next = again.next(); ; next = again.next()) {
    if (next.done !== true) yield told(next.value);
    else {
      standing.know(next.value);
      ideas = ideasFrom(standing.plan);
      break;
    }
  }
  for (const { edits, name } of ideas) {
    done++;
    yield told(0);
    const after = habits.inputAfter(edits, name);
    let made: PressPlan | null = null;
    if (isNight(edits)) made = nightPlan(input, standing.plan);
    else {
      const steps = planned(after, plan);
      for (let next = steps.next(); made === null; next = steps.next()) {
        if (next.done === true) made = standing.atBest(next.value, after);
        else yield told(next.value);
      }
      standing.learn(made);
    }
    if (made === null) continue;
    const found = adviceOf({ input, after, edits, plan: made });
    if (!isLess(found.figures, standing.least)) continue;
    all.push(found);
    yield told(1, found);
  }
  return all.filter(({ figures }) => isLess(figures, standing.least));
}

function isNight(edits: readonly Edit[]): boolean {
  return edits.some(({ kind }) => kind === 'night');
}

function* planned(input: VisitInput, atHand: PressPlan): Generator<number, PressPlan> {
  let last: PressPlan = atHand;
  for (const step of planVisit({ ...input, atHand }, PLAN_MS)) {
    last = step;
    yield step.worked ?? 0;
  }
  // The order at hand is of another visit: nothing here is kept from it.
  const { before: _before, kept: _kept, ...plan } = last;
  return plan;
}

function nightPlan(input: VisitInput, plan: PressPlan): PressPlan | null {
  const visit = visitOf(input);
  const atHand = orderAtHand(plan, visit);
  if (!atHand.sound) return null;
  const { order, split } = splitOverNight(atHand, visit, input.press);
  return split.length === 0 ? null : planOf(order, input, { visit, bound: plan.bound });
}

/** A change to a visit, and what was planned for it. */
interface Planned {
  input: VisitInput;
  after: VisitInput;
  edits: Edit[];
  plan: PressPlan;
}

function adviceOf({ input, after, edits, plan }: Planned): Advice {
  const changes: PrintChange[] = [];
  let [sum, sheets] = [0, 0];
  for (const [run, was] of input.runs.entries()) {
    const is = entryAt(after.runs, run);
    sheets += was.sheets;
    if (is.recipe !== was.recipe) {
      const deltaE = changeOf(was.recipe, is.recipe);
      changes.push({ run, sheets: is.sheets, deltaE });
      sum += deltaE * is.sheets;
    }
    if (is.sheets < was.sheets) sum += (was.sheets - is.sheets) * bareChange(was);
  }
  changes.sort((a, b) => b.deltaE - a.deltaE);
  return { edits, input: after, plan, figures: adviceFigures(plan), changes, deltaE: sum / Math.max(1, sheets) };
}

function bareChange({ recipe }: VisitRunInput): number {
  return changeOfLeavingOut(recipe, [[]])[0] ?? 0;
}
