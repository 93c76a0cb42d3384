import { entryAt } from '../../../engine/base/at.ts';
import type { Passed, StackChange } from '../../../engine/stack/edit/stack-change.ts';
import type { Pull } from '../../../engine/stack/types.ts';
import type { Studio } from '../../../engine/studio/studio.ts';
import { capital } from '../../../engine/words/language.ts';
import { say } from '../../words/en/bench/change.ts';
import { noOffset, offsetWords } from '../../words/offset-words.ts';
import { listed } from '../../words/plan-words.ts';
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
  if (removed.length > 0) said.push(say.areOffStackPulls(named(removed, stack), removed.length, stack.pulls.length));
  if (added.length > 0) said.push(addedWords(added, stack));
  if (recoloured.length > 0) said.push(recolouredWords(recoloured, stack));
  if (shifted.length > 0) said.push(shiftedWords(now(shifted), stack));
  if (restroked.length > 0) said.push(strokesWords(now(restroked), stack));
  if (passed.length > 0) said.push(passedWords(passed, stack));
  return said.map((text) => `${capital(text)}.`).join(' ');
}

/** 'screen 12', with its pull where the screen is pulled more than once; 'screens 3, 4 and 9'; '14 pulls'. */
function named(pulls: readonly Pull[], { pulls: all, studio }: ToldStack): string {
  if (pulls.length > MOST_NAMED) return say.pulls(pulls.length);
  const names = pulls.map((pull) => {
    const number = studio.screens.find(({ id }) => id === pull.screen)?.number ?? '?';
    const at = all.findIndex(({ id }) => id === pull.id);
    const often = all.filter(({ screen }) => screen === pull.screen).length > 1;
    return often && at >= 0 ? say.pull(number, at + 1) : String(number);
  });
  return say.screens(names.length, listed(names));
}

function addedWords(added: readonly Pull[], stack: ToldStack): string {
  if (added.length > 1) return say.areOnStackPulls(named(added, stack), stack.pulls.length);
  const pull = entryAt(added, 0);
  const at = stack.pulls.findIndex(({ id }) => id === pull.id);
  return say.isPullOfIn(named(added, stack), at + 1, stack.pulls.length, inkNameOf(pull, stack.studio));
}

function recolouredWords(pairs: readonly [Pull, Pull][], stack: ToldStack): string {
  const was = new Set(pairs.map(([pull]) => inkNameOf(pull, stack.studio)));
  const is = new Set(pairs.map(([, pull]) => inkNameOf(pull, stack.studio)));
  const subject = named(
    pairs.map(([, pull]) => pull),
    stack,
  );
  const verb = say.are(pairs.length);
  if (is.size > 1) return say.inOtherInks(subject, verb);
  return say.in(subject, verb, [...is].join(), was.size === 1 ? say.inPlaceOf([...was].join()) : '');
}

function shiftedWords(pulls: readonly Pull[], stack: ToldStack): string {
  const one = entryAt(pulls, 0);
  if (pulls.length > 1) return say.lieElsewhereOnSheet(named(pulls, stack));
  const words = offsetWords(one);
  return say.lies(named(pulls, stack), words === noOffset() ? say.whereItWasDrawn : words);
}

function strokesWords(pulls: readonly Pull[], stack: ToldStack): string {
  const strokes = new Set(pulls.map((pull) => pull.strokes));
  const verb = say.have(pulls.length);
  return strokes.size > 1
    ? say.otherStrokes(named(pulls, stack), verb)
    : say.strokesEach(named(pulls, stack), verb, entryAt(pulls, 0).strokes, pulls.length);
}

function passedWords(passed: readonly Passed[], stack: ToldStack): string {
  const [one] = passed;
  const place =
    passed.length === 1 && one !== undefined
      ? say.isPullOf(named([one.pull], stack), one.at + 1, stack.pulls.length)
      : say.areAtOtherPlaces(
          named(
            passed.map(({ pull }) => pull),
            stack,
          ),
        );
  if (!stack.known) return place;
  const seen = passed.filter(({ over, under }) => over.length + under.length > 0);
  if (seen.length === 0) return say.printStaysSameWithin(place, stack.minDeltaE);
  if (seen.length > MOST_NAMED) return say.ofThemNowLie(place, seen.length);
  return seen.map((each) => passedOne(each, stack)).join('; ');
}

/** 'screen 12 now lies over screen 7 and under screens 3 and 4'. */
function passedOne({ pull, over, under }: Passed, stack: ToldStack): string {
  // The nearest first: those next to it in the pile show the most of what changed.
  const sides = [
    over.length === 0 ? '' : say.over(passedNames(over.toReversed(), stack)),
    under.length === 0 ? '' : say.under(passedNames(under, stack)),
  ].filter((side) => side !== '');
  return say.nowLies(named([pull], stack), sides.join(say.and));
}

function passedNames(pulls: readonly Pull[], stack: ToldStack): string {
  if (pulls.length <= MOST_NAMED) return named(pulls, stack);
  const some = named(pulls.slice(0, MOST_NAMED - 1), stack).replace(say.and, ', ');
  return say.andMore(some, pulls.length - MOST_NAMED + 1);
}
