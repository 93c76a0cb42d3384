import { entryAt } from '../../../engine/base/at.ts';
import type { Passed, StackChange } from '../../../engine/stack/edit/stack-change.ts';
import type { Pull } from '../../../engine/stack/types.ts';
import type { Studio } from '../../../engine/studio/studio.ts';
import { counted } from '../../ui/words.ts';
import { offsetWords } from '../../words/offset-words.ts';
import { capital, listed } from '../../words/plan-words.ts';
import { inkNameOf } from '../bench-words.ts';

/** What a change is told of. */
interface ToldStack {
  pulls: readonly Pull[];
  studio: Pick<Studio, 'inks' | 'screens'>;
  /** Whether it is known which of the pulls overlap so that their order shows. */
  known: boolean;
  /** The ΔE00 from which it shows. */
  minDeltaE: number;
}

/** So many screens are named; of more, how many they are. */
const MOST_NAMED = 4;

/** What is different in a print after a change, in a sentence or more; '' when nothing is. */
export function changeWords(change: StackChange, stack: ToldStack): string {
  const { added, removed, recoloured, shifted, restroked, passed } = change;
  const now = (pairs: readonly [Pull, Pull][]): Pull[] => pairs.map(([, pull]) => pull);
  const said: string[] = [];
  if (removed.length > 0)
    said.push(`${named(removed, stack)} ${removed.length === 1 ? 'is' : 'are'} off the stack; ${counted(stack.pulls.length, 'pull')} left`);
  if (added.length > 0) said.push(addedWords(added, stack));
  if (recoloured.length > 0) said.push(recolouredWords(recoloured, stack));
  if (shifted.length > 0) said.push(shiftedWords(now(shifted), stack));
  if (restroked.length > 0) said.push(strokesWords(now(restroked), stack));
  if (passed.length > 0) said.push(passedWords(passed, stack));
  return said.map((text) => `${capital(text)}.`).join(' ');
}

/** 'screen 12', with its pull where the screen is pulled more than once; 'screens 3, 4 and 9'; '14 pulls'. */
function named(pulls: readonly Pull[], { pulls: all, studio }: ToldStack): string {
  if (pulls.length > MOST_NAMED) return counted(pulls.length, 'pull');
  const names = pulls.map((pull) => {
    const number = studio.screens.find(({ id }) => id === pull.screen)?.number ?? '?';
    const at = all.findIndex(({ id }) => id === pull.id);
    const often = all.filter(({ screen }) => screen === pull.screen).length > 1;
    return often && at >= 0 ? `${number} (pull ${at + 1})` : String(number);
  });
  return `${names.length === 1 ? 'screen' : 'screens'} ${listed(names)}`;
}

function addedWords(added: readonly Pull[], stack: ToldStack): string {
  if (added.length > 1) return `${named(added, stack)} are on the stack; ${counted(stack.pulls.length, 'pull')} now`;
  const pull = entryAt(added, 0);
  const at = stack.pulls.findIndex(({ id }) => id === pull.id);
  return `${named(added, stack)} is pull ${at + 1} of ${stack.pulls.length}, in ${inkNameOf(pull, stack.studio)}`;
}

function recolouredWords(pairs: readonly [Pull, Pull][], stack: ToldStack): string {
  const was = new Set(pairs.map(([pull]) => inkNameOf(pull, stack.studio)));
  const is = new Set(pairs.map(([, pull]) => inkNameOf(pull, stack.studio)));
  const subject = named(
    pairs.map(([, pull]) => pull),
    stack,
  );
  const verb = pairs.length === 1 ? 'is' : 'are';
  if (is.size > 1) return `${subject} ${verb} in other inks`;
  return `${subject} ${verb} in ${[...is].join()}${was.size === 1 ? ` in place of ${[...was].join()}` : ''}`;
}

function shiftedWords(pulls: readonly Pull[], stack: ToldStack): string {
  const one = entryAt(pulls, 0);
  if (pulls.length > 1) return `${named(pulls, stack)} lie elsewhere on the sheet`;
  const words = offsetWords(one);
  return `${named(pulls, stack)} lies ${words === 'no offset' ? 'where it was drawn' : words}`;
}

function strokesWords(pulls: readonly Pull[], stack: ToldStack): string {
  const strokes = new Set(pulls.map((pull) => pull.strokes));
  const verb = pulls.length === 1 ? 'has' : 'have';
  return strokes.size > 1
    ? `${named(pulls, stack)} ${verb} other strokes`
    : `${named(pulls, stack)} ${verb} ${counted(entryAt(pulls, 0).strokes, 'stroke')}${pulls.length === 1 ? '' : ' each'}`;
}

function passedWords(passed: readonly Passed[], stack: ToldStack): string {
  const [one] = passed;
  const place =
    passed.length === 1 && one !== undefined
      ? `${named([one.pull], stack)} is pull ${one.at + 1} of ${stack.pulls.length}`
      : `${named(
          passed.map(({ pull }) => pull),
          stack,
        )} are at other places`;
  if (!stack.known) return place;
  const seen = passed.filter(({ over, under }) => over.length + under.length > 0);
  if (seen.length === 0) return `${place}; the print stays the same within ΔE ${stack.minDeltaE}`;
  if (seen.length > MOST_NAMED) return `${place}; ${seen.length} of them now lie otherwise over or under what they overlap`;
  return seen.map((each) => passedOne(each, stack)).join('; ');
}

/** 'screen 12 now lies over screen 7 and under screens 3 and 4'. */
function passedOne({ pull, over, under }: Passed, stack: ToldStack): string {
  // The nearest first: those next to it in the pile show the most of what changed.
  const sides = [
    over.length === 0 ? '' : `over ${passedNames(over.toReversed(), stack)}`,
    under.length === 0 ? '' : `under ${passedNames(under, stack)}`,
  ].filter((side) => side !== '');
  return `${named([pull], stack)} now lies ${sides.join(' and ')}`;
}

function passedNames(pulls: readonly Pull[], stack: ToldStack): string {
  if (pulls.length <= MOST_NAMED) return named(pulls, stack);
  const some = named(pulls.slice(0, MOST_NAMED - 1), stack).replace(' and ', ', ');
  return `${some} and ${pulls.length - MOST_NAMED + 1} more`;
}
