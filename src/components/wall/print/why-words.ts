import { MEASURES, type VariantMeasures } from '../../../engine/explore/measure/variant-measures.ts';
import { type Apart, apartFrom } from '../../../engine/explore/taste/apart.ts';
import type { TasteFacts, TraitKey } from '../../../engine/explore/taste/traits.ts';
import { fixed } from '../../../engine/words/language.ts';
import { say } from '../../words/en/wall/print.ts';
import { say as taste } from '../../words/en/wall/taste.ts';
import type { PrintFacts } from './print-facts.ts';

/** What a measure that is larger, and one that is smaller, is in words. */
export const MEASURE_WORDS: Record<keyof VariantMeasures, readonly [string, string]> = {
  coverage: [say.moreOfSheetCovered, say.lessOfSheetCovered],
  colours: [say.moreColours, say.fewerColours],
  mainColour: [say.largerMainColour, say.smallerMainColour],
  overprintColour: [say.moreOverprintColours, say.fewerOverprintColours],
  darkest: [say.lighterDarkestPlace, say.darkerDarkestPlace],
  lightest: [say.lighterLightestPlace, say.darkerLightestPlace],
  contrast: [say.widerRangeOfLightness, say.narrowerRangeOfLightness],
  edgeContrast: [say.moreContrastOfEdges, say.lessContrastOfEdges],
  imbalance: [say.itsWeightFurtherFrom, say.itsWeightNearerTo],
  pulls: [say.morePulls, say.fewerPulls],
  screens: [say.moreScreens, say.fewerScreens],
  inks: [say.moreInks, say.fewerInks],
  setUps: [say.moreSetUps, say.fewerSetUps],
};

/** More of a trait, less of it, and what it is called. */
export type TraitWords = readonly [more: string, less: string, name: string];

/** The same of what one sees of a print as with eyes half shut. */
export const LOOK_WORDS: Partial<Record<TraitKey, TraitWords>> = {
  light: [taste.lighterOnWhole, taste.darkerOnWhole, taste.lightness],
  red: [taste.redderOnWhole, taste.greenerOnWhole, taste.redAgainstGreen],
  yellow: [taste.yellowerOnWhole, taste.bluerOnWhole, taste.yellowAgainstBlue],
  strength: [taste.strongerColours, taste.greyerColours, taste.strengthOfColour],
  lightSpread: [taste.lightAndDarkFurther, taste.lightnessMoreEvenOver, taste.evennessOfLightness],
  above: [taste.lighterAboveThanBelow, taste.darkerAboveThanBelow, taste.aboveAgainstBelow],
  left: [taste.lighterAtLeftThan, taste.darkerAtLeftThan, taste.leftAgainstRight],
  middle: [taste.lighterInMiddleThan, taste.darkerInMiddleThan, taste.middleAgainstRim],
};

/** In a line, where 'Beside its neighbours' says that others are looked at: more of a trait, and less. */
const IN_LINE: Partial<Record<TraitKey, readonly [string, string]>> = {
  light: [say.seenLighter, say.seenDarker],
  red: [say.seenRedder, say.seenGreener],
  yellow: [say.seenYellower, say.seenBluer],
  lightSpread: [say.seenMoreApart, say.seenMoreEven],
  above: [say.seenLighterAbove, say.seenDarkerAbove],
  left: [say.seenLighterLeft, say.seenDarkerLeft],
  middle: [say.seenLighterMiddle, say.seenDarkerMiddle],
};

/** A print among those that hang, by their numbers. */
export interface Beside {
  index: number;
  /** What is known of the prints. */
  facts: Pick<PrintFacts, 'measures' | 'sketch'>;
  /** Numbers in the order in which prints hang, and how many hang in a row. */
  sequence: readonly number[];
  columns: number;
}

/** 'Beside its neighbours: darker, fewer inks (4, they 6).'; '' where there are none. */
export function besideWords({ index, facts, sequence, columns }: Beside): string {
  const known = (list: readonly number[]): TasteFacts[] =>
    list.flatMap((each) => {
      const [measures, sketch] = [facts.measures[each], facts.sketch(each)];
      return measures === undefined || sketch === undefined ? [] : [{ measures, sketch }];
    });
  const [of] = known([index]);
  const neighbours = known(neighboursOf(sequence, columns, index));
  if (of === undefined || neighbours.length === 0) return '';
  const apart = apartFrom(of, neighbours, known(sequence)).map(apartWords);
  return apart.length === 0 ? say.measuresMuchLikeIts : say.besideItsNeighbours(apart.join(', '));
}

/** A look in words alone, a measure with its figures. */
function apartWords({ trait, value, usual }: Apart): string {
  const measure = MEASURES.find(({ key }) => key === trait);
  const side = value > usual ? 0 : 1;
  if (measure === undefined) return (IN_LINE[trait] ?? LOOK_WORDS[trait])?.[side] ?? trait;
  const { key, digits, unit } = measure;
  return say.they(MEASURE_WORDS[key][side], fixed(value, digits), fixed(usual, digits), unit === '' ? '' : ` ${unit}`);
}

/** Places of the prints that hang round one: left, right, above and below. */
export function neighboursOf(sequence: readonly number[], columns: number, index: number): number[] {
  const at = sequence.indexOf(index);
  if (at < 0) return [];
  const column = at % columns;
  const places = [column > 0 ? at - 1 : -1, column < columns - 1 ? at + 1 : -1, at - columns, at + columns];
  return places.flatMap((place) => (place >= 0 ? (sequence[place] ?? []) : []));
}
