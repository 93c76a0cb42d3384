import { entryAt } from '../../base/at.ts';
import type { PressPlan } from '../../visit/visit.ts';
import type { VisitNow } from '../rest-input.ts';
import { nextAtBeds, tickKey } from './ticks.ts';

/**
 * How far a bed is behind its order: now, less the moment at which as many sheets of its set-up at hand would have
 * been pulled as are ticked. While that is made ready, as it is planned to be, nobody is late.
 * @param ticks as `ticksOf` gives them
 * @param now as `visitNow` gives it
 * @param bed from 0
 * @returns minutes of open studio, below 0 when it is ahead; null before the first tick and when all is done
 */
export function minutesLate(plan: PressPlan, ticks: ReadonlySet<string>, now: VisitNow, bed = 0): number | null {
  if (ticks.size === 0) return null;
  const at = nextAtBeds(plan, ticks)[bed] ?? -1;
  const card = plan.cards[at];
  if (card === undefined) return null;
  const done = card.sheets.filter((sheet) => ticks.has(tickKey(card.number, sheet))).length;
  if (done === card.sheets.length) return null;
  const { day, startMinute, endMinute } = entryAt(plan.times, at);
  const prints = plan.parts.flatMap(({ setUp, kind, fromMinute }) => (setUp === at && kind === 'print' ? [fromMinute] : []));
  const first = Math.min(endMinute, ...prints);
  const clockNow = atWork(plan, now.day, now.minuteOfDay - plan.clock.startMinute);
  if (done > 0) return Math.round(clockNow - atWork(plan, day, first + ((endMinute - first) * done) / card.sheets.length));
  const [begins, pulls] = [atWork(plan, day, startMinute), atWork(plan, day, first)];
  return Math.round(clockNow - Math.min(pulls, Math.max(begins, clockNow)));
}

/** Minutes for which the studio was open by a moment, lunch counted: nobody is late for a night. */
function atWork({ clock }: PressPlan, day: number, minute: number): number {
  const open = clock.workMinutes + (clock.lunch?.minutes ?? 0);
  return (day - 1) * open + Math.min(open, Math.max(0, minute));
}
