import { rangesText } from '../../engine/base/words.ts';
import type { Happening } from '../../engine/log/types.ts';
import { say } from './en/phrases/log.ts';

/** What was logged at once, as undo names it: 'log sheets 1–3 as pulled'. */
export function loggedWords(happenings: readonly Happening[]): string {
  const numbers = [...new Set(happenings.map(({ sheet }) => sheet))].sort((a, b) => a - b);
  const all = (kind: Happening['kind']): boolean => happenings.every((each) => each.kind === kind);
  // What is said of a set-up is of no sheet.
  if (numbers[0] === 0) return all('undone') ? say.takeBackWordOfSetUp : say.logWordOfSetUp;
  const ranges = rangesText(numbers);
  if (all('undone')) return say.takeBackEntriesOf(numbers.length, ranges);
  return all('pulled') ? say.logAsPulled(numbers.length, ranges) : say.logEntriesOf(numbers.length, ranges);
}
