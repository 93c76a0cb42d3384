import { entryAt } from '../../../engine/base/at.ts';
import { rangesText } from '../../../engine/base/words.ts';
import { chosenFor } from '../../../engine/log/now/chosen.ts';
import type { Happening } from '../../../engine/log/types.ts';
import type { Pull } from '../../../engine/stack/types.ts';
import type { Studio } from '../../../engine/studio/studio.ts';
import { sentenceOf } from '../../../workers/client/client.ts';
import type { AppStore } from '../../app-store.ts';
import { newId } from '../../ui/new-id.ts';
import { say } from '../../words/en/press/next.ts';
import type { PressVisit } from '../press-visit.ts';

/** What is told of a choice that cannot be. */
const TROUBLE = 'going on';

/** Sheets that go on as was chosen at the press. */
export interface GoOn {
  numbers: readonly number[];
  more: readonly Pull[];
  studio: Studio;
  /** Whether what was planned for them still follows. */
  planned: boolean;
  /** Whether the pull is on them already, though nothing planned it. */
  pulled?: boolean;
}

/** What to log so that sheets go on as was chosen. */
export function goOnHappenings({ sheets, recipes }: PressVisit['log'], { numbers, ...choice }: GoOn): Happening[] {
  const chosen = sheets.filter(({ number }) => numbers.includes(number));
  return chosenFor(chosen, recipes, { ...choice, id: newId() });
}

/** Why sheets cannot go on so, in a sentence; '' when they can. A dialog at the press hides what is told elsewhere. */
export function whyNot(log: PressVisit['log'], going: GoOn): string {
  try {
    goOnHappenings(log, going);
    return '';
  } catch (error) {
    return sentenceOf(error);
  }
}

function anythingLeft({ sheets, recipes }: PressVisit['log']): boolean {
  return sheets.some(({ recipe, done, spoiled }) => !spoiled && done.length < entryAt(recipes, recipe).pulls.length);
}

/** Logs that sheets go on as was chosen, and plans the rest with it; one undo takes both back. */
export async function goOn(visit: PressVisit, store: AppStore, going: GoOn): Promise<void> {
  const { log, run } = visit;
  const before = run.made;
  if (before === null) return;
  // Sheets that go on otherwise leave the set-ups that they were pulled in.
  const { setUpsBehind } = visit;
  let happenings: Happening[];
  try {
    happenings = goOnHappenings(log, going);
  } catch (error) {
    store.trouble(TROUBLE, sentenceOf(error));
    return;
  }
  store.settled(TROUBLE);
  const entries = await log.write(happenings);
  // Of a visit with nothing left to pull nothing is planned.
  if (anythingLeft(log)) await run.start(visit.restInput(0, setUpsBehind));
  const numbers = rangesText([...going.numbers].sort((a, b) => a - b));
  const words =
    going.pulled === true ? say.logExtraPullOn(going.numbers.length, numbers) : say.letSheetsGoOn(going.numbers.length, numbers);
  visit.did(words, before, entries);
}
