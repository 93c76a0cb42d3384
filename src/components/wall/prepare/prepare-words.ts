import type { PrepareBy, PrepareCost } from '../../../engine/explore/prepare/budget.ts';
import { type PrepareStep, takenByNone, type WantedPrint } from '../../../engine/explore/prepare/prepare.ts';
import type { Screen } from '../../../engine/shapes/types.ts';
import { fixed, numberLocale } from '../../../engine/words/language.ts';
import { say } from '../../words/en/wall/prepare.ts';
import { listed } from '../../words/plan-words.ts';

/** More screens than this are counted. */
const MOST_NAMED = 8;

/** 'new screens', as it stands in a sentence. */
export function newOnes(by: PrepareBy): string {
  return by === 'both' ? say.newScreensAndInks : by === 'screens' ? say.newScreens2 : say.newInks;
}

/** A weight of prints: whole where it is, as weights are. */
function weightText(weight: number): string {
  return weight.toLocaleString(numberLocale(), { maximumFractionDigits: 1 });
}

/** What a choice prints, and how near that is to the best there can be. */
export function printedSentence(step: PrepareStep, all: number, by: PrepareBy): string {
  const what =
    by === 'both'
      ? say.newScreensAndNew(step.screens.length, step.inks.length)
      : by === 'screens'
        ? say.newScreensCount(step.screens.length)
        : say.newInksCount(step.inks.length);
  const proven = step.bound <= step.printed + 1e-9;
  const near = proven ? say.noOtherChoiceOf : say.noChoiceOfSo(weightText(step.bound));
  return say.withOfCanBe(what, weightText(step.printed), weightText(all), near);
}

/** What a choice takes of what there is to spend; '' where it takes nothing. */
export function costSentence({ filmM2, money = 0, hours = 0 }: PrepareCost): string {
  const parts = [
    ...(filmM2 > 0 ? [say.squareMetresOfFilm(fixed(filmM2, 2))] : []),
    ...(money > 0 ? [say.ofMoney(weightText(money))] : []),
    ...(hours > 0 ? [say.hoursOfWork(weightText(hours))] : []),
  ];
  return parts.length === 0 ? '' : say.thatTakes(listed(parts));
}

/** With how many the first print comes, where none does yet; '' where one does, or none ever will. */
export function firstSentence(steps: readonly PrepareStep[], count: number): string {
  if ((steps[count]?.printed ?? 0) > 0) return '';
  const first = steps.find(({ printed }) => printed > 0);
  return first === undefined ? '' : say.firstComesWith(first.count);
}

/** What one more would add. */
export function nextSentence(steps: readonly PrepareStep[], count: number, nameOf: (id: string) => string): string {
  const [now, next] = [steps[count], steps[count + 1]];
  if (now === undefined || next === undefined) return say.allThatPrintsTake;
  const more = next.printed - now.printed;
  const had = new Set([...now.screens, ...now.inks]);
  const fresh = [...next.screens, ...next.inks].filter((id) => !had.has(id)).map(nameOf);
  if (more <= 1e-9) return say.oneMoreByItself(steps.find(({ printed }) => printed > now.printed + 1e-9)?.count ?? null);
  const named = fresh.length === 1 ? say.with(fresh[0] ?? '') : '';
  const other = fresh.length > 1 ? say.byChoiceInWhich(fresh.length, fresh.length <= 4 ? `: ${fresh.join(', ')}` : '') : '';
  return say.oneMoreAdds(weightText(more), named, other);
}

/** What is to be said of the question itself: prints that all count alike, and screens that none of them needs. */
export function askedNotes(
  prints: readonly WantedPrint[],
  wall: number,
  screens: { made: readonly Screen[]; toMake: readonly Screen[] },
): string[] {
  const [first] = prints;
  const alike = prints.length > 1 && prints.length >= wall && prints.every(({ weight }) => weight === first?.weight);
  const idle = (list: readonly Screen[], of: string): string[] => {
    const ids = new Set(
      takenByNone(
        list.map(({ id }) => id),
        prints,
      ),
    );
    const none = list.filter(({ id }) => ids.has(id)).map(({ number }) => String(number));
    if (none.length === 0 || prints.length === 0) return [];
    const named = none.length > MOST_NAMED ? say.screens(none.length) : say.screensNone(none.length, listed(none));
    return [say.noPrintThatIs(named, of)];
  };
  return [
    ...(alike ? [say.allPrintsAreChosen(prints.length)] : []),
    ...idle(screens.made, say.madeAlready),
    ...idle(screens.toMake, say.onPrepList2),
  ];
}
