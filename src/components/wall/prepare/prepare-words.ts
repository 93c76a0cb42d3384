import { type PrepareBy, type PrepareStep, takenByNone, type WantedPrint } from '../../../engine/explore/prepare/prepare.ts';
import type { Screen } from '../../../engine/shapes/types.ts';
import { counted } from '../../ui/words.ts';
import { listed } from '../../words/plan-words.ts';

/** More screens than this are counted. */
const MOST_NAMED = 8;

const WHAT: Record<PrepareBy, string> = { screens: 'screen', inks: 'ink', both: 'screen or ink' };

/** 'new screens', as it stands in a sentence. */
export function newOnes(by: PrepareBy): string {
  return by === 'both' ? 'new screens and inks' : `new ${WHAT[by]}s`;
}

/** A weight of prints: whole where it is, as weights are. */
function weightText(weight: number): string {
  return weight.toLocaleString('en', { maximumFractionDigits: 1 });
}

/** What a choice prints, and how near that is to the best there can be. */
export function printedSentence(step: PrepareStep, all: number, by: PrepareBy): string {
  const what =
    by === 'both'
      ? `${counted(step.screens.length, 'new screen')} and ${counted(step.inks.length, 'new ink')}`
      : counted(step.count, `new ${WHAT[by]}`);
  const proven = step.bound <= step.printed + 1e-9;
  const near = proven ? 'No other choice of so many prints more.' : `No choice of so many prints more than ${weightText(step.bound)}.`;
  return `With ${what}, ${weightText(step.printed)} of ${weightText(all)} can be pulled. ${near}`;
}

/** What one more would add. */
export function nextSentence(steps: readonly PrepareStep[], count: number, nameOf: (id: string) => string): string {
  const [now, next] = [steps[count], steps[count + 1]];
  if (now === undefined || next === undefined) return 'All that the prints take is there then.';
  const more = next.printed - now.printed;
  const had = new Set([...now.screens, ...now.inks]);
  const fresh = [...next.screens, ...next.inks].filter((id) => !had.has(id)).map(nameOf);
  if (more <= 1e-9) return 'One more by itself adds no print: it takes several together.';
  const named = fresh.length === 1 ? `, with ${fresh[0]}` : '';
  const other =
    fresh.length > 1 ? ` by a choice in which ${fresh.length} are others than now${fresh.length <= 4 ? `: ${fresh.join(', ')}` : ''}` : '';
  return `One more adds ${weightText(more)}${named}${other}.`;
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
    const named = none.length > MOST_NAMED ? counted(none.length, 'screen') : `${none.length === 1 ? 'screen' : 'screens'} ${listed(none)}`;
    return [`No print that is chosen needs ${named}, ${of}.`];
  };
  return [
    ...(alike ? [`All ${prints.length} prints are chosen and count alike; select or pin some to say which matter most.`] : []),
    ...idle(screens.made, 'made already'),
    ...idle(screens.toMake, 'on the prep list'),
  ];
}
