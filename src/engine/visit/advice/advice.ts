import { entryAt } from '../../base/at.ts';
import { changeOfLeavingOut } from '../leave-out.ts';
import { describe, type PressPlan } from '../press-plan.ts';
import { orderAtHand } from '../problem/order-at-hand.ts';
import { visitProblem, type VisitRunInput } from '../visit-problem.ts';
import { workMinutes } from '../visit-times.ts';
import { planVisit, type VisitInput } from '../visit.ts';
import { changeOf } from './change-of.ts';
import { type Edit, VisitHabits } from './edits.ts';
import { ideasOf } from './ideas.ts';
import { splitOverNight } from './over-night.ts';

/** What a plan costs, as advice compares it. */
export interface AdviceFigures {
  setUps: number;
  mounts: number;
  minutes: number;
  days: number;
  /** Most inks that are used on one day. */
  inksADay: number;
}

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

/** What somebody would rather have least of. */
export type AdviceGoal = 'mounts' | 'days' | 'inks';

/**
 * Work for each plan, ms: what is offered was planned, not guessed. Five times as much saves a few
 * set-ups in a hundred more and makes a printer wait a minute or longer.
 */
const PLAN_MS = 100;

/** What a plan costs. */
export function adviceFigures(plan: PressPlan): AdviceFigures {
  const byDay = new Map<number, Set<string>>();
  for (const [i, card] of plan.cards.entries()) {
    const { day } = entryAt(plan.times, i);
    const inks = byDay.get(day) ?? new Set();
    byDay.set(day, inks.add(card.ink.key));
  }
  return {
    setUps: plan.cards.length,
    mounts: plan.mounts,
    minutes: Math.round(workMinutes(plan)),
    days: plan.daysNeeded,
    inksADay: Math.max(0, ...[...byDay.values()].map((inks) => inks.size)),
  };
}

/**
 * What a printer would change in a visit to have less work: each idea planned anew.
 * @param plan the order at hand of `input`
 * @param only changes that are wanted: these together are tried, and no others
 * @yields the share that is done, 0–1, and what was found with it: null when the idea gives nothing
 * @returns all that was found, in the order of the ideas
 */
export function* adviseOn(input: VisitInput, plan: PressPlan, only?: Edit[]): Generator<{ share: number; found: Advice | null }, Advice[]> {
  const habits = new VisitHabits(input);
  const ideas = only === undefined ? ideasOf(habits, plan) : [{ edits: only, name: '' }];
  const before = adviceFigures(plan);
  const all: Advice[] = [];
  for (const [i, { edits, name }] of ideas.entries()) {
    const night = edits.some(({ kind }) => kind === 'night');
    const steps = night ? nightPlan(input, plan) : planned(habits.inputAfter(edits, name), plan);
    let made: PressPlan | null = null;
    for (let next = steps.next(); ; next = steps.next()) {
      if (next.done === true) {
        made = next.value;
        break;
      }
      yield { share: (i + next.value) / ideas.length, found: null };
    }
    const found = made === null ? null : adviceOf({ habits, edits, name, plan: made });
    const helps = found !== null && isLess(found.figures, before);
    if (helps) all.push(found);
    yield { share: (i + 1) / ideas.length, found: helps ? found : null };
  }
  return all;
}

/** Whether anything that somebody may wish for becomes less. */
function isLess(one: AdviceFigures, other: AdviceFigures): boolean {
  return one.mounts < other.mounts || one.minutes < other.minutes - 1 || one.days < other.days || one.inksADay < other.inksADay;
}

function* planned(input: VisitInput, atHand: PressPlan): Generator<number, PressPlan | null> {
  let last: PressPlan | null = null;
  for (const step of planVisit({ ...input, atHand }, PLAN_MS)) {
    last = step;
    yield step.worked ?? 0;
  }
  if (last === null) return null;
  // The order at hand is of another visit: nothing here is kept from it.
  const { before: _before, kept: _kept, ...plan } = last;
  return plan;
}

// oxlint-disable-next-line require-yield -- takes the place of a search, which goes in steps
function* nightPlan(input: VisitInput, plan: PressPlan): Generator<number, PressPlan | null> {
  const { minDeltaE, testSheet, press } = input;
  const visit = visitProblem(input.runs, { minDeltaE, testSheet, registrationMm: press.registrationMm });
  const atHand = orderAtHand(plan, visit);
  if (!atHand.sound) return null;
  const { order, split } = splitOverNight(atHand, visit, press);
  if (split.length === 0) return null;
  const made = describe(order, plan.bound, { visit, press, start: undefined });
  return { ...made, savedSetUps: null, savedMounts: null, worked: 1, done: true };
}

function adviceOf({ habits, edits, name, plan }: { habits: VisitHabits; edits: Edit[]; name: string; plan: PressPlan }): Advice {
  const { input } = habits;
  const after = habits.inputAfter(edits, name);
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

const FIGURE_OF = {
  mounts: ({ mounts }: AdviceFigures) => mounts,
  days: ({ days, minutes }: AdviceFigures) => days * 1440 + minutes,
  inks: ({ inksADay }: AdviceFigures) => inksADay,
} as const;

/** ΔE00 by which the whole visit may move before what is saved counts half. */
const HALF_WORTH_DELTA_E = 3;

/**
 * Advice in the order of its worth for a goal: the share that it saves of it, against how far the prints
 * move; what saves nothing of it comes last, by hours and then by its change.
 * @param before of the plan at hand
 */
export function bestFirst(all: readonly Advice[], before: AdviceFigures, goal: AdviceGoal): Advice[] {
  const of = FIGURE_OF[goal];
  const worth = ({ figures, deltaE }: Advice): number => {
    const saved = (of(before) - of(figures)) / Math.max(1, of(before));
    return saved <= 0 ? saved : saved / (1 + deltaE / HALF_WORTH_DELTA_E);
  };
  return [...all].sort((a, b) => worth(b) - worth(a) || a.figures.minutes - b.figures.minutes || a.deltaE - b.deltaE);
}
