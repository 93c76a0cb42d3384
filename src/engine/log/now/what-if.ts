import { defined } from '../../base/at.ts';
import type { PairMemory } from '../../visit/problem/pair-memory.ts';
import type { Moment, PressPlan } from '../../visit/visit.ts';
import { measuredRecipes, planRest, type RestInput } from '../rest.ts';

/** What is left of a visit, in figures. */
interface RestFigures {
  setUps: number;
  /** Time at the press, waiting left out. */
  workedMinutes: number;
  /** Ink to have ready. */
  grams: number;
  ends: Moment;
  clock: PressPlan['clock'];
}

/** What is left to be done, without a choice and with it. */
export interface WhatIf {
  before: RestFigures;
  after: RestFigures;
}

/**
 * Work allowed for each of the two orders that are compared, ms of a common machine. Next to none: both are the order
 * at hand, once with the choice in it, so that what differs is the choice and no luckier search.
 */
const BUDGET_MS = 1;

/** Share of the work that goes to measuring which pulls meet. */
const MEASURE_SHARE = 0.5;

/**
 * Plans what is left of a visit as it stands and as it would stand.
 * @param memory of pairs of pulls, which is filled with what is measured here
 * @yields the share that is done, 0–1
 * @throws EngineError as `planRest` does
 */
export function* compareRests(before: RestInput, after: RestInput, memory: PairMemory): Generator<number, WhatIf> {
  const recipes = [...measuredRecipes(before), ...measuredRecipes(after)];
  for (const share of memory.measure(recipes, before.minDeltaE)) yield MEASURE_SHARE * share;
  const asItStands = yield* figuresOf(before, MEASURE_SHARE, memory);
  const asItWould = yield* figuresOf(after, (1 + MEASURE_SHARE) / 2, memory);
  return { before: asItStands, after: asItWould };
}

function* figuresOf(input: RestInput, from: number, memory: PairMemory): Generator<number, RestFigures> {
  let last: PressPlan | null = null;
  for (const plan of planRest(input, BUDGET_MS, memory)) {
    last = plan;
    yield from + ((1 - MEASURE_SHARE) / 2) * (plan.worked ?? 0);
  }
  const { cards, parts, inks, ends, clock } = defined(last);
  const worked = parts.filter(({ kind }) => kind !== 'wait').reduce((sum, { fromMinute, toMinute }) => sum + toMinute - fromMinute, 0);
  return {
    setUps: cards.length,
    workedMinutes: Math.round(worked),
    grams: Math.round(inks.reduce((sum, ink) => sum + ink.grams, 0)),
    ends,
    clock,
  };
}
