import type { Problem } from '../base/error.ts';
import { standing } from './events.ts';
import type { LogEvent, VisitHead } from './types.ts';

/**
 * What in a log cannot all be true.
 * @returns a problem each: 'log.sheet' (no such sheet), 'log.pull' (no such pull, so no screen for
 *   it), 'log.twice', 'log.spoiled' (pulled after it was spoiled), 'log.early' (before the visit
 *   began), 'log.undone' (takes back what is not there); `where` names the event
 */
export function checkLog(head: VisitHead, events: readonly LogEvent[]): Problem[] {
  const problems: Problem[] = [];
  const fault = (event: LogEvent, code: string, message: string): void => {
    problems.push({ code, message, where: `event ${event.id}` });
  };
  const sheets = new Map(head.sheets.map((sheet) => [sheet.number, head.recipes[sheet.recipe]]));
  const ids = new Set(events.map((event) => event.id));
  for (const event of events) {
    if (event.kind === 'undone' && !ids.has(event.event)) {
      fault(event, 'log.undone', `Sheet ${event.sheet}: something is undone that is not in the log; bring in the log of the device that wrote it.`);
    }
  }
  const printed = new Set<string>();
  const spoiled = new Set<number>();
  for (const event of standing(events)) {
    const recipe = sheets.get(event.sheet);
    if (recipe === undefined) {
      fault(event, 'log.sheet', `Sheet ${event.sheet} is in the log, but the visit has no sheet of that number; look at the number on its back and undo the entry.`);
      continue;
    }
    if (event.atMs < head.begunMs) {
      fault(event, 'log.early', `Sheet ${event.sheet}: an entry is from before the visit began, so the clocks of the devices differ; set them and trust the sheet, not the times.`);
    }
    if (event.kind === 'spoiled') spoiled.add(event.sheet);
    if (event.kind !== 'pulled' && event.kind !== 'otherwise') continue;
    if (spoiled.has(event.sheet)) {
      fault(event, 'log.spoiled', `Sheet ${event.sheet} was pulled after it was marked spoiled; undo one of the two.`);
    }
    for (const id of event.pulls) {
      const at = recipe.pulls.findIndex((pull) => pull.id === id);
      if (at < 0) {
        fault(event, 'log.pull', `Sheet ${event.sheet} is said to be pulled with "${id}", but ${recipe.title} has no such pull, so no screen for it was there; undo the entry.`);
        continue;
      }
      const key = JSON.stringify([event.sheet, at]);
      if (printed.has(key)) {
        fault(event, 'log.twice', `Sheet ${event.sheet}: pull ${at + 1} of ${recipe.title} is logged twice; look at the sheet and undo one, or note a further stroke.`);
      }
      printed.add(key);
    }
  }
  return problems;
}
