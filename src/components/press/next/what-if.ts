import { minutesText } from '../../../engine/base/words.ts';
import { recipesAsPulled, sheetsAsPulled } from '../../../engine/log/as-pulled.ts';
import type { RestInput } from '../../../engine/log/rest.ts';
import type { Happening, LogEvent } from '../../../engine/log/types.ts';
import type { PressPlan } from '../../../engine/visit/visit.ts';
import { numberLocale } from '../../../engine/words/language.ts';
import { engineFor } from '../../../workers/client/client.ts';
import type { JobControl } from '../../../workers/client/job-control.ts';
import type { LogKeeper } from '../../ui/log/log-keeper.ts';
import { say } from '../../words/en/press/next.ts';
import { wallClock } from '../../words/plan-words.ts';

/**
 * Work allowed for each of the two orders that are compared, ms of a common machine. Next to none: both are the order
 * at hand, once with the choice in it, so that what differs is the choice and no luckier search.
 */
const BUDGET_MS = 1;

/** What is left to be done, without a choice and with it. */
export interface WhatIf {
  before: PressPlan;
  after: PressPlan;
}

/** Shares of the work: measuring which pulls meet, as it stands and as it would, and planning. */
const MEASURE_SHARE = 0.4;
const PLAN_SHARE = 0.1;

/**
 * Plans what is left twice: as the log stands, and as it would stand.
 * @param control hears the share that is done, and ends the work
 */
export async function whatIf(
  log: LogKeeper,
  input: RestInput,
  happenings: readonly Happening[],
  { signal, onProgress }: Required<JobControl<number>>,
): Promise<WhatIf | null> {
  const { head, pairs } = log;
  if (head === null) return null;
  const atMs = Math.max(0, ...log.events.map((event) => event.atMs)) + 1;
  const would = [...log.events, ...happenings.map((each, i): LogEvent => ({ ...each, id: `would ${i}`, atMs, device: '' }))];
  const rest = { ...input.rest, recipes: recipesAsPulled(head, would), sheets: sheetsAsPulled(head, would, pairs) };
  const engine = engineFor('plan');
  const changed = { ...input, rest };
  let done = 0;
  for (const each of [input, changed]) {
    const from = done;
    await engine.measure({ input: each }, { signal, onProgress: (share) => onProgress(from + MEASURE_SHARE * share) });
    signal.throwIfAborted();
    done += MEASURE_SHARE;
  }
  const plan = async (of: RestInput): Promise<PressPlan> => {
    const found = await engine.plan({ input: of, budgetMs: BUDGET_MS }, { signal });
    onProgress((done += PLAN_SHARE));
    return found;
  };
  const before = await plan(input);
  return { before, after: await plan(changed) };
}

function more(difference: number, words: (amount: number) => string, same: string): string {
  if (difference === 0) return same;
  return say.more(words(Math.abs(difference)), difference > 0);
}

/** Time that the press is worked at, minutes; waiting is not. */
function workedMinutes({ parts }: PressPlan): number {
  const worked = parts.filter(({ kind }) => kind !== 'wait');
  return Math.round(worked.reduce((sum, { fromMinute, toMinute }) => sum + toMinute - fromMinute, 0));
}

function grams({ inks }: PressPlan): number {
  return Math.round(inks.reduce((sum, ink) => sum + ink.grams, 0));
}

/** 'What is left then: 9 set-ups, as before; 12 min more at the press, done on day 2 at 15:10; 14 g more ink.' */
export function whatIfWords({ before, after }: WhatIf): string {
  const setUps = after.cards.length - before.cards.length;
  const parts = [
    setUps === 0 ? say.setUpsAsBefore(after.cards.length) : say.setUps(after.cards.length, more(setUps, String, '')),
    say.atPressDoneOn(
      more(workedMinutes(after) - workedMinutes(before), minutesText, say.noLonger),
      after.ends.day,
      wallClock(after, after.ends.minute),
    ),
    say.ink(more(grams(after) - grams(before), (amount) => `${amount.toLocaleString(numberLocale())} g`, say.noMore)),
  ];
  return say.whatIsLeftThen(parts.join('; '));
}
