import { MEASURES } from '../../../engine/explore/measure/variant-measures.ts';
import type { ChoiceWay } from '../../../engine/explore/taste/choices.ts';
import type { Claim } from '../../../engine/explore/taste/claims.ts';
import type { Learnt } from '../../../engine/explore/taste/taste-of-wall.ts';
import type { TraitKey } from '../../../engine/explore/taste/traits.ts';
import { fixed, lowered } from '../../../engine/words/language.ts';
import { say } from '../../words/en/wall/taste.ts';
import { LOOK_WORDS, MEASURE_WORDS, type TraitWords } from '../print/why-words.ts';

function wordsOf(trait: TraitKey): TraitWords {
  const measure = MEASURES.find(({ key }) => key === trait);
  if (measure !== undefined) return [...MEASURE_WORDS[measure.key], lowered(measure.label)];
  return LOOK_WORDS[trait] ?? [trait, trait, trait];
}

function claimWords({ trait, way }: Claim): string {
  const [more, less, name] = wordsOf(trait);
  if (way === 'middle') return say.neitherMuchNorLittle(name);
  return way === 'more' ? more : less;
}

/** From so many choices on it lies with the choices, not with their number, that nothing is clear. */
const MANY = 20;

function claimsSentences({ choices, claims, foretold }: Learnt): string[] {
  const sure = claims
    .filter((claim) => claim.sure)
    .map(claimWords)
    .join(', ');
  const perhaps = claims.find((claim) => !claim.sure);
  const known = sure === '' ? [] : [say.fromChoicesYouChoose(choices, sure)];
  if (foretold?.standing === 'nothing') return sure === '' ? [say.choicesSoFar(choices)] : known;
  if (perhaps !== undefined) {
    const ofHundred = Math.ceil(100 * perhaps.chance);
    const words = claimWords(perhaps);
    return [...known, sure === '' ? say.perhapsYouChoose(choices, words, ofHundred) : say.perhapsAlso(words, ofHundred)];
  }
  if (sure !== '') return known;
  return [choices < MANY ? say.choicesSoFarToo(choices) : say.noClearerThanChance(choices)];
}

/** What was tried, and how well, against a coin; '' where there is too little to try. */
function triedSentence({ claims, foretold }: Learnt): string {
  if (foretold === null) return '';
  const { right, of, standing } = foretold;
  const coin = fixed(of / 2, of % 2);
  const nothing = claims.some((claim) => claim.sure) ? say.orderNoBetter : say.notLearntYet;
  const means = { nothing, luck: say.mayBeLuck, clear: '' }[standing];
  return `${say.triedOn(of, right, coin)} ${means}`.trim();
}

/**
 * What is known of a taste, in a sentence or two that claim no more than is known.
 * @param stale whether something was taught since it was learnt
 */
export function learntSentence(learnt: Learnt, taught: number, stale = false): string {
  const { choices, against } = learnt;
  if (taught === 0) return say.nothingIsChosenYet;
  if (choices === 0) return stale ? say.choicesToArrangeBy(taught) : say.choicesButOnlyOf(taught);
  const parts = [against === null ? '' : say.youChoseOverAnd(against[0], against[1]), ...claimsSentences(learnt), triedSentence(learnt)];
  return parts.filter((part) => part !== '').join(' ');
}

const WAYS: Record<ChoiceWay, string> = { compared: say.chosenOver, selected: say.selected, pinned: say.pinned, kept: say.kept };

/** How a print was chosen: 'pinned'. */
export function wayWord(way: ChoiceWay): string {
  return WAYS[way];
}

/** Of a hundred places, those for prints that the taste is unsure about, in words. */
export const UNSURE: readonly [number, string][] = [
  [0, say.none],
  [10, say.oneInTen],
  [20, say.oneInFive],
  [33, say.oneInThree],
  [50, say.everyOther],
];
