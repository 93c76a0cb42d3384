import { entryAt } from '../../base/at.ts';
import type { PressPlan } from '../../visit/visit.ts';
import type { VisitNow } from '../rest-input.ts';
import { nextSetUp, tickKey } from './ticks.ts';

/**
 * How far a visit is behind its order: now, less the moment at which as many sheets of the set-up at
 * hand would have been pulled as are ticked.
 * @param ticks as `ticksOf` gives them
 * @param now as `visitNow` gives it
 * @returns minutes of open studio, below 0 when it is ahead; null before the first tick and when all is done
 */
export function minutesLate(plan: PressPlan, ticks: ReadonlySet<string>, now: VisitNow): number | null {
  if (ticks.size === 0) return null;
  const at = nextSetUp(plan, ticks);
  const card = plan.cards[at];
  if (card === undefined) return null;
  const done = card.sheets.filter((sheet) => ticks.has(tickKey(card.number, sheet))).length;
  if (done === card.sheets.length) return null;
  const { day, startMinute, endMinute } = entryAt(plan.times, at);
  const planned = atWork(plan, day, startMinute + ((endMinute - startMinute) * done) / card.sheets.length);
  return Math.round(atWork(plan, now.day, now.minuteOfDay - plan.clock.startMinute) - planned);
}

/** Minutes for which the studio was open by a moment, lunch counted: nobody is late for a night. */
function atWork({ clock }: PressPlan, day: number, minute: number): number {
  const open = clock.workMinutes + (clock.lunch?.minutes ?? 0);
  return (day - 1) * open + Math.min(open, Math.max(0, minute));
}
