import { rangesText } from '../../engine/base/words.ts';
import type { Happening, LogEvent } from '../../engine/log/types.ts';
import { say } from './en/phrases/log.ts';

/** What was logged at once, as undo names it: 'log sheets 1–3 as pulled'. @param events what the log had before */
export function loggedWords(happenings: readonly Happening[], events: readonly LogEvent[]): string {
  const numbers = [...new Set(happenings.map(({ sheet }) => sheet))].sort((a, b) => a - b);
  const all = (kind: Happening['kind']): boolean => happenings.every((each) => each.kind === kind);
  // What is said of a set-up is of no sheet.
  if (numbers[0] === 0) return all('undone') ? say.takeBackWordOfSetUp : say.logWordOfSetUp;
  const ranges = rangesText(numbers);
  // A tick that was a slip to take back is logged as the taking back of that.
  const kinds = new Map(events.map(({ id, kind }) => [id, kind]));
  const again = happenings.every((each) => each.kind === 'undone' && kinds.get(each.event) === 'undone');
  if (all('undone') && !again) return say.takeBackEntriesOf(numbers.length, ranges);
  return again || all('pulled') ? say.logAsPulled(numbers.length, ranges) : say.logEntriesOf(numbers.length, ranges);
}
