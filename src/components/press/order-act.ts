import type { LogEvent, VisitHead } from '../../engine/log/types.ts';
import type { Act } from '../acts.ts';
import type { MadePlan } from '../output/made-plan.ts';
import type { LogKeeper } from '../ui/log/log-keeper.ts';

/** An order that took the place of another, and what was logged for it: both are taken back, and done again, as one. */
export function orderAct(
  label: string,
  { before, after, logged = [] }: { before: MadePlan; after: MadePlan; logged?: readonly LogEvent[] },
  visit: { log: LogKeeper; goBack: (order: MadePlan, head: VisitHead | null) => void },
): Act {
  const { head } = visit.log;
  const { undo, redo, stands } = visit.log.wayBack(logged);
  const go = (to: MadePlan, entries: () => void) => (): void => {
    visit.goBack(to, head);
    entries();
  };
  return { label, undo: go(before, undo), redo: go(after, redo), stands };
}
