import { minutesText } from '../../../engine/base/words.ts';
import { recipesAsPulled, sheetsAsPulled } from '../../../engine/log/as-pulled.ts';
import type { WhatIf } from '../../../engine/log/now/what-if.ts';
import type { RestInput } from '../../../engine/log/rest.ts';
import type { Happening, LogEvent } from '../../../engine/log/types.ts';
import { numberLocale } from '../../../engine/words/language.ts';
import { engineFor } from '../../../workers/client/client.ts';
import type { JobControl } from '../../../workers/client/job-control.ts';
import type { LogKeeper } from '../../ui/log/log-keeper.ts';
import { say } from '../../words/en/press/next.ts';
import { wallClock } from '../../words/plan-words.ts';

/**
 * Plans what is left twice: as the log stands, and as it would stand.
 * @param control hears the share that is done, and ends the work
 */
export async function whatIf(
  log: LogKeeper,
  input: RestInput,
  happenings: readonly Happening[],
  control: JobControl<number>,
): Promise<WhatIf | null> {
  const { head, pairs } = log;
  if (head === null) return null;
  const atMs = Math.max(0, ...log.events.map((event) => event.atMs)) + 1;
  const would = [...log.events, ...happenings.map((each, i): LogEvent => ({ ...each, id: `would ${i}`, atMs, device: '' }))];
  const rest = { ...input.rest, recipes: recipesAsPulled(head, would), sheets: sheetsAsPulled(head, would, pairs) };
  return engineFor('plan').compareRests({ before: input, after: { ...input, rest } }, control);
}

function more(difference: number, words: (amount: number) => string, same: string): string {
  if (difference === 0) return same;
  return say.more(words(Math.abs(difference)), difference > 0);
}

/** 'What is left then: 9 set-ups, as before; 12 min more at the press, done on day 2 at 15:10; 14 g more ink.' */
export function whatIfWords({ before, after }: WhatIf): string {
  const setUps = after.setUps - before.setUps;
  const parts = [
    setUps === 0 ? say.setUpsAsBefore(after.setUps) : say.setUps(after.setUps, more(setUps, String, '')),
    say.atPressDoneOn(
      more(after.workedMinutes - before.workedMinutes, minutesText, say.noLonger),
      after.ends.day,
      wallClock(after, after.ends.minute),
    ),
    say.ink(more(after.grams - before.grams, (amount) => `${amount.toLocaleString(numberLocale())} g`, say.noMore)),
  ];
  return say.whatIsLeftThen(parts.join('; '));
}
