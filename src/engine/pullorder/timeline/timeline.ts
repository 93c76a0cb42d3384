import type { SetUp } from '../types.ts';
import { checkTimes } from './check-times.ts';
import { PlanLayout } from './plan-layout.ts';
import { pressRules } from './press-rules.ts';
import type { LaidOut, TimelineInput } from './start-state.ts';

/**
 * A function that lays set-ups out over the days of a visit, one after another, each as soon as it
 * can, on the bed named for it or on the one that is done with it first. Within a set-up the sheets
 * that dry first go first; a pull waits until every film it touches is dry, the sheet is off the
 * other bed and a place in the racks is free; lunch and nights dry too. A set-up that does not end
 * within its day, washed up, begins the next morning; every morning the screen is mounted anew.
 * Problems are 'visit.too-long', 'visit.long-set-up', 'visit.racks'.
 * @throws EngineError 'visit.bad-number' for figures that are none, and when laying out
 *   'visit.unknown-ink' when a drying time is missing
 */
export function timelineOf(input: TimelineInput): (setUps: readonly SetUp[], bedOf?: readonly number[]) => LaidOut {
  checkTimes(input.times, input.dryMinutesByInk, input.visit);
  const rules = pressRules(input);
  return (setUps, bedOf) => new PlanLayout(rules).run(setUps, bedOf);
}
