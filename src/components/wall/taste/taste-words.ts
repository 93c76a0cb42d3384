import { MEASURES } from '../../../engine/explore/measure/variant-measures.ts';
import type { ChoiceWay } from '../../../engine/explore/taste/choices.ts';
import type { Claim } from '../../../engine/explore/taste/claims.ts';
import type { Learnt } from '../../../engine/explore/taste/taste-of-wall.ts';
import type { TraitKey } from '../../../engine/explore/taste/traits.ts';
import { counted } from '../../ui/words.ts';
import { MEASURE_WORDS } from '../print/why-words.ts';

/** More of a trait, less of it, and what it is called. */
type TraitWords = readonly [more: string, less: string, name: string];

const LOOK_WORDS: Partial<Record<TraitKey, TraitWords>> = {
  light: ['lighter on the whole', 'darker on the whole', 'lightness'],
  red: ['redder on the whole', 'greener on the whole', 'red against green'],
  yellow: ['yellower on the whole', 'bluer on the whole', 'yellow against blue'],
  strength: ['stronger colours', 'greyer colours', 'strength of colour'],
  lightSpread: ['light and dark further apart over the sheet', 'lightness more even over the sheet', 'evenness of lightness'],
  above: ['lighter above than below', 'darker above than below', 'above against below'],
  left: ['lighter at the left than at the right', 'darker at the left than at the right', 'left against right'],
  middle: ['lighter in the middle than round it', 'darker in the middle than round it', 'middle against rim'],
};

function wordsOf(trait: TraitKey): TraitWords {
  const measure = MEASURES.find(({ key }) => key === trait);
  if (measure !== undefined) return [...MEASURE_WORDS[measure.key], measure.label.toLowerCase()];
  return LOOK_WORDS[trait] ?? [trait, trait, trait];
}

function claimWords({ trait, way }: Claim): string {
  const [more, less, name] = wordsOf(trait);
  if (way === 'middle') return `neither much nor little of ${name}`;
  return way === 'more' ? more : less;
}

/** What is known of a taste, in a sentence or two that claim no more than is known. */
export function learntSentence({ choices, claims, foretold, against }: Learnt, taught: number): string {
  if (taught === 0)
    return 'Nothing is chosen yet. Answer ‘This one or that one?’, pin or keep prints, or select some and press Learn from selected.';
  if (choices === 0)
    return `${counted(taught, 'choice')}, but only of prints that you like and none that you passed over: nothing to tell them from. Compare two prints.`;
  const parts = [
    against === null ? '' : `You chose ${against[0]} over ${against[1]}, and the other way round; the two answers cancel out.`,
    claims.length === 0
      ? `${counted(choices, 'choice')} so far: too little to tell what you choose by.`
      : `From ${counted(choices, 'choice')}, you choose ${claims.map(claimWords).join(', ')}.`,
    foretold === null ? '' : `Of ${foretold.of} choices held back, ${foretold.right} were foretold.`,
  ];
  return parts.filter((part) => part !== '').join(' ');
}

const WAYS: Record<ChoiceWay, string> = { compared: 'chosen over', selected: 'selected', pinned: 'pinned', kept: 'kept' };

/** How a print was chosen: 'pinned'. */
export function wayWord(way: ChoiceWay): string {
  return WAYS[way];
}

/** Of a hundred places, those for prints that the taste is unsure about, in words. */
export const UNSURE: readonly [number, string][] = [
  [0, 'none'],
  [10, 'one in ten'],
  [20, 'one in five'],
  [33, 'one in three'],
  [50, 'every other'],
];
